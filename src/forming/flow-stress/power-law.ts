import type { Composition } from '#steel'

/** Stress = strength × rate^m at one temperature, as tabulated in handbooks (from memory, medium confidence). */
export interface PowerRow {
  readonly steel: string
  readonly composition: Composition
  /** K. */
  readonly temperature: number
  /** Pa at 1 /s. */
  readonly strength: number
  readonly m: number
}

const thousand = 1273.15

// prettier-ignore
export const powerRows: readonly PowerRow[] = [
  { steel: '1008', composition: { C: 0.08, Mn: 0.4 }, temperature: thousand, strength: 100e6, m: 0.1 },
  { steel: '1045', composition: { C: 0.45, Mn: 0.75 }, temperature: thousand, strength: 120e6, m: 0.13 },
  { steel: 'D2-type tool steel', composition: { C: 1.5, Cr: 12, Mo: 0.9, V: 0.8 }, temperature: thousand, strength: 190e6, m: 0.13 },
  { steel: 'H13', composition: { C: 0.4, Cr: 5.2, Mo: 1.3, V: 1 }, temperature: thousand, strength: 80e6, m: 0.26 },
  { steel: '302/304', composition: { C: 0.06, Cr: 18.5, Ni: 9 }, temperature: thousand, strength: 170e6, m: 0.1 },
]

export function powerStress(row: PowerRow, rate: number): number {
  return row.strength * rate ** row.m
}

/** The row that stands for a steel too highly alloyed for the carbon-steel laws; undefined for the rest. */
export function highAlloyRow(composition: Composition): PowerRow | undefined {
  const { C = 0, Cr = 0, Ni = 0 } = composition
  const named = (steel: string) => powerRows.find((row) => row.steel === steel)
  if (Cr >= 16 && Ni >= 6) return named('302/304')
  if (Cr >= 10) return named(C >= 0.3 ? 'D2-type tool steel' : '302/304')
  if (Cr >= 4) return named(C >= 0.7 ? 'D2-type tool steel' : 'H13')
  return undefined
}
