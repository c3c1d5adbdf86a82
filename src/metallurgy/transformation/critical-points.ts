import { type Composition, type Element, percent } from '#steel'
import type { SourceKey, Standing } from '#sources'
import { type Estimate, hold, rangeChecks } from '../estimate.ts'

const zero = 273.15
const sane = (c: Composition, e: Element) => hold(percent(c, e), [0, e === 'C' ? 2.2 : 30])

/** One published law for a temperature of transformation, linear or nearly so in wt%. */
export interface CriticalLaw {
  readonly name: string
  /** K */
  temperature(composition: Composition): number
  readonly source: SourceKey
  readonly standing: Standing
  /** wt% carbon it was made for. */
  readonly carbon: readonly [number, number]
  /** K either way. */
  readonly scatter: number
}

function law(
  name: string,
  source: SourceKey,
  standing: Standing,
  carbon: readonly [number, number],
  scatter: number,
  celsius: (w: (e: Element) => number) => number,
): CriticalLaw {
  return {
    name,
    source,
    standing,
    carbon,
    scatter,
    // far outside its range a straight line runs below absolute zero: held there
    temperature: (c) => Math.max(1, celsius((e) => sane(c, e)) + zero),
  }
}

export const ac1Laws = [
  law(
    'Andrews 1965',
    'GORNI',
    'read secondary',
    [0, 0.6],
    16,
    (w) =>
      723 -
      10.7 * w('Mn') -
      16.9 * w('Ni') +
      29.1 * w('Si') +
      16.9 * w('Cr') +
      6.38 * w('W') +
      290 * w('As'),
  ),
  law(
    'Grange 1961',
    'GORNI',
    'read secondary',
    [0, 1.2],
    20,
    (w) => (1333 - 25 * w('Mn') + 40 * w('Si') + 42 * w('Cr') - 26 * w('Ni') - 32) / 1.8,
  ),
] as const

export const ac3Laws = [
  // Signs of Cr, Cu, P, Al, As, Ti: the reading that is physically possible; two texts print others.
  law(
    'Andrews 1965',
    'GORNI',
    'read secondary',
    [0, 0.6],
    17,
    (w) =>
      910 -
      203 * Math.sqrt(w('C')) -
      15.2 * w('Ni') +
      44.7 * w('Si') +
      104 * w('V') +
      31.5 * w('Mo') +
      13.1 * w('W') -
      30 * w('Mn') -
      11 * w('Cr') -
      20 * w('Cu') +
      700 * w('P') +
      400 * w('Al') +
      120 * w('As') +
      400 * w('Ti'),
  ),
  law(
    'Grange 1961',
    'GORNI',
    'read secondary',
    [0, 0.8],
    25,
    (w) =>
      (1570 - 323 * w('C') - 25 * w('Mn') + 80 * w('Si') - 3 * w('Cr') - 32 * w('Ni') - 32) / 1.8,
  ),
] as const

/** Van Bohemen first, then Ingber: the two made for high carbon. The others up to 0.6 %. */
export const msLaws = [
  law(
    'van Bohemen 2012',
    'TD-PY',
    'read secondary',
    [0, 1.5],
    25,
    (w) =>
      565 -
      31 * w('Mn') -
      13 * w('Si') -
      10 * w('Cr') -
      18 * w('Ni') -
      12 * w('Mo') -
      600 * (1 - Math.exp(-0.96 * w('C'))),
  ),
  law(
    'Ingber and Kunert 2022',
    'MS-PY',
    'read secondary',
    [0, 2],
    25,
    (w) =>
      530.2 -
      290.3 * w('C') -
      35.5 * w('Mn') -
      6.8 * w('Si') -
      17.2 * w('Ni') -
      20.8 * w('Cr') -
      10.4 * w('Mo') +
      7.1 * w('Al') +
      4.8 * w('Co') -
      75 * (1 - Math.exp(-0.96 * w('C'))),
  ),
  law(
    'Andrews 1965, linear',
    'LI98',
    'read',
    [0.1, 0.6],
    25,
    (w) => 539 - 423 * w('C') - 30.4 * w('Mn') - 17.7 * w('Ni') - 12.1 * w('Cr') - 7.5 * w('Mo'),
  ),
  law(
    'Andrews 1965, product',
    'MS-PY',
    'read secondary',
    [0.1, 0.6],
    25,
    (w) =>
      512 -
      453 * w('C') -
      16.9 * w('Ni') +
      15 * w('Cr') -
      9.5 * w('Mo') +
      217 * w('C') ** 2 -
      71.5 * w('C') * w('Mn') -
      67.6 * w('C') * w('Cr'),
  ),
  law(
    'Steven and Haynes 1956',
    'MS-PY',
    'read secondary',
    [0.1, 0.55],
    25,
    (w) => 561 - 474 * w('C') - 33 * w('Mn') - 17 * w('Cr') - 17 * w('Ni') - 21 * w('Mo'),
  ),
] as const

