import { type Field, type Spot, valueAt } from './field.ts'
import { powerOfTwo, transform } from './fourier.ts'

/** What is met going along a line on a face. */
export interface LinesMet {
  /** Length of metal under the line, m. */
  readonly length: number
  /** Where bright turns to dark or dark to bright, m from the line's start. */
  readonly boundaries: readonly number[]
  /** Layers to a metre: boundaries from the first to the last, one layer between two. */
  readonly perMetre: number
  /** Mean thickness on the face of the layers between, and its deviation, m. */
  readonly spacing: number
  readonly deviation: number
}

/** A boundary is counted once the value has gone from below `low` to above `high`, or back: noise is not. */
const LOW = 0.35
const HIGH = 0.65

/** Lines met from one spot to another; fields that never leave the middle greys have none. */
export function linesAlong(field: Field, from: Spot, to: Spot): LinesMet {
  const whole = Math.hypot(to.x - from.x, to.y - from.y)
  const n = Math.max(2, Math.ceil(whole * field.perMetre * 2))
  const at = (i: number) => (whole * i) / n
  const values = Array.from({ length: n + 1 }, (_, i) =>
    valueAt(field, {
      x: from.x + ((to.x - from.x) * i) / n,
      y: from.y + ((to.y - from.y) * i) / n,
    }),
  )
  const boundaries: number[] = []
  let side = 0
  let crossed = 0
  let metal = 0
  values.forEach((v, i) => {
    if (Number.isNaN(v)) return
    metal += whole / n
    const before = values[i - 1]
    if (before !== undefined && !Number.isNaN(before) && before > 0.5 !== v > 0.5)
      crossed = at(i - 1) + ((at(i) - at(i - 1)) * (0.5 - before)) / (v - before)
    const now = v > HIGH ? 1 : v < LOW ? -1 : side
    if (side !== 0 && now !== side) boundaries.push(crossed)
    side = now
  })
  const gaps = boundaries.slice(1).map((b, i) => b - boundaries[i]!)
  const spacing = gaps.length > 0 ? gaps.reduce((a, b) => a + b, 0) / gaps.length : Infinity
  const square = gaps.reduce((sum, gap) => sum + (gap - spacing) ** 2, 0)
  return {
    length: metal,
    boundaries,
    perMetre: gaps.length > 0 ? 1 / spacing : 0,
    spacing,
    deviation: gaps.length > 1 ? Math.sqrt(square / (gaps.length - 1)) : 0,
  }
}

export interface Spectrum {
  /** Cycles to a metre of each entry of `power`. */
  readonly step: number
  readonly power: Float64Array
  /** The strongest spacing, m, its place found between entries; Infinity if there is none. */
  readonly spacing: number
}

/** Spacing spectrum along a direction: the mean power of parallel lines in a box, each weighed by a Hann window. */
export function spectrumAlong(
  field: Field,
  options: { readonly axis?: 'x' | 'y'; readonly from?: Spot; readonly to?: Spot } = {},
): Spectrum {
  const rows = linesOf(field, options)
  const longest = Math.max(2, ...rows.map((row) => row.length))
  const n = powerOfTwo(4 * longest)
  const power = new Float64Array(n / 2)
  for (const row of rows) {
    const [re, im] = [new Float64Array(n), new Float64Array(n)]
    const mean = row.reduce((a, b) => a + b, 0) / row.length
    row.forEach((v, i) => {
      re[i] = (v - mean) * (0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / row.length))
    })
    transform(re, im)
    for (let k = 0; k < power.length; k++)
      power[k] = power[k]! + (re[k]! ** 2 + im[k]! ** 2) / rows.length
  }
  const step = field.perMetre / n
  // Nothing slower than two waves in the longest line is told apart from a slope.
  const peak = highest(power, Math.ceil((2 * n) / longest))
  return { step, power, spacing: peak > 0 ? 1 / (peak * step) : Infinity }
}

/** Rows or columns of a box, without gaps. */
function linesOf(
  field: Field,
  options: { readonly axis?: 'x' | 'y'; readonly from?: Spot; readonly to?: Spot },
): number[][] {
  const { axis = 'x', from = { x: 0, y: 0 }, to } = options
  const { width, height, perMetre, values } = field
  const clamp = (v: number, most: number) => Math.min(most, Math.max(0, Math.round(v)))
  const [left, upper] = [clamp(from.x * perMetre, width), clamp(from.y * perMetre, height)]
  const right = to ? clamp(to.x * perMetre, width) : width
  const lower = to ? clamp(to.y * perMetre, height) : height
  const lines: number[][] = []
  const [first, last] = axis === 'x' ? [upper, lower] : [left, right]
  const [start, end] = axis === 'x' ? [left, right] : [upper, lower]
  for (let j = first; j < last; j++) {
    const line: number[] = []
    for (let i = start; i < end; i++) {
      const v = axis === 'x' ? values[j * width + i]! : values[i * width + j]!
      if (!Number.isNaN(v)) line.push(v)
    }
    if (line.length > 8) lines.push(line)
  }
  return lines
}

/** The place of the highest entry from `first` on, found between entries by a parabola through the logs; 0 if flat. */
function highest(values: Float64Array, first: number): number {
  let best = -1
  for (let k = Math.max(1, first); k + 1 < values.length; k++)
    if (
      values[k]! >= values[k - 1]! &&
      values[k]! >= values[k + 1]! &&
      (best < 0 || values[k]! > values[best]!)
    )
      best = k
  if (best < 0 || !(values[best]! > 0)) return 0
  const [a, b, c] = [best - 1, best, best + 1].map((k) => Math.log(Math.max(values[k]!, 1e-300)))
  const bend = a! - 2 * b! + c!
  return bend < 0 ? best + (a! - c!) / (2 * bend) : best
}

