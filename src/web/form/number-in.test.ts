import { expect, test } from 'vitest'
import { numberIn } from './number-in.ts'

test('one form of number in all the sheets', () => {
  const count = numberIn('en', {})
  expect([999, 1150, 12990].map(count)).toEqual(['999', '1150', '12\u2009990'])
  const percent = numberIn('en', { style: 'percent', maximumFractionDigits: 1 })
  expect([0.644, 0.0996, 0.0561, -0.05, 0].map(percent)).toEqual([
    '64 %',
    '10 %',
    '5.6 %',
    '−5 %',
    '0 %',
  ])
  expect(numberIn('de', { style: 'percent', maximumFractionDigits: 1 })(0.0561)).toBe('5,6 %')
})
