import type { Problem } from '#problem'
import { type Composition, percent } from '#steel'
import { type Basis, type Estimate, type Span, celsius, showTemperature } from '../estimate.ts'
import { flowStress } from '../flow-stress/choose.ts'

/** Shop rules for a sound forge weld (common practice, no source, unless said otherwise). */
export const weldingRules = {
  /** K; plain high-carbon stacks, nickel partner the same. */
  heat: [1423.15, 1533.15] as Span,
  /** K; wrought iron and mild steel stand more. */
  mildHeat: [1423.15, 1623.15] as Span,
  /** K under the solidus to stay (from memory, medium confidence). */
  underSolidus: 100,
  /** Soak per thickness of the thinnest path once the colour is even, s/m: 5 min per 25 mm. */
  soakPerThickness: 300 / 0.025,
  /** s, first weld of a stack. */
  firstSoak: [600, 1200] as Span,
  /** Reduction in height of the first weld, then in all before the bar may stand on edge. */
  firstReduction: [0.05, 0.15] as Span,
  beforeEdge: [0.2, 0.3] as Span,
  /** Reduction in all before a weld is trusted: about half the thickness, at welding heat. */
  trusted: 0.5,
  /** Pa held for minutes instead of a squeeze (from memory, medium confidence). */
  heldPressure: [2e6, 10e6] as Span,
} as const

/** Solidus of plain carbon steel, K: a line through 1495 °C at 0.17 % and 1147 °C at 2.11 % (from memory, medium confidence). */
export function solidus(carbon: number): number {
  const c = Math.min(2.11, Math.max(0.17, carbon))
  return 1768.15 - ((1495 - 1147) / (2.11 - 0.17)) * (c - 0.17)
}

export interface WeldPlan {
  readonly steels: readonly Composition[]
  /** K at the joints when the first blow falls. */
  readonly temperature: number
  /** Thinnest way through the stack, m. */
  readonly thinnest: number
  /** s from the fire until the colour is even; from a heating model when there is one. */
  readonly evenAfter?: number
  /** s held once even, as planned. */
  readonly soak?: number
  readonly first: boolean
  /** Share of the height this heat takes off, as planned. */
  readonly reduction?: number
  /** Closing speed over height, 1/s; 1 for a press. */
  readonly rate?: number
}

export interface WeldAdvice {
  /** Pressure that makes the weld in one squeeze, Pa: the stiffest layer must flow. */
  readonly squeeze: Estimate
  /** Pressure held for minutes that does it by diffusion, Pa. */
  readonly held: Span
  /** Share of the height to take off in this heat. */
  readonly reduction: Span
  /** Least time in the fire, s: until even, then the soak. */
  readonly leastTime: number
  readonly soak: Span
  /** Least and greatest sensible heat for these steels, K. */
  readonly heat: Span
  /** Share of the joint that is metal never in the air before: one less height over height before. */
  readonly freshMetal: number
  readonly cautions: readonly Problem[]
}

const practice: Basis = {
  law: 'shop rules of forge welding',
  sources: ['practice'],
  standing: 'common practice',
}

function heatRange(steels: readonly Composition[]): Span {
  const mild = steels.every((s) => percent(s, 'C') <= 0.2)
  const [low, high] = mild ? weldingRules.mildHeat : weldingRules.heat
  const melts = Math.min(...steels.map((s) => solidus(percent(s, 'C'))))
  return [low, Math.max(low, Math.min(high, melts - weldingRules.underSolidus))]
}

function minutes(seconds: number): string {
  return `${Math.round(seconds / 60)} min`
}

