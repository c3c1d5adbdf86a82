import { NEAR } from '#share'
import { type BendReader, BEND, type LayerRow, bendReader } from './bend-reader.ts'
import { type Tracer, NOTHING } from './tracer.ts'

/** A row of pixels as drawn; entry i + 1 of the layer and its runs is pixel i's, for the first has none to its left. */
export interface PixelRow extends LayerRow {
  readonly stack: Uint16Array
  readonly means: readonly (Uint16Array | Float32Array)[]
  /** Pixels from `from` to `to` (exclusive) are metal. */
  from: number
  to: number
}

/** What is let pass, of a pixel or of a part of one. */
export interface Tolerance {
  /** A bend, as a share of the layer's run. */
  readonly bend: number
  /** A mean that can lie no further than this from φ is right whatever runs through the pixel. */
  readonly calm: number
}
export const OF_PIXEL: Tolerance = { bend: BEND, calm: 0.02 }
/** An error in a sixteenth of a pixel is a sixteenth of it. */
export const OF_PART: Tolerance = { bend: 0.1, calm: 0.08 }

/** Finds pixels in which the layer coordinate does not run as straight as it was taken to, and where it shows. */
export class Straightness {
  private readonly reader: BendReader
  private readonly tracer: Tracer
  constructor(tracer: Tracer) {
    this.tracer = tracer
    this.reader = bendReader(tracer.tile)
  }

  /**
   * Marks pixels of a row and of the one above it that do not go on into each other (see UNEVEN). `columns`: the row is
   * made of squares so wide, which have nothing to do with one another.
   */
  mark(
    row: PixelRow,
    above: PixelRow | undefined,
    marks: { readonly row: Uint8Array; readonly above: Uint8Array },
    tolerance: Tolerance,
    columns = Infinity,
  ): void {
    const { tile, stacks, holes } = this.tracer
    const { stack, from, to } = row
    const one = stacks.length === 1 && !holes
    const [own, upper] = [marks.row, marks.above]
    for (let first = from; first < to; first += tile) {
      const count = Math.min(tile, to - first)
      const { left, up } = this.reader.read(row, above ?? row, first + 1, count)
      for (let i = 0, c = first; i < count; i++, c++) {
        if (left[i]! <= 0 && (one || stack[c] === stack[c - 1])) continue
        if (c === from || c % columns === 0) continue
        const broken = this.breakOf(row, c, row, c - 1, true, tolerance)
        if (broken === SMOOTH) continue
        own[c]! |= broken === BREAK ? UNEVEN | LEFT : UNEVEN
        own[c - 1]! |= broken === BREAK ? UNEVEN | RIGHT : UNEVEN
      }
      if (!above) continue
      for (let i = 0, c = first; i < count; i++, c++) {
        if (up[i]! <= 0 && (one || stack[c] === above.stack[c])) continue
        if (c < above.from || c >= above.to) continue
        const broken = this.breakOf(above, c, row, c, false, tolerance)
        if (broken === SMOOTH) continue
        own[c]! |= broken === BREAK ? UNEVEN | UP : UNEVEN
        upper[c]! |= broken === BREAK ? UNEVEN | DOWN : UNEVEN
      }
    }
  }

  /** What parts two neighbours, if it shows; `a` lies right of or above `b`. */
  breakOf(
    a: PixelRow,
    i: number,
    b: PixelRow,
    j: number,
    across: boolean,
    { bend, calm }: Tolerance,
  ): number {
    const stack = a.stack[i]!
    if (stack !== b.stack[j]) return BREAK
    if (stack === NOTHING) return SMOOTH
    const { once, twice, from, to, alone, taken } = this.tracer.grains[stack]!
    const [au, av] = [a.alongU[i + 1]!, a.alongV[i + 1]!]
    const [bu, bv] = [b.alongU[j + 1]!, b.alongV[j + 1]!]
    const [along, before] = across ? [au, bu] : [av, bv]
    const off = a.layer[i + 1]! - b.layer[j + 1]! - (along + before) / 2
    const turn = Math.abs(along - before)
    const aside = Math.abs(across ? av - bv : au - bu)
    const bent = Math.abs(off) <= turn / 2 + aside / 4 + ROUNDING
    const reach = Math.min(Math.abs(au) + Math.abs(av), Math.abs(bu) + Math.abs(bv))
    // A joint in a run read off the pile alone takes some of it away.
    const lost = bent || reach > alone ? 0 : taken / reach
    const calmly = (u: number, v: number) => swayOf(u, v, once, twice) + lost <= calm
    if (calmly(au, av) && calmly(bu, bv)) return SMOOTH
    // A bend between pixels of one and the same steel: whatever its course, it stays in the sheet.
    if (bent && sameMeans(a.means, i, b.means, j)) return SMOOTH
    // What is read far repeats beyond a joint: where the next piece does just that, there is nothing to part.
    const between = (layer: number) => layer >= from && layer <= to
    const repeats =
      reach > Math.max(NEAR, alone) && between(a.layer[i + 1]!) && between(b.layer[j + 1]!)
    const jump = repeats ? off - (to - from) * Math.round(off / (to - from)) : off
    if (Math.abs(jump) + turn / 8 + aside / 4 <= bend * reach) return SMOOTH
    return bent ? BEND_ONLY : BREAK
  }
}

function sameMeans(a: PixelRow['means'], i: number, b: PixelRow['means'], j: number): boolean {
  for (let k = 0; k < a.length; k++) if (a[k]![i] !== b[k]![j]) return false
  return true
}

/** How far the mean of a pixel through which the layer runs by u and v can lie from φ. */
function swayOf(u: number, v: number, once: number, twice: number): number {
  const [a, b] = [Math.abs(u), Math.abs(v)]
  return Math.min(once / Math.max(a, b), twice / (a * b))
}

/** How two neighbours go on into each other: smoothly; bent; not at all, other metal or another piece of it. */
export const SMOOTH = 0
const BEND_ONLY = 1
export const BREAK = 2

/** Marks: the pattern is not smooth in a pixel; it breaks off between its middle and that of the next on this side. */
export const UNEVEN = 1
export const LEFT = 2
export const RIGHT = 4
export const UP = 8
export const DOWN = 16

/** Of layer coordinates in single precision, cells. */
const ROUNDING = 2e-3
