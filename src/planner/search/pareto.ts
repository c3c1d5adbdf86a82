/** One thing compared, and which way is better. */
export interface Measure<T> {
  /** What it is, in the smith's words. */
  readonly name: string
  of(one: T): number
  readonly better: 'less' | 'more'
  /** The least difference worth telling: smaller ones hardly count in the ranking. */
  readonly tells: number
}

/** Those that none is better than: better in one measure and worse in none. */
export function nonDominated<T>(all: readonly T[], measures: readonly Measure<NoInfer<T>>[]): T[] {
  const worth = all.map((one) =>
    measures.map(({ of, better }) => (better === 'less' ? of(one) : -of(one))),
  )
  return all.filter(
    (_, i) => !worth.some((other, j) => j !== i && dominates(other, worth[i], j < i)),
  )
}

/** Of two that are the same in everything the one named first stands. */
function dominates(a: readonly number[], b: readonly number[], first: boolean): boolean {
  let better = false
  for (let k = 0; k < a.length; k++) {
    const same = Math.abs(a[k] - b[k]) <= SAME * Math.max(Math.abs(a[k]), Math.abs(b[k]))
    if (!same && a[k] > b[k]) return false
    if (!same) better = true
  }
  return better || first
}

/** Rounding apart, relative. */
const SAME = 1e-12

/**
 * The best compromise first: each measure runs from 0, the best met, to 1, the worst; the sums are
 * compared. Equal sums keep their order.
 */
export function ranked<T>(all: readonly T[], measures: readonly Measure<NoInfer<T>>[]): T[] {
  const scores = all.map(() => 0)
  for (const { of, better, tells } of measures) {
    const values = all.map((one) => (better === 'less' ? of(one) : -of(one)))
    const [low, high] = [Math.min(...values), Math.max(...values)]
    const span = Math.max(high - low, tells)
    values.forEach((value, i) => (scores[i] += (value - low) / span))
  }
  return all
    .map((one, i) => ({ one, score: scores[i], i }))
    .sort((a, b) => a.score - b.score || a.i - b.i)
    .map(({ one }) => one)
}
