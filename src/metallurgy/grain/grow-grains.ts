import { type Estimate, rangeChecks } from '../estimate.ts'
import { type TemperatureHistory, gasConstant, integrateRate, tidyHistory } from '../history.ts'

/**
 * Austenite grain after a heat. Two published laws, both of the form d^n = d0^n + ∫ rate dt:
 * Sellars and Whiteman for carbon-manganese steel (n 10, from memory), and the measured law of a
 * 0.51 % carbon steel, LZ50 (n 2.82, GG, read). They bracket what was measured on tool steels.
 */
export interface GrainGrowth {
  /** Mean grain, m. */
  readonly size: Estimate
  /** ASTM grain number of the value. */
  readonly number: number
  /** Empty, or what a smith should do about it. */
  readonly caution: string
}

/** µm^10/s; the branches meet at 1000 °C within 5 %. */
function sellars(t: number): number {
  return t >= 1273.15
    ? 3.87e32 * Math.exp(-400000 / (gasConstant * t))
    : 5.02e53 * Math.exp(-914000 / (gasConstant * t))
}

/** µm^2.82/s. Fit of the constants read at 950 to 1200 °C. */
function lz50(t: number): number {
  return Math.exp(41.512 - 331100 / (gasConstant * t)) / 3600
}

export function growSellars(history: TemperatureHistory, start: number): number {
  return (
    (start ** 10 +
      integrateRate(tidyHistory(history), (t) => (t < 1000 ? 0 : sellars(Math.min(t, 1700))))) **
    0.1
  )
}

export function growLz50(history: TemperatureHistory, start: number): number {
  return (
    (start ** 2.82 +
      integrateRate(tidyHistory(history), (t) => (t < 1000 ? 0 : lz50(Math.min(t, 1700))))) **
    (1 / 2.82)
  )
}

/** ASTM grain number from mean intercept, m (ASTM E112: G = -6.643856 log10(l mm) - 3.288; from memory). */
export function grainNumber(size: number): number {
  return -6.643856 * Math.log10(Math.max(size, 1e-9) * 1000) - 3.288
}

/** Grain at the end of the last heat, from `start` (m, default 12.5 µm, LZ50's own). */
export function growGrains(history: TemperatureHistory, start = 12.5e-6): GrainGrowth {
  const points = tidyHistory(history)
  const ranges = rangeChecks()
  const hottest = Math.max(293.15, ...points.map((p) => p.temperature))
  if (hottest > 1473.15)
    ranges.check('temperature', hottest, [1223, 1473], 'K', 'the grain growth laws')
  const from = Math.min(Math.max(start * 1e6 || 12.5, 0.5), 2000)
  const a = growSellars(points, from)
  const b = growLz50(points, from)
  const value = Math.sqrt(a * b) * 1e-6
  const coarse = value > 60e-6
  return {
    size: {
      value,
      range: [Math.min(a, b) * 0.75e-6, Math.max(a, b) * 1.5e-6],
      unit: 'm',
      source: 'GG',
      standing: 'computed',
      notes: [
        'Between Sellars and Whiteman (from memory) and LZ50 (GG). Carbides left undissolved, aluminium and vanadium hold grains back.',
      ],
      outOfRange: ranges.found,
    },
    number: grainNumber(value),
    caution: coarse
      ? 'Grain is coarse: forge on at falling heat and normalise before hardening.'
      : '',
  }
}
