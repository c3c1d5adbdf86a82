import { describe, expect, it } from 'vitest'
import { boxVolume } from '#geometry'
import { type Layered, countLayers } from '#billet'
import { bookmatch } from '../bookmatch/index.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { attempt, tryOut } from '../trials.ts'
import { turn } from '../turn/index.ts'
import { wedgeSplit } from './index.ts'

const mm = (n: number) => n / 1000

describe('wedge split', () => {
  const tall = tryOut(turn, { to: 'on end' }, samplePack(26, 40, 90, 31)).after

  it('loses the skin of its heats and twice the clean-up of the cut', () => {
    const values = { cleanUp: '0.5 mm', close: '90 %', weldHeats: 1 }
    const { after, warnings } = tryOut(wedgeSplit, values, tall)
    expect(warnings).toEqual([])
    // 90 × 40 × 26: 0.05 off each face, 2 × 0.5 of the width, 0.1 off each face, closed to 90 %.
    const halves = { length: mm(89.9), width: mm(39.9 - 1), height: mm(25.9) }
    expect(after.size.width).toBeCloseTo(halves.width * 0.9, 12)
    expect(after.size.height).toBeCloseTo(halves.height, 12)
    const burnt = boxVolume({
      length: halves.length - mm(0.2),
      width: halves.width - mm(0.2),
      height: halves.height - mm(0.2),
    })
    expect(after.volume).toBeCloseTo(burnt, 14)
    expect(after.worked).toBe(0.9)
  })

  it('wants layers that cross the block, sound welds and flat sides', () => {
    expect(tryOut(wedgeSplit, {}, samplePack(90, 40, 26)).warnings[0].what).toContain('drags none')
    const young = tryOut(wedgeSplit, {}, { ...tall, worked: 0.8 })
    expect(young.warnings[0].what).toContain('young welds')
    expect(attempt(wedgeSplit, {}, { ...tall, bond: 'loose' }).problems).toHaveLength(1)
    const round = sampleBar(90, 30, 30, 'W2', 'round')
    expect(attempt(wedgeSplit, {}, round).problems).toHaveLength(1)
  })
})

describe('bookmatch', () => {
  it('opens two leaves as wide as two bars, half as thick less the cut', () => {
    const values = { kerf: '2 mm', cleanUp: '0.5 mm' }
    const { after } = tryOut(bookmatch, values, samplePack(200, 30, 22))
    expect(after.size).toEqual({
      length: mm(200),
      width: expect.closeTo(mm(59), 12) as number,
      height: expect.closeTo(mm(10), 12) as number,
    })
  })

  it('shows both sides of the cut: of two steels one leaf is all the one, one the other', () => {
    const bar = samplePack(100, 30, 20, 2)
    const build: Layered = {
      ...(bar.build as Layered),
      layers: ['1095', '15N20'].map((steel) => ({ steel, thickness: mm(10) })),
    }
    const { after } = tryOut(bookmatch, {}, { ...bar, build })
    expect(countLayers(after.build, 'y').merged).toBe(2)
    expect(attempt(bookmatch, { kerf: '10 mm' }, samplePack(100, 30, 9)).problems?.[0].at).toBe(
      'kerf',
    )
  })
})
