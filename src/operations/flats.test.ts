import { describe, expect, it } from 'vitest'
import { filled } from '#billet'
import { flatArea } from './flats.ts'

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
})
