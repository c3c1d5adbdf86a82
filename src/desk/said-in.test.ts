import { beforeAll, expect, test } from 'vitest'
import { loadWords } from '#words'
import { saidIn } from './said-in.ts'

beforeAll(() => loadWords('de'))

const weld =
  'These steels weld at 1150 to 1252 °C: soak 10 min once the colour is even, and take off 5 to 10 % in the first heat (common practice).'

test('a sentence of the engine in the units and the language chosen', () => {
  expect(saidIn(weld, 'en', 'metric').text).toContain('weld at 1150 to 1250 °C')
  // 1150 °C is 2102 °F, 1252 °C is 2286 °F.
  expect(saidIn(weld, 'en', 'inch').text).toContain('weld at 2100 to 2285 °F: soak 10 min')
  expect(saidIn(weld, 'de', 'inch')).toMatchObject({ language: 'de', isForeign: false })
  expect(saidIn(weld, 'de', 'inch').text).toContain('bei 2100 bis 2285 °F')
  expect(saidIn('there is no job "nonsense"', 'en', 'metric').text).toBe(
    'there is no job “nonsense”',
  )
  expect(saidIn('2 1/8" and 3"', 'en', 'metric').text).toBe('2 1/8" and 3"')
  for (const [end, german] of [
    ['the butt', 'vom Griffende'],
    ['the left end', 'vom linken Ende'],
  ])
    expect(
      saidIn(`pin hole: 5 mm, 85 mm from ${end}, on the middle line.`, 'de', 'metric').text,
    ).toBe(`Stiftloch: 5 mm, 85 mm ${german}, auf der Mittellinie.`)
  // 8.3 mm is 0.327 in, nearest 21/64; 11 mm is 0.433, nearest 7/16 (0.4375).
  expect(saidIn('at least 8.3 mm', 'en', 'inch').text).toBe('at least 21/64 in')
  expect(saidIn('at least 8.3 mm', 'de', 'metric').text).toBe('mindestens 8,3 mm')
})
