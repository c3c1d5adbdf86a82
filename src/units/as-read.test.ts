import { describe, expect, it } from 'vitest'
import { type QuantityKind, type UnitSystem, printAsRead, reexpress } from './index.ts'

describe('what was typed in other units', () => {
  it.each<[string, QuantityKind, UnitSystem, string]>([
    // 25.4 mm to the inch: 140 mm is 5.5118 in, and 5 33/64 is 5.5156.
    ['140 mm', 'length', 'inch', '≈ 5 33/64 in'],
    // 8.5 mm is 0.3346 in, 21/64 is 0.3281.
    ['8.5 mm', 'length', 'inch', '≈ 21/64 in'],
    ['1 mm', 'length', 'inch', '≈ 0.039 in'],
    ['4.5 mm', 'length', 'inch', '≈ 0.177 in'],
    ['0.25 mm', 'length', 'inch', '≈ 0.010 in'],
    ['25 µm', 'length', 'inch', '≈ 0.00098 in'],
    ['3 mm', 'length', 'inch', '≈ 0.118 in'],
    ['2.286 mm', 'length', 'inch', '0.090 in'],
    ['63.5 mm', 'length', 'inch', '2 1/2 in'],
    ['0 mm', 'length', 'inch', '0 in'],
    ['-3 mm', 'length', 'inch', '≈ −0.118 in'],
    ['5 1/4 in', 'length', 'metric', '133.35 mm'],
    ['2 1/2 in', 'length', 'metric', '63.5 mm'],
    ['1/8 in', 'length', 'metric', '≈ 3.18 mm'],
    ['10 in', 'length', 'metric', '254 mm'],
    ['5 33/64 in', 'length', 'metric', '≈ 140 mm'],
    // 453.592 37 g to the pound.
    ['510 g', 'mass', 'inch', '≈ 1.12 lb'],
    ['402 g', 'mass', 'inch', '≈ 14.2 oz'],
    ['2 lb', 'mass', 'metric', '≈ 907 g'],
    ['1150 °C', 'temperature', 'inch', '≈ 2100 °F'],
    ['200 °C', 'temperature', 'inch', '≈ 390 °F'],
    ['1.2 per mm', 'lines', 'inch', '≈ 30 per inch'],
    ['30 per inch', 'lines', 'metric', '≈ 1.18 per mm'],
    ['20 mm pitch', 'twist', 'inch', '1.27 per inch'],
    ['5 %', 'ratio', 'inch', '5 %'],
    ['nonsense', 'length', 'inch', 'nonsense'],
  ])('%s as %s, %s: %s', (typed, kind, system, said) => {
    expect(reexpress(typed, kind, system)).toBe(said)
  })
})

it('what was reckoned is read alike, and not marked', () => {
  expect(printAsRead(0.14, 'length', 'inch')).toBe('5 33/64 in')
  expect(printAsRead(0.1842137, 'length', 'metric')).toBe('184 mm')
  expect(printAsRead(0.0791, 'length', 'metric')).toBe('79.1 mm')
  expect(printAsRead(0.002, 'mass', 'metric')).toBe('2 g')
  expect(printAsRead(0.0123, 'mass', 'metric')).toBe('12.3 g')
  expect(printAsRead(12.345, 'mass', 'metric')).toBe('12.35 kg')
  expect(printAsRead(NaN, 'length', 'inch')).toBe('—')
})
