import type { Basis, Estimate } from '../estimate.ts'
import { clamp, outsideRange } from '../estimate.ts'
import { hillWithBite } from './rolling-laws.ts'

/** S = constant + linear (B/b) + square (B/b)². A shop that has measured its own writes its own. */
export interface SpreadCoefficients {
  readonly constant: number
  readonly linear: number
  readonly square: number
}

/** Tomlinson and Stringer 1959, short form (from memory, high confidence; no text read gives it). */
export const tomlinsonStringer: SpreadCoefficients = {
  constant: 0.14,
  linear: 0.36,
  square: -0.054,
}

/** Share of a reduction that goes into width, from bite over width; held level past its peak at B/b 3.3. */
export function spreadCoefficient(
  biteOverWidth: number,
  { constant, linear, square }: SpreadCoefficients = tomlinsonStringer,
): number {
  const peak = square < 0 ? -linear / (2 * square) : Infinity
  const x = clamp(biteOverWidth, [0, peak])
  return clamp(constant + linear * x + square * x * x, [0, 1])
}

/** The long form, with the reduction in it (from memory, low confidence): kept to compare. */
export function spreadCoefficientLong(heightRatio: number, biteOverWidth: number): number {
  return 0.29 - 0.16 * heightRatio + 0.343 * biteOverWidth - 0.048 * biteOverWidth ** 2
}

const short: Basis = {
  law: 'Tomlinson and Stringer, short form',
  sources: ['memory'],
  standing: 'from memory',
}
const hill: Basis = {
  law: 'Hill, rolling, with the bite for contact length',
  sources: ['PYR-HILL'],
  standing: 'read secondary',
}
const peen: Basis = {
  law: 'cross peen held along the bar',
  sources: ['memory'],
  standing: 'from memory',
}
const own: Basis = {
  law: "the shop's own measure",
  sources: ['practice'],
  standing: 'common practice',
}

/** Bite over width for which values of the short form are listed. */
export const spreadRange = [0.2, 2] as const

export interface Tools {
  /** Length of bar under the dies at one blow, m. */
  readonly bite: number
  /** Share of the reduction that goes into width as this shop measured it; overrules the law. */
  readonly measured?: number
  readonly coefficients?: SpreadCoefficients
  /** A peen or fuller lying along the bar widens instead of lengthening. */
  readonly peenAlong?: boolean
}

/**
 * The spread coefficient S = ln(b1/b0)/ln(h0/h1) for one pass on a bar of this width, with its
 * bracket: rolling laws spread less than flat tools, so Hill is the least; a tenth over the law the most.
 */
export function spreadFor(width: number, tools: Tools): Estimate {
  if (tools.measured !== undefined) {
    const s = clamp(tools.measured, [0, 1])
    return { value: s, low: 0.9 * s, high: Math.min(1, 1.1 * s), basis: [own], cautions: [] }
  }
  if (tools.peenAlong) return { value: 0.75, low: 0.6, high: 0.9, basis: [peen], cautions: [] }
  const ratio = width > 0 ? tools.bite / width : spreadRange[1]
  const value = spreadCoefficient(ratio, tools.coefficients)
  return {
    value,
    low: Math.min(value, hillWithBite(ratio)),
    high: Math.min(1, 1.1 * value),
    basis: [short, hill],
    cautions: outsideRange(
      'bite',
      'the spread law',
      ratio,
      spreadRange,
      (x) => `bite ${x.toFixed(2)} of the width`,
    ),
  }
}
