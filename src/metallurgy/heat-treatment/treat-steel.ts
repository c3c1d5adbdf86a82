import type { Problem } from '#problem'
import { type Composition, percent } from '#steel'
import { type Estimate, hold } from '../estimate.ts'
import { type Hardening, hardenThrough } from '../hardenability/harden-through.ts'
import { type QuenchMedium, quenches } from '../hardenability/quench-severity.ts'
import type { SectionShape } from '../hardenability/section.ts'
import { asQuenchedHardness } from '../hardness/as-quenched.ts'
import { type Temper, type TemperedHardness, temperedHardness } from '../hardness/temper.ts'
import { ac1, eutectoid, martensiteStart } from '../transformation/critical-points.ts'
import { type HardeningWindow, hardeningWindow } from '../transformation/hardening-window.ts'
import { retainedAustenite } from '../transformation/martensite.ts'

/** One steel of a billet on its way through hardening. */
export interface HardeningOrder {
  /** As bought; its carbon is overruled by `carbon`. */
  readonly composition: Composition
  /** wt% now, after all heats; left out, as bought. */
  readonly carbon?: number
  readonly shape: SectionShape
  /** Thickness or diameter of the piece, m. */
  readonly size: number
  readonly medium: QuenchMedium
  /** Hardening heat, K; left out, the middle of the steel's own window. */
  readonly heat?: number
  readonly tempers: readonly Temper[]
  /** K the quench ends at. Default 20 °C. */
  readonly quenchedTo?: number
}

export interface TreatedSteel {
  readonly carbon: number
  /** wt% in the austenite at hardening heat; the rest stays as carbide. */
  readonly dissolved: number
  readonly window: HardeningWindow
  readonly ac1: Estimate
  readonly ms: Estimate
  readonly retained: Estimate
  readonly hardening: Hardening
  readonly asQuenched: Estimate
  readonly tempered: TemperedHardness
  /** Media that harden this steel through at this size, mildest first. */
  readonly hardenIn: readonly QuenchMedium[]
  readonly cautions: readonly string[]
  readonly outOfRange: readonly Problem[]
}

/** wt% carbon that austenite of Fe-C holds at a heat: Acm turned round (OC-TDB, computed). */
export function carbonHeld(temperature: number): number {
  const celsius = temperature - 273.15
  const inside = 491.44 ** 2 - 4 * 60.72 * (celsius - 388.3)
  return Math.max(eutectoid.carbon, (491.44 - Math.sqrt(Math.max(inside, 0))) / (2 * 60.72))
}

/** What one steel is after quench and temper, and what to watch. */
export function treatSteel(order: HardeningOrder): TreatedSteel {
  const carbon = hold(order.carbon ?? percent(order.composition, 'C'), [0, 2.2])
  const composition = { ...order.composition, C: carbon }
  const window = hardeningWindow(composition)
  const heat =
    order.heat !== undefined && Number.isFinite(order.heat)
      ? order.heat
      : (window.low + window.high) / 2
  const start = ac1(composition)
  const dissolved = Math.min(carbon, carbonHeld(heat))
  const austenite = { ...composition, C: dissolved }
  const ms = martensiteStart(austenite)
  const retained = retainedAustenite(austenite, order.quenchedTo ?? 293.15)
  const hardening = hardenThrough(composition, order.size, order.shape, order.medium)
  const cold = heat < start.value
  const m = cold ? { value: 0, range: [0, 0] as const } : hardening.martensite
  const asQuenched = quenchedHardness(dissolved, m.value, m.range)
  const tempered = temperedHardness(composition, order.tempers, asQuenched.value)
  const spread = (asQuenched.range[1] - asQuenched.range[0]) / 4
  const cautions: string[] = []
  if (cold) cautions.push('Below Ac1: this steel does not harden at that heat.')
  else if (heat < window.low) cautions.push('Under its hardening window: expect soft patches.')
  if (heat > window.high)
    cautions.push('Over its hardening window: grain grows and austenite is kept.')
  if (hardening.verdict === 'skin only')
    cautions.push(`Does not harden through in ${order.medium} at this size.`)
  if (hardening.verdict === 'doubtful')
    cautions.push(`May not harden through in ${order.medium} at this size.`)
  if (carbon < 0.35) cautions.push('Too little carbon to harden for an edge.')
  if (retained.value > 0.18)
    cautions.push('Much austenite is kept: temper twice, or cool below freezing first.')
  if (carbon > 0.5 && quenches[order.medium]?.severity > 35)
    cautions.push('Water may crack this steel, most of all at grooves and stamps.')
  if (carbon > 0.5 && order.tempers.length === 0)
    cautions.push('Not tempered: glass hard and liable to crack.')
  const hardenIn = (Object.keys(quenches) as QuenchMedium[]).filter(
    (q) => hardenThrough(composition, order.size, order.shape, q).martensite.value >= 0.9,
  )
  return {
    carbon,
    dissolved,
    window,
    ac1: start,
    ms,
    retained,
    hardening,
    asQuenched,
    tempered: {
      ...tempered,
      range: [
        Math.max(0, tempered.range[0] - spread),
        Math.min(tempered.range[1] + spread, asQuenched.range[1]),
      ],
    },
    hardenIn,
    cautions,
    outOfRange: [
      ...ms.outOfRange,
      ...hardening.idealDiameter.outOfRange,
      ...asQuenched.outOfRange,
      ...tempered.outOfRange,
    ],
  }
}

/** As-quenched hardness with the range of martensite taken into its own. */
function quenchedHardness(
  carbon: number,
  share: number,
  range: readonly [number, number],
): Estimate {
  const e = asQuenchedHardness(carbon, share)
  const ends = range.map((r) => asQuenchedHardness(carbon, r))
  return {
    ...e,
    range: [
      Math.min(e.range[0], ...ends.map((x) => x.range[0])),
      Math.max(e.range[1], ...ends.map((x) => x.range[1])),
    ],
  }
}
