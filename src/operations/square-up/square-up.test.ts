import { describe, expect, it } from 'vitest'
import { attempt, coldFire, lostTo, mass, stepOf } from '../attempt.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { squareUp } from './index.ts'

describe('squaring up', () => {
  it('brings 30 × 30 × 105 to 16 × 16 × 369, 358 once 3 % is lost', () => {
    // 105 · 30² / 16² = 369.14
    const cold = stepOf(squareUp, { side: '16 mm' }, samplePack(), { shop: coldFire })
    expect(cold.after.size.length * 1000).toBeCloseTo(369.14, 2)
    const hot = stepOf(squareUp, { side: '16 mm', heats: 3 }, samplePack())
    const lost = lostTo(hot, 'scale') / mass(samplePack())
    expect(lost).toBeGreaterThan(0.02)
    expect(lost).toBeLessThan(0.04)
    expect(hot.after.size.length * 1000).toBeCloseTo((105 * 900 * (1 - lost)) / 256, 6)
    expect(369.14 * 0.97).toBeCloseTo(358, 0)
  })

  it('gives the square of the same area where none is named, of a round bar too', () => {
    const flat = stepOf(squareUp, {}, sampleBar(100, 40, 10), { shop: coldFire })
    expect(flat.after.size.height * 1000).toBeCloseTo(20, 9)
    // A disc of radius 6 becomes a square of side 6·√π = 10.635.
    const disc = stepOf(squareUp, {}, sampleBar(100, 12, 12, '1084', 'round'), { shop: coldFire })
    expect(disc.after.size.width * 1000).toBeCloseTo(6 * Math.sqrt(Math.PI), 9)
    expect(disc.after.size.length * 1000).toBeCloseTo(100, 9)
    expect(disc.after.build.form).toBe('worked')
  })

  it('does not gather metal, and does not squeeze a loose stack', () => {
    expect(attempt(squareUp, { side: '31 mm' }, samplePack()).problems?.[0].at).toBe('side')
    const loose = { ...samplePack(), bond: 'loose' as const }
    expect(attempt(squareUp, {}, loose).problems?.[0].what).toMatch(/only loose/)
  })
})
