import fc from 'fast-check'
import { expect, test } from 'vitest'
import { contrastOf, etchDepth, etchMinutes, etchRelief, relativeAttack, toneOf } from './attack.ts'
import { diluteChloride, mixBath, sodaFor, spentShare } from './ferric-chloride.ts'
import reference from './reference.json' with { type: 'json' }

const carbon = { C: 0.8, Mn: 0.75, Si: 0.22 }
const nickel = { C: 0.75, Mn: 0.35, Si: 0.25, Ni: 2 }

test('dilutions and the iron they take up', () => {
  for (const [water, grams, moles] of reference.dilution.rows) {
    expect(Math.abs(diluteChloride(water!).gramsPerLitre - grams!)).toBeLessThan(0.06)
    expect(Math.abs(diluteChloride(water!).molesPerLitre - moles!)).toBeLessThan(0.001)
  }
  for (const [water, iron] of reference.dilution.ironPerLitre)
    expect(Math.abs(diluteChloride(water!).ironPerLitre - iron!)).toBeLessThan(0.06)
  expect(mixBath(0.002, 3)).toEqual({ stock: 0.0005, water: 0.0015 })
  // a litre that has taken up half of 24.6 g
  expect(spentShare(diluteChloride(3), 0.0123, 0.001)).toBeCloseTo(0.5, 2)
  // three moles of bicarbonate for each of chloride: .882 × 3 × 84 g
  expect(sodaFor(diluteChloride(3), 0.001) * 1000).toBeCloseTo(0.882 * 3 * 84.007, 0)
})

test('which steels darken and which stay bright (ETCH3)', () => {
  for (const c of reference.tones.dark) expect(toneOf(c)).toBe('dark')
  for (const c of reference.tones.bright) expect(toneOf(c)).toBe('bright')
  expect(contrastOf(carbon, nickel).contrast).toBe('strong')
  expect(contrastOf(carbon, { C: 0.95, Mn: 0.4 }).contrast).toBe('none')
  expect(['fair', 'faint']).toContain(contrastOf(carbon, { C: 0.6, Mn: 0.87, Cr: 0.8 }).contrast)
})

test('nickel slows the attack, manganese quickens it, stainless is flagged', () => {
  expect(relativeAttack(nickel).value).toBeLessThan(relativeAttack(carbon).value)
  expect(relativeAttack({ ...carbon, Mn: 1.4 }).value).toBeGreaterThan(relativeAttack(carbon).value)
  expect(relativeAttack({ C: 0.6, Cr: 13 }).outOfRange).toHaveLength(1)
})

test('practice lies within the range: normal and deep etches (ETCH1, ETCH2)', () => {
  const normal = etchRelief(carbon, nickel, { minutes: reference.practice.normalMinutes })
  const deep = etchRelief(carbon, nickel, { minutes: 50 })
  const overlaps = (range: readonly [number, number], um: number[]) =>
    range[0] * 1e6 < um[1]! && range[1] * 1e6 > um[0]!
  expect(overlaps(normal.range, reference.practice.normalMicrometres)).toBe(true)
  expect(overlaps(deep.range, reference.practice.deepMicrometres)).toBe(true)
  expect(normal.value * 1e6).toBeGreaterThan(3)
  expect(normal.value * 1e6).toBeLessThan(25)
  expect(deep.value * 1e6).toBeGreaterThan(20)
})

test('minutes and depth undo each other; a small bath gives out', () => {
  const order = { water: 4, temperature: 303.15, moved: true }
  const minutes = etchMinutes(carbon, 2e-5, order).value
  expect(etchDepth(carbon, { ...order, minutes }).value).toBeCloseTo(2e-5, 9)
  const small = etchDepth(carbon, { minutes: 1e5, area: 0.02, volume: 0.001 })
  // all the iron a litre can take, from 200 cm²: 24.6 g / (7.85 g/cm³ × 200 cm²) = 157 µm
  expect(small.value * 1e6).toBeCloseTo(157, 0)
})

test('longer, warmer, stronger: never less; nothing NaN', () => {
  const any = fc.oneof(
    fc.double({ min: 0, max: 500, noNaN: true }),
    fc.constantFrom(NaN, Infinity, -1),
  )
  fc.assert(
    fc.property(any, any, any, any, (minutes, water, temperature, ni) => {
      const c = { C: 0.8, Mn: 0.5, Ni: ni }
      const order = { minutes, water, temperature, area: 0.01, volume: 0.002 }
      const d = etchDepth(c, order)
      const r = etchRelief(c, carbon, order)
      for (const e of [d, r, relativeAttack(c), etchMinutes(c, minutes * 1e-6, order)]) {
        expect([e.value, ...e.range].every(Number.isFinite)).toBe(true)
        expect(e.range[0]).toBeLessThanOrEqual(e.value + 1e-12)
        expect(e.range[1]).toBeGreaterThanOrEqual(e.value - 1e-12)
      }
      if (minutes > 0 && minutes < 400)
        expect(etchDepth(c, { ...order, minutes: minutes * 1.5 }).value).toBeGreaterThanOrEqual(
          d.value,
        )
    }),
    { seed: 4 },
  )
})
