import { type Found, type Origin, drawFaceNow, findSteel, scatter } from '#pattern'
import { type FaceView, crop, rasterise } from '#view'

/** How far shares drawn with exact coverage are off, and how far those of 8 × 8 points a pixel would be. */
export interface CoverageErrors {
  /** Pixels compared: those wholly metal, so that what is compared is the pattern and not the rim. */
  readonly pixels: number
  readonly ours: number
  /** Of 8 × 8 points, regular: the middles of 64 equal squares. */
  readonly eight: number
  /** Of the 32 × 32 points themselves. */
  readonly reference: number
  /** Mean of ours less mean of all reference points; its standard error, by how the crops differ. */
  readonly bias: number
  readonly biasError: number
  readonly splitShare: number
}

/** The mean lightness of each pixel; NaN where no metal was found. */
type Sampled = Float64Array

/**
 * Compares crops of a face with two independent sets of 32 × 32 points a pixel, in double precision, each point at
 * random in its own square. Errors are measured against both at once (the mean product of the two differences), so that
 * the points' own error, independent in the two, falls out. A crop's outermost pixels are drawn and not compared: what
 * lies beyond is not known there. Each crop has points of its own: where a pattern runs alike through all of them (sheets
 * that lie along the rows), the same points would be off the same way in each, and their error be taken for a bias.
 */
export function coverageErrors(
  crops: readonly FaceView[],
  origin: Origin,
  light: Readonly<Record<string, number>>,
): CoverageErrors {
  const [ours, a, b, eight]: [number[], number[], number[], number[]] = [[], [], [], []]
  const biases: number[] = []
  let [metal, split] = [0, 0]
  for (const [place, view] of crops.entries()) {
    const map = drawFaceNow(view, origin, { weights: [light] })
    const inner = crop(view, { left: 1, top: 1, width: view.width - 2, height: view.height - 2 })
    const [one, two] = [1, 2].map((set) => sample(inner, origin, light, 32, 2 * place + set))
    const regular = sample(inner, origin, light, 8)
    const { alpha } = rasterise(inner, 0, inner.height)
    let [sum, count] = [0, 0]
    alpha.forEach((cover, i) => {
      const at = (Math.floor(i / inner.width) + 1) * view.width + (i % inner.width) + 1
      if (cover < 255 || map.alpha[at] === 0 || Number.isNaN(one[i] + two[i] + regular[i])) return
      const own = map.means[0][at] / 65535
      ours.push(own)
      a.push(one[i])
      b.push(two[i])
      eight.push(regular[i])
      sum += own - (one[i] + two[i]) / 2
      count++
    })
    if (count > 0) biases.push(sum / count)
    metal += count
    split += count * map.splitShare
  }
  const mean = (of: (i: number) => number) =>
    ours.reduce((sum, _, i) => sum + of(i), 0) / Math.max(1, ours.length)
  const rms = (of: readonly number[]) =>
    Math.sqrt(
      Math.max(
        0,
        mean((i) => (of[i] - a[i]) * (of[i] - b[i])),
      ),
    )
  const bias = mean((i) => ours[i] - (a[i] + b[i]) / 2)
  const spread = biases.reduce((sum, v) => sum + (v - bias) ** 2, 0)
  return {
    pixels: ours.length,
    ours: rms(ours),
    eight: rms(eight),
    reference: Math.sqrt(mean((i) => (a[i] - b[i]) ** 2) / 2),
    bias,
    biasError: Math.sqrt(spread / (biases.length * Math.max(1, biases.length - 1))),
    splitShare: metal > 0 ? split / metal : 0,
  }
}

/** The mean of k × k points in each pixel: in the middles of their squares, or with a seed anywhere in them. */
function sample(
  view: FaceView,
  origin: Origin,
  light: Readonly<Record<string, number>>,
  k: number,
  seed?: number,
): Sampled {
  const { width, height } = view
  const fine: FaceView = { ...view, width: width * k, height: height * k, pixel: view.pixel / k }
  const [sums, counts] = [0, 1].map(() => new Float64Array(width * height))
  findUnder(fine, origin, 0, fine.height, seed).forEach((found, s) => {
    if (!found) return
    const i = Math.floor(Math.floor(s / fine.width) / k) * width + Math.floor((s % fine.width) / k)
    sums[i] += light[found.steel]
    counts[i]++
  })
  return sums.map((sum, i) => sum / counts[i])
}

/** What lies under the middle of each pixel of some rows, or with a seed anywhere in it. */
function findUnder(
  view: FaceView,
  origin: Origin,
  top: number,
  bottom: number,
  seed?: number,
): (Found | undefined)[] {
  const { width, height, pixel, frame } = view
  const { facets } = rasterise(view, top, bottom)
  const points = [0, 1, 2].map(() => new Float64Array(width * (bottom - top)))
  for (let s = 0; s < points[0].length; s++) {
    const [column, row] = [s % width, top + Math.floor(s / width)]
    const aside = (axis: number) =>
      seed === undefined ? 0 : scatter(2 * seed + axis, column, row) - 0.5
    const [r, u] = [aside(0), aside(1)]
    const [right, up] = [(column + 0.5 + r) * pixel, (height - row - 0.5 + u) * pixel]
    // A place off the surface is none: no metal is found there.
    const out = facets
      ? facets.out[s] + pixel * (r * facets.slopeRight[s] + u * facets.slopeUp[s])
      : 0
    points.forEach((axis, n) => {
      axis[s] = frame.origin[n] + right * frame.right[n] + up * frame.up[n] + out * frame.out[n]
    })
  }
  const found = findSteel(origin, { x: points[0], y: points[1], z: points[2] })
  return facets ? found.map((f, s) => (facets.out[s] === -Infinity ? undefined : f)) : found
}

/** Layers passed along the two sides of a square, for a metre of side: the middle value of the view's pixels. */
export function layersPerMetre(view: FaceView, origin: Origin): number {
  const step = 1e-6
  const found = [
    [0, 0],
    [step, 0],
    [0, step],
  ].map(([left, top]) => findUnder(crop(view, { ...view, left, top }), origin, 0, view.height))
  const rates = found[0].flatMap((at, s) => {
    const next = [found[1][s], found[2][s]]
    if (!at) return []
    const steps = next.flatMap((f) => (f?.stack === at.stack ? Math.abs(f.layer - at.layer) : []))
    return steps.length < 2 ? [] : (steps[0] + steps[1]) / (step * view.pixel)
  })
  return rates.sort((p, q) => p - q)[rates.length >> 1] ?? 0
}
