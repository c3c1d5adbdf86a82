import { expect, test } from 'vitest'
import { type Counted, counted, printCount } from './count.ts'

test('says one of what is one, by the rules of the language, and more of all else', () => {
  const rules = new Intl.PluralRules('en')
  for (const of of Object.keys(counted) as Counted[])
    for (const n of [0, 1, 2, 11, 21, 101]) {
      const noun = printCount(n, of).slice(`${n} `.length)
      expect(noun === of).toBe(rules.select(n) === 'one')
    }
})

test('goes by what a rounded number reads', () => {
  expect(printCount((0.98).toFixed(0), 'blow')).toBe('1 blow')
  expect(printCount('1.5', 'pass')).toBe('1.5 passes')
})
