import { describe, expect, it } from 'vitest'
import { attempt, coldFire, stepOf } from '../attempt.ts'
import { sampleBar } from '../samples.ts'
import { forgeFlat } from './index.ts'

describe('forging flat', () => {
  it.each([
    [0.2, 1.12, 1.58],
    [0.3, 1.19, 1.5],
    [0.4, 1.26, 1.41],
  ])('12.7 to 7.15 with a spread of %d: width × %d, length × %d', (spread, width, length) => {
    // A bar 15 thick with so much cut out that, level, it stands 12.7.
    const bar = { ...sampleBar(200, 30, 15), shape: 'cut' as const, volume: 0.2 * 0.03 * 0.0127 }
    const { after } = stepOf(forgeFlat, { height: '7.15 mm', heats: 4 }, bar, {
      shop: { ...coldFire, spread },
    })
    expect(after.size.width / 0.03).toBeCloseTo(width, 2)
    expect(Math.abs(after.size.length / 0.2 - length)).toBeLessThan(0.006)
    expect(after.shape).toBe('rectangle')
  })

  it('does not fill more than there is', () => {
    const bar = { ...sampleBar(200, 30, 15), shape: 'cut' as const, volume: 0.2 * 0.03 * 0.0127 }
    expect(attempt(forgeFlat, { height: '13 mm' }, bar).problems?.[0].why).toMatch(
      /cut out is gone/,
    )
    expect(attempt(forgeFlat, { height: '12 mm', width: '40 mm' }, bar).problems?.[0].at).toBe(
      'width',
    )
  })
})
