import { describe, expect, it } from 'vitest'
import { drawPiece } from './draw-piece.ts'
import { readLeniently } from './read-leniently.ts'
import { workOut } from './work-out.ts'

const begun = {
  billetwright: 1,
  name: 'Knife, begun',
  piece: { kind: 'full-tang-knife', bladeLength: '100 mm', handleLength: '110 mm' },
  wishes: { mass: '5 kg' },
}

describe('a job whose route is not begun', () => {
  it.each([
    ['no bars at all', begun],
    ['an empty group of bars', { ...begun, bars: {} }],
    ['a bar whose first step cannot be read', { ...begun, bars: { main: [{ do: 'stack' }] } }],
  ])('with %s has a piece that is drawn and weighed', (_, written) => {
    const { job, whole } = readLeniently(written)
    expect(whole).toBe(false)
    const drawn = job?.piece && drawPiece(job.piece)
    // 100 mm of blade and 110 mm of handle.
    expect(drawn?.size.length).toBeCloseTo(0.21, 9)
    const { weight, rows, problems } = workOut(written, {})
    expect(weight?.agrees).toBe(false)
    expect(rows).toEqual([])
    expect(problems.length).toBeGreaterThan(0)
  })
})
