import { type Composition, type Element, percent } from '#steel'
import {
  type TemperatureHistory,
  decarburise,
  evolveCarbon,
  fadeWeldLine,
  followOn,
} from '#metallurgy'
import type { StepFollowed } from './follow-plan.ts'
import { burntIn } from './fire/model-scale.ts'
import type { Shop } from '#shop'
import type { Ranged } from './layers/layer-records.ts'
import { type Metal, meanCarbon } from './metal/metal.ts'

/** A light line where like was welded on like: both faces had lost carbon to the fire before they met. */
export interface WeldLine {
  readonly bar: string
  /** Number of the step that laid the faces together, from 1. */
  readonly step: number
  readonly joints: number
  /** wt% under the carbon beside it, at most, as the piece is finished. */
  readonly deficit: number
  /** m, as the piece is finished. */
  readonly width: number
  readonly shows: 'clearly' | 'faintly' | 'hardly'
}

/** What carbon does at a joint of two bars that are not one pack. */
export interface BarJoint {
  readonly step: number
  readonly between: readonly [string, string]
  /** wt% mean of each bar, and beside the joint when the piece is finished. */
  readonly carbon: readonly [number, number]
  readonly atJoint: readonly [number, number]
  /** m: how far it is felt into each, twice the root of the sum of D dt. */
  readonly reach: number
}

/** wt%: less than this is not seen after the etch; more than this is seen clearly (from memory). */
const HARDLY = 0.05
const CLEARLY = 0.2

/**
 * Skin that has lost carbon on the finished faces, m. Each heat deepens it, scale and grinding take
 * it off, drawing thins it. Upper bound: the fire is taken to leave no carbon at the face.
 */
export function skinLeft(steps: readonly StepFollowed[], shop: Shop): Ranged {
  const depth = skinOf(steps, steps.at(-1)?.done.bar, shop)
  return { value: LIKELY * depth, range: [LEAST * depth, depth] }
}

/** Share of the bound to be expected, and the least: a fire run rich leaves carbon at the face (from memory). */
const LIKELY = 0.6
const LEAST = 0.3

/** Depth of the lean skin on the flat faces of a bar after its last step here, m: the bound. */
function skinOf(steps: readonly StepFollowed[], bar: string | undefined, shop: Shop): number {
  let depth = 0
  for (const { done, heats, history, metal, stretch } of steps) {
    if (done.bar !== bar) continue
    const { step, before } = done
    const hot = heats.filter(({ heat }) => heat.purpose !== 'temper')
    if (hot.length > 0) {
      const burnt = hot.reduce((s, h) => s + burntIn(h.run, h.heat.soak, shop).value * h.times, 0)
      const fresh = decarburise(history, richestOf(metal), burnt).depth.value
      depth = Math.hypot(Math.max(0, depth - burnt), fresh) * Math.min(1, stretch)
    } else if (before.length !== 1 || before[0]!.size.height * 1.5 < step.after.size.height)
      depth = 0
    else if (step.losses.some((l) => ['ground', 'polished', 'trim'].includes(l.cause)))
      depth = Math.max(
        0,
        depth - Math.max(0, (before[0]!.size.height - step.after.size.height) / 2),
      )
  }
  return depth
}

function richestOf(metal: Metal): number {
  return Math.max(0, ...metal.flat().map(meanCarbon))
}

/**
 * Lines of like on like in the finished piece, by the step that laid them. The skin the fire left on
 * the faces, less what was ground off them, is shut in; carbon then flows back into it. While the
 * stack comes to its first weld its faces are shut off from the fire by flux or a sealed edge.
 */
export function weldLines(steps: readonly StepFollowed[], shop: Shop): WeldLine[] {
  const lines: WeldLine[] = []
  steps.forEach((laid, i) => {
    const { bar } = laid.done
    // Fresh sheets of one steel laid on one another are bright: their line is of the weld alone.
    const joints = laid.done.before.length === 0 ? 0 : laid.likeJoints
    const path = pathOf(steps, i)
    if (joints <= 0 || !path.some((s) => s.heats.length > 0)) return
    const carbon = richestOf(laid.metal)
    const ground = (laid.done.values.cleanUp as number | undefined) ?? shop.cleanUp
    const skin = Math.max(0, LIKELY * skinOf(steps.slice(0, i), bar, shop) - ground)
    const after = followOn(...path.map((s) => s.history))
    const { thin, spread } = asFinished(path, carbon)
    const whole = decarburise(after, carbon).reach
    // The same ratio of skin to reach as in the finished metal, which is thinner by now.
    const { deficit } = fadeWeldLine((skin * thin * whole) / spread, carbon / 2, after, carbon)
    const shows = deficit > CLEARLY ? 'clearly' : deficit > HARDLY ? 'faintly' : 'hardly'
    const width = 2 * (skin * thin + spread)
    lines.push({ bar, step: laid.number, joints, deficit, width, shows })
  })
  return lines
}

