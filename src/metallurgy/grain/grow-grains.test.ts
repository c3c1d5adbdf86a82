import fc from 'fast-check'
import { expect, test } from 'vitest'
import { hold } from '../history.ts'
import { grainNumber, growGrains, growLz50, growSellars } from './grow-grains.ts'
import reference from './reference.json' with { type: 'json' }

const at = (celsius: number | string) => Number(celsius) + 273.15

test('Sellars and Whiteman from nothing', () => {
  for (const [c, s, um] of reference.sellars.rows)
    expect(Math.abs(growSellars(hold(at(c!), s!), 0) / um! - 1)).toBeLessThan(3e-3)
})

test('LZ50 against its own measured grains (GG), within 22 %', () => {
  // the points scatter by as much about the published law itself
  for (const [c, row] of Object.entries(reference.lz50.rows))
    row.forEach((um, i) => {
      const got = growLz50(hold(at(c), reference.lz50.hours[i]! * 3600), 12.5)
      expect(Math.abs(got / um - 1)).toBeLessThan(0.22)
    })
  // the check the fit was made with: 84.7 against 82.8 measured
  expect(growLz50(hold(at(1100), 3600), 12.5)).toBeCloseTo(84.7, 0)
})

test('other measured steels lie in the range given, above 1050 °C (GG)', () => {
  const inside = (um: number, c: number | string, hours: number) => {
    const { range } = growGrains(hold(at(c), hours * 3600)).size
    expect(um * 1e-6).toBeGreaterThan(range[0] * 0.8)
    expect(um * 1e-6).toBeLessThan(range[1])
  }
  reference.o1.rows['1100'].forEach((um, i) => inside(um, 1100, reference.o1.hours[i]!))
  reference.bearing.rows['1100'].forEach((um, i) => inside(um, 1100, reference.bearing.hours[i]!))
  reference.rail.um.forEach((um, i) => inside(um, 1200, reference.rail.hours[i]!))
})

test('the ASTM grain number of two sizes of the standard’s table', () => {
  // ASTM E112 table 4: mean intercept 20.0 µm is No. 8.0, 56.6 µm is No. 5.0 (from memory)
  expect(grainNumber(20e-6)).toBeCloseTo(8, 1)
  expect(grainNumber(56.6e-6)).toBeCloseTo(5, 1)
})

test('a long welding heat is coarse and cautioned; nothing is NaN', () => {
  expect(growGrains(hold(at(1150), 1800)).caution).toContain('normalise')
  expect(growGrains(hold(at(850), 600)).caution).toBe('')
  const any = fc.oneof(fc.double({ min: 0, max: 2500 }), fc.constantFrom(NaN, Infinity, -5))
  fc.assert(
    fc.property(any, any, any, (t, s, d) => {
      const g = growGrains(hold(t, s), d * 1e-6)
      expect([g.size.value, ...g.size.range, g.number].every(Number.isFinite)).toBe(true)
    }),
    { seed: 4 },
  )
})
