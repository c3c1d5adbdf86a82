import { type Composition, percent } from '#steel'
import { type Estimate, hold, rangeChecks } from '../estimate.ts'
import { fullMartensite } from '../hardness/as-quenched.ts'
import { idealDiameterA255 } from './ideal-diameter.ts'
import factors from './jominy-factors.json' with { type: 'json' }

/** Distances of the dividing factors, mm from the quenched end. */
export const jominyDistances = [3, 5, 7, 9, 11, 13, 15, 20, 25, 30, 35, 40, 45, 50] as const

/** Hardness over hardness at the quenched end, by distance and ideal diameter (mm) (A255J). */
function dividing(distance: number, diameter: number): number {
  const coefficients = (factors.polynomials as Record<string, number[]>)[distance]!
  const above = (factors.oneAbove as Record<string, number>)[distance]
  if (above !== undefined && diameter >= above) return 1
  const value = coefficients.reduce((sum, a, i) => sum + a * diameter ** i, 0)
  return Math.max(1, value)
}

/** End-quench curve of a steel, HRC at each distance (mm), after ASTM A255. Below 20 HRC only an order. */
export function jominyCurve(composition: Composition): {
  readonly diameter: number
  readonly points: readonly { readonly millimetres: number; readonly hardness: Estimate }[]
} {
  const ranges = rangeChecks()
  ranges.check('carbon', percent(composition, 'C'), [0.1, 0.7], 'wt%', 'the A255 end-quench curve')
  const diameter = idealDiameterA255(composition) * 1000
  ranges.check('ideal diameter', diameter, [20, 180], 'mm', 'the A255 end-quench curve')
  const end = fullMartensite(percent(composition, 'C'))
  const d = hold(diameter, [20, 180])
  const points = jominyDistances.map((millimetres) => {
    const value = end / dividing(millimetres, d)
    const hardness: Estimate = {
      value,
      range: [Math.max(0, value - 4), Math.min(end, value + 4)],
      unit: 'HRC',
      source: 'A255J',
      standing: 'read secondary',
      notes: value < 20 ? ['Under 20 HRC: an extrapolation.'] : [],
      outOfRange: ranges.found,
    }
    return { millimetres, hardness }
  })
  return { diameter: diameter / 1000, points }
}
