import { draw, restack, turn, twist } from '#warp'
import { describe, expect, it } from 'vitest'
import { drawFaceNow } from './draw-face.ts'
import { sectionOfBar } from '#view'
import { findSteel } from './find-steel.ts'
import { type Origin, moved, stack } from './origin.ts'
import { scatter } from './random.ts'
import { meanReader } from './mean-reader.ts'
import type { FaceView } from '#view'
import { meanOver, weigh } from './weighing.ts'

const uneven = [
  { steel: 'dark', thickness: 0.003 },
  { steel: 'bright', thickness: 0.0011 },
  { steel: 'dark', thickness: 0.0007 },
  { steel: 'middle', thickness: 0.002 },
  { steel: 'bright', thickness: 0.0005 },
  { steel: 'dark', thickness: 0.004 },
]
const weights: Record<string, number> = { dark: 0, middle: 0.4, bright: 1 }
const weightOf = (steel: string) => weights[steel]!

/** ∫ of the weight from the stack's middle to z, sheet by sheet: nothing but sums. */
function integral(z: number): number {
  let [at, sum] = [-0.0113 / 2, 0]
  const parts = uneven.map((l, i) => {
    const from = i === 0 ? -1 : at
    at += l.thickness
    return { from, to: i === uneven.length - 1 ? 1 : at, w: weightOf(l.steel) }
  })
  for (const { from, to, w } of parts) sum += w * (Math.min(Math.max(z, from), to) - from)
  return sum
}

/** The mean over a pixel, one side exactly, the other by the midpoint rule in 4000 parts. */
function meanByParts(z: number, g: number, h: number): number {
  const n = 4000
  let sum = 0
  for (let i = 0; i < n; i++) {
    const middle = z + ((i + 0.5) / n - 0.5) * h
    sum += (integral(middle + g / 2) - integral(middle - g / 2)) / g
  }
  return sum / n
}

describe('the mean over a pixel', () => {
  const w = weigh(uneven, weightOf)
  const trials = Array.from({ length: 400 }, (_, k) => {
    // Footprints from a thousandth of a sheet to half the stack, wholly inside it.
    const g = 5e-7 * 10 ** (4 * scatter(5, k, 0))
    const h = g * scatter(5, k, 1)
    const room = 0.0113 / 2 - (g + h) / 2 - 2e-5
    return { z: (2 * scatter(5, k, 2) - 1) * room, g, h }
  })

  it('is that of sheet-by-sheet integration, from a thousandth of a sheet to half the stack', () => {
    for (const { z, g, h } of trials)
      expect(Math.abs(meanOver(w, z, g, h) - meanByParts(z, g, h))).toBeLessThan(6e-4)
  })

  it.each(['f64', 'f32'] as const)('in %s kernels is that of the reference', (precision) => {
    const reader = meanReader([w], { precision, tile: 512 })
    const rows = [0, 1, 2].map(() => new Float64Array(trials.length))
    trials.forEach(({ z, g, h }, i) => {
      rows[0]![i] = (z - w.bottom) / w.cell
      rows[1]![i] = g / w.cell
      rows[2]![i] = -h / w.cell
    })
    const [means] = reader.read(rows[0]!, rows[1]!, rows[2]!, trials.length)
    trials.forEach(({ z, g, h }, i) => {
      // In single precision a step is as soft as the rounding of its place allows.
      const soft = precision === 'f64' ? 1e-7 : 2e-4 + (2e-6 * w.cell) / g
      expect(Math.abs(means![i]! - meanOver(w, z, g, h))).toBeLessThan(soft)
    })
  })

  it('over far more than the stack is the share by volume', () => {
    const share = (0.4 * 0.002 + 0.0016) / 0.0113
    expect(meanOver(w, 0, 3.7, 1.3)).toBeCloseTo(share, 3)
  })
})

/** A stack drawn, restacked, turned, twisted, restacked twice more: layers as given, a cut slanting through. */
function chain(leaf: number, n: number, last: number): Origin {
  const layers = Array.from({ length: leaf }, (_, i) => ({
    steel: i % 2 ? 'bright' : 'dark',
    thickness: 0.03 / leaf,
  }))
  const length = (1.2 / n) * 1
  const steps = [
    draw({ length: 4, width: 1, height: 0.25 }),
    restack({ pieces: n, length, height: 0.0075 }),
    draw({ length: n * 0.5, width: 1, height: 2 / n }),
    turn('quarter'),
    twist({ pitch: 0.02 }),
    draw({ length: 1.5, width: 1, height: 1 / 1.5 }),
    restack({ pieces: n, length: 0.1, height: 0.01, turn: 'over' }),
    draw({ length: n, width: 1, height: 1 / n }),
    restack({ pieces: last, length: 0.1, height: 0.01 }),
    draw({ length: last, width: 1, height: 1 / last }),
  ]
  return moved(stack('main', layers), steps.toReversed())
}

/** Point samples, k × k a pixel, in double precision. */
function sampled(view: FaceView, origin: Origin, k: number): Float64Array {
  const { width, height, pixel, frame } = view
  const result = new Float64Array(width * height)
  for (let j = 0; j < height; j++) {
    const count = width * k * k
    const points = [0, 1, 2].map((axis) =>
      Float64Array.from({ length: count }, (_, s) => {
        const i = Math.floor(s / (k * k))
        const [a, b] = [(s % k) + 0.5, (Math.floor(s / k) % k) + 0.5]
        const [right, up] = [(i + a / k) * pixel, (height - j - b / k) * pixel]
        return frame.origin[axis]! + right * frame.right[axis]! + up * frame.up[axis]!
      }),
    )
    const found = findSteel(origin, { x: points[0]!, y: points[1]!, z: points[2]! })
    found.forEach((f, s) => {
      const at = j * width + Math.floor(s / (k * k))
      result[at] = result[at]! + (f!.steel === 'bright' ? 1 : 0) / (k * k)
    })
  }
  return result
}

describe('coverage of a face against samples', () => {
  const view = sectionOfBar(
    { length: 0.004, width: 0.004, height: 0.008 },
    { through: [0.002, 0, 0.0011], out: [0.02, 0.13, 1], up: [0, 1, 0] },
    { ppmm: 10 },
  )
  it.each([
    { layers: 45, leaf: 5, n: 3, last: 1 },
    { layers: 300, leaf: 25, n: 2, last: 3 },
    { layers: 10000, leaf: 50, n: 10, last: 2 },
  ])(
    '$layers layers: nearer to 32 × 32 than 8 × 8 is, bias within 0.1 %',
    ({ layers, leaf, n, last }) => {
      expect(leaf * n * n * last).toBe(layers)
      const origin = chain(leaf, n, last)
      const truth = sampled(view, origin, 32)
      const eight = sampled(view, origin, 8)
      const map = drawFaceNow(view, origin, { weights: [{ dark: 0, bright: 1 }] })
      const error = (of: (i: number) => number) => {
        let [square, sum] = [0, 0]
        truth.forEach((t, i) => {
          square += (of(i) - t) ** 2
          sum += of(i) - t
        })
        return { rms: Math.sqrt(square / truth.length), bias: sum / truth.length }
      }
      const ours = error((i) => map.means[0]![i]! / 65535)
      const theirs = error((i) => eight[i]!)
      expect(ours.rms).toBeLessThan(theirs.rms)
      expect(Math.abs(ours.bias)).toBeLessThan(1e-3)
      // Only joints and bends are split; said of every picture.
      expect(map.splitShare).toBeLessThan(layers < 5000 ? 0.12 : 0.9)
    },
    60_000,
  )
})
