import { expect, test } from 'vitest'
import { plainDecimals, tradeWord, withDecimalsOf } from './index.ts'

test.each([
  ['3.5 mm', '3,5 mm'],
  ['12.34 × 0.5 × 100 mm, 2.44 je mm', '12,34 × 0,5 × 100 mm, 2,44 je mm'],
  ['12 345.5 kg', '12 345,5 kg'],
  // Numbers of steels, places in a file and fractions have no decimals.
  ['1.2842 und 1.2767', '1.2842 und 1.2767'],
  ['bars.main.steps.3.height', 'bars.main.steps.3.height'],
  ['2 1/8 in. Dann', '2 1/8 in. Dann'],
  ['Version 1.2.3', 'Version 1.2.3'],
])('%s is written %s in German, and as it is in English', (text, german) => {
  expect(withDecimalsOf('de', text)).toBe(german)
  expect(withDecimalsOf('en', text)).toBe(text)
})

test.each([
  ['3,5 mm', '3.5 mm'],
  // In English this could mark a thousand; in German it cannot.
  ['3,175 mm', '3.175 mm'],
  [',5 mm', '.5 mm'],
  ['3.5 mm', '3.5 mm'],
  ['1.234,5 mm', '1.234,5 mm'],
  ['1,000,000 mm', '1,000,000 mm'],
  ['2 1/8 in', '2 1/8 in'],
])('%s typed in German is read as %s', (typed, read) => {
  expect(plainDecimals('de', typed)).toBe(read)
  expect(plainDecimals('en', typed)).toBe(typed)
})

test('the job file says mass, a shop says weight', () => {
  expect(tradeWord('massWithin', 'en')).toBe('weight within')
  expect(tradeWord('cleanUp', 'en')).toBe('clean up')
})
