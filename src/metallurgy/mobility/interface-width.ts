import { type TemperatureHistory, integrateRate, tidyHistory } from '../history.ts'
import type { Estimate } from '../estimate.ts'
import { outOfRange } from '../estimate.ts'
import { type Substitutional, substitutional, substitutionalDiffusivity } from './diffusivity.ts'
import { erf } from '../error-function.ts'

/**
 * How far an element other than carbon has crept across a weld: 2 sqrt(∫D dt), m. Layers keep
 * their nickel and chromium: this is micrometres where carbon goes millimetres.
 */
export function creepOf(element: Substitutional, history: TemperatureHistory): Estimate {
  const points = tidyHistory(history)
  const sets = substitutional[element].map(
    (_, set) =>
      2 *
      Math.sqrt(
        integrateRate(points, (t) => substitutionalDiffusivity(element, Math.min(t, 1700), set)),
      ),
  )
  const value = sets[0]!
  const hottest = Math.max(0, ...points.map((p) => p.temperature))
  return {
    value,
    range: sets.length > 1 ? [Math.min(...sets), Math.max(...sets)] : [value * 0.87, value * 1.12],
    unit: 'm',
    source: substitutional[element][0]!.source,
    standing: 'computed',
    notes: [
      'Lattice diffusion in carbon-free austenite; grain boundaries and carbon quicken it somewhat.',
    ],
    outOfRange:
      hottest > 1573
        ? [outOfRange('temperature', hottest, [1123, 1573], 'K', 'the mobility database')]
        : [],
  }
}

/**
 * An element's share across one weld, x m from it: the step between `left` and `right` wt%
 * smoothed to an error function of width `creep` = 2 sqrt(∫D dt).
 */
export function acrossWeld(left: number, right: number, x: number, creep: number): number {
  if (!(creep > 0)) return x < 0 ? left : x > 0 ? right : (left + right) / 2
  return (left + right) / 2 + ((right - left) / 2) * erf(x / creep)
}

/**
 * Swing of an element left between the middles of equal layers of one thickness, as a share of
 * the swing as laid: the leading terms of the series for an endless stack (Crank).
 */
export function swingLeft(thickness: number, creep: number): number {
  if (!(thickness > 0)) return 0
  const fo = (creep / 2 / thickness) ** 2
  if (fo < 1e-4) return 1
  let sum = 0
  for (let n = 1; n < 400; n += 2)
    sum +=
      (4 / (n * Math.PI)) * Math.sin((n * Math.PI) / 2) * Math.exp(-n * n * Math.PI * Math.PI * fo)
  return Math.min(1, Math.max(0, sum))
}
