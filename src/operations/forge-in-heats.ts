import { type Problem, type Result, failed, ok } from '#problem'
import { printQuantity } from '#units'
import { type Billet, type Section, UNWEIGHED } from '#billet'
import { type Levelled, closedInPart } from '#movement'
import { type Taken, burn, shapeTo, sumLosses } from './fire.ts'
import type { Heat, HeatPurpose, Loss, Smithy, Step } from './operation.ts'
import { step } from './operation.ts'
import { meanHeight } from './mean-height.ts'
import { widthAt } from './spread.ts'

export { meanHeight }

/** What a run of heats is to bring the bar to. */
export interface ForgingAim {
  /** Left out, the bar spreads as the dies make it. */
  readonly width?: number
  readonly height: number
  readonly section?: Section
  readonly purpose: HeatPurpose
  /** Heats to take; left out, as many as the reduction needs. */
  readonly heats?: number
  readonly temperature: number
  /** Steel burnt off each face in each heat, m. */
  readonly scale: number
  readonly soak?: number
  /** How far on the way to it; left out, all of it. All heats are taken, each bringing the bar less far. */
  readonly share?: number
}

/**
 * Area ratio a bar is usually drawn by in one heat: by hand about 1.25, under a power hammer or a
 * press about 1.6 (common practice, no source; the bench of force and cooling replaces it where known).
 */
export function heatsFor(ratio: number, smithy: Smithy): number {
  const byMachine = smithy.shop.hammer === 'power' || smithy.shop.pressForce !== undefined
  return Math.max(
    1,
    Math.ceil(Math.log(Math.max(ratio, 1)) / Math.log(byMachine ? 1.6 : 1.25) - 1e-9),
  )
}

/** The greater of the reductions in height and in section: a flat bar squared up loses more section than height. */
function mostReduced(before: Billet, { height, width }: ForgingAim): number {
  const high = meanHeight(before) / height
  const area = width === undefined ? 1 : (high * before.size.width) / width
  return Math.max(high, 1 / high, area)
}

/** The bar in one heat: burnt as it comes out of the fire, and as it is forged then. */
export interface ForgedHeat {
  readonly burnt: Billet
  readonly scale: Loss
  readonly lost: number
  readonly bar: Billet
}

/** Forges a bar to a section over some heats: each heat burns a skin, then the bar is worked on. */
export function heatsOfForging(
  before: Billet,
  aim: ForgingAim,
  smithy: Smithy,
): Result<readonly ForgedHeat[]> {
  const n = aim.heats ?? heatsFor(mostReduced(before, aim), smithy)
  const heats: ForgedHeat[] = []
  const end = onTheWay(before, aim)
  let bar = before
  for (let i = 1; i <= n; i++) {
    const taken = burn(bar, aim.scale, smithy.densities)
    if (!taken) return failed(burntAway(aim.scale))
    const burnt = taken.after
    const left = n - i + 1
    const toward = (now: number, end: number) =>
      left === 1 ? end : now * (end / now) ** (1 / left)
    const thick = meanHeight(burnt)
    const height = toward(thick, end.height)
    const width =
      end.width !== undefined
        ? toward(burnt.size.width, end.width)
        : widthAt(burnt, thick, height, smithy.shop)
    bar = shapeTo(burnt, { width, height, section: left === 1 ? aim.section : undefined })
    heats.push({ burnt, scale: taken.loss, lost: taken.lost, bar })
  }
  return ok(heats)
}

/** What is aimed at with a share of it done: hot metal is drawn by like ratios in like times. */
function onTheWay(before: Billet, { height, width, share = 1 }: ForgingAim) {
  const between = (from: number, to: number) => (share === 1 ? to : from * (to / from) ** share)
  return {
    height: between(meanHeight(before), height),
    width: width === undefined ? undefined : between(before.size.width, width),
  }
}

/** A grooved bar before it is flat again: what all heats so far have burnt, and its grooves partly closed. */
export interface Closing {
  readonly taken: Taken
  readonly heats: number
  readonly scale: number
  readonly closed: Levelled
}

/** Undefined where the bar is forged all the way, or has no grooves. */
export function closingOf(before: Billet, aim: ForgingAim, smithy: Smithy): Closing | undefined {
  const { share = 1, height } = aim
  if (share === 1 || before.hollow?.form !== 'grooved') return undefined
  const whole = { ...aim, share: 1 }
  const { ok: all } = heatsOfForging(before, whole, { ...smithy, densities: UNWEIGHED })
  const last = all?.at(-1)
  if (!all || !last) return undefined
  const scale = aim.scale * all.length
  const taken = burn(before, scale, smithy.densities)
  if (!taken) return undefined
  const wide = (last.bar.size.width / taken.after.size.width) ** share
  const closed = closedInPart(taken.after, { height, wide, share })
  return closed && { taken, heats: all.length, scale, closed }
}

function barOf({ taken: { after }, closed: { size } }: Closing): Billet {
  const level = after.volume / (size.length * size.width)
  const bar = shapeTo(after, { width: size.width, height: level, section: 'rectangle' })
  return { ...bar, size, shape: 'cut', volume: after.volume }
}

/** The same as a step, with its losses, heats and warnings. */
export function forgeInHeats(before: Billet, aim: ForgingAim, smithy: Smithy): Result<Step> {
  const closing = closingOf(before, aim, smithy)
  const done = closing ? ok([]) : heatsOfForging(before, aim, smithy)
  if (done.problems) return done
  const all: readonly ForgedHeat[] = done.ok
  const n = closing?.heats ?? all.length
  const losses = closing ? [closing.taken.loss] : all.map((heat) => heat.scale)
  const lost = closing?.taken.lost ?? all.reduce((sum, heat) => sum + heat.lost, 0)
  const bar = closing ? barOf(closing) : (all.at(-1)?.bar ?? before)
  const warnings: Problem[] = []
  if (lost > 0) warnings.push(layersLost(lost, 'scale'))
  const heat: Heat = {
    purpose: aim.purpose,
    count: n,
    temperature: aim.temperature,
    stop: aim.purpose === 'weld' ? undefined : smithy.shop.stopHeat,
    soak: aim.soak ?? 0,
    medium: 'air',
  }
  // A width that neither the step nor the bar has settled goes on to be what gives.
  const spare = aim.width === undefined && before.spare === 'y' ? 'y' : bar.spare
  const after: Billet = { ...bar, temper: 'as forged', spare }
  return ok(step(after, { losses: sumLosses(losses), heats: [heat], warnings }))
}

export function layersLost(lost: number, cause: 'scale' | 'grinding'): Problem {
  return {
    at: '',
    what:
      lost === 1
        ? `1 outer layer is lost to ${cause}`
        : `${lost} outer layers are lost to ${cause}`,
    why: 'the outer layer is thinner than what comes off',
    try: ['lay a thicker outside sheet', 'take less off', 'count on the fewer layers'],
  }
}

function burntAway(scale: number): Problem {
  return {
    at: '',
    what: 'nothing of the bar would be left',
    why: `each heat burns ${printQuantity(scale, 'length')} off every face`,
    try: ['take fewer heats', 'start from a thicker bar'],
  }
}
