import fc from 'fast-check'
import { expect, test } from 'vitest'
import { burningTable, checkOverheating, solidus } from './overheating.ts'
import reference from './reference.json' with { type: 'json' }

test('the Fe-C solidus (OC-TDB), and the eutectic it runs into (CTHERM)', () => {
  for (const [c, t] of Object.entries(reference.solidus.rows))
    expect(Math.abs(solidus(Number(c)).value - 273.15 - t)).toBeLessThan(Number(c) > 1.5 ? 15 : 3)
  expect(Math.abs(solidus(2).value - 273.15 - reference.eutectic.celsius)).toBeLessThan(30)
})

test('published highest forging heats are never called melting, and burning lies under the solidus', () => {
  for (const [, carbon, celsius] of reference.forging.rows as [string, number, number][]) {
    const o = checkOverheating(carbon, celsius + 273.15)
    expect(['safe', 'hot']).toContain(o.verdict)
    // 170 to 270 K to the binary solidus for published limits
    expect(o.margin.value).toBeGreaterThan(150)
    expect(o.margin.value).toBeLessThan(280)
  }
  for (const [c, forge, burn] of burningTable) {
    expect(burn).toBeGreaterThan(forge)
    if (c >= 0.7) expect(solidus(c).value - 273.15 - burn).toBeGreaterThan(90)
  }
})

test('carbon gained from a neighbour brings burning nearer', () => {
  const t = 1200 + 273.15
  expect(checkOverheating(0.4, t).verdict).toBe('safe')
  expect(checkOverheating(0.75, t).verdict).toBe('hot')
  expect(checkOverheating(1.1, t).verdict).toBe('burning')
  expect(checkOverheating(1.1, 1340 + 273.15).verdict).toBe('melting')
})

test('nothing is NaN', () => {
  const any = fc.oneof(
    fc.double(),
    fc.double({ min: 0, max: 3000 }),
    fc.constantFrom(NaN, Infinity),
  )
  fc.assert(
    fc.property(any, any, (c, t) => {
      const o = checkOverheating(c, t)
      expect(
        [o.margin.value, ...o.margin.range, o.forgeAtMost, o.burnsAt].every(Number.isFinite),
      ).toBe(true)
    }),
    { seed: 4 },
  )
})
