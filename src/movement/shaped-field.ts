import type { Size } from '#geometry'
import type { PieceSolid } from '#piece'
import { type Warp, field } from '#warp'
import { forgedSection, integrated } from './forged-section.ts'

/** Cells of the field along and across; each is half a millimetre at the least. */
const MOST_ALONG = 800
const MOST_ACROSS = 56
const FINEST = 5e-4

export interface ShapedFrom {
  readonly piece: PieceSolid
  /** Left on every face, m. */
  readonly stock: number
  /** Whether the bevels are forged too, or only outline and thickness. */
  readonly bevels: boolean
  /** The straight bar it is forged from: as much of its length as it takes. */
  readonly bar: Size
}

/**
 * A straight bar forged to the outline of a piece: sections stay sections, each as long as its metal
 * makes it, and in a section the columns keep their order. x = ∫A dx'/A₀, y by the share of the
 * section's area to one side, z by the share of the column: volume is kept exactly. Slender: the
 * shear between sections is not in it. Frame after: the piece's with its stock, x from its origin.
 */
export function shapedField({ piece, stock, bevels, bar }: ShapedFrom): Warp {
  const long = piece.size.length + 2 * stock
  const wide = piece.size.width + 2 * stock
  const along = Math.max(FINEST, long / MOST_ALONG)
  const across = Math.max(FINEST, wide / MOST_ACROSS)
  const columns = Math.ceil(long / along) + 2
  const rows = Math.ceil(wide / across) + 2
  // A coefficient stands half a cell before its number.
  const xs = Array.from({ length: columns }, (_, i) => (i - 0.5) * along)
  const ys = Array.from({ length: rows }, (_, j) => (j - 0.5) * across - wide / 2)
  const sections = xs.map((x) =>
    forgedSection(piece, clamp(x - stock, piece.size.length), stock, bevels),
  )
  const areas = sections.map((s) => s.area)
  const reach = integrated(areas, along)
  const whole = valueAt(reach, long, along) - valueAt(reach, 0, along)
  const scale = bar.length / whole
  const start = valueAt(reach, 0, along)
  const [u, v, m] = [0, 1, 2].map(() => new Array<number>(columns * rows).fill(0))
  sections.forEach((section, i) => {
    const x = (reach[i] - start) * scale
    ys.forEach((y, j) => {
      const at = j * columns + i
      const share = section.shareBelow(y)
      u[at] = x - xs[i]
      v[at] = (share - 0.5) * bar.width - y
      const { thick, middle } = section.column(y)
      // Height before for one after is 1 over the plane before for one after.
      const plane = scale * bar.width * thick
      m[at] = -middle / plane
    })
  })
  return field({
    x: 0,
    y: -wide / 2,
    cellX: along,
    cellY: across,
    columns,
    along: u,
    across: v,
    middle: m,
  })
}

/** A running integral at a place; the first stands half a cell before nought. */
function valueAt(sums: readonly number[], x: number, step: number): number {
  const t = x / step + 0.5
  const i = Math.min(sums.length - 2, Math.max(0, Math.floor(t)))
  return sums[i] + (t - i) * (sums[i + 1] - sums[i])
}

function clamp(x: number, length: number): number {
  return Math.min(length, Math.max(0, x))
}
