/** Pixels to a metre at true size: 96 to the inch. */
export const TRUE = 96 / 0.0254

/** Scales drawings are made at, as the draughtsman's rule has them: drawn over true. */
const enlarged = [20, 10, 5, 2]
const reduced = [1, 2, 4, 5, 8, 10, 15, 20, 25, 40]

export interface Scale {
  /** Drawn size over true size. */
  readonly ratio: number
  /** `1 : 4`, `5 : 1`. */
  readonly words: string
}

export function scaleOf(ratio: number): Scale {
  return {
    ratio,
    words: ratio >= 1 ? `${ratio} : 1` : `1 : ${Math.round(1 / ratio)}`,
  }
}

/** The largest of the usual scales at which `size` (m) fits in `room` (px). */
export function scaleToFit(size: number, room: number, most = 1): Scale {
  const ratios = [...enlarged, ...reduced.map((r) => 1 / r)].filter((r) => r <= most)
  const fits = ratios.find((ratio) => size * TRUE * ratio <= room)
  return scaleOf(fits ?? 1 / (reduced.at(-1) ?? 40))
}
