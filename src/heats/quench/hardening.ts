import type { Problem } from '#problem'
import { type Composition, percent } from '#steel'
import { type QuenchMedium, type TreatedSteel, shareWindow, treatSteel } from '#metallurgy'
import type { DoneStep } from '#planner'
import { ironBased } from '../heat-records.ts'

/** How the piece was hardened: the last time it was. */
export interface Hardening {
  readonly at: string
  readonly bar: string
  /** K, s. */
  readonly temperature: number
  readonly soak: number
  /** As the job says it, and as the model takes it. */
  readonly medium: string
  readonly quench: QuenchMedium
  readonly shape: 'round' | 'plate'
  /** m: the thickest place. */
  readonly size: number
  readonly tempers: readonly { readonly temperature: number; readonly seconds: number }[]
}

/** Media of the job as the severities are tabled. Plates are reckoned as still air: none is tabled. */
const media: Readonly<Record<string, QuenchMedium>> = {
  'fast oil': 'oil, fast',
  'medium oil': 'oil, moved',
  water: 'water, moved',
  brine: 'brine',
  plates: 'air',
  air: 'air',
}

/** The last hardening of the piece and the tempers after it; undefined where it is not hardened. */
export function findHardening(steps: readonly DoneStep[]): Hardening | undefined {
  const finish = steps.at(-1)?.bar
  const own = steps.filter((s) => s.bar === finish)
  const i = own.findLastIndex((s) => s.step.heats.some((h) => h.purpose === 'harden'))
  const done = own[i]
  const heat = done?.step.heats.find((h) => h.purpose === 'harden')
  if (!done || !heat) return undefined
  const bar = done.before[0] ?? done.step.after
  const tempers = own
    .slice(i + 1)
    .flatMap(({ step }) =>
      step.heats
        .filter((h) => h.purpose === 'temper')
        .flatMap((h) =>
          Array.from({ length: h.count }, () => ({ temperature: h.temperature, seconds: h.soak })),
        ),
    )
  return {
    at: done.at,
    bar: done.bar,
    temperature: heat.temperature,
    soak: heat.soak,
    medium: heat.medium,
    quench: media[heat.medium] ?? 'oil, moved',
    shape: bar.shape === 'round' || bar.shape === 'octagon' ? 'round' : 'plate',
    size: Math.min(bar.size.width, bar.size.height),
    tempers,
  }
}

/** Below this no layer hardens for an edge, whatever is done (wt%; common practice). */
export const TOO_LEAN = 0.35
/** Chromium over this is outside the rules for the window: such steels go by their maker's sheet (wt%). */
const CHROMIUM = 2.5

/** Whether the rules for iron, carbon and a little alloy say how this steel hardens. */
export function hardensByRule(composition: Composition, carbon: number): boolean {
  return ironBased(composition) && carbon >= TOO_LEAN && percent(composition, 'Cr') <= CHROMIUM
}

/** wt%: the steels of the laws for Ac3 held less; carried on, 0.2 % of it would ask for 140 K more. */
const PHOSPHORUS = 0.05

/** A steel as the laws of transformation know it: phosphorus of wrought iron is left at their limit. */
function asDescribed(composition: Composition): Composition {
  const phosphorus = percent(composition, 'P')
  return phosphorus > PHOSPHORUS ? { ...composition, P: PHOSPHORUS } : composition
}

/** One steel of the piece on its way through hardening. */
export interface HardenedSteel {
  readonly steel: string
  readonly bar: string
  readonly carbon: number
}

export interface Window {
  readonly low: number
  readonly high: number
  readonly advised: number
  readonly suitsAll: boolean
  /** The heat the job states, K, and how it lies. */
  readonly stated?: number
  readonly verdict?: 'inside' | 'too cold' | 'too hot'
  readonly each: readonly (HardenedSteel & { readonly low: number; readonly high: number })[]
  readonly notes: readonly string[]
}

