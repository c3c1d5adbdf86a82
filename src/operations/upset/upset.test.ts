import { describe, expect, it } from 'vitest'
import { thicknessOf } from '#billet'
import { attempt, coldFire, stepOf } from '../attempt.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { upset } from './index.ts'

describe('upsetting', () => {
  it('50 long by 10 grows the section by the root of 50/40 each way', () => {
    const { after } = stepOf(upset, { by: '10 mm' }, samplePack(50, 30, 30), { shop: coldFire })
    expect(after.size.height * 1000).toBeCloseTo(33.541, 3)
    expect(after.size.length * 1000).toBeCloseTo(40, 9)
    // The layers thicken with the bar.
    expect(after.build.form === 'layered' && thicknessOf(after.build) * 1000).toBeCloseTo(33.541, 3)
  })

  it('only the end heated grows; more than 2½ thicknesses of it buckles', () => {
    const end = stepOf(upset, { by: '15 mm', over: '40 mm' }, sampleBar(200, 20, 20), {
      shop: coldFire,
    })
    expect(end.after.size.width * 1000).toBeCloseTo(20 * Math.sqrt(40 / 25), 9)
    expect(end.after.size.length * 1000).toBeCloseTo(185, 9)
    expect(end.warnings).toEqual([])
    const long = stepOf(upset, { by: '15 mm', over: '60 mm' }, sampleBar(200, 20, 20), {
      shop: coldFire,
    })
    expect(long.warnings[0].what).toMatch(/will buckle/)
    expect(attempt(upset, { by: '60 mm' }, samplePack(50, 30, 30)).problems?.[0].at).toBe('by')
  })
})
