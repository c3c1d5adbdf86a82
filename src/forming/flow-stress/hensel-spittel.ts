import type { Composition } from '#steel'
import type { State } from './state.ts'

/** One row of constants; m3, m6 and m9 of the full law are zero for every row read. */
export interface FreibergRow {
  readonly steel: string
  /** The analysis (wt%) the row stands for, nominal. */
  readonly composition: Composition
  readonly A: number
  readonly m1: number
  readonly m2: number
  readonly m4: number
  readonly m5: number
  readonly m7: number
  readonly m8: number
}

/** Constants from PYR-FRB, attributed there to Spittel and Spittel 2009 (read secondary). */
// prettier-ignore
export const freibergRows: readonly FreibergRow[] = [
  { steel: 'C45', composition: { C: 0.45, Mn: 0.65 }, A: 3268.49, m1: -0.00267855, m2: 0.34446, m4: 0.000551814, m5: -0.00132042, m7: 0.0166334, m8: 0.000149907 },
  { steel: 'C20/C22', composition: { C: 0.21, Mn: 0.55 }, A: 3304.39, m1: -0.00281, m2: 0.34766, m4: 2e-5, m5: -0.0013, m7: 0.07632, m8: 0.000148 },
  { steel: 'S355J2', composition: { C: 0.18, Mn: 1.4 }, A: 2852.66, m1: -0.00244, m2: 0.41934, m4: 0.00088, m5: -0.00149, m7: 0.12169, m8: 0.000127 },
  { steel: '11SMn30', composition: { C: 0.1, Mn: 1.1, S: 0.3 }, A: 1473.43, m1: -0.00239, m2: 0.22924, m4: -0.0087, m5: 0.0001, m7: -0.44065, m8: 0.000161 },
]

/** Hensel and Spittel's law: uniaxial flow stress at `strain`, Pa. */
export function henselSpittel(row: FreibergRow, { temperature, strain, rate }: State): number {
  const t = temperature - 273.15
  const worked = strain ** row.m2 * Math.exp(row.m4 / strain + row.m7 * strain)
  const softened = (1 + strain) ** (row.m5 * t)
  return 1e6 * row.A * Math.exp(row.m1 * t) * worked * softened * rate ** (row.m8 * t)
}

/** Not printed in what was read; usual for the book the rows come from (from memory, low confidence). */
export const freibergRange = {
  temperature: [1073.15, 1523.15],
  strain: [0.04, 1.5],
  rate: [0.01, 500],
} as const

/** The row whose analysis lies near this one, if any: 0.05 % carbon, 0.4 % manganese, little else. */
export function nearestRow(composition: Composition): FreibergRow | undefined {
  const alloy = (composition.Cr ?? 0) + (composition.Mo ?? 0) + (composition.V ?? 0)
  if (alloy > 0.4 || (composition.Ni ?? 0) > 0.5) return undefined
  const gap = (row: FreibergRow) =>
    Math.max(
      Math.abs((composition.C ?? 0) - (row.composition.C ?? 0)) / 0.05,
      Math.abs((composition.Mn ?? 0.6) - (row.composition.Mn ?? 0)) / 0.4,
      Math.abs((composition.S ?? 0) - (row.composition.S ?? 0)) / 0.1,
    )
  const near = freibergRows.filter((row) => gap(row) <= 1)
  return near.toSorted((a, b) => gap(a) - gap(b))[0]
}
