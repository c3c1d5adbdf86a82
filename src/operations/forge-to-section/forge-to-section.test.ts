import { describe, expect, it } from 'vitest'
import { attempt, coldFire, mass, stepOf } from '../attempt.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { squareOnBias } from '../square-on-the-bias/index.ts'
import { forgeToSection } from './index.ts'

describe('forging to a section', () => {
  it('an octagon or a round of the same area keeps the length', () => {
    const bar = samplePack(300, 12, 12, 9)
    const octagon = stepOf(forgeToSection, {}, bar, { shop: coldFire }).after
    // A regular octagon a across flats: 8 triangles of base a·tan 22.5° and height a/2.
    const a = octagon.size.height * 1000
    expect(8 * (a * Math.tan(Math.PI / 8)) * (a / 2) * 0.5).toBeCloseTo(144, 9)
    expect(octagon.size.length * 1000).toBeCloseTo(300, 9)
    const round = stepOf(forgeToSection, { section: 'round', across: '10 mm' }, octagon, {
      shop: coldFire,
    }).after
    expect(round.size.length * 1000).toBeCloseTo((300 * 144) / (Math.PI * 25), 6)
    expect(mass(round)).toBeCloseTo(mass(bar), 12)
  })

  it('does not gather metal', () => {
    expect(
      attempt(forgeToSection, { across: '14 mm' }, samplePack(300, 12, 12)).problems?.[0].at,
    ).toBe('across')
  })
})

describe('squaring on the bias', () => {
  it('keeps area and length, and its layers lie flat no more', () => {
    const { after, warnings } = stepOf(squareOnBias, {}, samplePack(150, 25, 25), {
      shop: coldFire,
    })
    expect(after.size.height * 1000).toBeCloseTo(25, 9)
    expect(after.size.length * 1000).toBeCloseTo(150, 9)
    expect(after.build.form).toBe('worked')
    expect(warnings).toEqual([])
  })

  it('wants a square bar', () => {
    expect(stepOf(squareOnBias, {}, samplePack(150, 25, 21)).warnings[0].what).toMatch(
      /19 % off square/,
    )
    expect(attempt(squareOnBias, {}, samplePack(150, 40, 20)).problems?.[0].try).toContain(
      'square up first',
    )
    const octagon = sampleBar(100, 20, 20, '1084', 'octagon')
    expect(attempt(squareOnBias, {}, octagon).problems).toBeDefined()
  })
})
