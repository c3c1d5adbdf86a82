import { describe, expect, it } from 'vitest'
import { attempt, coldFire, stepOf } from '../attempt.ts'
import { sampleBar } from '../samples.ts'
import { taper } from './index.ts'

/** Volume of a bar whose two sides run straight from one end to the other, summed slice by slice, mm³. */
function sliced(from: [number, number], to: [number, number], length: number): number {
  const n = 20000
  let sum = 0
  for (let i = 0; i < n; i++) {
    const u = (i + 0.5) / n
    sum += (from[0] + (to[0] - from[0]) * u) * (from[1] + (to[1] - from[1]) * u) * (length / n)
  }
  return sum
}

describe('a taper', () => {
  it('over the whole bar: 30 × 6 × 200 drawn to 12 × 3 at the end', () => {
    const { after } = stepOf(
      taper,
      { endHeight: '3 mm', endWidth: '12 mm' },
      sampleBar(200, 30, 6),
      { shop: coldFire },
    )
    expect(sliced([30, 6], [12, 3], after.size.length * 1000)).toBeCloseTo(200 * 30 * 6, 2)
    // Thickness alone, 6 to 3, makes it 4/3 as long.
    const distal = stepOf(taper, { endHeight: '3 mm' }, sampleBar(210, 30, 6), { shop: coldFire })
    expect(distal.after.size.length * 1000).toBeCloseTo(280, 9)
  })

  it('over its end: the rest stays as it was', () => {
    const { after } = stepOf(
      taper,
      { over: '80 mm', endHeight: '2 mm', endWidth: '8 mm' },
      sampleBar(250, 32, 6),
      { shop: coldFire },
    )
    const used = sliced([32, 6], [8, 2], 80) / (32 * 6)
    expect(after.size.length * 1000).toBeCloseTo(250 - used + 80, 6)
    expect(after.volume).toBeCloseTo(250 * 32 * 6 * 1e-9, 15)
  })

  it('is not longer than the metal allows, and never thicker at the end', () => {
    expect(
      attempt(taper, { over: '300 mm', endHeight: '3 mm' }, sampleBar(200, 30, 6)).problems?.[0].at,
    ).toBe('over')
    expect(attempt(taper, { endHeight: '7 mm' }, sampleBar(200, 30, 6)).problems?.[0].at).toBe(
      'endHeight',
    )
  })
})
