import { expect, test } from 'vitest'
import reference from '../diffusion/reference.json' with { type: 'json' }
import { fickLaw, heldFace } from '../mobility/carbon-law.ts'
import { erf, erfc, inverseErfc } from '../error-function.ts'
import { type FluxLaw, march } from './march.ts'

// Published series and the error function (Crank, The Mathematics of Diffusion): one diffusivity.
const D = 1e-10
const constant = fickLaw(() => D)
const at = 1300

function run(width: number[], carbon: number[], seconds: number, tolerance = 1e-6, held?: number) {
  const row = {
    width: Float64Array.from(width),
    value: Float64Array.from(carbon),
    law: constant,
    ends: 'sealed' as const,
    ...(held === undefined ? {} : { skin: heldFace(held, constant) }),
  }
  march(row, [{ seconds, from: at, to: at, stretch: 1 }], tolerance)
  return row.value
}

const even = (n: number, length: number) => new Array<number>(n).fill(length / n)
/** Value at a face between two cells of one width. */
const between = (c: Float64Array, face: number) => (c[face - 1]! + c[face]!) / 2
/** Value at a mirror plane in front of the first cell, by a parabola flat at the plane. */
const atMirror = (a: number, b: number) => (9 * a - b) / 8

test('an infinite couple follows the error function to 0.1 %', () => {
  const n = 800
  const half = 1e-3
  const c = run(
    even(n, 2 * half),
    Array.from({ length: n }, (_, i) => (i < n / 2 ? 0.95 : 0.1)),
    60,
  )
  reference.couple.micrometres.forEach((x, i) => {
    const face = Math.round((x * 1e-6 + half) / ((2 * half) / n))
    expect(Math.abs(between(c, face) / reference.couple.carbon[i]! - 1)).toBeLessThan(1e-3)
  })
})

test('an endless stack of equal layers levels as its series says, at 24 cells a pair', () => {
  const L = 1e-3
  reference.equalStack.fo.forEach((fo, i) => {
    // Half of each layer between its mirror planes: 12 cells, 24 a pair.
    const n = fo < 0.05 ? 48 : 24
    const c = run(
      even(n, L),
      Array.from({ length: n }, (_, k) => (k < n / 2 ? 1 : 0)),
      (fo * L * L) / D,
    )
    const swing = atMirror(c[0]!, c[1]!) - atMirror(c[n - 1]!, c[n - 2]!)
    expect(Math.abs(swing - reference.equalStack.left[i]!)).toBeLessThan(1e-3)
  })
})

test('unequal layers follow their series', () => {
  const widths = [...even(72, 0.3e-3), ...even(48, 0.2e-3)]
  reference.unequalStack.seconds.forEach((seconds, i) => {
    const c = run(
      widths,
      widths.map((_, k) => (k < 72 ? 1 : 0)),
      seconds,
    )
    const n = c.length
    expect(Math.abs(atMirror(c[0]!, c[1]!) / reference.unequalStack.centreA[i]! - 1)).toBeLessThan(
      1e-3,
    )
    expect(
      Math.abs(atMirror(c[n - 1]!, c[n - 2]!) / reference.unequalStack.centreB[i]! - 1),
    ).toBeLessThan(1e-3)
  })
})

test('a lamella in a sealed slab follows Crank 2.17', () => {
  const n = 200
  for (const [seconds, expected] of Object.entries(reference.lamella.rows)) {
    const c = run(
      even(n, 1e-3),
      Array.from({ length: n }, (_, k) => (k < 40 ? 1 : 0)),
      Number(seconds),
    )
    const read = [
      atMirror(c[0]!, c[1]!),
      between(c, 40),
      between(c, 100),
      atMirror(c[n - 1]!, c[n - 2]!),
    ]
    expected.forEach((e, k) =>
      expect(Math.abs(read[k]! - e)).toBeLessThan(Math.max(1e-3 * e, 3e-5)),
    )
  }
})

test('a sheet with its face held takes up what the series says', () => {
  const n = 400
  reference.sheet.fo.forEach((fo, i) => {
    const c = run(even(n, 1e-3), new Array<number>(n).fill(0), (fo * 1e-6) / D, 1e-6, 1)
    const uptake = c.reduce((sum, x) => sum + x, 0) / n
    expect(Math.abs(uptake / reference.sheet.uptake[i]! - 1)).toBeLessThan(1e-3)
    expect(Math.abs(atMirror(c[n - 1]!, c[n - 2]!) - reference.sheet.centre[i]!)).toBeLessThan(1e-4)
  })
})

