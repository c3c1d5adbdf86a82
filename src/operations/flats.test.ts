import { describe, expect, it } from 'vitest'
import { filled } from '#billet'
import { areaBetween, flatArea } from './flats.ts'

/** SciPy quad of the chord, unit sections. */
const byQuadrature = [
  [0.1, 0.051421356237309514, 0.0408752771983211],
  [0.35, 0.2642135623730951, 0.2449804780886039],
  [0.8, 0.7055844122715712, 0.6735743588970453],
] as const

describe('a flat ground on a bar', () => {
  it.each(byQuadrature)('%d deep takes the area of the chord', (depth, octagon, round) => {
    expect(flatArea('octagon', depth)).toBeCloseTo(octagon, 12)
    expect(flatArea('round', depth)).toBeCloseTo(round, 10)
  })

  it('right through takes the whole section', () => {
    for (const section of ['rectangle', 'octagon', 'round'] as const)
      expect(flatArea(section, 1)).toBeCloseTo(filled[section], 12)
  })

  it('on all four sides leaves the square inside, where flats meet', () => {
    // 0.25 off each side: a square of 0.5, corner to corner 0.707, lies well inside either section.
    const each = { low: 0.25, high: 0.25 }
    expect(areaBetween('round', each, each)).toBeCloseTo(0.25, 6)
    expect(areaBetween('octagon', each, each)).toBeCloseTo(0.25, 6)
    // A square of 0.8 has its corners beyond the circle: four flats apart (SciPy quad).
    const less = { low: 0.1, high: 0.1 }
    expect(areaBetween('round', less, less)).toBeCloseTo(0.6218970546041641, 12)
    // Deep on one side, shallow on the other: one corner within, three without (SciPy quad).
    const uneven = { low: 0.3, high: 0.05 }
    expect(areaBetween('round', uneven, uneven)).toBeCloseTo(0.4016680641299616, 5)
  })
})
