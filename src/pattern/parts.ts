import type { FaceView } from '#view'
import { BREAK, DOWN, LEFT, OF_PART, RIGHT, SMOOTH, UNEVEN, UP } from './straightness.ts'
import type { PixelRow, Straightness } from './straightness.ts'
import { NOTHING, type Traced, type Tracer } from './tracer.ts'
import type { UnderParts } from './under-parts.ts'

/** A part in which the pattern is not smooth either is taken in so many a side, or in as many strips along a break. */
export const FINER = 4
const AGAIN = FINER ** 2

/** Pixels taken in parts, and parts in parts again; of pixel k of those drawn last. */
export class Parts {
  /** Share that is metal, 0 … 1; sums over the pixel of each mean and of welded skin; a stack that is met there. */
  readonly metal: Float64Array
  readonly means: readonly Float64Array[]
  readonly seam: Float64Array
  readonly stack: Uint16Array
  /** Pixels that can be drawn at once. */
  readonly most: number
  private readonly rows: PixelRow[]
  private readonly ring: PixelRow
  private readonly skins: Float32Array
  private readonly marks: Uint8Array[]
  /** Parts to be split, by number: row by row through all pixels; parts at a rim, four times that and the side. */
  private readonly again: Int32Array
  private readonly rims: Int32Array
  private readonly view: FaceView
  private readonly tracer: Tracer
  private readonly top: number
  private readonly fine: number
  private readonly straightness: Straightness
  private readonly part: number
  private readonly grids: Grids
  private pixels: readonly number[] = []
  private under: UnderParts | undefined
  private first = 0

  constructor(
    view: FaceView,
    tracer: Tracer,
    top: number,
    fine: number,
    straightness: Straightness,
  ) {
    this.view = view
    this.tracer = tracer
    this.top = top
    this.fine = fine
    this.straightness = straightness
    this.part = view.pixel / fine
    this.grids = gridsOf(view.pixel, fine)
    this.most = Math.max(1, Math.floor(tracer.tile / fine ** 2))
    const double = () => new Float64Array(this.most)
    this.metal = double()
    this.means = tracer.found.means.map(double)
    this.seam = double()
    this.stack = new Uint16Array(this.most)
    const width = this.most * fine
    const row = (length: number): PixelRow => {
      const single = () => new Float32Array(length + 1)
      return {
        layer: single(),
        alongU: single(),
        alongV: single(),
        stack: new Uint16Array(length),
        means: tracer.found.means.map(() => new Float32Array(length)),
        from: 0,
        to: length,
      }
    }
    this.rows = Array.from({ length: fine }, () => row(width))
    this.ring = row(tracer.tile)
    this.skins = new Float32Array(width * fine)
    this.marks = this.rows.map(() => new Uint8Array(width))
    this.again = new Int32Array(width * fine)
    this.rims = new Int32Array(width * SIDES.length)
  }

  /**
   * Draws pixels by their numbers in the band; `of`: how each was marked there; `under`: the surface under their parts,
   * where the first of them is number `first`.
   */
  draw(pixels: readonly number[], of: Uint8Array, under: UnderParts, first: number): void {
    const { fine, rows, marks, skins, tracer, grids } = this
    this.pixels = pixels
    this.under = under
    this.first = first
    const width = pixels.length * fine
    this.metal.fill(0)
    this.seam.fill(0)
    this.stack.fill(NOTHING)
    for (const mean of this.means) mean.fill(0)
    // Laid out as rows of parts, as wide as all pixels together, the highest first.
    for (let k = 0; k < pixels.length; k++)
      if (under.flat) this.fill(k, 0, fine - 1, grids.pixel, k * fine, width)
      else
        for (let j = 0; j < fine; j++)
          for (let i = 0; i < fine; i++) {
            under.lieOn(first + k, i, j)
            this.fill(k, i, j, grids.part, j * width + k * fine + i)
          }
    tracer.run(width * fine)
    rows.forEach((row, j) => {
      read(tracer.found, j * width, width, row)
      row.to = width
      marks[j]!.fill(0)
    })
    if (tracer.seams) skins.set(tracer.found.seam.subarray(0, width * fine))
    rows.forEach((row, j) => {
      const above = Math.max(0, j - 1)
      const both = { row: marks[j]!, above: marks[above]! }
      this.straightness.mark(row, j > 0 ? rows[above] : undefined, both, OF_PART, fine)
    })
    this.markRims(of, width)
    this.gather(width)
  }

