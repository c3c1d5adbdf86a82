import type { Problem } from '#problem'
import type { Composition } from '#steel'
import type { HeatPurpose } from '#operations'
import type { Shop } from '#shop'
import {
  type Estimate,
  type HeatOrder,
  checkOverheating,
  decarburise,
  fires,
  growGrains,
  heatColour,
} from '#metallurgy'
import type { HeatDone, PlanFollowed, StepFollowed } from './follow-plan.ts'
import { burntIn, factorOf } from './fire/model-scale.ts'
import { type Metal, meanCarbon } from './metal/metal.ts'

/** One steel of a bar at one moment. */
export interface SteelState {
  readonly steel: string
  /** The bar in whose stack it was laid. */
  readonly bar: string
  /** wt% */
  readonly carbon: number
  /** The leanest and the richest layer of it. */
  readonly lowest: number
  readonly highest: number
  /** Share of the thickness of all that was followed. */
  readonly share: number
  readonly layers: number
}

/** How near a steel comes to burning in a heat, at the carbon it has then. */
export interface Nearness {
  readonly steel: string
  readonly carbon: number
  readonly verdict: 'safe' | 'hot' | 'burning' | 'melting'
  /** K left to the solidus. */
  readonly margin: number
  readonly range: readonly [number, number]
}

/** One kind of heat of one step: what the fire did, and what it did to the bar. */
export interface HeatRecord {
  readonly bar: string
  /** Number of the step on the card, from 1. */
  readonly step: number
  readonly at: string
  readonly do: string
  readonly purpose: HeatPurpose
  readonly times: number
  /** From the stop heat, not from cold. */
  readonly again: boolean
  readonly section: HeatOrder['bar']
  readonly fire: HeatOrder['fire']
  /** K: walls of the fire, the bar before, the heat wanted, where work stops. */
  readonly fireTemperature: number
  readonly from: number
  readonly temperature: number
  readonly stop?: number
  /** s */
  readonly soak: number
  readonly medium: string
  /** What the bar looks like at that heat. */
  readonly colour: string
  /** s till the core is hot; s it can then be worked. */
  readonly warming: Estimate
  readonly working?: Estimate
  /** One temperature throughout, or followed from skin to core, and the Biot number that decided. */
  readonly model: 'lumped' | 'through the thickness'
  readonly biot: number
  /** s from the start of the heat, K. */
  readonly history: readonly {
    readonly time: number
    readonly skin: number
    readonly core: number
    readonly mean: number
  }[]
  /** m off each face in one such heat: the model's with its range, the shop's, and which the account used. */
  readonly scale?: {
    readonly model: number
    readonly range: readonly [number, number]
    readonly shop: number
  }
  /** m: how far carbon spreads in all of them, twice the root of the sum of D dt. */
  readonly reach: number
  /** m, mean grain at the end of one. */
  readonly grain: number
  readonly grainNumber: number
  readonly nearness: readonly Nearness[]
  /** Carbon of each steel after the step. */
  readonly carbon: readonly SteelState[]
  readonly cautions: readonly string[]
  readonly outOfRange: readonly Problem[]
}

/** Every heat of a plan as a record. */
export function heatRecords(
  { steps }: PlanFollowed,
  shop: Shop,
  compositionOf: (steel: string) => Composition,
): HeatRecord[] {
  return steps.flatMap((step, i) => {
    const before = steps.slice(0, i).findLast((s) => s.done.bar === step.done.bar)?.metal
    const states = statesOf(before ?? step.metal)
    return step.heats.map((heat) => recordOf(step, heat, states, shop, compositionOf))
  })
}

