import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Composition } from '#steel'
import { hardenThrough } from './harden-through.ts'
import { alloyFactor, baseDiameter, idealDiameter, idealDiameterA255 } from './ideal-diameter.ts'
import { jominyCurve } from './jominy.ts'
import { quenches } from './quench-severity.ts'
import reference from './reference.json' with { type: 'json' }
import { criticalSize, halfTime } from './section.ts'

const inch = 0.0254
const near = (got: number, want: number, share: number) =>
  expect(Math.abs(got / want - 1)).toBeLessThan(share)

test('ASTM A255: base diameters, against the formula worked apart and Grossmann’s own table', () => {
  for (const [c, d] of reference.base.rows) near(baseDiameter(c!), d!, 5e-4)
  const { carbon, no6, no7, no8 } = reference.grossmann
  carbon.forEach((c, i) => {
    expect(Math.abs(baseDiameter(c) - no7[i]!)).toBeLessThan(0.0012)
    // one grain number coarser or finer: 8 %
    near(baseDiameter(c) * 1.08, no6[i]!, 0.01)
    near(baseDiameter(c) / 1.08, no8[i]!, 0.01)
  })
})

test('the worked example of the standard: SAE 4118 modified, 1.95 in', () => {
  const { composition, factors, inch: printed, unrounded } = reference.example
  const order = ['Mn', 'Si', 'Ni', 'Cr', 'Mo', 'Cu', 'V'] as const
  expect(baseDiameter(composition.C)).toBeCloseTo(factors[0]!, 3)
  // printed to two or three figures
  order.forEach((e, i) =>
    expect(Math.abs(alloyFactor(e, composition[e]) - factors[i + 1]!)).toBeLessThan(0.0051),
  )
  near(idealDiameterA255(composition) / inch, unrounded, 1e-3)
  near(idealDiameterA255(composition) / inch, printed, 0.01)
})

test('ideal diameters of common steels', () => {
  for (const [, comp, d] of reference.steels.rows as [string, Composition, number][])
    near(idealDiameterA255(comp) / inch, d, 6e-3)
})

test('above the range of A255 the observed steels stand (RKK)', () => {
  for (const { observed, a255, ...comp } of reference.waterHardening.rows) {
    near(idealDiameterA255(comp) * 1000, a255, 0.02)
    const { value, range } = idealDiameter(comp)
    // the line through five points: within 1.2 mm of each, and each inside the range
    expect(Math.abs(value * 1000 - observed)).toBeLessThan(1.2)
    expect(observed).toBeGreaterThan(range[0] * 1000)
    expect(observed).toBeLessThan(range[1] * 1000)
  }
})

test('rounds and plates that harden alike, by severity', () => {
  near(halfTime('round', 1e6), 0.200524, 2e-3)
  near(halfTime('plate', 1e6), 0.378748, 2e-3)
  for (const [shape, table] of [
    ['round', reference.cylinder],
    ['plate', reference.plate],
  ] as const)
    for (const [h, row] of Object.entries(table.H))
      row.forEach((d, i) => {
        const got = criticalSize(shape, table.DI[i]! * inch, Number(h) / inch) / inch
        expect(Math.abs(got - d)).toBeLessThan(0.004 + 0.004 * d)
      })
})

test('end-quench curves (A255J)', () => {
  const comps: Record<string, Composition> = {
    '1045 .45C .75Mn .22Si': { C: 0.45, Mn: 0.75, Si: 0.22 },
    '5160 .60C .87Mn .22Si .80Cr': { C: 0.6, Mn: 0.87, Si: 0.22, Cr: 0.8 },
    '4140 .40C .87Mn .25Si .95Cr .20Mo': { C: 0.4, Mn: 0.87, Si: 0.25, Cr: 0.95, Mo: 0.2 },
    '4118 modified': reference.example.composition,
  }
  for (const [name, curve] of Object.entries(reference.jominy.curves)) {
    const got = jominyCurve(comps[name]!)
    near(got.diameter * 1000, curve.DI_mm, 0.01)
    for (const { millimetres, hardness } of got.points) {
      const want = (curve.HRC_at_mm as Record<string, number>)[millimetres]!
      expect(Math.abs(hardness.value - want)).toBeLessThan(0.8)
    }
  }
})

test('verdicts a smith would give', () => {
  const shallow = { C: 1, Mn: 0.25, Si: 0.2 }
  const spring = { C: 0.6, Mn: 0.87, Si: 0.22, Cr: 0.8 }
  const strip = { C: 0.96, Mn: 0.4, Si: 0.22 }
  // 5160 goes through in oil at 5 mm; W1 does not, but does at a millimetre in moved water
  expect(hardenThrough(spring, 0.005, 'plate', 'oil, moved').verdict).toBe('through')
  expect(hardenThrough(shallow, 0.008, 'plate', 'oil, moved').verdict).toBe('skin only')
  expect(hardenThrough(shallow, 0.0007, 'plate', 'water, moved').verdict).not.toBe('skin only')
  // thin 1095 strip is sold hardened from oil (MEAD); a 10 mm bar of it does not harden in oil
  expect(hardenThrough(strip, 0.001, 'plate', 'oil, fast').martensite.value).toBeGreaterThan(0.9)
  expect(hardenThrough(strip, 0.01, 'plate', 'oil, fast').verdict).toBe('skin only')
  expect(hardenThrough(spring, 0.2, 'round', 'air').verdict).toBe('skin only')
})

test('harsher quench, thinner piece, richer steel: never less martensite; nothing NaN', () => {
  const w = fc.oneof(fc.double({ min: 0, max: 2, noNaN: true }), fc.constantFrom(NaN, -1))
  const size = fc.oneof(fc.double({ min: 1e-4, max: 0.3, noNaN: true }), fc.constantFrom(NaN, 0))
  fc.assert(
    fc.property(
      fc.record({ C: w, Mn: w, Si: w, Cr: w, Ni: w }),
      size,
      fc.constantFrom('round', 'plate'),
      (c, s, shape) => {
        const oil = hardenThrough(c, s, shape as 'round', 'oil, moved')
        const water = hardenThrough(c, s, shape as 'round', 'water, moved')
        for (const e of [oil.criticalSize, oil.martensite, oil.idealDiameter]) {
          expect([e.value, ...e.range].every(Number.isFinite)).toBe(true)
          expect(e.range[0]).toBeLessThanOrEqual(e.value * (1 + 1e-9))
          expect(e.range[1]).toBeGreaterThanOrEqual(e.value * (1 - 1e-9))
        }
        expect(water.criticalSize.value).toBeGreaterThanOrEqual(oil.criticalSize.value)
        expect(water.martensite.value).toBeGreaterThanOrEqual(oil.martensite.value)
        for (const p of jominyCurve(c).points) expect(Number.isFinite(p.hardness.value)).toBe(true)
      },
    ),
    { seed: 4, numRuns: 40 },
  )
  expect(Object.keys(quenches)).toContain('oil, moved')
})
