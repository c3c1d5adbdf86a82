import type { Rates } from '#shop'
import { normalShare } from '../range/normal.ts'
import type { Cost } from './cost.ts'

/** A price with the range it may honestly turn out to cost. */
export interface Quote {
  readonly currency: string
  /** Expected cost, pieces begun again counted in. */
  readonly cost: number
  /** What is added for making it again when a weld fails. */
  readonly failureAllowance: number
  readonly margin: number
  readonly price: number
  /** Cost is below the first one time in twenty, above the last one time in twenty. */
  readonly range: readonly [low: number, high: number]
  /** Chance that the price does not cover the cost, 0..1. */
  readonly atLoss: number
}

/** Nine times in ten lies within this many standard deviations (normal distribution). */
const NINE_IN_TEN = 1.6448536269514722
const MOST_FAILURES = 40

/**
 * The price of a piece: cost, failure allowance and margin. Hours are taken to scatter normally,
 * failures to follow one another independently: the cost is then a mixture of normals, and its
 * quantiles are exact.
 */
export function quoteOf(cost: Cost, rates: Rates): Quote {
  const price = cost.expected * (1 + rates.margin)
  const below = costShare(cost, rates)
  const quantile = (share: number) => {
    let [low, high] = [0, cost.once * (2 + MOST_FAILURES)]
    for (let i = 0; i < 80; i++) {
      const middle = (low + high) / 2
      if (below(middle) < share) low = middle
      else high = middle
    }
    return high
  }
  return {
    currency: cost.currency,
    cost: cost.expected,
    failureAllowance: cost.expected - cost.once,
    margin: price - cost.expected,
    price,
    range: [quantile(0.05), quantile(0.95)],
    atLoss: 1 - below(price),
  }
}

/** Chance that the cost stays at or below a sum. */
function costShare({ once, failing, hands }: Cost, rates: Rates): (sum: number) => number {
  const spread = ((hands / 3600) * rates.hour * rates.hoursOff) / NINE_IN_TEN
  return (sum) => {
    let share = 0
    for (let k = 0; k <= MOST_FAILURES; k++) {
      const chance = failing ** k * (1 - failing)
      const times = k + 1
      // Each making scatters by itself; fittings are bought once.
      const mean = times * once - k * rates.fittings
      const sd = spread * Math.sqrt(times)
      share += chance * (sd > 0 ? normalShare((sum - mean) / sd) : sum >= mean ? 1 : 0)
    }
    return share
  }
}
