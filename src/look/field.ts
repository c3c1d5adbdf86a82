import type { PatternMap } from '#pattern'
import { type Image, toLinear } from './image.ts'

/** How bright a face is, 0 … 1, from a drawn pattern or a photograph: what is measured. NaN where there is no metal. */
export interface Field {
  readonly width: number
  readonly height: number
  readonly values: Float32Array
  /** Pixels to a metre. */
  readonly perMetre: number
}

/** The bright share of each pixel of a drawn pattern. */
export function fieldOfMap(map: PatternMap, mean = 0): Field {
  const { width, height, alpha } = map
  const of = map.means[mean]!
  const values = Float32Array.from(of, (v, i) => (alpha[i]! < 128 ? NaN : v / 65535))
  return { width, height, values, perMetre: 1 / map.view.pixel }
}

/**
 * A photograph made ready: light, evened out (divided by its mean over `evenOver`, m, for no lamp is even), its darkest
 * and brightest fiftieth set to 0 and 1.
 */
export function fieldOfPicture(
  picture: Pick<Image, 'width' | 'height' | 'data'> & { readonly channels: 1 | 2 | 3 | 4 },
  perMetre: number,
  evenOver = 0.02,
): Field {
  const { width, height, channels, data } = picture
  const most = data instanceof Uint16Array ? 65535 : 255
  const light = new Float32Array(width * height)
  const linear = Float32Array.from({ length: most + 1 }, (_, v) => toLinear(v / most))
  for (let i = 0; i < light.length; i++) {
    const at = i * channels
    // Luminance of the screen's primaries (IEC 61966-2-1).
    light[i] =
      channels >= 3
        ? 0.2126 * linear[data[at]!]! +
          0.7152 * linear[data[at + 1]!]! +
          0.0722 * linear[data[at + 2]!]!
        : linear[data[at]!]!
  }
  const radius = Math.round((evenOver * perMetre) / 2)
  const even = meanAround(light, width, height, Math.max(radius, 8))
  const values = light.map((v, i) => v / Math.max(even[i]!, 1e-6))
  const sorted = Float32Array.from(values).sort()
  const [low, high] = [0.02, 0.98].map((q) => sorted[Math.floor(q * (sorted.length - 1))]!)
  const range = Math.max(high! - low!, 1e-6)
  return {
    width,
    height,
    perMetre,
    values: values.map((v) => Math.min(1, Math.max(0, (v - low!) / range))),
  }
}

/** Mean over a square about each pixel, cut off at the rims, by running sums. */
function meanAround(values: Float32Array, width: number, height: number, radius: number) {
  const stride = width + 1
  const sums = new Float64Array(stride * (height + 1))
  for (let j = 0; j < height; j++) {
    let run = 0
    for (let i = 0; i < width; i++) {
      run += values[j * width + i]!
      sums[(j + 1) * stride + i + 1] = sums[j * stride + i + 1]! + run
    }
  }
  const result = new Float32Array(values.length)
  for (let j = 0; j < height; j++) {
    const [a, b] = [Math.max(0, j - radius) * stride, Math.min(height, j + radius + 1) * stride]
    for (let i = 0; i < width; i++) {
      const [l, r] = [Math.max(0, i - radius), Math.min(width, i + radius + 1)]
      const area = ((b - a) / stride) * (r - l)
      result[j * width + i] = (sums[b + r]! - sums[b + l]! - sums[a + r]! + sums[a + l]!) / area
    }
  }
  return result
}

/** A place on the face, m from its upper left corner: right, down. */
export interface Spot {
  readonly x: number
  readonly y: number
}

/** The field between pixels, by the four about a spot; NaN off the metal. */
export function valueAt(field: Field, { x, y }: Spot): number {
  const [u, v] = [x * field.perMetre - 0.5, y * field.perMetre - 0.5]
  if (u < -0.5 || v < -0.5 || u > field.width - 0.5 || v > field.height - 0.5) return NaN
  const i = Math.min(Math.max(Math.floor(u), 0), Math.max(field.width - 2, 0))
  const j = Math.min(Math.max(Math.floor(v), 0), Math.max(field.height - 2, 0))
  const [f, g] = [Math.min(Math.max(u - i, 0), 1), Math.min(Math.max(v - j, 0), 1)]
  const of = (a: number, b: number) =>
    field.values[Math.min(b, field.height - 1) * field.width + Math.min(a, field.width - 1)]!
  const upper = of(i, j) * (1 - f) + of(i + 1, j) * f
  const lower = of(i, j + 1) * (1 - f) + of(i + 1, j + 1) * f
  return upper * (1 - g) + lower * g
}