/** Pressure, reduction, soak and heat for a sound weld, and what in the plan falls short. */
export function adviseWeld(plan: WeldPlan): WeldAdvice {
  const steels = plan.steels.length > 0 ? plan.steels : [{ C: 0.8 }]
  const state = { temperature: plan.temperature, strain: 0.1, rate: plan.rate ?? 1 }
  const stiffest = steels.map((s) => flowStress(s, state)).toSorted((a, b) => b.value - a.value)[0]!
  const heat = heatRange(steels)
  const base = weldingRules.soakPerThickness * plan.thinnest
  const soak: Span = plan.first
    ? [Math.max(base, weldingRules.firstSoak[0]), Math.max(base, weldingRules.firstSoak[1])]
    : [base, 2 * base]
  const reduction: Span = plan.first ? weldingRules.firstReduction : weldingRules.beforeEdge
  const cautions: Problem[] = []
  if (plan.temperature < heat[0])
    cautions.push({
      at: 'temperature',
      what: `${showTemperature(plan.temperature)} is cold for a weld.`,
      why: `Smiths weld such stacks at ${showTemperature(heat[0])} to ${showTemperature(heat[1])} (common practice).`,
      try: [
        `Bring it to ${showTemperature(heat[0])}, even to the core.`,
        'Or weld it dry in a sealed can, with more pressure.',
      ],
    })
  if (plan.temperature > heat[1])
    cautions.push({
      at: 'temperature',
      what: `${showTemperature(plan.temperature)} may burn the highest-carbon layer.`,
      why: `Its solidus is near ${Math.round(celsius(Math.min(...steels.map((s) => solidus(percent(s, 'C'))))))} °C (from memory); stay ${weldingRules.underSolidus} K under it.`,
      try: [`Hold it to ${showTemperature(heat[1])}.`],
    })
  if (plan.soak !== undefined && plan.soak < soak[0])
    cautions.push({
      at: 'soak',
      what: `${minutes(plan.soak)} of soak may leave the core cold.`,
      why: `Five minutes for each 25 mm once the colour is even, ten at least on a first weld: ${minutes(soak[0])} (common practice).`,
      try: [`Soak ${minutes(soak[0])} after the colour is even.`],
    })
  if (plan.reduction !== undefined && plan.reduction < reduction[0])
    cautions.push({
      at: 'reduction',
      what: `Taking off ${Math.round(100 * plan.reduction)} % may not close every joint.`,
      why: `The joints need ${Math.round(100 * reduction[0])} % at least: waves in the sheets take the first 1 to 3 % (common practice).`,
      try: [`Take off ${Math.round(100 * reduction[0])} to ${Math.round(100 * reduction[1])} %.`],
    })
  if (plan.first && plan.reduction !== undefined && plan.reduction > reduction[1])
    cautions.push({
      at: 'reduction',
      what: `Taking off ${Math.round(100 * plan.reduction)} % in the first weld may shear the joints.`,
      why: `A joint not yet made slides: first welds take ${Math.round(100 * reduction[1])} % at most (common practice).`,
      try: ['Set the weld lightly, reheat, then reduce.'],
    })
  return {
    squeeze: { ...stiffest, basis: [...stiffest.basis, practice] },
    held: weldingRules.heldPressure,
    reduction,
    leastTime: (plan.evenAfter ?? 0) + soak[0],
    soak,
    heat,
    freshMetal: Math.min(1, Math.max(0, plan.reduction ?? reduction[0])),
    cautions,
  }
}

/** Steps that pull on the joints, and how much reduction since the weld they ask for. */
export const testsOfWeld = {
  'on edge': {
    least: weldingRules.beforeEdge[0],
    safe: weldingRules.beforeEdge[1],
    why: 'forging on edge presses along the joints and slides the layers',
  },
  twist: {
    least: weldingRules.beforeEdge[1],
    safe: weldingRules.trusted,
    why: 'a twist shears every joint, most at the corners',
  },
  split: {
    least: weldingRules.beforeEdge[1],
    safe: weldingRules.trusted,
    why: 'a wedge pulls the joints open across',
  },
  bend: {
    least: weldingRules.beforeEdge[1],
    safe: weldingRules.trusted,
    why: 'the joints take the shear of the bend',
  },
  upset: {
    least: weldingRules.beforeEdge[1],
    safe: weldingRules.trusted,
    why: 'upsetting along the layers buckles them apart',
  },
  drift: {
    least: weldingRules.beforeEdge[1],
    safe: weldingRules.trusted,
    why: 'a drift bursts joints round the hole',
  },
} as const

export type WeldTest = keyof typeof testsOfWeld

/**
 * The warning before a step that tests a weak weld, from the share of height taken off at welding
 * heat since the joints were laid; none when the weld can be trusted.
 */
export function weldBefore(step: WeldTest, reductionSinceWeld: number): Problem[] {
  const { least, safe, why } = testsOfWeld[step]
  if (reductionSinceWeld >= safe) return []
  const weak = reductionSinceWeld < least
  return [
    {
      at: step,
      what: weak
        ? 'The weld is not yet made fit for this step.'
        : 'The weld is still young for this step.',
      why: `${Math.round(100 * reductionSinceWeld)} % has been taken off since the weld; ${why}. Smiths want ${Math.round(100 * least)} to ${Math.round(100 * safe)} % first (common practice).`,
      try: [
        `Reduce flat at welding heat to ${Math.round(100 * (1 - safe))} % of the stack's height first.`,
        'Take another welding heat and look for a dark line as it cools.',
      ],
    },
  ]
}
