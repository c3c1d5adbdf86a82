import { describe, expect, it } from 'vitest'
import { cutOffFor, readSides, weighBlock } from './weigh-bar.ts'

const sides = (text: string) => readSides(text).ok ?? []

describe('mass of a block', () => {
  it('5 × 2 1/2 × 1/4 in of steel is 402 g (3.125 in³ = 51.2096 cm³ at 7.85 g/cm³)', () => {
    const { volume, mass } = weighBlock(sides('5 x 2 1/2 x 1/4 in'), 7850)
    expect(volume * 1e6).toBeCloseTo(51.2096, 4)
    expect(mass * 1000).toBeCloseTo(401.995, 3)
  })
  it('600 g of it needs 0.37314 in', () => {
    const { thicknessFor = 0 } = weighBlock(sides('5 x 2 1/2 x 1/4 in'), 7850, 0.6)
    expect(thicknessFor / 0.0254).toBeCloseTo(0.37314, 5)
  })
  it('a unit may stand on every size', () =>
    expect(sides('140 mm × 6 cm × 8 mm')).toEqual([0.14, 0.06, 0.008]))
  it('names what was not understood', () => {
    expect(readSides('5 x 2 in').problems?.[0].what).toContain('5 x 2 in')
    expect(readSides('5 x two x 1/4 in').problems?.[0].what).toContain('two')
    expect(readSides('5 x 0 x 1/4 in').problems?.[0].what).toContain('0')
  })
})

describe('how much to cut off', () => {
  it('a ring blank of 1351 mm³ from 25 × 12 mm: 4.5 mm, with 10 % and two cuts of 1.6 mm 8.1 mm', () => {
    const mass = 1351e-9 * 7850
    const cut = cutOffFor(mass, [0.025, 0.012], 7850, { allowance: 0.1, kerf: 0.0016, cuts: 2 })
    expect((cut.ok?.net ?? 0) * 1000).toBeCloseTo(4.503, 3)
    expect((cut.ok?.cut ?? 0) * 1000).toBeCloseTo(8.15, 1)
  })
})
