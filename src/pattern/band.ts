import { type BendReader, type LayerRow, bendReader } from './bend-reader.ts'
import { type BandSurface, rasterise } from '#view'
import { NOTHING, type Tracer } from './tracer.ts'
import type { FaceView } from '#view'

/** The pattern on a band of rows. Shares are 0 … 65535 for 0 … 1. */
export interface Band {
  readonly top: number
  readonly rows: number
  readonly alpha: Uint8Array
  /** Mean of each weight over each pixel. */
  readonly means: readonly Uint16Array[]
  /** Number of the stack the metal came from, or NOTHING. */
  readonly stack: Uint16Array
  /** Share that is a welded skin; absent where there is none. */
  readonly seam?: Uint8Array
  /** Right and up parts of the surface's normal, −127 … 127; absent where the face is flat. */
  readonly normalRight?: Int16Array
  readonly normalUp?: Int16Array
  /** Pixels of metal, and those of them taken in `fine` × `fine` parts. */
  readonly metal: number
  readonly split: number
}

export interface BandOptions {
  /** Parts a side into which a pixel is split where the pattern is not smooth; 1: none are. */
  readonly fine: number
}

/** What stands for 1 in a band's shares. A typed array takes the whole part of what it is given: ½ is added before. */
export const FULL = 65535

/** Draws rows `top` to `bottom` (exclusive) of a face. */
export function drawBand(
  view: FaceView,
  tracer: Tracer,
  top: number,
  bottom: number,
  options: BandOptions,
): Band {
  const { width } = view
  const rows = bottom - top
  // One row more above, to compare the first with.
  const above = options.fine > 1 && top > 0 ? 1 : 0
  const start = top - above
  const surface = rasterise(view, start, bottom)
  const drawing = new Drawing(view, tracer, surface, start, rows + above)
  for (let row = 0; row < rows + above; row++) drawing.row(row, options.fine > 1)
  const split = options.fine > 1 ? drawing.splitFlagged(above, options.fine) : 0
  if (tracer.holes) drawing.clearHoles()
  const cut = width * above
  const { facets } = surface
  const alpha = cutOff(surface.alpha, cut)
  let metal = 0
  for (let i = 0; i < alpha.length; i++) if (alpha[i] !== 0) metal++
  const normal = (values: Float32Array) => {
    const whole = new Int16Array(alpha.length)
    for (let i = 0; i < whole.length; i++) whole[i] = Math.round(values[cut + i]! * 32767)
    return whole
  }
  return {
    top,
    rows,
    alpha,
    means: drawing.means.map((m) => cutOff(m, cut)),
    stack: cutOff(drawing.stack, cut),
    ...(drawing.seamed ? { seam: cutOff(drawing.seam, cut) } : {}),
    ...(facets
      ? { normalRight: normal(facets.normalRight), normalUp: normal(facets.normalUp) }
      : {}),
    metal,
    split,
  }
}

function cutOff<T extends Uint8Array | Uint16Array>(values: T, from: number): T {
  return from === 0 ? values : (values.slice(from) as T)
}

class Drawing {
  readonly means: Uint16Array[]
  readonly stack: Uint16Array
  readonly seam: Uint8Array
  seamed = false
  private readonly flags: Uint8Array
  private readonly lines: readonly [Line, Line]
  private readonly view: FaceView
  private readonly tracer: Tracer
  private readonly surface: BandSurface
  private readonly top: number
  private readonly bends: { readonly reader: BendReader; readonly tile: number }

  constructor(view: FaceView, tracer: Tracer, surface: BandSurface, top: number, rows: number) {
    const size = view.width * rows
    this.view = view
    this.tracer = tracer
    this.surface = surface
    this.top = top
    this.means = tracer.found.means.map(() => new Uint16Array(size))
    this.stack = new Uint16Array(size).fill(NOTHING)
    this.seam = new Uint8Array(size)
    this.flags = new Uint8Array(size)
    this.lines = [emptyLine(view.width), emptyLine(view.width)]
    this.bends = { reader: bendsOf(tracer), tile: tracer.tile }
  }

