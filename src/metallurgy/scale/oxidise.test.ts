import fc from 'fast-check'
import { expect, test } from 'vitest'
import { followOn, hold } from '../history.ts'
import reference from './reference.json' with { type: 'json' }
import { conversion, oxidise, paidassi, scaleConversion, stanley } from './oxidise.ts'

const near = (got: number, want: number, share: number) =>
  expect(Math.abs(got / want - 1)).toBeLessThan(share)
const at = (celsius: number | string) => Number(celsius) + 273.15

test('rate constants: Paidassi and, independent of him, Stanley (STAN)', () => {
  for (const [c, k] of Object.entries(reference.kp.rows)) near(paidassi(at(c)), k, 1e-3)
  for (const [c, k] of Object.entries(reference.stanley.rows)) near(stanley(at(c)), k, 5e-3)
  // metal goes as the square root: the two stay within 25 % of each other at 1000 to 1200 °C
  for (const c of [1000, 1100, 1150, 1200])
    near(Math.sqrt(paidassi(at(c)) / stanley(at(c))), 1, 0.25)
})

test('oxygen to metal and to scale by stoichiometry (YABU)', () => {
  near(conversion.ironPerOxygen, reference.conversion.ironPerOxygen, 1e-3)
  // 1 mg/cm² is 0.01 kg/m²
  near(conversion.metal * 0.01 * 1e6, reference.conversion.metal, 1e-3)
  near(conversion.scale * 0.01 * 1e6, reference.conversion.scale, 1e-3)
  // FeO with no iron missing, by hand: 55.845/15.999
  near(scaleConversion([1, 0, 0]).ironPerOxygen, (0.95 * 55.845) / 15.999, 1e-9)
})

test('metal lost in still air, by minutes and heat', () => {
  for (const [c, row] of Object.entries(reference.recession.rows))
    row.forEach((um, i) => {
      const loss = oxidise(hold(at(c), reference.recession.minutes[i]! * 60), 'air')
      near(loss.recession.value * 1e6, um, 2e-3)
    })
})

test('descaling each heat costs sqrt(n) in air and nothing in rich gas', () => {
  const heat = hold(at(1150), 300)
  const ten = followOn(...Array.from({ length: 10 }, () => heat))
  const knocked = Array.from({ length: 9 }, (_, i) => (i + 1) * 300)
  near(oxidise(ten, 'air').recession.value * 1000, reference.descaled.once, 2e-3)
  near(oxidise(ten, 'air', knocked).recession.value * 1000, reference.descaled.ten, 2e-3)
  near(
    oxidise(ten, 'air', knocked).recession.value / oxidise(ten, 'air').recession.value,
    Math.sqrt(10),
    1e-9,
  )
  near(oxidise(ten, 'rich', knocked).recession.value, oxidise(ten, 'rich').recession.value, 1e-9)
})

test('a slow ramp is integrated, not sampled', () => {
  const ramp = [
    { time: 0, temperature: at(700) },
    { time: 1000, temperature: at(1200) },
  ]
  let sum = 0
  const n = 200_000
  for (let i = 0; i < n; i++) sum += (1000 / n) * paidassi(at(700) + (500 * (i + 0.5)) / n)
  // kg/m² is 10 sqrt(g² cm⁻⁴)
  near(oxidise(ramp, 'air').recession.value, 10 * Math.sqrt(sum) * conversion.metal, 1e-7)
})

test('a reheated four-inch bar loses what furnaces are known to lose (ABUL)', () => {
  // two hours climbing to 1200 °C in a neutral fire; 100 mm square loses 4 d/100 of its section
  const loss = oxidise(
    [
      { time: 0, temperature: at(600) },
      { time: 7200, temperature: at(1200) },
    ],
    'lean',
  )
  const percent = ((loss.recession.value * 4) / 0.1) * 100
  expect(percent).toBeGreaterThan(0.5)
  expect(percent).toBeLessThan(reference.yields.percent[1]! * 1.2)
})

test('nothing is NaN, hotter is never less, and over the range it says so', () => {
  const any = fc.oneof(fc.double({ min: 0, max: 2500 }), fc.constantFrom(NaN, Infinity, -5))
  fc.assert(
    fc.property(
      any,
      any,
      fc.constantFrom('air', 'lean', 'neutral', 'rich'),
      fc.array(any, { maxLength: 3 }),
      (t, s, a, cuts) => {
        const loss = oxidise(hold(t, s), a as 'air', cuts)
        expect(
          [loss.recession.value, ...loss.recession.range, loss.thickness].every(Number.isFinite),
        ).toBe(true)
        expect(loss.recession.range[0]).toBeLessThanOrEqual(loss.recession.range[1])
        const hotter = oxidise(hold(t + 50, s), a as 'air')
        if (t < 1500 && s >= 0)
          expect(hotter.recession.value).toBeGreaterThanOrEqual(
            oxidise(hold(t, s), a as 'air').recession.value,
          )
      },
    ),
    { seed: 4 },
  )
  expect(oxidise(hold(1600, 60)).recession.outOfRange).toHaveLength(1)
})
