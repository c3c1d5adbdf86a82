import { describe, expect, it } from 'vitest'
import { type Layered, countLayers, massOf, thicknessOf } from '#billet'
import { attempt, tryOut } from '../trials.ts'
import { takeRemnant } from './index.ts'

const densities = { '1095': 7411, '15N20': 7548 }
const label = {
  length: '200 mm',
  width: '40 mm',
  height: '10 mm',
  steels: [
    { steel: '1095', share: '70 %' },
    { steel: '15N20', share: '30 %' },
  ],
  layers: 169,
  laid: 180,
}

describe('take remnant', () => {
  it('has the layers of its label, its steels by their shares, its mass by its sizes', () => {
    const { after, added } = tryOut(takeRemnant, label)
    expect(countLayers(after.build, 'z')).toEqual({ laid: 180, merged: 169 })
    expect(thicknessOf(after.build as Layered)).toBeCloseTo(0.01, 12)
    // 80 cm³: 56 of the one, 24 of the other.
    expect(added['1095']).toBeCloseTo(56e-6 * 7411, 12)
    expect(added['15N20']).toBeCloseTo(24e-6 * 7548, 12)
    expect(massOf(after, densities)).toBeCloseTo(56e-6 * 7411 + 24e-6 * 7548, 12)
  })

  it('compares the scales with the caliper', () => {
    expect(tryOut(takeRemnant, { ...label, mass: '600 g' }).warnings).toEqual([])
    expect(tryOut(takeRemnant, { ...label, mass: '560 g' }).warnings[0].at).toBe('mass')
  })

  it('wants shares that make a whole and a layer for each steel', () => {
    const half = [{ steel: '1095', share: '50 %' }]
    expect(attempt(takeRemnant, { ...label, steels: half }).problems?.[0].at).toBe('steels')
    expect(attempt(takeRemnant, { ...label, layers: 1 }).problems?.[0].at).toBe('layers')
  })
})