/** The austenitising window that suits every steel that can harden, and where the stated heat lies. */
export function windowOf(
  steels: readonly HardenedSteel[],
  compositionOf: (steel: string) => Composition,
  stated?: number,
): Window | undefined {
  const able = steels.filter((s) => hardensByRule(compositionOf(s.steel), s.carbon))
  if (able.length === 0) return undefined
  const shared = shareWindow(
    able.map((s) => ({ ...asDescribed(compositionOf(s.steel)), C: s.carbon })),
  )
  const verdict =
    stated === undefined
      ? undefined
      : stated < shared.low - 0.5
        ? 'too cold'
        : stated > shared.high + 0.5
          ? 'too hot'
          : 'inside'
  return {
    low: shared.low,
    high: shared.high,
    advised: shared.advised,
    suitsAll: shared.suitsAll,
    ...(stated !== undefined && { stated, verdict }),
    each: able.map((s, i) => ({ ...s, low: shared.each[i]!.low, high: shared.each[i]!.high })),
    notes: shared.notes,
  }
}

const celsius = (kelvin: number) => `${Math.round(kelvin - 273.15)} °C`

/** What to say of a hardening heat that does not suit the steels. */
export function windowProblems(window: Window | undefined, at: string): Problem[] {
  if (!window?.verdict) return []
  const names = (test: (w: Window['each'][number]) => boolean) =>
    [...new Set(window.each.filter(test).map((w) => w.steel))].join(' and ')
  const place = `${at}.temperature`
  const stated = window.stated!
  const problems: Problem[] = []
  if (!window.suitsAll) {
    const hungry = window.each.reduce((a, b) => (b.low > a.low ? b : a))
    const tender = window.each.reduce((a, b) => (b.high < a.high ? b : a))
    problems.push({
      at: place,
      what: 'no one heat suits every steel of this piece',
      why: `${hungry.steel} wants at least ${celsius(hungry.low)}, ${tender.steel} at most ${celsius(tender.high)} (common practice over Ac1 and Ac3)`,
      try: [
        `harden at ${celsius(window.advised)} with a short soak`,
        'choose steels whose hardening heats lie closer',
      ],
    })
  }
  if (window.verdict === 'too cold' && window.each.some((w) => w.low > stated + 0.5))
    problems.push({
      at: place,
      what: `${celsius(stated)} is under the hardening window of ${names((w) => w.low > stated + 0.5)}`,
      why: `at the carbon they have by then the steels share ${celsius(window.low)} to ${celsius(Math.max(window.high, window.low))}: colder, it comes out with soft patches (common practice over Ac1 and Ac3)`,
      try: [`harden at ${celsius(window.advised)}`, 'soak longer, and try it with a file'],
    })
  if (window.verdict === 'too hot' && window.suitsAll)
    problems.push({
      at: place,
      what: `${celsius(stated)} is over the hardening window of ${names((w) => w.high < stated - 0.5)}`,
      why: `the steels share ${celsius(window.low)} to ${celsius(window.high)}: hotter, grain grows and austenite is kept (common practice over Ac1 and Ac3)`,
      try: [
        `harden at ${celsius(window.advised)}`,
        'keep the soak short and the grain fine before',
      ],
    })
  return problems
}

/** Edges, and the metal near the faces, cool as a section of this thickness does, m (common practice). */
export const THIN = 0.001

/** One steel through quench and temper, at the carbon it has and at a thickness, m. */
export function hardenSteel(
  { steel, carbon }: Pick<HardenedSteel, 'steel' | 'carbon'>,
  hardening: Hardening,
  compositionOf: (steel: string) => Composition,
  size = hardening.size,
): TreatedSteel {
  return treatSteel({
    composition: asDescribed(compositionOf(steel)),
    carbon,
    shape: hardening.shape,
    size,
    medium: hardening.quench,
    heat: hardening.temperature,
    tempers: hardening.tempers,
  })
}