  /** Where the pattern breaks off towards a neighbour, outermost parts are compared with what lies next to them there. */
  private markRims(of: Uint8Array, width: number): void {
    const { fine, tracer, marks, rows, rims, ring, straightness, grids } = this
    const count = this.findRims(of, width)
    for (let first = 0; first < count; first += tracer.tile) {
      const now = Math.min(tracer.tile, count - first)
      for (let n = 0; n < now; n++) {
        const rim = rims[first + n]!
        const { besides, below } = SIDES[rim & 3]!
        const j = Math.floor((rim >> 2) / width)
        const c = (rim >> 2) - j * width
        const k = Math.floor(c / fine)
        this.under!.lieOn(this.first + k, c - k * fine, j)
        this.fill(k, c - k * fine + besides, j + below, grids.part, n)
      }
      tracer.run(now)
      read(tracer.found, 0, now, ring)
      for (let n = 0; n < now; n++) {
        const rim = rims[first + n]!
        const { mark, besides, below } = SIDES[rim & 3]!
        const j = Math.floor((rim >> 2) / width)
        const c = (rim >> 2) - j * width
        const across = besides !== 0
        const broken =
          besides - below < 0
            ? straightness.breakOf(rows[j]!, c, ring, n, across, OF_PART)
            : straightness.breakOf(ring, n, rows[j]!, c, across, OF_PART)
        if (broken !== SMOOTH) marks[j]![c]! |= broken === BREAK ? UNEVEN | mark : UNEVEN
      }
    }
  }

  /** Lists the outermost parts to be compared with what lies beyond. */
  private findRims(of: Uint8Array, width: number): number {
    const { fine, rims, pixels } = this
    const last = fine - 1
    let count = 0
    for (let k = 0; k < pixels.length; k++) {
      const marked = of[pixels[k]!]!
      if (marked <= UNEVEN) continue
      SIDES.forEach(({ mark, besides, below }, side) => {
        if (!(marked & mark)) return
        for (let n = 0; n < fine; n++) {
          const i = besides === 0 ? n : besides < 0 ? 0 : last
          const j = below === 0 ? n : below < 0 ? 0 : last
          rims[count++] = (j * width + k * fine + i) * 4 + side
        }
      })
    }
    return count
  }

  /** Adds up the parts: smooth ones as they are, the others by their own parts. */
  private gather(width: number): void {
    const { fine, rows, marks, skins, again, tracer, grids } = this
    const share = 1 / fine ** 2
    let count = 0
    rows.forEach((row, j) => {
      for (let c = 0; c < width; c++) {
        if (marks[j]![c]) again[count++] = j * width + c
        else
          this.add(Math.floor(c / fine), share, row.stack[c]!, row.means, c, skins[j * width + c]!)
      }
    })
    const most = Math.floor(tracer.tile / AGAIN)
    const { found } = tracer
    for (let first = 0; first < count; first += most) {
      const now = Math.min(most, count - first)
      for (let n = 0; n < now; n++) {
        const j = Math.floor(again[first + n]! / width)
        const c = again[first + n]! - j * width
        const k = Math.floor(c / fine)
        if (this.under!.ridgeIn(this.first + k, c - k * fine, j)) {
          this.fillRidge(k, c - k * fine, j, n * AGAIN)
          continue
        }
        this.under!.lieOn(this.first + k, c - k * fine, j)
        const { alongU, alongV } = rows[j]!
        const way = wayOf(marks[j]![c]!, alongU[c + 1]!, alongV[c + 1]!)
        this.fill(k, c - k * fine, j, grids[way], n * AGAIN)
      }
      tracer.run(now * AGAIN)
      for (let n = 0; n < now; n++) {
        const k = Math.floor((again[first + n]! % width) / fine)
        for (let p = n * AGAIN; p < (n + 1) * AGAIN; p++)
          this.add(k, share / AGAIN, found.stack[p]!, found.means, p, found.seam[p]!)
      }
    }
  }

  private add(
    k: number,
    share: number,
    stack: number,
    means: readonly Float32Array[] | PixelRow['means'],
    at: number,
    seam: number,
  ): void {
    this.seam[k]! += share * seam
    if (stack === NOTHING) return
    this.metal[k]! += share
    if (this.stack[k] === NOTHING) this.stack[k] = stack
    for (let n = 0; n < means.length; n++) this.means[n]![k]! += share * means[n]![at]!
  }

