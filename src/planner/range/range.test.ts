import { describe, expect, it } from 'vitest'
import { readValues } from '#parameters'
import { findPieceKind } from '#piece'
import { usualShop, usualTolerances } from '#shop'
import type { Smithy } from '#operations'
import { planRoute } from '../plan-route.ts'
import type { Plan } from '../plan.ts'
import { readSteps } from '../search/head.ts'
import { Draws } from './draws.ts'
import { drawPlan } from './draw-plan.ts'
import { allowanceFor, rangeOf } from './likely-range.ts'
import { millTolerance } from './mill-tolerance.ts'
import { normalShare } from './normal.ts'
import { scaleByHeat } from './variation.ts'

const mean = (values: ArrayLike<number>) =>
  Array.from(values).reduce((a, b) => a + b, 0) / values.length
const deviation = (values: ArrayLike<number>) => {
  const m = mean(values)
  return Math.sqrt(Array.from(values).reduce((s, v) => s + (v - m) ** 2, 0) / (values.length - 1))
}

/** A bar cut, forged flat and cropped: its length is a product, so its spread is known in closed form. */
function plainBar(piece = false): { plan: Plan; smithy: Smithy } {
  const kind = findPieceKind('bar').ok
  const values = kind && readValues(kind.parameters, kind.examples[0]).ok?.values
  const solid = kind?.build(values as never).ok
  const smithy: Smithy = {
    shop: { ...usualShop(), forgingScale: 0, weldingScale: 0 },
    densities: { '1095': 7850 },
    ...(piece && { piece: solid }),
  }
  const steps = readSteps(
    [
      { do: 'take bar', steel: '1095', width: '40 mm', height: '20 mm', length: '200 mm' },
      { do: 'draw out', width: '30 mm', height: '12 mm', heats: 3 },
      { do: 'crop', start: '10 mm', end: '10 mm' },
    ],
    'bars.main',
  ).ok
  const route = { bars: { main: steps ?? [] }, finish: 'main', measured: [] }
  return { plan: planRoute(route, smithy).ok as Plan, smithy }
}

const N = 20_000
const small = {
  ...usualTolerances(),
  bars: 'exact' as const,
  scale: 0,
  heat: 0,
  spread: 0,
  sheetLength: 0.001,
  width: 0.0003,
  height: 0.00012,
  crop: 0.0008,
}

describe('a linear case against propagation by hand', () => {
  const { plan, smithy } = plainBar()
  const drawn = drawPlan(plan, smithy, small, { seed: 5, from: 0, count: N })

  it('mean and spread of the finished length within 1 %', () => {
    // L = l·40·20/(w·h) − c₁ − c₂; half a tolerance is one standard deviation.
    const stretch = (40 * 20) / (30 * 12)
    const long = 0.2 * stretch
    const terms = [
      (stretch * small.sheetLength) / 2,
      (long * small.width) / 2 / 0.03,
      (long * small.height) / 2 / 0.012,
      small.crop / 2,
      small.crop / 2,
    ]
    const sd = Math.hypot(...terms)
    expect(Math.abs(mean(drawn.length) / (long - 0.02) - 1)).toBeLessThan(0.01)
    expect(Math.abs(deviation(drawn.length) / sd - 1)).toBeLessThan(0.01)
    // The error of a spread of N draws is 1/√(2N).
  })

  it('the mean closes in as one over the root of the draws', () => {
    const runs = (n: number) =>
      deviation(
        Array.from({ length: 60 }, (_, k) =>
          mean(drawn.length.subarray((k * n) % (N - n), ((k * n) % (N - n)) + n)),
        ),
      )
    const [few, many] = [runs(25), runs(250)]
    const order = Math.log(few / many) / Math.log(10)
    expect(order).toBeGreaterThan(0.35)
    expect(order).toBeLessThan(0.65)
  })
})