/** Thickness at the end over that at the start, and how far carbon spread, m, as it lies at the end. */
function asFinished(path: readonly StepFollowed[], carbon: number) {
  let thin = 1
  let square = 0
  for (const { history, heats, stretch } of path) {
    if (heats.length === 0) continue
    const by = Math.min(stretch, 1)
    thin *= by
    square = (square + decarburise(history, carbon).reach ** 2) * by * by
  }
  return { thin, spread: Math.sqrt(Math.max(square, 1e-16)) }
}

/** The steps the metal of a step goes through after it, from bar to bar. */
function pathOf(steps: readonly StepFollowed[], from: number): StepFollowed[] {
  let { bar } = steps[from]!.done
  const path: StepFollowed[] = []
  for (const step of steps.slice(from + 1)) {
    const { operation, values } = step.done
    if (step.done.bar === bar) path.push(step)
    else if (operation.bars?.(values as never).includes(bar)) {
      bar = step.done.bar
      path.push(step)
    }
  }
  return path
}

/** Carbon across the joints of bars that stay bars: an edge against the bars it wraps. */
export function barJoints(
  steps: readonly StepFollowed[],
  compositionOf: (steel: string) => Composition,
): BarJoint[] {
  const joints: BarJoint[] = []
  steps.forEach((joined, i) => {
    const { done } = joined
    const named = done.operation.bars?.(done.values as never) ?? []
    const own = done.before.length > named.length ? [done.bar] : []
    const bars = [...own, ...named]
    if (bars.length < 2 || joined.metal.length < 2) return
    const before = bars.map(
      (bar) => steps.slice(0, i).findLast((s) => s.done.bar === bar)?.metal ?? [],
    )
    const after = followOn(...pathOf(steps, i).map((s) => s.history))
    const seen = new Set<string>()
    for (let k = 1; k < bars.length; k++) {
      const a = own.length > 0 ? 0 : k - 1
      const key = [bars[a], bars[k]].toSorted().join(' ')
      if (seen.has(key) || bars[a] === bars[k]) continue
      seen.add(key)
      const joint = acrossJoint(
        meanOf(before[a]!, compositionOf),
        meanOf(before[k]!, compositionOf),
        after,
      )
      if (joint) joints.push({ step: joined.number, between: [bars[a]!, bars[k]!], ...joint })
    }
  })
  return joints
}

function acrossJoint(a: Composition, b: Composition, after: TemperatureHistory) {
  const carbon: [number, number] = [percent(a, 'C'), percent(b, 'C')]
  const { reach } = decarburise(after, Math.max(...carbon))
  if (!(reach > 0) || Math.abs(carbon[0] - carbon[1]) < 0.02) return undefined
  const thickness = 3 * reach
  const { layers } = evolveCarbon(
    [
      { composition: a, thickness },
      { composition: b, thickness },
    ],
    { points: after },
    { nodesPerLayer: 48 },
  )
  const atJoint: [number, number] = [layers[0]!.across.at(-1)!, layers[1]!.across[0]!]
  return { carbon, atJoint, reach }
}

/** One steel that stands for a bar: its mean, element by element. */
function meanOf(metal: Metal, compositionOf: (steel: string) => Composition): Composition {
  const sums: Partial<Record<Element, number>> = {}
  let whole = 0
  for (const ply of metal.flat()) {
    whole += ply.thickness
    for (const [element, w] of Object.entries({ ...compositionOf(ply.steel), C: meanCarbon(ply) }))
      sums[element as Element] = (sums[element as Element] ?? 0) + w * ply.thickness
  }
  return Object.fromEntries(Object.entries(sums).map(([e, w]) => [e, w / Math.max(whole, 1e-12)]))
}
