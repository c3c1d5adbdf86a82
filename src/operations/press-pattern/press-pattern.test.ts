import { describe, expect, it } from 'vitest'
import { attempt, coldFire, mass, stepOf } from '../attempt.ts'
import { grind } from '../grind/index.ts'
import { samplePack } from '../samples.ts'
import { pressPattern } from './index.ts'

describe('a pattern pressed and ground level', () => {
  it('sinks metal into length and width, and is a plain bar again once the relief is gone', () => {
    const bar = samplePack(150, 32, 12, 151)
    const pressed = stepOf(pressPattern, { depth: '2 mm', pitch: '12.7 mm' }, bar, {
      shop: { ...coldFire, spread: 0.3 },
    })
    // Half of 2 mm sunk: 12 becomes 11 on average, 12/11 in area, 0.7 of it (in logarithm) along.
    expect(pressed.after.size.length / 0.15).toBeCloseTo((12 / 11) ** 0.7, 12)
    expect(pressed.after.size.width / 0.032).toBeCloseTo((12 / 11) ** 0.3, 12)
    expect(mass(pressed.after)).toBeCloseTo(mass(bar), 12)
    const level = stepOf(grind, { faces: 'top', off: '2.2 mm', level: true }, pressed.after)
    expect(level.after.shape).toBe('rectangle')
    expect(level.after.volume / (0.15 * 0.032 * 0.0098 * (12 / 11))).toBeCloseTo(1, 9)
    // 12 mm of relief-high bar less 0.5 mm would hold more than there is: the relief is not gone.
    const proud = attempt(grind, { faces: 'top', off: '0.5 mm', level: true }, pressed.after)
    expect(proud.problems?.[0].at).toBe('level')
  })

  it('says what of a single die is left a millimetre and a half down', () => {
    const raw = { depth: '1.5 mm', pitch: '6 mm', dies: 'top' }
    const step = stepOf(pressPattern, raw, samplePack(120, 40, 8, 41))
    // exp(−2π · 1.5 / 6) = 0.208
    expect(step.warnings[0].what).toContain('21 %')
    expect(
      attempt(pressPattern, { ...raw, depth: '8 mm' }, samplePack(120, 40, 8)).problems?.[0].at,
    ).toBe('depth')
  })
})
