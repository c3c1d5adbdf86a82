import { describe, expect, it } from 'vitest'
import { massesOf } from '#billet'
import { takeOff } from '../fire.ts'
import { attempt, tryOut } from '../trials.ts'
import { weld } from '../weld/index.ts'
import { can } from './index.ts'

const densities = { '1018': 7000, '1084': 7274, '52100': 7822 }
const mm = (n: number) => n / 1000
const values = {
  inside: '22 mm',
  length: '140 mm',
  wall: '1.5 mm',
  cap: '6 mm',
  powder: '1084',
  packing: '60 %',
  solids: [{ what: 'balls', steel: '52100', mass: '200 g' }],
}

describe('can', () => {
  const { after, added, notes } = tryOut(can, values)

  it('weighs ρ (ΣV solid + φ V powder) and its tube', () => {
    const room = mm(22) ** 2 * mm(128)
    const balls = 0.2 / densities['52100']
    expect(added['52100']).toBeCloseTo(0.2, 12)
    expect(added['1084']).toBeCloseTo(0.6 * (room - balls) * densities['1084'], 12)
    const shell = mm(25) ** 2 * mm(140) - room
    expect(added['1018']).toBeCloseTo(shell * densities['1018'], 12)
    // 61.95 cm³ of room, 25.57 of balls, 60 % of the rest: 76.5 % full; the root of it each way.
    expect(notes[0]).toContain('solid once its section is')
    expect((balls + 0.6 * (room - balls)) / room).toBeCloseTo(0.765, 3)
  })

  it('loses its wall and nothing else when the sides are ground after the weld', () => {
    const { after: welded } = tryOut(weld, { close: '75 %' }, after)
    const off = { low: mm(0.4), high: mm(0.4) }
    const ground = takeOff(welded, { y: off, z: off }, 'ground', densities)
    const [was, is] = [massesOf(welded, densities), massesOf(ground?.after ?? after, densities)]
    expect(is['1084']).toBeCloseTo(was['1084'], 12)
    expect(is['52100']).toBeCloseTo(was['52100'], 12)
    expect(is['1018']).toBeLessThan(was['1018'])
  })

  it('takes no more than fits', () => {
    const much = { ...values, solids: [{ steel: '52100', mass: '450 g' }] }
    expect(attempt(can, much).problems?.[0].at).toBe('solids')
    const tight = { ...values, solids: [{ steel: '52100', mass: '350 g' }] }
    expect(tryOut(can, tight).warnings[0].at).toBe('solids')
    expect(attempt(can, { ...values, cap: '20 mm', length: '30 mm' }).problems?.[0].at).toBe(
      'length',
    )
  })
})
