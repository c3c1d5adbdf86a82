import type { Problem } from '#problem'
import type { SourceKey, Standing } from '#sources'

/** Where a number comes from: the law, its sources and how far they can be trusted. */
export interface Basis {
  readonly law: string
  readonly sources: readonly SourceKey[]
  readonly standing: Standing
}

/** A number with the least and most it may be, its grounds, and what to be careful about. */
export interface Estimate {
  readonly value: number
  readonly low: number
  readonly high: number
  readonly basis: readonly Basis[]
  readonly cautions: readonly Problem[]
}

/** Lowest and highest value a source vouches for, both included. */
export type Span = readonly [number, number]

export function isInside(value: number, [low, high]: Span): boolean {
  return value >= low && value <= high
}

export function clamp(value: number, [low, high]: Span): number {
  return Math.min(high, Math.max(low, value))
}

/** The caution for a figure outside what a law was published for; none when it is inside. */
export function outsideRange(
  at: string,
  law: string,
  value: number,
  span: Span,
  show: (value: number) => string,
): Problem[] {
  if (isInside(value, span)) return []
  return [
    {
      at,
      what: `${show(value)} is outside the published range of ${law}.`,
      why: `${law} was published for ${show(span[0])} to ${show(span[1])}; beyond that it is carried on without proof.`,
      try: [
        `Work between ${show(span[0])} and ${show(span[1])}.`,
        'Or treat the number as a rough guide.',
      ],
    },
  ]
}

export const celsius = (kelvin: number): number => kelvin - 273.15
export const showTemperature = (kelvin: number): string => `${Math.round(celsius(kelvin))} °C`
export const showMillimetres = (metres: number): string => `${(metres * 1000).toFixed(1)} mm`

/**
 * The root of a rising function between `low` and `high`, by halving. When the function keeps one
 * sign over the interval the nearer end is given.
 */
export function solveRising(
  f: (x: number) => number,
  low: number,
  high: number,
  turns = 80,
): number {
  let [a, b] = [low, high]
  for (let i = 0; i < turns; i++) {
    const middle = 0.5 * (a + b)
    if (f(middle) < 0) a = middle
    else b = middle
  }
  return 0.5 * (a + b)
}

/** The same by chords, where the function is nearly straight: the end that stays counts half each time. */
export function crossing(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high]
  let [fa, fb] = [f(a), f(b)]
  if (!(fa < 0)) return a
  if (!(fb > 0)) return b
  let kept = 0
  for (let i = 0; i < 60 && b - a > 1e-13 * Math.abs(b); i++) {
    const x = (a * fb - b * fa) / (fb - fa)
    const fx = f(x)
    if (Math.abs(fx) < 1e-13) return x
    if (fx < 0) {
      ;[a, fa] = [x, fx]
      if (kept === 1) fb /= 2
      kept = 1
    } else {
      ;[b, fb] = [x, fx]
      if (kept === -1) fa /= 2
      kept = -1
    }
  }
  return (a * fb - b * fa) / (fb - fa)
}

/** The lowest point of a function with one valley between `low` and `high`: golden section. */
export function lowestPoint(
  f: (x: number) => number,
  low: number,
  high: number,
  turns = 70,
): number {
  const golden = (Math.sqrt(5) - 1) / 2
  let [a, b] = [low, high]
  let [left, right] = [b - golden * (b - a), a + golden * (b - a)]
  let [fLeft, fRight] = [f(left), f(right)]
  for (let i = 0; i < turns; i++) {
    if (fLeft < fRight) {
      ;[b, right, fRight] = [right, left, fLeft]
      left = b - golden * (b - a)
      fLeft = f(left)
    } else {
      ;[a, left, fLeft] = [left, right, fRight]
      right = a + golden * (b - a)
      fRight = f(right)
    }
  }
  return 0.5 * (a + b)
}
