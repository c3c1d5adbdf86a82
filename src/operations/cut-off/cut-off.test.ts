import { describe, expect, it } from 'vitest'
import { layered } from '#billet'
import { sampleBar, samplePack } from '../samples.ts'
import { attempt, tryOut, workedBack } from '../trials.ts'
import { cutOff } from './index.ts'

const mm = (n: number) => n / 1000

describe('cut off', () => {
  it('gives a ring blank from a 25 × 12 bar: 8.1 mm of it with two cuts', () => {
    // π/4 (24² − 19²) 8 = 1351 mm³, over 300 mm² and a tenth more: 4.95 mm; with two kerfs 8.15.
    const blank = (Math.PI / 4) * (24 ** 2 - 19 ** 2) * 8
    const keep = (blank / 300) * 1.1
    const bar = sampleBar(200, 25, 12)
    const faced = tryOut(cutOff, { keep: '198.4 mm', kerf: '1.6 mm' }, bar).after
    const { after, setAside } = tryOut(cutOff, { keep: `${keep} mm`, kerf: '1.6 mm' }, faced)
    expect(after.volume * 1e9).toBeCloseTo(1.1 * blank, 6)
    expect(200 - setAside[0].size.length * 1000).toBeCloseTo(8.15, 2)
  })

  it('gives each piece the layers it lies in where they cross the bar', () => {
    const thirds = ['1095', '15N20', 'W2'].map((steel) => ({ steel, thickness: mm(30) }))
    const bar = { ...samplePack(90, 20, 20), build: layered('x', thirds) }
    const { after, setAside } = tryOut(cutOff, { keep: '40 mm', kerf: '0 mm' }, bar)
    expect(after.build).toMatchObject({ layers: [{ steel: '1095' }, { steel: '15N20' }] })
    expect(setAside[0].build).toMatchObject({ layers: [{ steel: '15N20' }, { steel: 'W2' }] })
  })

  it('asks for the length kept, the cut and the remnant wanted', () => {
    const demand = { length: mm(120), width: mm(30), height: mm(12) }
    const bar = samplePack(240, 30, 12)
    const leaving = { keep: '120 mm', leave: '50 mm', kerf: '2 mm' }
    expect(workedBack(cutOff, demand, leaving, bar).ok?.[0].length).toBeCloseTo(mm(172), 12)
    expect(workedBack(cutOff, demand, { keep: '100 mm' }, bar).problems?.[0].at).toBe('keep')
    expect(attempt(cutOff, { keep: '240 mm', leave: '1 mm' }, bar).problems?.[0].at).toBe('leave')
    expect(attempt(cutOff, { keep: '241 mm' }, bar).problems?.[0].at).toBe('keep')
  })
})