// A smooth start, for which the exact answer is one decaying cosine.
function cosineError(n: number, tolerance: number): number {
  const start = Array.from({ length: n }, (_, i) => 0.5 + 0.4 * Math.cos((Math.PI * (i + 0.5)) / n))
  const c = run(even(n, 1e-3), start, 1000, tolerance)
  const decay = Math.exp(-Math.PI * Math.PI * 0.1)
  return Math.max(...start.map((s, i) => Math.abs(c[i]! - 0.5 - (s - 0.5) * decay)))
}

test('space: halving the cells quarters the error', () => {
  const errors = [20, 40, 80].map((n) => cosineError(n, 1e-10))
  for (let i = 1; i < errors.length; i++) {
    const order = Math.log2(errors[i - 1]! / errors[i]!)
    expect(order).toBeGreaterThan(1.95)
    expect(order).toBeLessThan(2.05)
  }
})

// D grows along the ramp and with carbon: neither the step nor the law is easy.
const rising: FluxLaw = fickLaw((c, t) => D * Math.exp(0.8 * c + (t - 1300) / 60))

function ramp(tolerance: number) {
  const n = 60
  const row = {
    width: Float64Array.from(even(n, 1e-3)),
    value: Float64Array.from({ length: n }, (_, i) => (i < n / 3 ? 1 : 0.1)),
    law: rising,
    ends: 'sealed' as const,
  }
  const report = march(row, [{ seconds: 600, from: 1200, to: 1400, stretch: 1 }], tolerance)
  return { c: row.value, steps: report.steps }
}

test('time: the error falls at least as the square of the step', () => {
  const exact = ramp(1e-10).c
  const fine = [3e-3, 1e-3, 3e-4, 1e-4, 1e-5, 1e-6].map((tolerance) => {
    const { c, steps } = ramp(tolerance)
    return { steps, error: Math.max(...c.map((x, i) => Math.abs(x - exact[i]!))) }
  })
  const [first, last] = [fine[0]!, fine[5]!]
  expect(Math.log(first.error / last.error) / Math.log(last.steps / first.steps)).toBeGreaterThan(2)
  // and each run keeps near the error it was asked for
  for (const [i, t] of [3e-3, 1e-3, 3e-4, 1e-4, 1e-5, 1e-6].entries())
    expect(fine[i]!.error).toBeLessThan(3 * t)
})

test('carbon is conserved to 1e-13 through a route with thinning', () => {
  const n = 200
  const carbon = Float64Array.from({ length: n }, (_, i) => (i < n / 2 ? 1 : 0.1))
  const before = carbon.reduce((a, b) => a + b, 0)
  const spells = Array.from({ length: 30 }, (_, i) => ({
    seconds: 200,
    from: 1100 + (i % 3) * 100,
    to: 1200 + (i % 2) * 100,
    stretch: 0.9 ** i,
  }))
  march(
    { width: Float64Array.from(even(n, 8e-3)), value: carbon, law: rising, ends: 'sealed' },
    spells,
    1e-5,
  )
  expect(Math.abs(carbon.reduce((a, b) => a + b, 0) / before - 1)).toBeLessThan(1e-13)
})

test('a cyclic row equals the same cells between mirrors twice over', () => {
  const half = Array.from({ length: 12 }, (_, i) => (i < 6 ? 0.9 : 0.2))
  const sealed = run(even(12, 1e-3), half, 2000)
  const carbon = Float64Array.from([...half, ...half.toReversed()])
  const row = {
    width: Float64Array.from(even(24, 2e-3)),
    value: carbon,
    law: constant,
    ends: 'cyclic' as const,
  }
  march(row, [{ seconds: 2000, from: at, to: at, stretch: 1 }], 1e-6)
  for (let i = 0; i < 12; i++) {
    expect(carbon[i]!).toBeCloseTo(sealed[i]!, 5)
    expect(carbon[23 - i]!).toBeCloseTo(sealed[i]!, 5)
  }
})

test('the error function agrees with its tables', () => {
  // Abramowitz & Stegun table 7.1
  for (const [x, y] of [
    [0.1, 0.112462916],
    [0.5, 0.5204998778],
    [1, 0.8427007929],
    [1.9, 0.9927904292],
  ] as const)
    expect(erf(x)).toBeCloseTo(y, 9)
  expect(erfc(3) / 2.20904969985854e-5).toBeCloseTo(1, 10)
  expect(erfc(6) / 2.1519736712498913e-17).toBeCloseTo(1, 10)
  for (const f of [0.999, 0.5, 0.05, 1e-6, 1e-30])
    expect(erfc(inverseErfc(f)) / f).toBeCloseTo(1, 10)
})
