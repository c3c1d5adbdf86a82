import { describe, expect, it } from 'vitest'
import { attempt, coldFire, lostTo, mass, stepOf } from '../attempt.ts'
import { sampleBar } from '../samples.ts'
import { drift } from './index.ts'

describe('drifting a hole', () => {
  it('keeps the area of every ring round it: 30 wide and a 15 hole swell to 33.5', () => {
    const bar = sampleBar(60, 30, 10)
    const { after } = stepOf(drift, { diameter: '15 mm' }, bar, { shop: coldFire })
    // The round that just touches both sides, π·15², must leave π·(R² − 7.5²) the same.
    expect(after.size.width * 1000).toBeCloseTo(2 * Math.sqrt(15 ** 2 + 7.5 ** 2), 9)
    expect(mass(after)).toBeCloseTo(mass(bar), 12)
  })

  it('loses the slug that is punched out, and pushes the less aside', () => {
    const bar = sampleBar(60, 30, 10)
    const step = stepOf(drift, { diameter: '15 mm', open: 'punch', slug: '9 mm' }, bar, {
      shop: coldFire,
    })
    expect((lostTo(step, 'cut out') / 7850) * 1e9).toBeCloseTo(Math.PI * 4.5 ** 2 * 10, 6)
    expect(step.after.size.width * 1000).toBeCloseTo(
      2 * Math.sqrt(15 ** 2 + 7.5 ** 2 - 4.5 ** 2),
      9,
    )
  })

  it('warns of a thin wall and stops where the ends would tear out', () => {
    // 20 wide swells to 28.3 round a 20 hole: 4.1 of wall in a bar 10 thick.
    const thin = stepOf(drift, { diameter: '20 mm' }, sampleBar(60, 20, 10), { shop: coldFire })
    expect(thin.warnings[0].what).toMatch(/wall beside the hole is 4.1/)
    expect(attempt(drift, { diameter: '30 mm' }, sampleBar(50, 30, 10)).problems?.[0].at).toBe(
      'diameter',
    )
    expect(
      attempt(drift, { diameter: '6 mm', open: 'punch' }, sampleBar(60, 30, 10)).problems?.[0].at,
    ).toBe('slug')
  })
})
