/** Pieces of one length that are wanted. */
export interface WantedLength {
  readonly length: number
  readonly count: number
}

/** Bars of one length there are. */
export interface StockLength {
  readonly length: number
  /** How many; Infinity where as many can be bought as are wanted. */
  readonly count: number
  /** Cut off each end before anything is used, m. */
  readonly ends: number
  /** What a metre of it counts for: less for what should be used up first. */
  readonly weight: number
}

export interface CuttingRules {
  readonly kerf: number
  /** The shortest piece worth putting back on the rack, m; Infinity where nothing is kept. */
  readonly leastRemnant: number
}

/** One bar and the pieces cut from it, as indices into the wanted lengths. */
export interface CutBar {
  readonly stock: number
  /** How many of each wanted length. */
  readonly pieces: readonly number[]
}

/** A way to cut everything, with what it uses up and how good it can be at best. */
export interface CuttingPlan {
  readonly bars: readonly CutBar[]
  /** Weighted metres used up: whole bars less the remnants put back. */
  readonly cost: number
  /** No way costs less than this. */
  readonly bound: number
  /** The bound is reached. */
  readonly proved: boolean
  /** Wanted pieces that no bar is left for, by index: only where bars run out. */
  readonly missing: readonly number[]
}

/** Length of a bar that pieces can be cut from, one kerf more than it has for the last cut it does not need. */
export function roomOf({ length, ends }: StockLength, { kerf }: CuttingRules): number {
  return length - 2 * ends + kerf
}

/** What is left of a bar after pieces that take so much, kerfs counted, m; never less than nothing. */
export function leftOf(stock: StockLength, taken: number, rules: CuttingRules): number {
  return Math.max(0, roomOf(stock, rules) - rules.kerf - taken)
}

/** Weighted metres a bar costs when pieces take so much of it. */
export function costOfBar(stock: StockLength, taken: number, rules: CuttingRules): number {
  const left = leftOf(stock, taken, rules)
  return stock.weight * (stock.length - (left >= rules.leastRemnant ? left : 0))
}

/** Length pieces take of a bar, kerfs counted, m. */
export function takenBy(
  pieces: readonly number[],
  wanted: readonly WantedLength[],
  { kerf }: CuttingRules,
): number {
  return pieces.reduce((sum, n, i) => sum + n * (wanted[i].length + kerf), 0)
}

/** Rounding forgiven when pieces just fit, m. */
export const FITS = 1e-9
