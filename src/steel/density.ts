import type { Figure } from '#sources'
import { type Element, percent } from './composition.ts'
import { type Grade, compositionOf } from './grade.ts'

/** kg/m³; what structural steel is taken as in design [EN1993-1-1], and what smiths reckon with. */
export const DESIGN_DENSITY = 7850

/** The same with its source, to be printed beside it. */
export const designDensity: Figure = {
  value: DESIGN_DENSITY,
  unit: 'kg/m³',
  source: 'EN1993-1-1',
  standing: 'from memory',
  note: 'design value of structural steel',
}

/** Ferrite at 20 °C, kg/m³: constant, then per wt% of silicon and manganese [DENS, ferrite]. */
const FERRITE = 7875.96 - 0.297 * 20 - 5.62e-5 * 20 ** 2
const FERRITE_PER_SI = -36.86
const FERRITE_PER_MN = -7.24

/** Cementite, kg/m³, and its carbon, wt% (Fe3C: 12.011 / (3 × 55.845 + 12.011)); from memory. */
const CEMENTITE = 7690
const CEMENTITE_CARBON = 6.69

/** Elements added by their own volume, kg/m³ as pure metals; from memory (handbook values). */
const metals: readonly (readonly [Element, number])[] = [
  ['Ni', 8908],
  ['Cr', 7190],
  ['Mo', 10280],
  ['V', 6110],
  ['W', 19250],
  ['Co', 8900],
  ['Cu', 8960],
]

/** Above this much alloy, wt%, the structure is not ferrite and cementite. */
const MOST_ALLOY = 6

/** Share either way: the handbook spread of annealed steels; wide where the mixture is a guess. */
const SPREAD = 0.003
const WIDE_SPREAD = 0.03

/** A density, kg/m³ at 20 °C, always with its range. */
export type Density = Figure & { readonly range: readonly [number, number] }

/**
 * Density at 20 °C, annealed. A density stated with the grade is used as it is. Otherwise ferrite
 * (with its silicon and manganese) and cementite are mixed by the mass of carbon, and the other
 * metals added by their own volume. Outside low-alloy steel that is a guess: the range says so.
 * Hardened steel is 0.5–1 % lighter (from memory).
 */
export function densityOf(grade: Grade): Density {
  const { density } = grade
  if (density) {
    const [low, high] = density.range ?? [density.value, density.value]
    return {
      ...density,
      value: density.value * 1000,
      range: [low * 1000, high * 1000],
      unit: 'kg/m³',
    }
  }
  const composition = compositionOf(grade)
  const of = (element: Element) => percent(composition, element)
  const alloy = metals.reduce((sum, [element]) => sum + of(element), 0)
  const cementite = Math.min(of('C') / CEMENTITE_CARBON, 1 - alloy / 100)
  const ferrite = FERRITE + FERRITE_PER_SI * of('Si') + FERRITE_PER_MN * of('Mn')
  const volume =
    (1 - alloy / 100 - cementite) / ferrite +
    cementite / CEMENTITE +
    metals.reduce((sum, [element, own]) => sum + of(element) / 100 / own, 0)
  const value = 1 / volume
  const inRange = alloy <= MOST_ALLOY && of('C') <= 2
  const spread = inRange ? SPREAD : WIDE_SPREAD
  return {
    value,
    range: [value * (1 - spread), value * (1 + spread)],
    unit: 'kg/m³',
    source: 'DENS',
    standing: 'computed',
    note: inRange
      ? 'ferrite and cementite mixed by carbon, annealed, 20 °C'
      : 'more alloy than the mixture of ferrite and cementite holds for: a guess',
  }
}
