import type { Composition } from '#steel'
import type { QuenchMedium } from '#metallurgy'
import { type Hardening, hardenSteel } from './hardening.ts'
import type { Ranged } from '../layers/layer-records.ts'
import type { SteelRecord } from '../layers/steel-records.ts'

export interface QuenchAdvice {
  /** As the job says it. */
  readonly medium: string
  /** m */
  readonly size: number
  /** Each steel that can harden, and how it does in this medium at this thickness. */
  readonly each: readonly {
    readonly steel: string
    readonly hardens: 'through' | 'doubtful' | 'skin only'
    /** m: the thickness it should harden to at its middle in this medium. */
    readonly limit: Ranged
    /** Share of martensite to be expected at the middle here. */
    readonly martensite: number
  }[]
  /** Media that harden every one of them through, mildest first, in the job's words. */
  readonly wouldDo: readonly string[]
  readonly sentence: string
}

/** Media in the job's words, mildest first; still oils and water are not among the job's choices. */
const words: Readonly<Partial<Record<QuenchMedium, string>>> = {
  air: 'air',
  'oil, moved': 'medium oil',
  'oil, fast': 'fast oil',
  'water, moved': 'water',
  brine: 'brine',
}

/** Does each steel harden through here, and what is the mildest quench that would do it? */
export function adviseQuench(
  steels: readonly SteelRecord[],
  hardening: Hardening,
  compositionOf: (steel: string) => Composition,
): QuenchAdvice | undefined {
  const able = steels.filter((s) => s.hardens !== undefined)
  if (able.length === 0) return undefined
  const treated = able.map((s) => ({
    steel: s.steel,
    hardens: s.hardens!,
    at: hardenSteel({ steel: s.steel, carbon: s.carbon.value }, hardening, compositionOf),
  }))
  // Of bars with more and with less carbon in one steel the one that hardens worse is told.
  const worseLast = treated.toSorted(
    (a, b) => b.at.hardening.martensite.value - a.at.hardening.martensite.value,
  )
  const each = [
    ...new Map(
      worseLast.map(({ steel, hardens, at }) => {
        const { criticalSize, martensite } = at.hardening
        const limit = { value: criticalSize.value, range: criticalSize.range }
        return [steel, { steel, hardens, limit, martensite: martensite.value }]
      }),
    ).values(),
  ]
  const wouldDo = (Object.keys(words) as QuenchMedium[])
    .filter((m) => treated.every(({ at }) => at.hardenIn.includes(m)))
    .map((m) => words[m]!)
  const { medium, size } = hardening
  return { medium, size, each, wouldDo, sentence: sentenceOf(each, wouldDo, hardening) }
}

/** Martensite at the middle from which a steel is said to harden through (common practice). */
const NEARLY_ALL = 0.9

function sentenceOf(
  each: QuenchAdvice['each'],
  wouldDo: readonly string[],
  { medium, size }: Hardening,
): string {
  const mm = (m: number) => (m * 1000).toFixed(m < 0.00995 ? 1 : 0)
  const limit = ({ limit: { value, range } }: QuenchAdvice['each'][number]) =>
    `its limit lies near ${mm(value)} mm, ${mm(range[0])} to ${mm(range[1])} mm`
  const parts = each.map((e) => {
    if (e.hardens === 'through') return `${e.steel} hardens through`
    if (e.hardens === 'skin only') return `${e.steel} hardens near its faces only (${limit(e)})`
    return e.martensite >= NEARLY_ALL
      ? `${e.steel} should harden through (${limit(e)})`
      : `${e.steel} may fall short at the middle (${limit(e)})`
  })
  const head =
    medium === 'plates'
      ? `In plates (plates are reckoned as still air), ${mm(size)} mm thick: ${parts.join('; ')}.`
      : `In ${medium}, ${mm(size)} mm thick: ${parts.join('; ')}.`
  const [mildest] = wouldDo
  const short = each.some((e) => e.hardens !== 'through' && e.martensite < NEARLY_ALL)
  if (!short)
    return mildest !== undefined && order(mildest) < order(medium)
      ? [head, `${capital(mildest)} is the mildest that would do.`].join(' ')
      : head
  if (mildest === undefined)
    return [
      head,
      'No quench hardens all of it through: edges and faces are hard, the middle stays softer.',
    ].join(' ')
  const risk = ['water', 'brine'].includes(mildest) ? ', at the risk of cracks' : ''
  return [
    head,
    `${capital(mildest)} would harden all of it${risk}; thin edges harden either way.`,
  ].join(' ')
}

function order(medium: string): number {
  return ['air', 'plates', 'medium oil', 'fast oil', 'water', 'brine'].indexOf(medium)
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
