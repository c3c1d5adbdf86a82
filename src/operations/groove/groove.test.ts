import { describe, expect, it } from 'vitest'
import { attempt, lostTo, stepOf } from '../attempt.ts'
import { buildPiece, shapedPiece } from '../sample-pieces.ts'
import { groove } from './index.ts'

const blade = {
  kind: 'sword',
  bladeLength: '760 mm',
  width: '50 mm',
  widthAtPoint: '38 mm',
  spineThickness: '7 mm',
  spineThicknessPoint: '5 mm',
  edgeThickness: '4 mm',
}
const fuller = {
  width: '18 mm',
  depth: '1 mm',
  offset: '22 mm',
  start: '40 mm',
  length: '620 mm',
  runOut: '0.1 mm',
}

describe('fullers', () => {
  it('18 wide and 1 deep, 620 long on both faces, remove 117 g and fit a wheel of radius 41', () => {
    const piece = buildPiece({ ...blade, fullers: [fuller] })
    const step = stepOf(groove, {}, shapedPiece(piece, 1e-4), { piece })
    // Two thirds of width × depth (a parabola) on two faces: 2 · ⅔ · 18 · 1 · 620 = 14.88 cm³; the circle has 0.1 % more.
    expect(Math.abs(lostTo(step, 'cut out') * 1000 - 116.8)).toBeLessThan(0.02 * 116.8)
    expect(step.notes[0]).toContain('82 mm diameter')
    expect(
      attempt(groove, { only: 'grooves' }, shapedPiece(piece, 1e-4), { piece }).problems?.[0].what,
    ).toMatch(/has no grooves/)
  })
})
