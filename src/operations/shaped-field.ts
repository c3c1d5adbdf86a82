import type { Outline, Size } from '#geometry'
import type { PieceSolid } from '#piece'
import { type Warp, field } from '#warp'

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
 * shear between sections is not in it. Frame after: the piece's with its stock, x from the butt.
 */
export function shapedField({ piece, stock, bevels, bar }: ShapedFrom): Warp {
  const [outline] = piece.edges.outline
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
    sectionAt(piece, outline, clamp(x - stock, piece.size.length), stock, bevels),
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

/** One section of the forged shape. */
interface ForgedSection {
  readonly area: number
  /** Share of the section's area on the lower side of a place; past its sides it goes on evenly. */
  shareBelow(y: number): number
  column(y: number): { readonly thick: number; readonly middle: number }
}

const PLACES = 96

function sectionAt(
  piece: PieceSolid,
  outline: Outline,
  x: number,
  stock: number,
  bevels: boolean,
): ForgedSection {
  const inner = spanAt(outline, clampInside(x, piece.size.length))
  const [low, high] = [inner[0] - stock, inner[1] + stock]
  const step = (high - low) / PLACES
  const columns = Array.from({ length: PLACES + 1 }, (_, k) => {
    const y = Math.min(inner[1] - 1e-9, Math.max(inner[0] + 1e-9, low + k * step))
    const [top, bottom] = [piece.top(x, y), piece.bottom(x, y)]
    return { thick: Math.max(0, top - bottom) + 2 * stock, middle: (top + bottom) / 2 }
  })
  const most = Math.max(...columns.map((c) => c.thick))
  const flat = { thick: most, middle: 0 }
  const thick = columns.map((c) => (bevels ? Math.max(c.thick, 0.02 * most, 1e-5) : most))
  const sums = integrated(thick, step)
  const area = sums[PLACES]
  const at = (y: number) => (y - low) / step
  return {
    area,
    shareBelow(y) {
      const t = at(y)
      if (t <= 0) return (t * step * thick[0]) / area
      if (t >= PLACES) return 1 + ((t - PLACES) * step * thick[PLACES]) / area
      const k = Math.floor(t)
      const f = t - k
      return (sums[k] + step * f * (thick[k] + (f / 2) * (thick[k + 1] - thick[k]))) / area
    },
    column(y) {
      if (!bevels) return flat
      const k = Math.min(PLACES, Math.max(0, Math.round(at(y))))
      return { thick: thick[k], middle: columns[k].middle }
    },
  }
}

/** The outline's least and greatest y at a place along it. */
function spanAt(outline: Outline, x: number): readonly [number, number] {
  let [low, high] = [Infinity, -Infinity]
  outline.forEach((p, i) => {
    const q = outline[(i + 1) % outline.length]
    if ((p.x - x) * (q.x - x) > 0) return
    const f = q.x === p.x ? 0 : (x - p.x) / (q.x - p.x)
    for (const y of q.x === p.x ? [p.y, q.y] : [p.y + f * (q.y - p.y)]) {
      low = Math.min(low, y)
      high = Math.max(high, y)
    }
  })
  return low <= high ? [low, high] : [0, 0]
}

/** Running integral of evenly spaced values, straight between. */
function integrated(values: readonly number[], step: number): number[] {
  const sums = [0]
  for (let i = 1; i < values.length; i++)
    sums.push(sums[i - 1] + (step * (values[i - 1] + values[i])) / 2)
  return sums
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
/** Just inside the ends, where the outline is met. */
function clampInside(x: number, length: number): number {
  return Math.min(length * (1 - 1e-6), Math.max(length * 1e-6, x))
}
