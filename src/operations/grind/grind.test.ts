import { describe, expect, it } from 'vitest'
import { attempt, lostTo, stepOf } from '../attempt.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { grind } from './index.ts'

describe('grinding', () => {
  it('a 10 mm twist bar to 2.8 loses 72 % from its two faces', () => {
    const bar = sampleBar(150, 10, 10)
    const step = stepOf(grind, { to: '2.8 mm' }, bar)
    expect(lostTo(step, 'ground') / (0.15 * 0.01 * 0.01 * 7850)).toBeCloseTo(0.72, 9)
    expect(step.after.size.height * 1000).toBeCloseTo(2.8, 12)
  })

  it('counts the layers that go: 9 layers of 1 mm, 2.5 mm off the top', () => {
    const layers = Array.from({ length: 9 }, (_, i) => ({
      steel: i % 2 ? '15N20' : '1095',
      thickness: 1e-3,
    }))
    const bar = {
      ...samplePack(100, 30, 9),
      build: { form: 'layered' as const, axis: 'z' as const, layers, laid: 9 },
    }
    const step = stepOf(grind, { faces: 'top', off: '2.5 mm' }, bar)
    expect(step.warnings[0].what).toBe('2 outer layers are lost to grinding')
    expect(step.after.build.form === 'layered' && step.after.build.layers.length).toBe(7)
    // Two and a half layers of 30 × 100: the top one and half the third are 1095, the second 15N20.
    expect(step.losses[0].masses['15N20']).toBeCloseTo(30 * 100 * 1e-9 * 7850, 12)
    expect(step.losses[0].masses['1095']).toBeCloseTo(1.5 * 30 * 100 * 1e-9 * 7850, 12)
  })

  it('wants one way of saying how much', () => {
    const at = (raw: object) => attempt(grind, raw as never, sampleBar()).problems?.[0].at
    expect(at({ off: '1 mm', to: '8 mm' })).toBe('to')
    expect(at({ faces: 'sides', to: '8 mm' })).toBe('to')
    expect(at({ to: '11 mm' })).toBe('to')
    expect(at({ off: '5 mm' })).toBe('off')
  })
})
