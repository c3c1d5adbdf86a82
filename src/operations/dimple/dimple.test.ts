import { describe, expect, it } from 'vitest'
import { attempt, lostTo, mass, stepOf } from '../attempt.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { dimple } from './index.ts'

describe('dimples', () => {
  it('4 mm deep cross 50 of 150 layers in 12 mm: a shimmer; 7 of 20: rings 0.6 mm apart', () => {
    const raw = { depth: '4 mm', diameter: '8 mm', spacing: '14 mm' }
    const fine = stepOf(dimple, raw, samplePack(180, 32, 12, 150))
    expect(fine.notes.join(' ')).toContain('crosses 50 layers: so many rings, about 80 µm apart')
    expect(fine.warnings.map((w) => w.what).join()).toMatch(/a shimmer, not rings/)
    const bold = stepOf(dimple, raw, samplePack(180, 32, 12, 20))
    expect(bold.notes.join(' ')).toContain('crosses 6.67 layers: so many rings, about 0.6 mm apart')
    expect(bold.warnings).toEqual([])
  })

  it('take the volume of balls and cones, one to each spacing² × √3/2', () => {
    const bar = sampleBar(200, 40, 15)
    const count = (200 * 40) / (20 ** 2 * (Math.sqrt(3) / 2))
    const each = (raw: object) =>
      ((lostTo(
        stepOf(dimple, { spacing: '20 mm', sides: 'top', ...raw } as never, bar),
        'drilled',
      ) /
        7850) *
        1e9) /
      count
    // Half ball of 10 mm: 2/3·π·125 = 261.8; a hole of the same width 8 deep has 3 mm of wall more: + π·25·3.
    expect(each({ depth: '5 mm', diameter: '10 mm' })).toBeCloseTo(261.8, 1)
    expect(each({ depth: '8 mm', diameter: '10 mm' })).toBeCloseTo(261.8 + 235.6, 1)
    // Cap 2 mm high and 10 mm wide: π·2·(3·25 + 4)/6 = 82.73.
    expect(each({ depth: '2 mm', diameter: '10 mm' })).toBeCloseTo(82.73, 2)
    expect(each({ depth: '3 mm', diameter: '10 mm', form: 'cone' })).toBeCloseTo(78.54, 2)
    expect(mass(bar)).toBeCloseTo(0.942, 9)
  })

  it('stop at holes through, at dimples that meet and at no land left', () => {
    const bar = sampleBar(200, 40, 12)
    const at = (raw: object) => attempt(dimple, raw as never, bar).problems?.[0].at
    expect(at({ depth: '12 mm', diameter: '8 mm', spacing: '14 mm' })).toBe('depth')
    expect(at({ depth: '4 mm', diameter: '15 mm', spacing: '14 mm' })).toBe('spacing')
    expect(at({ depth: '10 mm', diameter: '14 mm', spacing: '14 mm', form: 'flat' })).toBe(
      'spacing',
    )
  })
})
