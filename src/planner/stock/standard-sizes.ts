/** Sizes in which steel is bought, m. */
export interface StandardSizes {
  /** Lengths of bar a merchant sells. */
  readonly lengths: readonly number[]
  readonly thicknesses: readonly number[]
  readonly widths: readonly number[]
}

const mm = (sizes: readonly number[]) => sizes.map((n) => n / 1000)
const inches = (sizes: readonly number[]) => sizes.map((n) => n * 0.0254)

/**
 * Metric flats after a merchant's list [STOCK]; lengths and sheet under 3 mm from memory. Inch flats
 * 1/16 to 1 in thick by 1/2 to 6 in wide, lengths in whole feet (common practice, no source).
 */
export const standardSizes: Readonly<Record<'metric' | 'inch', StandardSizes>> = {
  metric: {
    lengths: [0.25, 0.5, 1, 2, 3],
    thicknesses: mm([1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30]),
    widths: mm([10, 12, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100]),
  },
  inch: {
    lengths: [1, 2, 3, 4, 6].map((feet) => feet * 0.3048),
    thicknesses: inches([
      1 / 16,
      3 / 32,
      1 / 8,
      3 / 16,
      1 / 4,
      5 / 16,
      3 / 8,
      1 / 2,
      5 / 8,
      3 / 4,
      1,
    ]),
    widths: inches([0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6]),
  },
}

/** The least standard size that is enough, or the size itself where none is. */
export function nextStandard(sizes: readonly number[], wanted: number): number {
  return sizes.find((size) => size >= wanted * (1 - 1e-6)) ?? wanted
}
