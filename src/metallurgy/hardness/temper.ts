import { type Composition, type Element, percent } from '#steel'
import { type Estimate, hold, outOfRange } from '../estimate.ts'
import { fullMartensite, halfMartensite } from './as-quenched.ts'
import {
  type TemperingTable,
  equalTemper,
  hollomonConstant,
  readTable,
  temperingTables,
} from './tempering-table.ts'

export interface Temper {
  /** K */
  readonly temperature: number
  readonly seconds: number
}

export interface TemperedHardness extends Estimate {
  /** Which published table answered, or what the steel was treated as. */
  readonly table: string
  readonly published: boolean
}

// How far apart two steels may be and still share a table, wt%.
const alike: readonly (readonly [Element, number])[] = [
  ['C', 0.06],
  ['Mn', 0.35],
  ['Si', 0.35],
  ['Ni', 0.4],
  ['Cr', 0.25],
  ['Mo', 0.08],
  ['V', 0.12],
  ['W', 0.25],
]

const plain = temperingTables
  .filter((t) => t.steel.startsWith('plain carbon'))
  .toSorted((a, b) => a.composition.C! - b.composition.C!)

/** The published table whose steel this is, if there is one; the best-timed where several fit. */
export function findTable(composition: Composition): TemperingTable | undefined {
  let best: TemperingTable | undefined
  let nearest = Infinity
  for (const table of temperingTables) {
    let far = 0
    for (const [element, span] of alike)
      far = Math.max(
        far,
        Math.abs(percent(composition, element) - percent(table.composition, element)) / span,
      )
    // Of tables equally near, the one with more times.
    const score = far - 0.05 * table.seconds.length
    if (far <= 1 && score < nearest) {
      nearest = score
      best = table
    }
  }
  return best
}

// HRC added at 1 h by a whole addition, against plain carbon of the same source (RAIIPA, computed):
// .93 Cr (5140 over 1040) and 1.1 Mn more (1335 over 1035).
const steps = [204.4, 260, 315.6, 371.1, 426.7, 482.2, 537.8, 593.3, 648.9]
const chromium = [1, 0.4, 1.1, 4.2, 5.1, 5.7, 6.2, 7.1, 8.4]
const manganese = [0.7, 0.6, 1.9, 3.3, 3.4, 3.7, 5.3, 5.7, 6.5]

function along(values: readonly number[], celsius: number): number {
  if (celsius <= steps[0]!) return (values[0]! * Math.max(celsius - 20, 0)) / (steps[0]! - 20)
  for (let i = 1; i < steps.length; i++) {
    if (celsius <= steps[i]!)
      return (
        values[i - 1]! +
        ((values[i]! - values[i - 1]!) * (celsius - steps[i - 1]!)) / (steps[i]! - steps[i - 1]!)
      )
  }
  return values[8]!
}

/** HRC that alloy adds to plain carbon steel tempered an hour at this temperature (K). */
export function alloyIncrement(composition: Composition, temperature: number): number {
  const celsius = temperature - 273.15
  const w = (e: Element, most: number) => hold(percent(composition, e), [0, most])
  return (
    (w('Cr', 1.2) / 0.93) * along(chromium, celsius) +
    (Math.max(w('Mn', 2) - 0.7, 0) / 1.1) * along(manganese, celsius) +
    // nickel: .3 HRC for each per cent at most (RAIIPA, computed)
    0.15 * w('Ni', 4)
  )
}

/** Several tempers as one: each carried to the last one's temperature, times added. */
export function joinTempers(tempers: readonly Temper[], carbon: number): Temper | undefined {
  const sound = tempers.filter(
    (t) =>
      t.temperature > 273.15 && t.temperature < 1050 && t.seconds > 0 && Number.isFinite(t.seconds),
  )
  if (sound.length === 0) return undefined
  const hottest = sound.reduce((a, b) => (b.temperature > a.temperature ? b : a))
  const c = hollomonConstant(carbon)
  let seconds = 0
  for (const t of sound) {
    const logHours = (t.temperature * (c + Math.log10(t.seconds / 3600))) / hottest.temperature - c
    seconds += 3600 * 10 ** logHours
  }
  return { temperature: hottest.temperature, seconds }
}