  row(row: number, comparing: boolean): void {
    const { view, tracer, surface } = this
    const { width } = view
    const at = row * width
    let [from, to] = [0, width]
    while (from < to && surface.alpha[at + from] === 0) from++
    while (to > from && surface.alpha[at + to - 1] === 0) to--
    const line = this.lines[row & 1]!
    line.from = from
    line.to = to
    const { found } = tracer
    for (let left = from; left < to; left += tracer.tile) {
      const count = Math.min(tracer.tile, to - left)
      this.fillRow(row, left, count)
      tracer.run(count)
      this.means.forEach((mean, k) => {
        const of = found.means[k]!
        const first = at + left
        for (let i = 0; i < count; i++) mean[first + i] = of[i]! * FULL + 0.5
      })
      this.stack.set(found.stack.subarray(0, count), at + left)
      if (tracer.seams) {
        this.seamed = true
        for (let i = 0; i < count; i++) this.seam[at + left + i] = Math.round(found.seam[i]! * 255)
      }
      if (!comparing) continue
      line.layer.set(found.layer.subarray(0, count), left + 1)
      line.alongU.set(found.alongU.subarray(0, count), left + 1)
      line.alongV.set(found.alongV.subarray(0, count), left + 1)
    }
    if (comparing) this.compare(row, line, this.lines[(row & 1) ^ 1]!)
  }

  /** Points and footprints of a run of pixels in a row. */
  private fillRow(row: number, left: number, count: number): void {
    const { view, tracer, surface } = this
    const { pixel, frame } = view
    const up = (view.height - (this.top + row) - 0.5) * pixel
    const right = (left + 0.5) * pixel
    const at = row * view.width + left
    const { facets } = surface
    for (let k = 0; k < 3; k++) {
      const [r, u, n] = [frame.right[k]!, frame.up[k]!, frame.out[k]!]
      const start = frame.origin[k]! + right * r + up * u
      const place = tracer.input(k)
      const step = pixel * r
      if (facets && n !== 0)
        for (let i = 0; i < count; i++) place[i] = start + i * step + n * facets.out[at + i]!
      else if (step === 0) place.fill(start, 0, count)
      else for (let i = 0; i < count; i++) place[i] = start + i * step
      const [du, dv] = [tracer.input(3 + k), tracer.input(6 + k)]
      if (facets && n !== 0)
        for (let i = 0; i < count; i++) {
          du[i] = pixel * (r + n * facets.slopeRight[at + i]!)
          dv[i] = pixel * (u + n * facets.slopeUp[at + i]!)
        }
      else {
        du.fill(pixel * r, 0, count)
        dv.fill(pixel * u, 0, count)
      }
    }
  }

  /** Flags pixels across which the layer coordinate does not run straight, or beyond which other metal lies. */
  private compare(row: number, line: Line, above: Line): void {
    const { stack, flags, view, bends } = this
    const { width } = view
    const at = row * width
    for (let first = line.from; first < line.to; first += bends.tile) {
      const count = Math.min(bends.tile, line.to - first)
      const { left, up } = bends.reader.read(line, above, first + 1, count)
      for (let i = 0; i < count; i++) {
        if (left[i]! > 0 && first + i > line.from)
          flags[at + first + i] = flags[at + first + i - 1] = 1
        if (up[i]! > 0 && row > 0 && first + i >= above.from && first + i < above.to)
          flags[at + first + i] = flags[at + first + i - width] = 1
      }
    }
    if (this.tracer.stacks.length === 1 && !this.tracer.holes) return
    for (let i = at + line.from; i < at + line.to; i++) {
      if (i > at && stack[i] !== stack[i - 1]) flags[i] = flags[i - 1] = 1
      if (row > 0 && stack[i] !== stack[i - width]) flags[i] = flags[i - width] = 1
    }
  }

