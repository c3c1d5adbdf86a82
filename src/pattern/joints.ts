import { type Cut, type Ground, heightOf } from '#share'
import type { Warp } from '#warp'
import { type Origin, type Stack, moved, stacksOf } from './origin.ts'
import { traceOrigin } from './tracer.ts'

/** Places along the bar at which a joint is looked at. */
const LOOKS = 12
/** How far into the pile (of half its height) a joint may be cut: else the sheets do not lie flat in it. */
const DEEPEST = 0.9

const known = new WeakMap<Origin, ReadonlyMap<Stack, Cut>>()

/**
 * Where the piles of a tree end at their joints: faces are ground before a restack, so that less of the outer sheets
 * repeats than was laid. Piles that are not restacked flat are not in the list.
 */
export function cutsOf(origin: Origin): ReadonlyMap<Stack, Cut> {
  const seen = known.get(origin)
  if (seen) return seen
  const faces = new Map<Stack, Faces>()
  visit(origin, 1, faces, new Set())
  const cuts = new Map<Stack, Cut>()
  for (const [stack, { low, high }] of faces)
    cuts.set(stack, { low: shared(low), high: shared(high) })
  known.set(origin, cuts)
  return cuts
}

/** What is ground off the lower and the upper faces of a pile, m, each with how many joints are so. */
interface Faces {
  readonly low: GroundFace[]
  readonly high: GroundFace[]
}
interface GroundFace {
  readonly off: number
  readonly joints: number
}

function shared(faces: readonly GroundFace[]): Ground[] {
  const all = faces.reduce((sum, { joints }) => sum + joints, 0)
  return faces.map(({ off, joints }) => ({ off, share: joints / all }))
}

function visit(node: Origin, times: number, faces: Map<Stack, Faces>, done: Set<Origin>): void {
  if (node.kind === 'stack' || done.has(node)) return
  done.add(node)
  let bars = times
  node.warps.forEach((warp, k) => {
    if (warp.kind !== 'restack') return
    const { pieces } = warp.numbers as { pieces: number }
    if (pieces > 1)
      look(moved(node.from, node.warps.slice(k + 1)), warp, bars * (pieces - 1), faces)
    bars *= pieces
  })
  for (const from of node.from) visit(from, bars, faces, done)
}

/** Follows both faces of a bar as it goes into a restack back to the piles they are of. */
function look(bar: Origin, { numbers }: Warp, joints: number, faces: Map<Stack, Faces>): void {
  const { pieces, length, kerf, height, grind } = numbers as Record<string, number>
  const tracer = traceOrigin(bar, {
    precision: 'f64',
    weights: [],
    engine: 'reference',
    tile: 2 * LOOKS,
  })
  for (let i = 0; i < 2 * LOOKS; i++) {
    tracer.input(0)[i] = (((i >> 1) + 0.5) / LOOKS) * pieces! * (length! + kerf!)
    tracer.input(1)[i] = 0
    tracer.input(2)[i] = (i % 2 ? 1 : -1) * (height! / 2 - grind!)
  }
  tracer.run(2 * LOOKS)
  const { stack, z } = tracer.found
  stacksOf(bar).forEach((pile, number) => {
    const half = heightOf(pile.layers) / 2
    const own = Array.from(z).filter((_, i) => stack[i] === number)
    const at = faces.get(pile) ?? { low: [], high: [] }
    for (const [side, list] of [
      [-1, at.low],
      [1, at.high],
    ] as const) {
      const off = own.filter((v) => v * side > 0).map((v) => Math.max(0, half - v * side))
      if (off.length < LOOKS / 2 || Math.max(...off) > DEEPEST * half) continue
      list.push(...off.map((each) => ({ off: each, joints: joints / off.length })))
      faces.set(pile, at)
    }
  })
}
