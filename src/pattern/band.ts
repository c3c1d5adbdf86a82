import type { LayerRow } from './bend-reader.ts'
import { FINER, Parts } from './parts.ts'
import { OF_PIXEL, type PixelRow, Straightness } from './straightness.ts'
import { type BandSurface, rasterise } from '#view'
import { NOTHING, type Tracer } from './tracer.ts'
import { UnderParts } from './under-parts.ts'
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
  /** How much of polish and rubbing the face is spared, 0 … 255; absent where all of it is reached. */
  readonly spared?: Uint8Array
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
  // A row more above and below, to compare the outer ones with: a picture is the same however it is cut in bands.
  const around = options.fine > 1 ? 1 : 0
  const [start, end] = [Math.max(0, top - around), Math.min(view.height, bottom + around)]
  const surface = rasterise(view, start, end)
  const drawing = new Drawing(view, tracer, surface, start, end - start)
  for (let row = 0; row < end - start; row++) drawing.row(row, options.fine > 1)
  const own = { from: (top - start) * width, to: (bottom - start) * width }
  const split = options.fine > 1 ? drawing.splitMarked(own, options.fine) : 0
  if (tracer.holes) drawing.clearHoles()
  const part = <T extends Uint8Array | Uint16Array>(values: T): T =>
    own.from === 0 && own.to === values.length ? values : (values.slice(own.from, own.to) as T)
  const { facets } = surface
  const alpha = part(surface.alpha)
  let metal = 0
  for (let i = 0; i < alpha.length; i++) if (alpha[i] !== 0) metal++
  const normal = (values: Float32Array) => {
    const whole = new Int16Array(alpha.length)
    for (let i = 0; i < whole.length; i++) whole[i] = Math.round(values[own.from + i]! * 32767)
    return whole
  }
  return {
    top,
    rows: bottom - top,
    alpha,
    means: drawing.means.map(part),
    stack: part(drawing.stack),
    ...(drawing.seamed ? { seam: part(drawing.seam) } : {}),
    ...(facets
      ? { normalRight: normal(facets.normalRight), normalUp: normal(facets.normalUp) }
      : {}),
    ...(facets?.spared && { spared: part(facets.spared) }),
    metal,
    split,
  }
}

class Drawing {
  readonly means: Uint16Array[]
  readonly stack: Uint16Array
  readonly seam: Uint8Array
  seamed = false
  private readonly marks: Uint8Array
  private readonly lines: readonly [LayerRow, LayerRow]
  private above: PixelRow | undefined
  private readonly view: FaceView
  private readonly tracer: Tracer
  private readonly surface: BandSurface
  private readonly top: number
  private readonly straightness: Straightness

  constructor(view: FaceView, tracer: Tracer, surface: BandSurface, top: number, rows: number) {
    const size = view.width * rows
    this.view = view
    this.tracer = tracer
    this.surface = surface
    this.top = top
    this.means = tracer.found.means.map(() => new Uint16Array(size))
    this.stack = new Uint16Array(size).fill(NOTHING)
    this.seam = new Uint8Array(size)
    this.marks = new Uint8Array(size)
    this.lines = [emptyLine(view.width), emptyLine(view.width)]
    this.straightness = straightnessOf(tracer)
  }

  row(row: number, comparing: boolean): void {
    const { view, tracer, surface } = this
    const { width } = view
    const at = row * width
    let [from, to] = [0, width]
    while (from < to && surface.alpha[at + from] === 0) from++
    while (to > from && surface.alpha[at + to - 1] === 0) to--
    const line = this.lines[row & 1]!
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
    if (!comparing) return
    const of = <T extends Uint8Array | Uint16Array>(values: T, start = at): T =>
      values.subarray(start, start + width) as T
    const pixels: PixelRow = {
      ...line,
      stack: of(this.stack),
      means: this.means.map((m) => of(m)),
      from,
      to,
    }
    const marks = { row: of(this.marks), above: of(this.marks, Math.max(0, at - width)) }
    this.straightness.mark(pixels, this.above, marks, OF_PIXEL)
    this.above = pixels
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

  /** Takes every marked pixel of these in parts, each with its own footprint. Gives how many there were. */
  splitMarked({ from, to }: { from: number; to: number }, fine: number): number {
    const { marks, surface, view, tracer, top } = this
    const parts = new Parts(view, tracer, top, fine, this.straightness)
    const marked: number[] = []
    for (let at = from; at < to; at++)
      if (marks[at] !== 0 && surface.alpha[at] !== 0) marked.push(at)
    for (let start = 0; start < marked.length; start += SURFACES) {
      const some = marked.slice(start, start + SURFACES)
      const under = new UnderParts(view, surface, top, some, fine, FINER)
      for (let first = 0; first < some.length; first += parts.most) {
        const now = some.slice(first, first + parts.most)
        parts.draw(now, marks, under, first)
        now.forEach((at, k) => this.take(at, k, parts))
      }
    }
    return marked.length
  }

  clearHoles(): void {
    const { alpha } = this.surface
    for (let i = 0; i < alpha.length; i++) if (this.stack[i] === NOTHING) alpha[i] = 0
  }

  private take(at: number, k: number, { metal, means, seam, stack }: Parts): void {
    const share = metal[k]!
    if (this.tracer.holes) {
      if (this.stack[at] === NOTHING) this.stack[at] = stack[k]!
      this.surface.alpha[at] = this.surface.alpha[at]! * share
    }
    // Where there is no metal the means are 0.
    means.forEach(
      (mean, n) => (this.means[n]![at] = share > 0 ? (mean[k]! / share) * FULL + 0.5 : 0),
    )
    if (this.tracer.seams) this.seam[at] = Math.round(seam[k]! * 255)
  }
}

/** Pixels the parts of which have their surface found at once. */
const SURFACES = 4096

const known = new WeakMap<Tracer, Straightness>()

function straightnessOf(tracer: Tracer): Straightness {
  const made = known.get(tracer) ?? new Straightness(tracer)
  known.set(tracer, made)
  return made
}

function emptyLine(width: number): LayerRow {
  const row = () => new Float32Array(width + 1)
  return { layer: row(), alongU: row(), alongV: row() }
}
