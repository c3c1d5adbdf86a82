import { describe, expect, it } from 'vitest'
import { type Layered, countLayers } from '#billet'
import { sampleBar, samplePack } from '../samples.ts'
import { attempt, tryOut, workedBack } from '../trials.ts'
import { clad } from './index.ts'

const mm = (n: number) => n / 1000

describe('clad', () => {
  it('puts 3/8 in sides on a 1/4 in core: 1 in, a quarter of it core', () => {
    const core = sampleBar(150, 40, 6.35, '52100')
    const values = { jacketSteel: '304', jacketThickness: '3/8 in', cleanUp: '0 mm' }
    const { after, taken } = tryOut(clad, values, core)
    expect(after.size.height).toBeCloseTo(0.0254, 12)
    const layers = (after.build as Layered).layers
    expect(layers.map((layer) => layer.steel)).toEqual(['304', '52100', '304'])
    expect(layers[1].thickness / 0.0254).toBeCloseTo(0.25, 12)
    expect(taken).toMatchObject([{ steel: '304', form: 'sheet', count: 2 }])
  })

  it('turns the lower jacket over, so that the same face is out on both sides', () => {
    const even = samplePack(340, 40, 9, 12)
    const { after } = tryOut(clad, { jacket: 'outside' }, sampleBar(160, 40, 6, 'W2'), even)
    const steels = (after.build as Layered).layers.map((layer) => layer.steel)
    expect(steels).toEqual(steels.toReversed())
    expect(steels).toHaveLength(25)
  })

  it('of five layers counts all of them', () => {
    const values = { layers: 'five', jacketSteel: '1018', betweenSteel: '15N20' }
    const { after } = tryOut(clad, values, sampleBar(150, 40, 6, 'W2'))
    expect(countLayers(after.build, 'z').merged).toBe(5)
  })

  it('asks for jackets of twice the length and a cut', () => {
    const bars = [sampleBar(160, 38, 6, 'W2'), samplePack(340, 40, 9)]
    const demand = { length: mm(200), width: mm(38), height: mm(20) }
    const needed = workedBack(clad, demand, { jacket: 'outside', kerf: '2 mm' }, ...bars).ok ?? []
    expect(needed.map((size) => size.length)).toEqual([mm(200), mm(402)])
  })

  it('wants to know what the jackets are', () => {
    expect(attempt(clad, {}, sampleBar()).problems?.[0].at).toBe('jacket')
    const both = { jacket: 'a', jacketSteel: '304' }
    expect(attempt(clad, both, sampleBar(), sampleBar()).problems?.[0].what).toContain('both')
    const inner = { layers: 'five', jacketSteel: '304' }
    expect(attempt(clad, inner, sampleBar()).problems?.[0].at).toBe('between')
  })
})
