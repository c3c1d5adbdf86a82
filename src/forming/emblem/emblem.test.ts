import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { coverEmblem, measureEmblem } from './emblem.ts'
import { fillOutline } from './fill.ts'
import { readOutline } from './path.ts'

const area = (d: string, rule: 'nonzero' | 'evenodd' = 'nonzero') =>
  fillOutline(readOutline(d).ok!, rule).area
const perimeter = (d: string) => fillOutline(readOutline(d).ok!).perimeter

describe('outlines against geometry', () => {
  it('straight commands, absolute and relative, with holes, by both rules', () => {
    expect(area('M0 0H10V10H0Z')).toBeCloseTo(100, 9)
    expect(area('m1,1h10v10h-10z')).toBeCloseTo(100, 9)
    expect(area('M0 0L10 0 10 10 0 10')).toBeCloseTo(100, 9)
    expect(area('M0 0H10V10H0Z M3 3V7H7V3Z')).toBeCloseTo(84, 9)
    expect(area('M0 0H10V10H0Z M3 3H7V7H3Z')).toBeCloseTo(100, 9)
    expect(area('M0 0H10V10H0Z M3 3H7V7H3Z', 'evenodd')).toBeCloseTo(84, 9)
    expect(perimeter('M0 0H10V10H0Z M3 3V7H7V3Z')).toBeCloseTo(56, 9)
  })

  it('overlapping and self-crossing lines: a pentagram and two crossed bars', () => {
    // Two bars 10 × 2 crossed at right angles: 40 less the square they share.
    const cross = 'M0 4H10V6H0Z M4 0H6V10H4Z'
    expect(area(cross)).toBeCloseTo(36, 9)
    expect(area(cross, 'evenodd')).toBeCloseTo(32, 9)
    expect(perimeter(cross)).toBeCloseTo(40, 9)
    const star = Array.from({ length: 5 }, (_, i) => [
      Math.sin((4 * Math.PI * i) / 5),
      Math.cos((4 * Math.PI * i) / 5),
    ])
    const d = `M${star.map((p) => p.join(' ')).join('L')}Z`
    // The inner pentagon of a pentagram of unit radius has circumradius 1/φ².
    const inner = ((5 / 2) * Math.sin((2 * Math.PI) / 5)) / ((1 + Math.sqrt(5)) / 2) ** 4
    expect(area(d) - area(d, 'evenodd')).toBeCloseTo(inner, 6)
  })

  it('curves: circle by arcs with packed flags, ellipse turned, parabola, cubic', () => {
    expect(area('M-5 0a5 5 0 1010 0a5 5 0 10-10 0z') / (25 * Math.PI)).toBeCloseTo(1, 3)
    expect(perimeter('M-5 0A5 5 0 1 0 5 0A5 5 0 1 0-5 0') / (10 * Math.PI)).toBeCloseTo(1, 3)
    expect(area('M-4 -3A5 2 36.87 0 0 4 3A5 2 36.87 0 0 -4 -3Z') / (10 * Math.PI)).toBeCloseTo(1, 2)
    // Under a parabola two thirds of the box: control 2 up gives a rise of 1.
    expect(area('M0 0Q1 2 2 0Z')).toBeCloseTo(4 / 3, 3)
    expect(area('M0 0Q1 2 2 0T4 0Z') / (8 / 3)).toBeCloseTo(1, 3)
    // 3/5 of the control rectangle for this symmetric cubic: 0.6 × 2 × ... = 3/5 · h · w with ends 0 and w.
    expect(area('M0 0C0 1 1 1 1 0Z')).toBeCloseTo(0.6, 3)
    expect(area('M0 0C0 1 1 1 1 0S2 -1 2 0Z')).toBeCloseTo(1.2, 3)
    expect(area('M0 0c0 1 1 1 1 0s1 -1 1 0z')).toBeCloseTo(1.2, 3)
  })

  it('says what does not read, and that a line has no face', () => {
    for (const d of ['', 'L 1 1', 'M 0 0 L 1', 'M 0 0 K 3', 'M0 0 A 1 1 0 2 0 1 1'])
      expect(readOutline(d).problems?.[0]?.at).toBe('path')
    expect(measureEmblem('M0 0L10 10', 0.02).problems?.[0]?.what).toContain('encloses nothing')
  })

  it('strokes, gaps and corners of a ring, a bar and a round', () => {
    const frame = measureEmblem('M0 0H10V10H0Z M3 3V7H7V3Z', 0.01).ok!
    expect(frame.stroke).toBeCloseTo(0.003, 9)
    expect(frame.thinnest).toBeCloseTo(0.003, 9)
    expect(frame.gap).toBeCloseTo(0.004, 9)
    expect(frame.sharpestAngle).toBeCloseTo(Math.PI / 2, 9)
    const round = measureEmblem('M-5 0A5 5 0 1 0 5 0A5 5 0 1 0-5 0Z', 0.01).ok!
    expect(round.sharpestAngle).toBeCloseTo(Math.PI, 9)
    expect(round.sharpestRadius / 0.005).toBeCloseTo(1, 2)
    expect(measureEmblem('M0 0L10 0L0 2Z', 0.01).ok!.sharpestAngle).toBeCloseTo(
      Math.atan2(2, 10),
      6,
    )
  })

  it('fills squares by the share of them that lies inside, with the drawing upright', () => {
    const cover = (d: string, across: number, cell: number, columns: number, rows: number) => {
      const grid = { left: (-columns * cell) / 2, bottom: (-rows * cell) / 2, cell, columns, rows }
      return [...coverEmblem(d, across, grid).ok!]
    }
    // 3 × 1 in squares of 1 about the middle of it: half of two, the whole of one, a row above and below.
    expect(cover('M0 0H3V1H0Z', 2, 1, 4, 1).map((c) => c * 3)).toEqual(
      [0, 2, 2, 0].map((c) => expect.closeTo(c, 12)),
    )
    // A step: the upper left quarter is missing as drawn, so in the upper row.
    expect(cover('M5 0H10V10H0V5H5Z', 2, 1, 2, 2)).toEqual(
      [1, 1, 0, 1].map((c) => expect.closeTo(c, 12)),
    )
    // Half of a square under its diagonal; a whole drawing, whatever the squares.
    expect(cover('M0 0L1 1H0Z', 1, 1, 1, 1)[0]).toBeCloseTo(0.5, 12)
    const star = 'M0 -10L6 8L-9 -3H9L-6 8Z'
    const sum = cover(star, 1, 0.037, 40, 40).reduce((a, b) => a + b, 0) * 0.037 ** 2
    expect(sum).toBeCloseTo(measureEmblem(star, 1).ok!.area, 9)
  })

  it('measures scale with the size and do not change when the drawing is turned about', () => {
    const shape = (a: number) => {
      const at = (x: number, y: number) =>
        `${x * Math.cos(a) - y * Math.sin(a)} ${x * Math.sin(a) + y * Math.cos(a)}`
      return `M${at(0, 0)}L${at(8, 0)}C${at(9, 2)} ${at(6, 5)} ${at(4, 5)}Q${at(1, 5)} ${at(0, 3)}Z`
    }
    fc.assert(
      fc.property(fc.double({ min: 0, max: 6.28, noNaN: true }), (a) => {
        expect(area(shape(a)) / area(shape(0))).toBeCloseTo(1, 3)
        expect(perimeter(shape(a)) / perimeter(shape(0))).toBeCloseTo(1, 3)
      }),
      { seed: 5, numRuns: 40 },
    )
    const [small, big] = [measureEmblem(shape(0), 0.01).ok!, measureEmblem(shape(0), 0.03).ok!]
    expect(big.area / small.area).toBeCloseTo(9, 6)
    expect(big.thinnest / small.thinnest).toBeCloseTo(3, 6)
  })
})
