import type { Estimate } from '../estimate.ts'
import { rangeChecks } from '../estimate.ts'

/**
 * Diffusivity of carbon in austenite, m²/s, Ågren 1986 (CPART, read):
 * D = 4.53e-7 [1 + y(1-y) 8339.9/T] exp{-(1/T - 2.221e-4)(17767 - 26436 y)},
 * y carbon atoms for each iron atom. An independent set (Liu 2009, MOB, read) lies 0 to 12 %
 * higher as carbon rises to 1.2 %: that is the range given.
 */
export function diffuseCarbon(carbon: number, temperature: number): Estimate {
  const ranges = rangeChecks()
  const c = ranges.check('carbon', carbon, [0, 2.03], 'wt%', 'Ågren 1986 in austenite')
  const t = ranges.check('temperature', temperature, [1023, 1573], 'K', 'Ågren 1986')
  const value = agren(c, t)
  return {
    value,
    range: [value * 0.95, value * (1.04 + 0.08 * c)],
    unit: 'm²/s',
    source: 'CPART',
    standing: 'read secondary',
    notes: ['Carbon in austenite; the upper end covers the independent set MOB (Liu 2009).'],
    outOfRange: ranges.found,
  }
}

export function agren(carbon: number, temperature: number): number {
  const y = carbon / 12.011 / ((100 - carbon) / 55.845)
  return (
    4.53e-7 *
    (1 + (y * (1 - y) * 8339.9) / temperature) *
    Math.exp(-(1 / temperature - 2.221e-4) * (17767 - 26436 * y))
  )
}

/** Second opinion: Liu 2009 mobilities with the binary thermodynamic factor (MOB, read). */
export function liuCarbon(carbon: number, temperature: number): number {
  const r = 8.31451
  const t = temperature
  const y = carbon / 12.011 / ((100 - carbon) / 55.847)
  const va = 1 - y
  const mq =
    y * (-103452.18 - 81.33 * t) +
    va * (-148123.29 - 88.33 * t) +
    y * va * (194029.43 - 17.15 * t + 47981.91 * (y - va))
  return Math.exp(mq / (r * t)) * (1 - (2 * -34671 * y * va) / (r * t))
}

export type Substitutional = 'Fe' | 'Ni' | 'Cr' | 'Mn' | 'Si'

interface Arrhenius {
  readonly set: string
  /** m²/s */
  readonly d0: number
  /** J/mol */
  readonly q: number
  readonly source: 'MOB' | 'MOBK'
}

/** Dilute, carbon-free austenite. MOB and MOBK, read; about 1 % of carbon raises them somewhat. */
export const substitutional: Readonly<Record<Substitutional, readonly Arrhenius[]>> = {
  Fe: [{ set: 'Khorasgani 2022', d0: 0.2245e-4, q: 272762, source: 'MOB' }],
  Ni: [
    { set: 'Khorasgani 2022', d0: 0.3011e-4, q: 279673, source: 'MOB' },
    { set: 'MatCalc open', d0: 0.3221e-4, q: 286000, source: 'MOBK' },
  ],
  Cr: [
    { set: 'Khorasgani 2022', d0: 1.125e-4, q: 284227, source: 'MOB' },
    { set: 'MatCalc open', d0: 1.756e-4, q: 286000, source: 'MOBK' },
  ],
  Mn: [{ set: 'Liu 2009', d0: 0.03455e-4, q: 246513, source: 'MOB' }],
  Si: [{ set: 'Zheng 2015', d0: 0.01796e-4, q: 228000, source: 'MOB' }],
}

/** m²/s in austenite, from the set named first. */
export function substitutionalDiffusivity(
  element: Substitutional,
  temperature: number,
  set = 0,
): number {
  const pairs = substitutional[element]
  const pair = pairs[Math.min(set, pairs.length - 1)]!
  return pair.d0 * Math.exp(-pair.q / (8.31451 * temperature))
}

/** The range of an element's diffusivity: both sets where two were read, else ±25 %. */
export function diffuseSubstitutional(element: Substitutional, temperature: number): Estimate {
  const ranges = rangeChecks()
  const t = ranges.check('temperature', temperature, [1123, 1573], 'K', 'the mobility database')
  const value = substitutionalDiffusivity(element, t)
  const other = substitutionalDiffusivity(element, t, 1)
  return {
    value,
    range:
      other === value
        ? [value * 0.75, value * 1.25]
        : [Math.min(value, other), Math.max(value, other)],
    unit: 'm²/s',
    source: substitutional[element][0]!.source,
    standing: 'read',
    notes: ['Dilute, carbon-free austenite; about 1 % of carbon raises it somewhat.'],
    outOfRange: ranges.found,
  }
}