  /** Squares of part (i, j) of pixel k, each on its own facet. */
  private fillRidge(k: number, i: number, j: number, to: number): void {
    for (let n = 0; n < AGAIN; n++) {
      const [x, y] = [n % FINER, Math.floor(n / FINER)]
      this.under!.lieOnFinest(this.first + k, i * FINER + x, j * FINER + y)
      this.fill(k, i + x / FINER, j - (FINER - 1 - y) / FINER, this.grids.finest, to + n)
    }
  }

  /**
   * Points and footprints of a grid whose lower left corner is that of part (i, j) of pixel k, on the plane last taken:
   * rows of them, the highest first, `stride` apart in the tracer's input from `to` on.
   */
  private fill(
    k: number,
    i: number,
    j: number,
    { columns, rows, wide, high }: Grid,
    to: number,
    stride = columns,
  ): void {
    const { view, tracer, fine, part } = this
    const { plane } = this.under!
    const { frame, pixel, width, height } = view
    const at = this.pixels[k]!
    const row = Math.floor(at / width)
    const [right, up] = [i * part, (fine - 1 - j) * part]
    const across = (at - row * width) * pixel + right
    const upward = (height - (this.top + row) - 1) * pixel + up
    // Its height at the first corner.
    const out = plane.out + right * plane.right + up * plane.up
    for (let axis = 0; axis < 3; axis++) {
      const [r, u, n] = [frame.right[axis]!, frame.up[axis]!, frame.out[axis]!]
      const stepR = wide * (r + n * plane.right)
      const stepU = high * (u + n * plane.up)
      const start = frame.origin[axis]! + across * r + upward * u + n * out
      const place = tracer.input(axis)
      const du = tracer.input(3 + axis)
      const dv = tracer.input(6 + axis)
      for (let y = 0; y < rows; y++) {
        const line = start + (rows - y - 0.5) * stepU
        const from = to + y * stride
        for (let x = 0; x < columns; x++) {
          place[from + x] = line + (x + 0.5) * stepR
          du[from + x] = stepR
          dv[from + x] = stepU
        }
      }
    }
  }
}

/** The sides of a part, and the steps from it to the part beyond. */
const SIDES = [
  { mark: LEFT, besides: -1, below: 0 },
  { mark: RIGHT, besides: 1, below: 0 },
  { mark: UP, besides: 0, below: -1 },
  { mark: DOWN, besides: 0, below: 1 },
] as const

/** Rectangles side by side, m. */
interface Grid {
  readonly columns: number
  readonly rows: number
  readonly wide: number
  readonly high: number
}
type Grids = Readonly<Record<'pixel' | 'part' | 'finest' | 'squares' | 'lying' | 'standing', Grid>>

function gridsOf(pixel: number, fine: number): Grids {
  const grid = (side: number, columns: number, rows: number): Grid => ({
    columns,
    rows,
    wide: side / columns,
    high: side / rows,
  })
  const part = pixel / fine
  return {
    pixel: grid(pixel, fine, fine),
    part: grid(part, 1, 1),
    finest: grid(part / FINER, 1, 1),
    squares: grid(part, FINER, FINER),
    lying: grid(part, 1, AGAIN),
    standing: grid(part, AGAIN, 1),
  }
}

/**
 * How a part is taken in parts again. Each of those is all of the metal under its middle, so that a break is met to half
 * of one: where it runs along the part, or the sheets do and it with them, strips along it meet it four times as near
 * as squares, wherever it cuts the two sides. Squares met joints along the rows a hundredth of a pixel off, the same
 * way in all of a row, and read a sixteenth of a pixel beyond a joint what had been ground off there.
 */
function wayOf(marks: number, u: number, v: number): 'squares' | 'lying' | 'standing' {
  const [beside, above] = [marks & (LEFT | RIGHT), marks & (UP | DOWN)]
  if (!beside && !above) return 'squares'
  if (!beside || (above && Math.abs(v) > FINER * Math.abs(u))) return 'lying'
  if (!above || Math.abs(u) > FINER * Math.abs(v)) return 'standing'
  return 'squares'
}

/** Copies what was found from place `from` on to the start of a row. */
function read(found: Traced, from: number, count: number, to: PixelRow): void {
  const end = from + count
  to.layer.set(found.layer.subarray(from, end), 1)
  to.alongU.set(found.alongU.subarray(from, end), 1)
  to.alongV.set(found.alongV.subarray(from, end), 1)
  to.stack.set(found.stack.subarray(from, end))
  to.means.forEach((mean, n) => mean.set(found.means[n]!.subarray(from, end)))
}
