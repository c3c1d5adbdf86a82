import { expect, test } from 'vitest'
import { sayIn } from '#report'
import { expressIn } from './express.ts'
import { sizesTyped } from './sizes-typed.ts'

const piece = {
  overall: { length: 'length', width: 'width', height: 'thickness' },
  size: { length: 0.508, width: 0.06, height: 0.008 },
}

test('sizes stand as they were typed, and what nobody typed as it comes out', () => {
  const told = (written: object, units: 'metric' | 'inch') =>
    sizesTyped(piece, written, expressIn(units, 'en'), sayIn(units))
  expect(told({ length: '?', width: '60 mm', thickness: '8 mm' }, 'metric')).toBe('508 × 60 × 8 mm')
  expect(told({ length: '20 in', width: '2 1/2 in', thickness: '.31 in' }, 'inch')).toBe(
    '20 × 2 1/2 × .31 in',
  )
})
