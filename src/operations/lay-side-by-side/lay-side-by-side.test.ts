import { describe, expect, it } from 'vitest'
import { boxVolume } from '#geometry'
import { sampleBar, samplePack } from '../samples.ts'
import { attempt, tryOut, workedBack } from '../trials.ts'
import { weld } from '../weld/index.ts'
import { laySideBySide } from './index.ts'

const mm = (n: number) => n / 1000

describe('lay side by side', () => {
  it('cuts a bar as often as it is named: 551 mm of four bars from two', () => {
    // A 760 mm blade drawn 1.52 times in length, 25 mm over at each end: 760 / 1.52 + 50 = 550 mm.
    const bars = [samplePack(600, 12, 12), samplePack(600, 12, 12)]
    const row = { row: ['right', 'left', 'right', 'left'], kerf: '1.6 mm', cleanUp: '0.4 mm' }
    const demand = { length: mm(760 / 1.52 + 50), width: mm(45.6), height: mm(12) }
    const needed = workedBack(laySideBySide, demand, row, ...bars).ok ?? []
    expect(needed[0].length).toBeCloseTo(mm(2 * 550 + 1.6), 9)
    expect(needed[1].length).toBeCloseTo(mm(2 * 550 + 1.6), 9)
  })

  it('loses two faces at every joint, and the shortest piece sets the length', () => {
    const bars = [samplePack(500, 12, 12), samplePack(800, 12, 12)]
    const { after, setAside } = tryOut(laySideBySide, { row: ['b', 'this', 'b'] }, ...bars)
    expect(after.size.width).toBeCloseTo(mm(36 - 4 * 0.4), 12)
    expect(after.size.length).toBeCloseTo(mm((800 - 1.6) / 2), 12)
    expect(setAside[0].size.length).toBeCloseTo(mm(500 - 399.2 - 1.6), 9)
  })

  it('tells how much of a row of round rods is gaps, and the weld closes them', () => {
    const rods = [sampleBar(300, 10, 10, 'W2', 'round'), sampleBar(300, 10, 10, 'W2', 'round')]
    const { after, warnings } = tryOut(laySideBySide, { row: ['b'], cleanUp: '0 mm' }, ...rods)
    expect(1 - after.volume / boxVolume(after.size)).toBeCloseTo(1 - Math.PI / 4, 12)
    expect(warnings[0].what).toContain('gaps')
    const welded = tryOut(weld, {}, after).after
    expect(welded.volume).toBeCloseTo(boxVolume(welded.size), 14)
  })

  it('needs two pieces at least, and a bar in hand if "this" is named', () => {
    expect(attempt(laySideBySide, { row: ['a'] }, sampleBar()).problems?.[0].at).toBe('row')
    expect(attempt(laySideBySide, { row: ['this', 'a'] }, sampleBar()).problems?.[0].at).toBe('row')
  })
})
