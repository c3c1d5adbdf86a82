import { expect, test } from 'vitest'
import { barLength } from './bar-length.ts'

test('a scale bar is round in the units chosen', () => {
  // 400 pixels of 0.1 mm: a third is 13.3 mm.
  expect(barLength(1e-4, 400, false)).toMatchObject({ metres: 0.01, says: '10 mm' })
  expect(barLength(1e-4, 400, true)).toMatchObject({ metres: 0.0127, says: '1/2 in' })
})