/**
 * Hardness after tempering, HRC. A published table where the steel has one; else plain carbon
 * tables by carbon (Hollomon and Jaffe 1945) with the increments above, and it says so. Never
 * above what the quench gave.
 */
export function temperedHardness(
  composition: Composition,
  tempers: readonly Temper[],
  quenched: number = fullMartensite(percent(composition, 'C')),
): TemperedHardness {
  const carbon = hold(percent(composition, 'C'), [0, 2.2])
  const cap = hold(quenched, [0, 70])
  const temper = joinTempers(tempers, carbon)
  if (temper === undefined)
    return {
      value: cap,
      range: [Math.max(0, cap - 2), cap + 1],
      unit: 'HRC',
      source: 'A255-HB',
      standing: 'read secondary',
      notes: ['Not tempered.'],
      outOfRange: [],
      table: 'as quenched',
      published: true,
    }
  const found = findTable(composition)
  const { temperature, seconds } = temper
  const read =
    found === undefined
      ? fromPlain(composition, carbon, temper)
      : { ...readTable(found, temperature, seconds), name: nameOf(found) }
  const out = read.inside ? [] : [outOfRange('temper', temperature, [293, 973], 'K', read.name)]
  if (found === undefined && (carbon < 0.28 || carbon > 1.2))
    out.push(outOfRange('carbon', carbon, [0.28, 1.2], 'wt%', 'the tempering tables'))
  // A quench that fell short left pearlite, which a temper leaves alone: only the martensite softens.
  const full = fullMartensite(carbon)
  const short = Math.max(0, full - cap)
  const pearlite = Math.max(5, halfMartensite(carbon) - 15)
  const martensite = hold((cap - pearlite) / (full - pearlite), [0, 1])
  const softened = Math.max(0, full - read.hrc) * martensite
  const value = Math.max(0, short > 0 ? cap - softened : Math.min(read.hrc, cap))
  const scatter = (found?.scatter ?? 2) + (found === undefined ? 1 : 0) + 0.3 * short
  return {
    value,
    range: [Math.max(0, value - scatter), Math.min(cap + 1, value + scatter)],
    unit: 'HRC',
    source: found?.source ?? 'RAIIPA',
    standing: found?.standing ?? 'computed',
    notes: [
      found === undefined ? `No published table: treated as ${read.name}.` : `Table: ${read.name}.`,
      ...(found?.paper.startsWith('Penha')
        ? ['Single specimens: a rise with temperature is scatter.']
        : []),
    ],
    outOfRange: out,
    table: read.name,
    published: found !== undefined,
  }
}

function nameOf(table: TemperingTable): string {
  return `${table.steel} (${table.paper})`
}

function fromPlain(composition: Composition, carbon: number, temper: Temper) {
  const c = hold(carbon, [plain[0]!.composition.C!, plain[plain.length - 1]!.composition.C!])
  const i = Math.max(
    1,
    plain.findIndex((t) => t.composition.C! >= c - 1e-9),
  )
  const a = plain[i - 1]!
  const b = plain[i]!
  const f = (c - a.composition.C!) / (b.composition.C! - a.composition.C!)
  const low = readTable(a, temper.temperature, temper.seconds)
  const high = readTable(b, temper.temperature, temper.seconds)
  const hour = equalTemper(temper.temperature, temper.seconds, 3600, hollomonConstant(carbon))
  const added = alloyIncrement(composition, hour)
  const what = added > 0.05 ? ` and ${added.toFixed(1)} HRC for its alloy` : ''
  return {
    hrc: low.hrc + f * (high.hrc - low.hrc) + added,
    inside: low.inside && high.inside,
    name: `plain carbon steel of ${carbon.toFixed(2)} % C (Hollomon and Jaffe 1945)${what}`,
  }
}

/** Hardness of several steels over a row of tempering temperatures (K), one time: the billet's chart. */
export function temperChart(
  steels: readonly { readonly composition: Composition; readonly quenched?: number }[],
  temperatures: readonly number[],
  seconds = 7200,
): readonly { readonly temperature: number; readonly steels: readonly TemperedHardness[] }[] {
  return temperatures.map((temperature) => ({
    temperature,
    steels: steels.map((s) =>
      temperedHardness(s.composition, [{ temperature, seconds }], s.quenched),
    ),
  }))
}
