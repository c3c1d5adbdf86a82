import type { BandSurface, FaceView, PartFacets } from '#view'
import { DOWN, LEFT, OF_PART, RIGHT, SMOOTH, UNEVEN, UP } from './straightness.ts'
import type { PixelRow, Straightness } from './straightness.ts'
import { NOTHING, type Tracer } from './tracer.ts'

/** Parts a side into which a part is split in which the pattern is not smooth either. */
const FINER = 4

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
  private readonly view: FaceView
  private readonly tracer: Tracer
  private readonly surface: BandSurface
  private readonly top: number
  private readonly fine: number
  private readonly straightness: Straightness
  private facets: PartFacets | undefined
  private first = 0

  constructor(
    view: FaceView,
    tracer: Tracer,
    surface: BandSurface,
    top: number,
    fine: number,
    straightness: Straightness,
  ) {
    this.view = view
    this.tracer = tracer
    this.surface = surface
    this.top = top
    this.fine = fine
    this.straightness = straightness
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
  }

  /**
   * Draws pixels by their numbers in the band; `of`: how each was marked there; `facets`: of their parts, the first
   * pixel's being number `first` there.
   */
  draw(
    pixels: readonly number[],
    of: Uint8Array,
    facets: PartFacets | undefined,
    first: number,
  ): void {
    const { fine, rows, marks, skins, tracer } = this
    this.facets = facets
    this.first = first
    const width = pixels.length * fine
    this.metal.fill(0)
    this.seam.fill(0)
    this.stack.fill(NOTHING)
    for (const mean of this.means) mean.fill(0)
    const part = this.view.pixel / fine
    // Laid out as rows of parts, as wide as all pixels together, the highest first.
    pixels.forEach((at, k) => {
      if (!facets) this.fill(this.planeOf(at), at, 0, 0, part, fine, k * fine, width)
      else
        for (let j = 0; j < fine; j++)
          for (let i = 0; i < fine; i++) {
            const plane = this.planeOf(at, k, i, j)
            this.fill(
              plane,
              at,
              i * part,
              (fine - 1 - j) * part,
              part,
              1,
              j * width + k * fine + i,
              1,
            )
          }
    })
    tracer.run(width * fine)
    const { found } = tracer
    rows.forEach((row, j) => {
      const [from, to] = [j * width, (j + 1) * width]
      row.layer.set(found.layer.subarray(from, to), 1)
      row.alongU.set(found.alongU.subarray(from, to), 1)
      row.alongV.set(found.alongV.subarray(from, to), 1)
      row.stack.set(found.stack.subarray(from, to))
      row.means.forEach((mean, n) => mean.set(found.means[n]!.subarray(from, to)))
      row.to = width
      marks[j]!.fill(0)
    })
    if (tracer.seams) skins.set(found.seam.subarray(0, width * fine))
    rows.forEach((row, j) => {
      const above = Math.max(0, j - 1)
      const both = { row: marks[j]!, above: marks[above]! }
      this.straightness.mark(row, j > 0 ? rows[above] : undefined, both, OF_PART, fine)
    })
    this.markRims(pixels, of)
    this.gather(pixels, width)
  }

  /** Where the pattern breaks off towards a neighbour, outermost parts are compared with what lies next to them there. */
  private markRims(pixels: readonly number[], of: Uint8Array): void {
    const { fine, tracer, marks, rows, ring, straightness } = this
    const part = this.view.pixel / fine
    const rims = pixels.flatMap((at, k) => this.rimsOf(of[at]!, at, k))
    for (let first = 0; first < rims.length; first += tracer.tile) {
      const now = rims.slice(first, first + tracer.tile)
      now.forEach(({ k, at, i, j, besides, above }, n) => {
        const [right, up] = [(i + besides) * part, (fine - 1 - j + above) * part]
        this.fill(this.planeOf(at, k, i, j), at, right, up, part, 1, n, 1)
      })
      tracer.run(now.length)
      const { found } = tracer
      ring.layer.set(found.layer.subarray(0, now.length), 1)
      ring.alongU.set(found.alongU.subarray(0, now.length), 1)
      ring.alongV.set(found.alongV.subarray(0, now.length), 1)
      ring.stack.set(found.stack.subarray(0, now.length))
      ring.means.forEach((mean, m) => mean.set(found.means[m]!.subarray(0, now.length)))
      now.forEach(({ k, i, j, besides, above }, n) => {
        const c = k * fine + i
        const across = besides !== 0
        const broken =
          besides + above < 0
            ? straightness.breakOf(rows[j]!, c, ring, n, across, OF_PART)
            : straightness.breakOf(ring, n, rows[j]!, c, across, OF_PART)
        if (broken !== SMOOTH) marks[j]![c]! |= UNEVEN
      })
    }
  }

  /** Outermost parts of a pixel to be compared with what lies beyond. */
  private rimsOf(sides: number, at: number, k: number): Rim[] {
    const last = this.fine - 1
    const rims: Rim[] = []
    const add = (j: number, i: number, besides: number, above: number) =>
      rims.push({ k, at, i, j, besides, above })
    if (sides > UNEVEN)
      for (let n = 0; n <= last; n++) {
        if (sides & LEFT) add(n, 0, -1, 0)
        if (sides & RIGHT) add(n, last, 1, 0)
        if (sides & UP) add(0, n, 0, 1)
        if (sides & DOWN) add(last, n, 0, -1)
      }
    return rims
  }

  /** Adds up the parts: smooth ones as they are, the others by their own parts. */
  private gather(pixels: readonly number[], width: number): void {
    const { fine, rows, marks, skins } = this
    const share = 1 / fine ** 2
    const again: Again[] = []
    rows.forEach((row, j) => {
      for (let c = 0; c < width; c++) {
        const k = Math.floor(c / fine)
        if (marks[j]![c]) again.push({ k, at: pixels[k]!, i: c - k * fine, j })
        else this.add(k, share, row.stack[c]!, row.means, c, skins[j * width + c]!)
      }
    })
    const each = FINER ** 2
    const most = Math.floor(this.tracer.tile / each)
    const part = this.view.pixel / fine
    const { found } = this.tracer
    for (let first = 0; first < again.length; first += most) {
      const now = again.slice(first, first + most)
      now.forEach(({ k, at, i, j }, n) => {
        const [plane, right, up] = [this.planeOf(at, k, i, j), i * part, (fine - 1 - j) * part]
        this.fill(plane, at, right, up, part / FINER, FINER, n * each, FINER)
      })
      this.tracer.run(now.length * each)
      now.forEach(({ k }, n) => {
        for (let p = n * each; p < (n + 1) * each; p++)
          this.add(k, share / each, found.stack[p]!, found.means, p, found.seam[p]!)
      })
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

  /** The surface under part (i, j) of pixel k, or under the whole pixel, as a plane: its height at the pixel's corner. */
  private planeOf(at: number, k = 0, i = 0, j = 0): Plane {
    const { facets: parts, surface, fine, view } = this
    const whole = surface.facets
    const { pixel } = view
    if (!whole) return FLAT
    const n = ((this.first + k) * fine + j) * fine + i
    if (parts && parts.out[n]! > -Infinity) {
      const [right, up] = [parts.slopeRight[n]!, parts.slopeUp[n]!]
      const corner = ((i + 0.5) * right + (fine - j - 0.5) * up) * (pixel / fine)
      return { out: parts.out[n]! - corner, right, up }
    }
    const [right, up] = [whole.slopeRight[at]!, whole.slopeUp[at]!]
    return { out: whole.out[at]! - (right + up) * (pixel / 2), right, up }
  }

  /**
   * Points and footprints of `count` × `count` squares of side `part`, from so far right of and above a pixel's lower
   * left corner: rows of them, the highest first, `stride` apart in the tracer's input from `to` on.
   */
  private fill(
    plane: Plane,
    at: number,
    right: number,
    up: number,
    part: number,
    count: number,
    to: number,
    stride: number,
  ): void {
    const { view, tracer } = this
    const { frame, pixel, width } = view
    const row = Math.floor(at / width)
    const across = (at - row * width) * pixel + right
    const upward = (view.height - (this.top + row) - 1) * pixel + up
    // Its height at the first corner.
    const out = plane.out + right * plane.right + up * plane.up
    for (let k = 0; k < 3; k++) {
      const n = frame.out[k]!
      const stepR = part * (frame.right[k]! + n * plane.right)
      const stepU = part * (frame.up[k]! + n * plane.up)
      const start = frame.origin[k]! + across * frame.right[k]! + upward * frame.up[k]! + n * out
      const place = tracer.input(k)
      const du = tracer.input(3 + k)
      const dv = tracer.input(6 + k)
      for (let j = 0; j < count; j++) {
        const line = start + (count - j - 0.5) * stepU
        const first = to + j * stride
        for (let i = 0; i < count; i++) {
          place[first + i] = line + (i + 0.5) * stepR
          du[first + i] = stepR
          dv[first + i] = stepU
        }
      }
    }
  }
}

/** A part to be split: of the k-th pixel, number `at` in the band, column i and row j from the top. */
interface Again {
  readonly k: number
  readonly at: number
  readonly i: number
  readonly j: number
}

/** An outermost part, and on which side of it the next pixel lies. */
interface Rim extends Again {
  readonly besides: number
  readonly above: number
}

/** A surface about a pixel: its height at the pixel's lower left corner, and its slopes. */
interface Plane {
  readonly out: number
  readonly right: number
  readonly up: number
}
const FLAT: Plane = { out: 0, right: 0, up: 0 }
