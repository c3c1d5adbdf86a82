import fc from 'fast-check'
import { expect, test } from 'vitest'
import { carbonHeld, treatSteel } from './treat-steel.ts'

const zero = 273.15
const twice = [
  { temperature: 200 + zero, seconds: 7200 },
  { temperature: 200 + zero, seconds: 7200 },
]

test('a thin blade of 1095 and 15N20 hardened from oil reads as a knife-maker expects', () => {
  const blade = { shape: 'plate', size: 0.002, medium: 'oil, fast', tempers: twice } as const
  const dark = treatSteel({ ...blade, composition: { C: 0.96, Mn: 0.4, Si: 0.22 }, carbon: 0.85 })
  const bright = treatSteel({
    ...blade,
    composition: { C: 0.75, Mn: 0.35, Si: 0.25, Ni: 2 },
    carbon: 0.81,
  })
  for (const s of [dark, bright]) {
    // as sold: strip of 1095 quenched in oil 66, at 400 °F 62; of 1075 64 and 59 (MEAD)
    expect(s.asQuenched.range[1]).toBeGreaterThan(63)
    expect(s.tempered.value).toBeGreaterThan(54)
    expect(s.tempered.value).toBeLessThan(63)
    expect(s.window.low - zero).toBeGreaterThan(720)
    expect(s.window.high - zero).toBeLessThan(850)
  }
  expect(dark.tempered.published || dark.tempered.notes[0]!.startsWith('No published')).toBe(true)
})

test('5160 at 6 mm in oil goes through: 57 ± 2 after an hour at 204 °C (RAIIPA)', () => {
  const s = treatSteel({
    composition: { C: 0.62, Mn: 0.88, Si: 0.22, Cr: 0.79 },
    shape: 'plate',
    size: 0.006,
    medium: 'oil, moved',
    tempers: [{ temperature: 204 + zero, seconds: 3600 }],
  })
  expect(s.hardening.verdict).toBe('through')
  expect(s.tempered.table).toContain('5160')
  expect(Math.abs(s.tempered.value - 57)).toBeLessThan(2)
  expect(s.hardenIn).toContain('oil, moved')
})

test('mild steel stays soft, and a heat under Ac1 hardens nothing', () => {
  const mild = treatSteel({
    composition: { C: 0.1, Mn: 0.4 },
    shape: 'plate',
    size: 0.004,
    medium: 'water, moved',
    tempers: [],
  })
  expect(mild.cautions.join(' ')).toContain('Too little carbon')
  const cold = treatSteel({
    composition: { C: 0.8, Mn: 0.7 },
    heat: 950,
    shape: 'plate',
    size: 0.002,
    medium: 'oil, moved',
    tempers: [],
  })
  expect(cold.cautions[0]).toContain('does not harden')
  expect(cold.asQuenched.value).toBeLessThan(45)
})

test('carbon held in austenite turns Acm round', () => {
  // Acm of Fe-C: .95 % at 800.6 °C, 1.1 % at 855.5 °C (OC-TDB)
  expect(carbonHeld(800.6 + zero)).toBeCloseTo(0.95, 2)
  expect(carbonHeld(855.5 + zero)).toBeCloseTo(1.1, 2)
})

test('nothing is NaN', () => {
  const w = fc.oneof(fc.double({ min: 0, max: 3, noNaN: true }), fc.constantFrom(NaN, -1, Infinity))
  const t = fc.oneof(
    fc.double({ min: 200, max: 1600, noNaN: true }),
    fc.constantFrom(NaN, Infinity),
  )
  fc.assert(
    fc.property(
      fc.record({ C: w, Mn: w, Cr: w, Ni: w }),
      w,
      t,
      t,
      (composition, size, heat, temper) => {
        const s = treatSteel({
          composition,
          size: size / 100,
          shape: 'plate',
          medium: 'oil, moved',
          heat,
          tempers: [{ temperature: temper, seconds: 3600 }],
        })
        for (const e of [
          s.ms,
          s.retained,
          s.asQuenched,
          s.tempered,
          s.ac1,
          s.hardening.criticalSize,
        ]) {
          expect([e.value, ...e.range].every(Number.isFinite)).toBe(true)
        }
        expect([s.dissolved, s.window.low, s.window.high].every(Number.isFinite)).toBe(true)
      },
    ),
    { seed: 4, numRuns: 60 },
  )
})
