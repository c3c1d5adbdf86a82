import { describe, expect, it } from 'vitest'
import { sayIn } from './say.ts'

const inch = sayIn('inch')
const metric = sayIn('metric')

describe('lengths of a card', () => {
  it.each([
    ['1/8 in sheet', 0.003175, '3.18 mm', '1/8 in'],
    ['0.065 in sheet is not 1/16', 0.001651, '1.65 mm', '0.065 in'],
    ['0.090 in sheet is not 3/32', 0.002286, '2.29 mm', '0.090 in'],
    ['3 mm sheet is not 1/8', 0.003, '3.00 mm', '0.118 in'],
    ['a long bar to the 64th', 0.0958, '95.8 mm', '3 49/64 in'],
    ['over 100 mm to the millimetre', 0.2396, '240 mm', '9 7/16 in'],
  ])('%s', (_what, m, mm, inches) => {
    expect(metric.length(m)).toBe(mm)
    expect(inch.length(m)).toBe(inches)
  })

  it('a piece is length × width × thickness, a row width × thickness × length', () => {
    const plaque = { length: 0.127, width: 0.0635, height: 0.00635 }
    expect(inch.block(plaque)).toBe('5 × 2 1/2 × 1/4 in')
    expect(inch.size(plaque)).toBe('2 1/2 × 1/4 × 5 in')
    expect(sayIn('both').block(plaque)).toBe('127 × 63.5 × 6.35 mm (5 × 2 1/2 × 1/4 in)')
  })

  it('temperatures as a pyrometer is read: 1150 °C is 2102 °F', () => {
    expect(inch.temperature(1423.15)).toBe('2100 °F')
    expect(metric.temperature(1423.15)).toBe('1150 °C')
  })

  it('a pound and more in pounds, less in ounces', () => {
    expect(inch.mass(0.402)).toBe('14.2 oz')
    expect(inch.mass(1.421)).toBe('3.13 lb')
  })
})
