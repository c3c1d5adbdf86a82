import { describe, expect, it } from 'vitest'
import { meanReader } from './mean-reader.ts'
import { meanOver, weigh } from './weighing.ts'

/** Anywhere between 0 and 1, the same every time. */
function scatter(trial: number, k: number, which: number): number {
  const turned = 43758.5453 * Math.sin(12.9898 * trial + 78.233 * k + 37.719 * which)
  return turned - Math.floor(turned)
}

const uneven = [
  { steel: 'dark', thickness: 0.003 },
  { steel: 'bright', thickness: 0.0011 },
  { steel: 'dark', thickness: 0.0007 },
  { steel: 'middle', thickness: 0.002 },
  { steel: 'bright', thickness: 0.0005 },
  { steel: 'dark', thickness: 0.004 },
]
const weights: Record<string, number> = { dark: 0, middle: 0.4, bright: 1 }
const weightOf = ({ steel }: { readonly steel: string }) => weights[steel]!

/** ∫ of the weight from the stack's middle to z, sheet by sheet: nothing but sums. */
function integral(z: number): number {
  let [at, sum] = [-0.0113 / 2, 0]
  const parts = uneven.map((l, i) => {
    const from = i === 0 ? -1 : at
    at += l.thickness
    return { from, to: i === uneven.length - 1 ? 1 : at, w: weightOf(l) }
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

  it('of what sheets of one steel do not share is that of sheets named apart, ground at joints too', () => {
    const each = [0.2, 0.9, 0.4, 0.1, 0.7, 0]
    const apart = uneven.map(({ thickness }, i) => ({ steel: `sheet ${i}`, thickness }))
    const cut = { low: [{ off: 0.001, share: 1 }], high: [{ off: 0.0042, share: 1 }] }
    const [bySheet, byName] = [uneven, apart].map((l) => weigh(l, (_, i) => each[i]!, 0, cut))
    for (const { z, g, h } of trials)
      expect(meanOver(bySheet!, z, g, h)).toBeCloseTo(meanOver(byName!, z, g, h), 12)
    expect(bySheet!.joined!.mean).toBeCloseTo(byName!.joined!.mean, 12)
  })

  it('knows the one boundary of two like sheets', () => {
    const two = ['dark', 'bright'].map((steel) => ({ steel, thickness: 0.002 }))
    const pair = weigh(two, weightOf)
    const at = [-0.0015, -0.0001, 0, 0.00005, 0.0015].map((z) => meanOver(pair, z, 2e-4, 0))
    for (const [k, share] of [0, 0, 0.5, 0.75, 1].entries()) expect(at[k]).toBeCloseTo(share, 2)
  })

  it('over far more than the stack is the share by volume', () => {
    const share = (0.4 * 0.002 + 0.0016) / 0.0113
    expect(meanOver(w, 0, 3.7, 1.3)).toBeCloseTo(share, 3)
  })
})

describe('a stack ground at its joints', () => {
  // A millimetre off the lower sheet, the upper one ground away and a part of the next.
  const cut = { low: -0.0113 / 2 + 0.001, high: 0.0113 / 2 - 0.0042 }
  const always = (off: number) => [{ off, share: 1 }]
  const [w, whole] = [
    weigh(uneven, weightOf, 0, { low: always(0.001), high: always(0.0042) }),
    weigh(uneven, weightOf),
  ]
  /** ∫ of the weight of what is left, again and again, from its lower end to z. */
  const repeated = (z: number) => {
    const period = cut.high - cut.low
    const times = Math.floor((z - cut.low) / period)
    const one = integral(cut.high) - integral(cut.low)
    return times * one + integral(z - times * period) - integral(cut.low)
  }
  const box = (z: number, g: number) => (repeated(z + g / 2) - repeated(z - g / 2)) / g

  it('goes on beyond its ends as what is left of it', () => {
    for (let k = 0; k < 100; k++) {
      const g = 0.002 * 10 ** (2 * scatter(6, k, 0))
      const z = cut.low + (0.01 + 0.98 * scatter(6, k, 1)) * (cut.high - cut.low)
      expect(Math.abs(meanOver(w, z, g, 0) - box(z, g))).toBeLessThan(6e-3)
    }
    // Not the share by volume of what was laid.
    expect(meanOver(w, 0, 3.7, 1.3)).toBeCloseTo(box(0, 1e4), 3)
    expect(Math.abs(whole.mean - w.joined!.mean)).toBeGreaterThan(0.02)
  })

  it('unlike in unlike joints holds as much of each steel as they leave on the whole', () => {
    // A quarter of the joints take 4.2 mm off the upper side, the others half a millimetre.
    const high = [
      { off: 0.0042, share: 0.25 },
      { off: 0.0005, share: 0.75 },
    ]
    const { joined } = weigh(uneven, weightOf, 0, { low: [], high })
    const left = (off: number) => integral(0.0113 / 2 - off) - integral(-0.0113 / 2)
    const height = 0.0113 - 0.25 * 0.0042 - 0.75 * 0.0005
    expect(joined!.mean).toBeCloseTo((0.25 * left(0.0042) + 0.75 * left(0.0005)) / height, 9)
    expect(joined!.cell * joined!.cells).toBeCloseTo(height, 9)
    expect(joined!.bottom).toBeCloseTo(-0.0113 / 2, 9)
  })

  it.each(['f64', 'f32'] as const)('in %s kernels too', (precision) => {
    const reader = meanReader([w], { precision, tile: 128 })
    const runs = Array.from({ length: 100 }, (_, k) => 2.5 * 10 ** (1.5 * scatter(7, k, 0)))
    const rows = [runs.map((_, k) => 1 + 18 * scatter(7, k, 1)), runs, runs.map((g) => g / 3)]
    const [means] = reader.read(...(rows.map((r) => Float64Array.from(r)) as Three), runs.length)
    runs.forEach((g, k) => {
      const z = w.bottom + rows[0]![k]! * w.cell
      expect(Math.abs(means![k]! - meanOver(w, z, g * w.cell, (g * w.cell) / 3))).toBeLessThan(3e-4)
    })
  })
})

type Three = [Float64Array, Float64Array, Float64Array]