function recordOf(
  { number, done, metal }: StepFollowed,
  { heat, times, again, order, run }: HeatDone,
  before: readonly SteelState[],
  shop: Shop,
  compositionOf: (steel: string) => Composition,
): HeatRecord {
  const factor = factorOf(heat.purpose)
  const burnt = factor && burntIn(run, heat.soak, shop)
  const richest = Math.max(0, ...before.map((s) => s.highest))
  const grain = growGrains(run.mean)
  const nearness = before
    .filter((s) => ironBased(compositionOf(s.steel)))
    .map((s): Nearness => {
      const { verdict, margin } = checkOverheating(s.highest, heat.temperature)
      const { steel } = s
      return { steel, carbon: s.highest, verdict, margin: margin.value, range: margin.range }
    })
  const treating = heat.purpose === 'normalise' || heat.purpose === 'harden'
  const cautions = [...worst(nearness), ...(treating && grain.caution ? [grain.caution] : [])]
  return {
    bar: done.bar,
    step: number,
    at: done.at,
    do: done.operation.name,
    purpose: heat.purpose,
    times,
    again,
    section: order.bar,
    fire: order.fire,
    fireTemperature: order.fireTemperature!,
    from: order.from!,
    temperature: heat.temperature,
    ...(order.stop !== undefined && { stop: order.stop, working: run.working }),
    soak: heat.soak,
    medium: heat.medium,
    colour: heatColour(heat.temperature).word,
    warming: run.warming,
    model: run.model,
    biot: run.biot,
    history: run.mean.map(({ time, temperature }, i) => ({
      time,
      skin: run.skin[i]!.temperature,
      core: run.core[i]!.temperature,
      mean: temperature,
    })),
    ...(factor &&
      burnt && { scale: { model: burnt.value, range: burnt.range, shop: shop[factor] } }),
    reach: decarburise(run.mean, richest).reach * Math.sqrt(times),
    grain: grain.size.value,
    grainNumber: grain.number,
    nearness,
    carbon: statesOf(metal),
    cautions,
    outOfRange: [
      ...run.outOfRange.filter((p) => !turnedDown(p, order)),
      ...(burnt?.outOfRange ?? []),
      ...grain.size.outOfRange,
    ].map((p) => ({ ...p, at: `${done.at}.${p.at}` })),
  }
}

/** A fire turned down for treating is no fault of the plan. */
function turnedDown({ at }: Problem, { fire, fireTemperature }: HeatOrder): boolean {
  return at === 'fireTemperature' && (fireTemperature ?? 0) < fires[fire].range[0]
}

/** The models of iron and carbon say nothing of nickel or of what is not steel. */
export function ironBased(composition: Composition): boolean {
  const others = Object.values(composition).reduce((sum, w) => sum + w, 0)
  return others < 40
}

function worst(nearness: readonly Nearness[]): string[] {
  const order = ['melting', 'burning'] as const
  for (const verdict of order) {
    const found = nearness.filter((n) => n.verdict === verdict)
    if (found.length === 0) continue
    const names = [...new Set(found.map((n) => n.steel))].join(' and ')
    return [
      verdict === 'melting'
        ? `${names}: over the solidus, the steel melts.`
        : `${names}: in the burning range at the carbon it has by now.`,
    ]
  }
  return []
}

/** Each steel of some metal, by the bar it was laid in, as it is now. */
export function statesOf(metal: Metal): SteelState[] {
  const found = new Map<
    string,
    {
      steel: string
      bar: string
      c: number
      t: number
      lowest: number
      highest: number
      layers: number
    }
  >()
  let whole = 0
  for (const ply of metal.flat()) {
    const key = `${ply.bar} ${ply.steel}`
    const mean = meanCarbon(ply)
    const s = found.get(key) ?? {
      steel: ply.steel,
      bar: ply.bar,
      c: 0,
      t: 0,
      lowest: Infinity,
      highest: 0,
      layers: 0,
    }
    s.c += mean * ply.thickness
    s.t += ply.thickness
    s.lowest = Math.min(s.lowest, mean)
    s.highest = Math.max(s.highest, mean)
    s.layers++
    whole += ply.thickness
    found.set(key, s)
  }
  return [...found.values()].map(({ steel, bar, c, t, lowest, highest, layers }) => ({
    steel,
    bar,
    carbon: c / t,
    lowest,
    highest,
    share: t / whole,
    layers,
  }))
}