describe('draws', () => {
  const { plan, smithy } = plainBar()
  const tolerances = usualTolerances()

  it('are the same whoever draws them', () => {
    const whole = drawPlan(plan, smithy, tolerances, { seed: 9, from: 0, count: 300 })
    const parts = [0, 120, 121].map((from, i) =>
      drawPlan(plan, smithy, tolerances, { seed: 9, from, count: [120, 1, 179][i] }),
    )
    expect([...parts.flatMap((p) => [...p.length])]).toEqual([...whole.length])
    expect(rangeOf(parts.toReversed())).toEqual(rangeOf([whole]))
  })

  it('another seed draws otherwise', () => {
    const [a, b] = [1, 2].map((seed) =>
      drawPlan(plan, smithy, tolerances, { seed, from: 0, count: 50 }),
    )
    expect([...a.length]).not.toEqual([...b.length])
  })

  it('are even, and normal, by moments and by counting', () => {
    const draws = new Draws(3)
    const even: number[] = []
    const normal: number[] = []
    for (let i = 0; i < 40_000; i++) {
      draws.begin(i)
      even.push(draws.even())
      normal.push(draws.normal())
    }
    expect(mean(even)).toBeCloseTo(0.5, 2)
    expect(deviation(even)).toBeCloseTo(Math.sqrt(1 / 12), 2)
    // Chi-square of 100 boxes: 99 ± 4 × 14.
    const boxes = new Float64Array(100)
    for (const u of even) boxes[Math.floor(u * 100)]++
    const chi = boxes.reduce((sum, n) => sum + (n - 400) ** 2 / 400, 0)
    expect(Math.abs(chi - 99)).toBeLessThan(56)
    expect(mean(normal)).toBeCloseTo(0, 1)
    expect(deviation(normal)).toBeCloseTo(1, 1)
    for (const z of [-2, -1, 0, 0.5, 1.645])
      expect(normal.filter((v) => v < z).length / normal.length).toBeCloseTo(normalShare(z), 2)
  })

  it('the normal distribution as tables print it', () => {
    expect(normalShare(1.6448536)).toBeCloseTo(0.95, 6)
    expect(normalShare(-1.959964)).toBeCloseTo(0.025, 6)
    expect(normalShare(0)).toBeCloseTo(0.5, 7)
  })
})

describe('mill tolerances as the standards print them', () => {
  const en = { bars: 'EN 10058' as const, sheetThickness: 0.03 }
  const a29 = { bars: 'ASTM A29' as const, sheetThickness: 0.03 }
  it.each([
    [0.006, 0.04, 0.0005, 0.00075],
    [0.02, 0.08, 0.0005, 0.001],
    [0.025, 0.1, 0.001, 0.0015],
    [0.05, 0.15, 0.0015, 0.0025],
  ])('EN 10058 flat %d × %d m', (thickness, width, t, w) =>
    expect(millTolerance(thickness, width, en)).toEqual({ thickness: t, width: w }),
  )
  it.each([
    [0.006, 0.025, 0.00018, 0.0005],
    [0.01, 0.05, 0.0003, 0.001],
    [0.02, 0.1, 0.0005, 0.0015],
    [0.03, 0.15, 0.0008, 0.0025],
  ])('ASTM A29 flat %d × %d m', (thickness, width, t, w) => {
    const found = millTolerance(thickness, width, a29)
    expect(found.thickness).toBeCloseTo(t, 9)
    expect(found.width).toBeCloseTo(w, 9)
  })
  it('a bar measured is what it is', () =>
    expect(millTolerance(0.01, 0.05, { bars: 'exact', sheetThickness: 0.03 }).thickness).toBe(0))
})

describe('coming up short', () => {
  it('an allowance brings the risk down to what is asked, and no further than it must', () => {
    const kind = findPieceKind('bar').ok
    const values =
      kind &&
      readValues(kind.parameters, { length: '300 mm', width: '28 mm', thickness: '9 mm' }).ok
        ?.values
    const piece = kind?.build(values as never).ok
    const smithy: Smithy = { shop: usualShop(), densities: { '1095': 7850 }, piece }
    const steps = readSteps(
      [
        { do: 'take bar', steel: '1095', width: '40 mm', height: '20 mm', length: '?' },
        { do: 'draw out', width: '31 mm', height: '12 mm', heats: 3 },
        { do: 'crop', start: '10 mm', end: '10 mm' },
        { do: 'grind to shape' },
      ],
      'bars.main',
    ).ok
    const planned = planRoute({ bars: { main: steps ?? [] }, finish: 'main', measured: [] }, smithy)
    const plan = planned.ok as Plan
    const order = { seed: 4, count: 1500 }
    const tolerances = usualTolerances()
    const now = drawPlan(plan, smithy, tolerances, { ...order, from: 0 }).short / order.count
    expect(now).toBeGreaterThan(0.2)
    const found = allowanceFor(0.05, plan, smithy, tolerances, order)
    expect(found?.short).toBeLessThanOrEqual(0.05)
    expect(found?.longer).toBeGreaterThan(0)
    const less = drawPlan(plan, smithy, tolerances, {
      ...order,
      from: 0,
      longer: (found?.longer ?? 0) - 0.01,
    })
    expect(less.short / order.count).toBeGreaterThan(0.05)
  })

  it('scale grows with a heat read too low by the root of the rate in air (by hand at 1100 °C)', () => {
    // Q = 33 000 cal/mol [STAN]: exp(Q/2R · (1/1373.15 − 1/1393.15)) = 1.0906.
    expect(scaleByHeat(1373.15, 20)).toBeCloseTo(1.0907, 3)
    expect(scaleByHeat(1373.15, 0)).toBe(1)
  })
})
