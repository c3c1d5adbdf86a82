import { describe, expect, it } from 'vitest'
import { type Layered, countLayers } from '#billet'
import { samplePack } from '../samples.ts'
import { attempt, tryOut, workedBack } from '../trials.ts'
import { slices } from './index.ts'

const mm = (n: number) => n / 1000
const bare = { crop: '0 mm', cleanUp: '0 mm', kerf: '2 mm' }

describe('slices', () => {
  it('lays n slices of height H to n H, as thick as they were long', () => {
    const { after, setAside } = tryOut(
      slices,
      { ...bare, thickness: '10 mm', count: 4 },
      samplePack(60, 40, 25),
    )
    expect(after.size.length).toBeCloseTo(mm(100), 12)
    expect(after.size.width).toBeCloseTo(mm(40), 12)
    expect(after.size.height).toBeCloseTo(mm(10), 12)
    // 4 × 10 + 4 cuts of 2 leave 12 of 60.
    expect(setAside[0].size.length).toBeCloseTo(mm(12), 9)
  })

  it('mirrors neighbours when bookmatched: of 12 sheets each joint merges, 4 × 12 − 3', () => {
    const pack = samplePack(60, 40, 25, 12)
    const laid = (lay: string) => tryOut(slices, { ...bare, count: 4, lay }, pack).after.build
    expect(countLayers(laid('plain'), 'x').merged).toBe(48)
    expect(countLayers(laid('bookmatched'), 'x').merged).toBe(45)
    const steels = (laid('bookmatched') as Layered).layers.map((layer) => layer.steel)
    expect(steels).toEqual(steels.toReversed())
  })

  it('counts out whole slices on the way back', () => {
    const demand = { length: mm(480), width: mm(40), height: mm(10) }
    const values = { ...bare, thickness: '10 mm' }
    const [needed] = workedBack(slices, demand, values, samplePack(60, 40, 25)).ok ?? []
    // 480 / 25 is 19.2: 20 slices, 19 cuts between them.
    expect(needed.length).toBeCloseTo(mm(20 * 10 + 19 * 2), 9)
    const thicker = workedBack(
      slices,
      { ...demand, height: mm(12) },
      values,
      samplePack(60, 40, 25),
    )
    expect(thicker.problems?.[0].at).toBe('thickness')
  })

  it('wants either their number or their thickness, and a bar that gives them', () => {
    expect(attempt(slices, {}, samplePack()).problems?.[0].at).toBe('count')
    const many = attempt(slices, { count: 20, thickness: '10 mm' }, samplePack(60, 40, 25))
    expect(many.problems?.[0].at).toBe('count')
  })
})