export const bsLaws = [
  law(
    'Steven and Haynes 1956',
    'MEM',
    'from memory',
    [0.1, 0.55],
    25,
    (w) => 830 - 270 * w('C') - 90 * w('Mn') - 37 * w('Ni') - 70 * w('Cr') - 83 * w('Mo'),
  ),
  law(
    'Li 1998',
    'LI98',
    'read',
    [0.1, 0.8],
    30,
    (w) => 637 - 58 * w('C') - 35 * w('Mn') - 15 * w('Ni') - 34 * w('Cr') - 41 * w('Mo'),
  ),
] as const

/** Eutectoid of Fe-C: 726.6 °C, 0.761 wt% (OC-TDB, computed). */
export const eutectoid = { temperature: 726.6 + zero, carbon: 0.761 } as const

function estimate(
  laws: readonly CriticalLaw[],
  composition: Composition,
  quantity: string,
): Estimate {
  const ranges = rangeChecks()
  const first = laws[0]!
  const carbon = percent(composition, 'C')
  ranges.check('carbon', carbon, first.carbon, 'wt%', `${quantity} after ${first.name}`)
  const value = first.temperature(composition)
  const fitting = laws
    .filter((l) => carbon >= l.carbon[0] && carbon <= l.carbon[1])
    .map((l) => l.temperature(composition))
  return {
    value,
    range: [
      Math.max(1, Math.min(value - first.scatter, ...fitting)),
      Math.max(value + first.scatter, ...fitting),
    ],
    unit: 'K',
    source: first.source,
    standing: first.standing,
    notes: [`${quantity} after ${first.name}.`],
    outOfRange: ranges.found,
  }
}

/** Heating: where austenite begins, K. */
export function ac1(composition: Composition): Estimate {
  return estimate(ac1Laws, composition, 'Ac1')
}

/**
 * Heating: where the last ferrite (below 0.76 % carbon) or the last cementite (above) is gone, K.
 * Acm is of Fe-C alone: 388.30 + 491.44 C - 60.72 C² (OC-TDB, computed); chromium raises it by
 * tens of kelvin for each per cent.
 */
export function fullAustenite(
  composition: Composition,
): Estimate & { readonly line: 'Ac3' | 'Acm' } {
  const carbon = percent(composition, 'C')
  const floor = ac1(composition).value
  if (!(carbon > eutectoid.carbon)) {
    const ac3 = estimate(ac3Laws, composition, 'Ac3')
    const value = Math.max(ac3.value, floor)
    return {
      ...ac3,
      value,
      range: [Math.max(ac3.range[0], floor - 16), Math.max(ac3.range[1], value)],
      line: 'Ac3',
    }
  }
  const ranges = rangeChecks()
  const c = ranges.check('carbon', carbon, [0.76, 1.5], 'wt%', 'Acm of Fe-C')
  const chromium = sane(composition, 'Cr')
  const value = Math.max(388.3 + 491.44 * c - 60.72 * c * c + zero, floor)
  return {
    value,
    range: [value - 10, value + 20 + 60 * Math.min(chromium, 2)],
    unit: 'K',
    source: 'OC-TDB',
    standing: 'computed',
    notes: ['Fe-C alone; blade steels are hardened below it, with some carbide left undissolved.'],
    outOfRange: ranges.found,
    line: 'Acm',
  }
}

/** Where martensite begins, K, for the carbon that is *dissolved*. */
export function martensiteStart(composition: Composition): Estimate {
  return estimate(msLaws, composition, 'Ms')
}

export function bainiteStart(composition: Composition): Estimate {
  return estimate(bsLaws, composition, 'Bs')
}
