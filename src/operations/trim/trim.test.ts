import { describe, expect, it } from 'vitest'
import { type Layered, layered } from '#billet'
import { crop } from '../crop/index.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { tack } from '../tack/index.ts'
import { attempt, tryOut } from '../trials.ts'
import { trim } from './index.ts'

const mm = (n: number) => n / 1000

describe('trim', () => {
  it('takes flats off a round bar: 20 mm round, 1 mm off four ways', () => {
    // Area left: the circle of 10 within |y| ≤ 9 and |z| ≤ 9; two pairs of segments do not overlap
    // (9² + 9² > 10²). Segment: 100 acos(0.9) − 9 √19 = 5.8728 mm²; 314.159 − 4 × 5.8728 = 290.668.
    const { after } = tryOut(
      trim,
      { sides: '1 mm', faces: '1 mm' },
      sampleBar(100, 20, 20, 'W2', 'round'),
    )
    const segment = 100 * Math.acos(0.9) - 9 * Math.sqrt(19)
    const exact = Math.PI * 100 - 4 * segment
    expect(exact).toBeCloseTo(290.668, 2)
    expect(after.volume * 1e9).toBeCloseTo(exact * 100, 1)
  })

  it('says how many layers it takes off the faces', () => {
    const { after, notes } = tryOut(trim, { faces: '3 mm' }, samplePack(140, 50, 40, 21))
    expect((after.build as Layered).layers).toHaveLength(19)
    expect(notes[0]).toContain('2 layers')
    expect(attempt(trim, { sides: '25 mm' }, samplePack()).problems?.[0].at).toBe('sides')
  })
})

describe('crop', () => {
  it('takes the layers that cross the end', () => {
    const thirds = ['1095', '15N20', 'W2'].map((steel) => ({ steel, thickness: mm(20) }))
    const bar = { ...samplePack(60, 20, 20), build: layered('x', thirds) }
    const { losses, notes } = tryOut(crop, { start: '25 mm', end: '0 mm' }, bar)
    // 20 mm of the first and 5 of the second, 20 × 20 mm.
    expect(losses[0].masses['1095']).toBeCloseTo(20 * 400 * 1e-9 * 7411, 12)
    expect(losses[0].masses['15N20']).toBeCloseTo(5 * 400 * 1e-9 * 7548, 12)
    expect(losses[0].masses.W2).toBeCloseTo(0, 12)
    expect(notes).toHaveLength(2)
    expect(attempt(crop, { start: '50 mm', end: '20 mm' }, bar).problems).toHaveLength(1)
  })
})

describe('tack', () => {
  it('warns of flux shut in and of tacking what is welded', () => {
    const pack = { ...samplePack(), bond: 'loose' } as const
    const sealed = tryOut(tack, { how: 'sealed', flux: 'borax' }, pack)
    expect(sealed.after.bond).toBe('sealed')
    expect(sealed.warnings[0].at).toBe('flux')
    expect(tryOut(tack, {}, samplePack()).after.bond).toBe('welded')
  })
})
