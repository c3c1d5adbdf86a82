import { describe, expect, it } from 'vitest'
import type { SteelStep } from '#desk'
import { placeAt, positionOf, seenAt, snapped } from './route-place.ts'

const size = { length: 1, width: 1, height: 1 }
const step = (bar: string, index: number, after: string, gradual = false): SteelStep => ({
  ...{ bar, index, after, gradual, size },
})
const steps = [
  step('core', 0, 'take bar'),
  step('jacket', 0, 'stack'),
  step('jacket', 1, 'weld', true),
  step('knife', 0, 'clad'),
  step('knife', 1, 'draw out', true),
]

describe('places on the line of a route', () => {
  it('go there and back', () => {
    for (const position of [0, 0.3, 1, 1.5, 2.02, 3, 3.999])
      expect(positionOf(steps, placeAt(steps, position))).toBeCloseTo(position, 9)
    expect(placeAt(steps, 2)).toEqual({ bar: 'jacket', index: 1 })
    expect(placeAt(steps, 1.25)).toEqual({ bar: 'jacket', index: 1, done: 0.25 })
    // Its end is the piece, as is what is not on it.
    expect(placeAt(steps, 4)).toBeUndefined()
    expect(positionOf(steps, { bar: 'gone', index: 0 })).toBe(4)
    expect(placeAt([], 0)).toBeUndefined()
  })

  it('show the metal on its way through a gradual step, and the nearer stop of one done at a stroke', () => {
    const seen = (position: number) => seenAt(steps, placeAt(steps, position))
    expect(seen(1.4)).toEqual({ bar: 'jacket', index: 1, done: expect.closeTo(0.4) })
    expect(seen(2.4)).toEqual({ bar: 'jacket', index: 1 })
    expect(seen(2.6)).toEqual({ bar: 'knife', index: 0 })
  })

  it('let a hand find the stops', () => {
    expect([1.97, 2.03, 2.3].map(snapped)).toEqual([2, 2, 2.3])
  })
})
