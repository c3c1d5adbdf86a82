import { shift, turn } from '#warp'
import { describe, expect, it } from 'vitest'
import { crop, faceOfBar } from '#view'
import { moved, stack } from './origin.ts'
import { precisionFor } from './precision.ts'

describe('the precision of a face', () => {
  // Sheets of 10 µm across a bar, worked 4 m from its start: single precision tells places apart there by 0.2 µm.
  const sheets = Array.from({ length: 2000 }, (_, i) => ({
    steel: i % 2 ? 'bright' : 'dark',
    thickness: 1e-5,
  }))
  const size = { length: 0.2, width: 0.02, height: 0.01 }
  const bar = moved(stack('main', sheets), [
    shift({ x: 4 }),
    turn('upright', { length: 0.01, height: 0 }),
  ])
  const close = (ppmm: number) =>
    crop(faceOfBar(size, 'front', { ppmm }), { left: 100 * ppmm, top: 9, width: 20, height: 20 })

  it('is single where a pixel is far more than its rounding, double where it is not', () => {
    expect(precisionFor(close(20), bar)).toBe('f32')
    expect(precisionFor(close(400), bar)).toBe('f64')
  })
})