/**
 * Distance after which a face repeats along an axis: between stars, rungs, drops. From the mean autocorrelation of the
 * lines in a box: the strongest repeat, measured over as many repeats as the box holds. Infinity if nothing repeats.
 */
export function repeatAlong(
  field: Field,
  options: { readonly axis?: 'x' | 'y'; readonly from?: Spot; readonly to?: Spot } = {},
): number {
  const rows = linesOf(field, options)
  const longest = Math.max(0, ...rows.map((row) => row.length))
  if (longest < 16) return Infinity
  const n = powerOfTwo(2 * longest)
  const like = new Float64Array(n)
  for (const row of rows) {
    const [re, im] = [new Float64Array(n), new Float64Array(n)]
    const mean = row.reduce((a, b) => a + b, 0) / row.length
    row.forEach((v, i) => (re[i] = v - mean))
    transform(re, im)
    for (let k = 0; k < n; k++) {
      re[k] = re[k]! ** 2 + im[k]! ** 2
      im[k] = 0
    }
    transform(re, im)
    for (let k = 0; k < n; k++) like[k] = like[k]! + re[k]! / n
  }
  // Fewer pairs lie further apart.
  const half = Math.floor((longest * 2) / 3)
  const fair = Float64Array.from({ length: half }, (_, k) => like[k]! / (longest - k))
  const down = fair.findIndex((v) => v < 0)
  if (down < 0) return Infinity
  const peaks = peaksOf(fair, down)
  const top = Math.max(0, ...peaks.map((p) => p.height))
  if (top < 0.2 * fair[0]!) return Infinity
  // The first peak nearly as high as the highest is one repeat; later ones near its multiples tell it more finely.
  const first = peaks.find((p) => p.height > 0.9 * top)!
  let period = first.at
  for (let m = 2; ; m++) {
    const near = peaks.filter((p) => Math.abs(p.at - m * period) < 0.1 * period)
    const next = near.sort((a, b) => b.height - a.height)[0]
    if (!next) break
    period = next.at / m
  }
  return period / field.perMetre
}

function peaksOf(values: Float64Array, from: number): { at: number; height: number }[] {
  const peaks = []
  for (let k = Math.max(1, from); k + 1 < values.length; k++) {
    const [a, b, c] = [values[k - 1]!, values[k]!, values[k + 1]!]
    if (b <= 0 || b < a || b <= c) continue
    const bend = a - 2 * b + c
    peaks.push({ at: bend < 0 ? k + (a - c) / (2 * bend) : k, height: b })
  }
  return peaks
}

/** The way lines run in a box: turns of the line from the right, upwards, −¼ … ¼; `clear` 1: all one way, 0: every way. */
export function angleOf(
  field: Field,
  options: { readonly from?: Spot; readonly to?: Spot } = {},
): { readonly turns: number; readonly clear: number } {
  const { width, height, perMetre, values } = field
  const { from = { x: 0, y: 0 }, to = { x: width / perMetre, y: height / perMetre } } = options
  const first = { i: Math.floor(from.x * perMetre), j: Math.floor(from.y * perMetre) }
  const last = { i: Math.ceil(to.x * perMetre), j: Math.ceil(to.y * perMetre) }
  let [xx, xy, yy] = [0, 0, 0]
  for (let j = Math.max(1, first.j); j < Math.min(height - 1, last.j); j++)
    for (let i = Math.max(1, first.i); i < Math.min(width - 1, last.i); i++) {
      // Gradients by a 3 × 3 operator whose direction is true to second order (weights 3, 10, 3).
      const v = (di: number, dj: number) => values[(j + dj) * width + i + di]!
      const gx = 3 * (v(1, -1) - v(-1, -1) + v(1, 1) - v(-1, 1)) + 10 * (v(1, 0) - v(-1, 0))
      const gy = 3 * (v(-1, -1) - v(-1, 1) + v(1, -1) - v(1, 1)) + 10 * (v(0, -1) - v(0, 1))
      if (Number.isNaN(gx + gy)) continue
      xx += gx * gx
      xy += gx * gy
      yy += gy * gy
    }
  const sum = xx + yy
  if (!(sum > 0)) return { turns: 0, clear: 0 }
  // The lines run square to the gradient.
  const turns = Math.atan2(-2 * xy, yy - xx) / (4 * Math.PI)
  return { turns, clear: Math.hypot(xx - yy, 2 * xy) / sum }
}

/** Share of the metal that is bright: of a drawn pattern its mean; of a photograph the share above the best parting. */
export function brightShare(field: Field, kind: 'drawn' | 'photograph' = 'drawn'): number {
  const metal = field.values.filter((v) => !Number.isNaN(v))
  if (metal.length === 0) return 0
  if (kind === 'drawn') return metal.reduce((a, b) => a + b, 0) / metal.length
  const parting = partOf(metal)
  return metal.reduce((n, v) => n + (v > parting ? 1 : 0), 0) / metal.length
}

/** The value that parts the two heaps of a histogram best: greatest variance between them (Otsu 1979, from memory). */
function partOf(values: Float32Array): number {
  const bins = new Float64Array(256)
  for (const v of values) {
    const k = Math.min(255, Math.max(0, Math.floor(v * 256)))
    bins[k] = bins[k]! + 1
  }
  const total = values.length
  const whole = bins.reduce((sum, n, k) => sum + n * k, 0)
  let [below, sum, best, at] = [0, 0, -1, 0.5]
  bins.forEach((n, k) => {
    below += n
    sum += n * k
    if (below === 0 || below === total) return
    const gap = sum / below - (whole - sum) / (total - below)
    const between = below * (total - below) * gap * gap
    if (between > best) [best, at] = [between, (k + 1) / 256]
  })
  return at
}
