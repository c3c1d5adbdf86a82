import type { Layer } from '#billet'
import { type Warp, compile, determinant, jacobian } from '#warp'
import type { Branch, Movement } from '#movement'

/** Points side by side, m. */
export interface PointRows {
  readonly x: readonly number[]
  readonly y: readonly number[]
  readonly z: readonly number[]
}

/** Where one point of the metal after a step came from. */
export interface Traced {
  readonly x: number
  readonly y: number
  readonly z: number
  /** Volume before for one after, on the whole way. */
  readonly volume: number
  /** Number of the bar that went in, or the sheets off the rack; undefined: no metal. */
  readonly from?: { readonly input: number } | { readonly layers: readonly Layer[] }
}

/** Kinds of warp that give a branch. */
const BRANCHING: ReadonlySet<Warp['kind']> = new Set<Warp['kind']>([
  'restack',
  'slices',
  'accordion',
  'tile',
  'side-by-side',
  'edge-bar',
  'roll',
  'drift',
])

/** Pulls points back through one step's movement, with the reference arithmetic. */
export function traceMovement(movement: Movement, points: PointRows): Traced[] {
  const result = new Array<Traced>(points.x.length)
  follow(
    movement,
    points,
    points.x.map((_, i) => i),
    points.x.map(() => 1),
    result,
  )
  return result
}

function follow(
  { warps, branches, below }: Movement,
  at: PointRows,
  which: readonly number[],
  volumes: readonly number[],
  result: Traced[],
): void {
  if (which.length === 0) return
  const order = warps.toReversed()
  const to = compile(order, { engine: 'reference' }).evaluate(at)
  const slopes = jacobian(order, at)
  const deciding = order.findIndex((warp) => BRANCHING.has(warp.kind))
  const of = deciding < 0 ? undefined : to.branches.find((b) => b.step === deciding)?.of
  const ways = new Map<Branch | undefined, number[]>()
  which.forEach((_, i) => {
    const branch = of ? Math.round(of[i]) : 0
    const way = wayOf(branch, branches, below)
    const list = ways.get(way)
    if (list) list.push(i)
    else ways.set(way, [i])
  })
  for (const [way, list] of ways) {
    const place = (i: number) => ({ x: to.x[i], y: to.y[i], z: to.z[i] })
    const volume = (i: number) => volumes[i] * Math.abs(determinant(slopes[i]))
    if (way && 'warps' in way) {
      const next = {
        x: list.map((i) => to.x[i]),
        y: list.map((i) => to.y[i]),
        z: list.map((i) => to.z[i]),
      }
      follow(
        way,
        next,
        list.map((i) => which[i]),
        list.map(volume),
        result,
      )
      continue
    }
    for (const i of list) result[which[i]] = { ...place(i), volume: volume(i), from: way }
  }
}

/** Branches beyond the list lead where its last entry does; negative ones to what lies below. */
export function wayOf(
  branch: number,
  branches: Movement['branches'],
  below: Branch | undefined,
): Branch | undefined {
  if (branch < 0) return below
  if (!branches) return { input: 0 }
  return branches[Math.min(branch, branches.length - 1)]
}
