import type { Problem } from '#problem'
import type { Composition } from '#steel'
import type { Shop } from '#shop'
import type { Heat, Smithy } from '#operations'
import type { DoneStep, Plan } from '#planner'
import { type TemperatureHistory, followOn } from '#metallurgy'
import { moveCarbon } from './metal/carbon-in-pack.ts'
import {
  type HeatRun,
  orderFor,
  run,
  sectionBetween,
  sectionOf,
  stopOf,
  thinOut,
} from './fire/heat-order.ts'
import { type Metal, fitTo, followStep } from './metal/metal.ts'

/** One kind of heat in a step: the first from cold, the ones after it from the stop heat. */
export interface HeatDone {
  readonly heat: Heat
  readonly times: number
  readonly again: boolean
  readonly order: ReturnType<typeof orderFor>
  readonly run: HeatRun
}

/** A step of the plan with its heats run and its metal followed. */
export interface StepFollowed {
  readonly number: number
  readonly done: DoneStep
  readonly heats: readonly HeatDone[]
  /** Mean temperature of the bar through all its heats, in few points. */
  readonly history: TemperatureHistory
  readonly metal: Metal
  /** Thickness after over thickness before of its packs, the first for all. */
  readonly stretch: number
  /** Faces of like on like that met in it. */
  readonly likeJoints: number
}

export interface PlanFollowed {
  readonly steps: readonly StepFollowed[]
  /** Greatest share of carbon gained or lost by rounding in any step. */
  readonly drift: number
  readonly notes: readonly string[]
  readonly warnings: readonly Problem[]
}

export interface FollowOptions {
  readonly signal?: AbortSignal
  readonly onProgress?: (share: number, doing: string) => void
}

/** Room, K. */
const ROOM = 293.15
/** A straight line within this of the history carries carbon as far to some parts in a hundred, K. */
const FEW_KELVIN = 8

/** Follows the metal of every bar through every step and heat of a plan. */
export function followPlan(
  plan: Plan,
  smithy: Smithy,
  compositionOf: (steel: string) => Composition,
  options: FollowOptions = {},
): PlanFollowed {
  const bought = (steel: string) => compositionOf(steel).C ?? 0
  const inHand = new Map<string, Metal>()
  const steps: StepFollowed[] = []
  const notes = new Set<string>()
  const warnings: Problem[] = []
  let drift = 0
  let previous: DoneStep | undefined
  plan.steps.forEach((done, i) => {
    options.signal?.throwIfAborted()
    options.onProgress?.(i / plan.steps.length, 'the heats')
    const before = takenInto(done, inHand)
    const followed = followStep(done, before, bought, smithy)
    if (followed.lost)
      notes.add(
        `"${done.operation.name}" rearranges layers in a way that is not followed: each steel goes on with its mean carbon.`,
      )
    const straightOn = previous?.bar === done.bar && leftHot(previous)
    const heats = heatsDone(done, smithy.shop, straightOn)
    const history = historyOf(heats)
    let metal = followed.metal
    if (heats.length > 0) {
      const count = heats.reduce((n, h) => n + h.times, 0)
      const known = new Map<Metal[number], Metal[number]>()
      // The pack is as thin as the step leaves it when its last heat ends: it thins heat by heat.
      metal = metal.map((pack, k) => {
        const hit = known.get(pack)
        if (hit) return hit
        const thick = followed.stretch[k]!
        const factor = thick ** (1 / count)
        const moved = moveCarbon(
          pack.map((p) => ({ ...p, thickness: p.thickness / thick })),
          { points: history.points, thinning: history.ends.map((time) => ({ time, factor })) },
          compositionOf,
        )
        drift = Math.max(drift, moved.drift)
        warnings.push(...moved.outOfRange.map((w) => ({ ...w, at: done.at })))
        const after = moved.plies.map((p, j) => ({ ...p, thickness: pack[j]!.thickness }))
        known.set(pack, after)
        return after
      })
    }
    metal = fitTo(done.step.after, metal)
    inHand.set(done.bar, metal)
    steps.push({
      number: i + 1,
      done,
      heats,
      history: history.points,
      metal,
      stretch: followed.stretch[0] ?? 1,
      likeJoints: followed.likeJoints,
    })
    previous = done
  })
  options.onProgress?.(1, 'the heats')
  return { steps, drift, notes: [...notes], warnings: unlike(warnings) }
}

/** The metal of the bars a step takes, in the order of `done.before`. */
function takenInto(done: DoneStep, inHand: ReadonlyMap<string, Metal>): Metal[] {
  const named = done.operation.bars?.(done.values as never) ?? []
  const own = done.before.length > named.length ? [done.bar] : []
  return [...own, ...named].map((bar, i) => fitTo(done.before[i]!, inHand.get(bar) ?? []))
}

/** Forging and welding leave the bar hot: the next heat finds it at its stop. */
function leftHot({ step }: DoneStep): boolean {
  return (
    step.heats.length > 0 && step.heats.every((h) => h.purpose === 'weld' || h.purpose === 'forge')
  )
}

function heatsDone(done: DoneStep, shop: Shop, straightOn: boolean): HeatDone[] {
  const heats: HeatDone[] = []
  const after = sectionOf(done.step.after)
  const bar = done.before[0] ? sectionBetween(sectionOf(done.before[0]), after) : after
  let hot: number | undefined = straightOn ? shop.stopHeat : undefined
  for (const heat of done.step.heats) {
    if (heat.count < 1) continue
    const working = heat.purpose === 'weld' || heat.purpose === 'forge'
    const stop = working ? stopOf(heat, shop) : undefined
    const first = Math.min(hot ?? ROOM, heat.temperature - 50)
    const add = (from: number, times: number, again: boolean) => {
      const order = orderFor(heat, bar, shop, from)
      heats.push({ heat, times, again, order, run: run(order) })
    }
    const again = stop === undefined ? ROOM : Math.min(stop, heat.temperature - 50)
    if (again === first) add(first, heat.count, first > ROOM)
    else {
      add(first, 1, first > ROOM)
      if (heat.count > 1) add(again, heat.count - 1, true)
    }
    hot = stop
  }
  return heats
}

/** All heats in a row, and when each ends. */
function historyOf(heats: readonly HeatDone[]): { points: TemperatureHistory; ends: number[] } {
  const each = heats.flatMap(({ run, times }) => {
    const few = thinOut(run.mean, FEW_KELVIN)
    return new Array<TemperatureHistory>(times).fill(few)
  })
  const ends: number[] = []
  let at = 0
  for (const points of each) {
    at += (points[points.length - 1]?.time ?? 0) - (points[0]?.time ?? 0)
    ends.push(at)
  }
  return { points: followOn(...each), ends }
}

/** Each warning once for a place. */
export function unlike(warnings: readonly Problem[]): Problem[] {
  const seen = new Set<string>()
  return warnings.filter(({ at, what }) => {
    const key = `${at} ${what}`
    return !seen.has(key) && seen.add(key)
  })
}
