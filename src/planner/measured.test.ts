import { describe, expect, it } from 'vitest'
import { type Billet, barVolume, checkBillet, layered, massOf } from '#billet'
import { adopt } from './measured.ts'

const size = { length: 0.2, width: 0.03, height: 0.02 }
const densities = { '1095': 7850, '15N20': 7850 }
/** 200 × 30 × 20 mm is 120 cm³, 942 g at 7.85 g/cm³. */
const planned: Billet = {
  size,
  shape: 'rectangle',
  volume: barVolume(size, 'rectangle'),
  build: layered('z', [
    { steel: '1095', thickness: 0.012 },
    { steel: '15N20', thickness: 0.008 },
  ]),
  bond: 'welded',
  temper: 'as forged',
  worked: 0.5,
  spare: 'x',
}
const at = { bar: 'main', after: 0 }

describe('a bar as it was found', () => {
  it('takes the sizes that were measured, layers with them', () => {
    const bar = adopt(planned, { ...at, height: 0.018 }, densities)
    expect(bar.volume * 1e6).toBeCloseTo(108, 9)
    expect(bar.build.form === 'layered' && bar.build.layers[0].thickness * 1000).toBeCloseTo(
      10.8,
      9,
    )
  })

  it('a weight gives the one side that was not measured', () => {
    // 847.8 g is 108 cm³: 30 × 20 mm of it is 180 mm long.
    const bar = adopt(planned, { ...at, width: 0.03, height: 0.02, mass: 0.8478 }, densities)
    expect(bar.size.length * 1000).toBeCloseTo(180, 9)
  })

  it('measured all round and weighed: it weighs what the scales say, within the sizes found', () => {
    const bar = adopt(planned, { ...at, ...size, mass: 0.92 }, densities)
    expect(massOf(bar, densities)).toBeCloseTo(0.92, 9)
    expect(bar.size).toEqual(size)
    expect(checkBillet(bar)).toEqual([])
  })

  it('heavier than its sizes can hold, it is what its sizes say', () => {
    const bar = adopt(planned, { ...at, ...size, mass: 1 }, densities)
    expect(massOf(bar, densities)).toBeCloseTo(0.942, 9)
    expect(checkBillet(bar)).toEqual([])
  })
})
