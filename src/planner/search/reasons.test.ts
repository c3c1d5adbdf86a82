import { describe, expect, it } from 'vitest'
import type { Figures } from './figures.ts'
import { reasonsAgainst } from './reasons.ts'

const one: Figures = {
  heats: 18,
  steel: 1.2,
  yield: 0.4,
  hands: 36_000,
  cost: 500,
  layers: 169,
  lines: 1130,
  off: 0.05,
  carbonKept: 0,
  failing: 0.06,
  layersLost: 0,
}

describe('reasons in the smith’s words', () => {
  it('says fewer heats and more metal', () =>
    expect(reasonsAgainst({ ...one, heats: 16, steel: 1.308 }, one)).toEqual([
      '9 % more metal',
      'two fewer heats',
    ]))
  it('one heat is one heat, half an hour is half an hour', () =>
    expect(reasonsAgainst({ ...one, heats: 19, hands: 34_200 }, one)).toEqual([
      '30 min less work',
      'one more heat',
    ]))
  it('speaks of layers where no lines stand on the face', () =>
    expect(reasonsAgainst({ ...one, lines: undefined, off: 0.02 }, one)).toEqual([
      '3 % nearer to the layers wished',
    ]))
  it('does not speak of what nobody would notice', () =>
    expect(reasonsAgainst({ ...one, steel: 1.203, hands: 36_100 }, one)).toEqual([]))
})