  /** Takes every flagged pixel in fine × fine parts, each with its own footprint. Gives how many there were. */
  splitFlagged(aboveRows: number, fine: number): number {
    const { flags, surface, view, tracer } = this
    const parts = fine * fine
    const perTile = Math.max(1, Math.floor(tracer.tile / parts))
    const waiting: number[] = []
    let done = 0
    const flush = () => {
      this.fillParts(waiting, fine)
      tracer.run(waiting.length * parts)
      waiting.forEach((at, k) => this.readParts(at, k * parts, parts))
      done += waiting.length
      waiting.length = 0
    }
    for (let at = aboveRows * view.width; at < flags.length; at++) {
      if (flags[at] === 0 || surface.alpha[at] === 0) continue
      waiting.push(at)
      if (waiting.length === perTile) flush()
    }
    if (waiting.length > 0) flush()
    return done
  }

  clearHoles(): void {
    const { alpha } = this.surface
    for (let i = 0; i < alpha.length; i++) if (this.stack[i] === NOTHING) alpha[i] = 0
  }

  private fillParts(pixels: readonly number[], fine: number): void {
    const { view, tracer, surface } = this
    const { frame, pixel, width } = view
    const { facets } = surface
    const part = pixel / fine
    for (let k = 0; k < 3; k++) {
      const r = frame.right[k]!
      const u = frame.up[k]!
      const n = facets ? frame.out[k]! : 0
      const place = tracer.input(k)
      const du = tracer.input(3 + k)
      const dv = tracer.input(6 + k)
      let to = 0
      for (let p = 0; p < pixels.length; p++) {
        const at = pixels[p]!
        const row = Math.floor(at / width)
        const right = (at - row * width) * pixel
        const up = (view.height - (this.top + row) - 1) * pixel
        let start = frame.origin[k]! + right * r + up * u
        let stepR = part * r
        let stepU = part * u
        if (n !== 0) {
          const sr = facets!.slopeRight[at]!
          const su = facets!.slopeUp[at]!
          start += n * (facets!.out[at]! - (sr + su) * (pixel / 2))
          stepR += part * n * sr
          stepU += part * n * su
        }
        for (let j = 0; j < fine; j++) {
          const line = start + (j + 0.5) * stepU
          for (let i = 0; i < fine; i++) {
            place[to] = line + (i + 0.5) * stepR
            du[to] = stepR
            dv[to++] = stepU
          }
        }
      }
    }
  }

  private readParts(at: number, first: number, parts: number): void {
    const { found } = this.tracer
    const { stack, means, seam } = found
    const end = first + parts
    let metal = parts
    if (this.tracer.holes) {
      metal = 0
      for (let i = first; i < end; i++) {
        if (stack[i] === NOTHING) continue
        if (metal++ === 0 && this.stack[at] === NOTHING) this.stack[at] = stack[i]!
      }
      this.surface.alpha[at] = (this.surface.alpha[at]! * metal) / parts
    }
    for (let k = 0; k < means.length; k++) {
      const of = means[k]!
      let sum = 0
      // Where there is no metal the means are 0.
      for (let i = first; i < end; i++) sum += of[i]!
      this.means[k]![at] = metal > 0 ? (sum / metal) * FULL + 0.5 : 0
    }
    if (!this.tracer.seams) return
    let welded = 0
    for (let i = first; i < end; i++) welded += seam[i]!
    this.seam[at] = Math.round((welded / parts) * 255)
  }
}

const benders = new WeakMap<Tracer, BendReader>()

function bendsOf(tracer: Tracer): BendReader {
  const made = benders.get(tracer) ?? bendReader(tracer.tile)
  benders.set(tracer, made)
  return made
}

/** Entry i + 1 is pixel i's: the first pixel's left neighbour is nobody. */
interface Line extends LayerRow {
  from: number
  to: number
}

function emptyLine(width: number): Line {
  const row = () => new Float32Array(width + 1)
  return { layer: row(), alongU: row(), alongV: row(), from: 0, to: 0 }
}
