/** A round length, and how it is said. */
export interface Length {
  readonly metres: number
  readonly says: string
  readonly parts: number
}

const METRIC: readonly Length[] = [1e-6, 1e-5, 1e-4, 1e-3, 1e-2, 1e-1].flatMap((decade) =>
  [1, 2, 5].map((n) => {
    const metres = n * decade
    const says =
      metres < 0.9e-3 ? `${Math.round(metres * 1e6)} µm` : `${Math.round(metres * 1e3)} mm`
    return { metres, says, parts: n === 2 ? 4 : 5 }
  }),
)
const INCH: readonly Length[] = [
  ...[1, 2, 5, 10, 20, 50, 100].map((mil) => ({
    metres: mil * 25.4e-6,
    says: mil < 10 ? `.00${mil} in` : mil < 100 ? `.0${mil} in` : '.1 in',
    parts: mil % 5 === 0 ? 5 : 4,
  })),
  ...['1/4', '1/2', '1', '2', '5', '10'].map((says) => ({
    metres: says.includes('/') ? 0.0254 / Number(says.slice(2)) : 0.0254 * Number(says),
    says: `${says} in`,
    parts: says === '5' || says === '10' ? 5 : 4,
  })),
]

/** The longest round length, in the units chosen, that takes no more than a third of the picture. */
export function barLength(pixel: number, width: number, inch: boolean): Length {
  const lengths = inch ? INCH : METRIC
  return lengths.findLast((l) => l.metres / pixel <= width / 3) ?? lengths[0]!
}
