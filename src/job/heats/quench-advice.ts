import type { Composition } from '#steel'
import type { QuenchMedium } from '#metallurgy'
import { type Hardening, hardenSteel } from './hardening.ts'
import type { SteelRecord } from './treat-job.ts'

export interface QuenchAdvice {
  /** As the job says it. */
  readonly medium: string
  /** m */
  readonly size: number
  /** Each steel that can harden, and how it does in this medium at this thickness. */
  readonly each: readonly {
    readonly steel: string
    readonly hardens: 'through' | 'doubtful' | 'skin only'
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
  const each = [
    ...new Map(able.map((s) => [s.steel, { steel: s.steel, hardens: s.hardens! }])).values(),
  ]
  const media = able.map(
    (s) =>
      hardenSteel({ steel: s.steel, carbon: s.carbon.value }, hardening, compositionOf).hardenIn,
  )
  const wouldDo = (Object.keys(words) as QuenchMedium[])
    .filter((m) => media.every((list) => list.includes(m)))
    .map((m) => words[m]!)
  const { medium, size } = hardening
  return { medium, size, each, wouldDo, sentence: sentenceOf(each, wouldDo, hardening) }
}

function sentenceOf(
  each: QuenchAdvice['each'],
  wouldDo: readonly string[],
  { medium, size }: Hardening,
): string {
  const thick = `${(size * 1000).toFixed(1)} mm`
  const by = (verdict: string) => each.filter((e) => e.hardens === verdict).map((e) => e.steel)
  const list = (names: readonly string[]) => names.join(' and ')
  const parts: string[] = []
  const [through, doubtful, skin] = ['through', 'doubtful', 'skin only'].map(by) as [
    string[],
    string[],
    string[],
  ]
  if (through.length > 0)
    parts.push(`${list(through)} harden${through.length === 1 ? 's' : ''} through`)
  if (doubtful.length > 0) parts.push(`${list(doubtful)} may fall short at the middle`)
  if (skin.length > 0)
    parts.push(`${list(skin)} harden${skin.length === 1 ? 's' : ''} at the skin only`)
  const reckoned = medium === 'plates' ? ' (plates are reckoned as still air)' : ''
  const head = `In ${medium}${reckoned}, ${thick} thick: ${parts.join('; ')}.`
  const [mildest] = wouldDo
  if (doubtful.length + skin.length === 0)
    return mildest !== undefined && mildest !== medium && order(mildest) < order(medium)
      ? `${head} ${capital(mildest)} is the mildest that would do.`
      : head
  if (mildest === undefined)
    return `${head} No quench here hardens all of it through: the middle stays softer.`
  const risk = ['water', 'brine'].includes(mildest) ? ', at the risk of cracks' : ''
  return mildest === medium
    ? `${head} Thin edges harden; move it well.`
    : `${head} ${capital(mildest)} would harden all of it${risk}; thin edges harden either way.`
}

function order(medium: string): number {
  return ['air', 'plates', 'medium oil', 'fast oil', 'water', 'brine'].indexOf(medium)
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
