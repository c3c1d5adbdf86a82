import type { Problem } from '#problem'
import type { SourceKey, Standing } from '#sources'

/**
 * What a model answers: the likeliest value, how far off it may be, whose law it is, and what to
 * know before relying on it. Never NaN: outside its published range a model holds the nearest
 * value it can defend and says so in `outOfRange`.
 */
export interface Estimate {
  readonly value: number
  /** Lowest and highest to be expected, in the same unit. */
  readonly range: readonly [number, number]
  readonly unit: string
  readonly source: SourceKey
  readonly standing: Standing
  readonly notes: readonly string[]
  /** One entry for each limit of the published range that the question oversteps. */
  readonly outOfRange: readonly Problem[]
}

/** A warning that `what` was asked outside the range the law was made for. */
export function outOfRange(
  at: string,
  asked: number,
  range: readonly [number, number],
  unit: string,
  law: string,
): Problem {
  const shown = Number.isFinite(asked) ? Number(asked.toPrecision(4)).toString() : 'no number'
  return {
    at,
    what: `${shown} ${unit} is outside the published range of ${law}.`,
    why: `${law} is published for ${range[0]} to ${range[1]} ${unit}.`,
    try: [
      `Stay within ${range[0]} to ${range[1]} ${unit}.`,
      'Read the figure as a rough guide only.',
    ],
  }
}

/** The value held inside the range; what is not a number becomes the lower end. */
export function hold(value: number, range: readonly [number, number]): number {
  if (!(value >= range[0])) return range[0]
  return value > range[1] ? range[1] : value
}

/** Collects range warnings: `check('carbon', 1.3, [0.1, 0.9], 'wt%', 'ASTM A255')`. */
export function rangeChecks(): {
  readonly found: Problem[]
  check(
    at: string,
    asked: number,
    range: readonly [number, number],
    unit: string,
    law: string,
  ): number
} {
  const found: Problem[] = []
  return {
    found,
    check(at, asked, range, unit, law) {
      if (!(asked >= range[0] && asked <= range[1]))
        found.push(outOfRange(at, asked, range, unit, law))
      return hold(asked, range)
    },
  }
}
