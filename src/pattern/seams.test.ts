import { shareBelow, slabShare } from '#share'
import { restack } from '#warp'
import { describe, expect, it } from 'vitest'
import { drawFaceNow } from './draw-face.ts'
import { faceOfBar, sectionOfBar } from '#view'
import { moved, stack } from './origin.ts'
import { scatter } from './random.ts'

const weights = [{ dark: 0, bright: 1 }]
const layers = Array.from({ length: 5 }, (_, i) => ({
  steel: i % 2 ? 'bright' : 'dark',
  thickness: 0.002,
}))
const pieces = 3
const joined = restack({ pieces, length: 0.1, height: 0.01 })
const size = { length: 0.1, width: 0.02, height: 0.03 }

describe('welds of like on like', () => {
  it('show as lines as wide as the burnt skins of both bars, and nowhere else', () => {
    const depth = 4e-5
    const faces = [-0.005, 0.005].map((at) => ({ axis: 'z' as const, at, depth }))
    const bar = moved(stack('main', layers), [joined], { seams: faces })
    const map = drawFaceNow(sectionOfBar(size, { axis: 'x', at: 0.05 }, { ppmm: 20 }), bar, {
      weights,
    })
    // Down one column: joints at a third and two thirds of 30 mm, and the two outsides, half as wide.
    const column = Array.from(
      { length: map.height },
      (_, j) => map.seam![j * map.width + 200]! / 255,
    )
    const wide = (from: number, to: number) =>
      column.slice(from * 20, to * 20).reduce((a, b) => a + b, 0) / 20
    expect(wide(9, 11)).toBeCloseTo(2 * 0.04, 2)
    expect(wide(19, 21)).toBeCloseTo(2 * 0.04, 2)
    expect(wide(0, 2)).toBeCloseTo(0.04, 2)
    expect(wide(2, 9) + wide(11, 19)).toBe(0)
    // The steels below are as they were.
    const plain = drawFaceNow(map.view, moved(stack('main', layers), [joined]), { weights })
    expect(map.means).toEqual(plain.means)
  })

  it('take the share of a pixel that 200 × 200 points find', () => {
    for (let k = 0; k < 60; k++) {
      const [value, du, dv] = [0, 1, 2].map((i) => 4 * (scatter(3, k, i) - 0.5)) as [
        number,
        number,
        number,
      ]
      const depth = scatter(3, k, 3)
      let within = 0
      for (let i = 0; i < 200; i++)
        for (let j = 0; j < 200; j++)
          if (Math.abs(value + ((i + 0.5) / 200 - 0.5) * du + ((j + 0.5) / 200 - 0.5) * dv) < depth)
            within++
      expect(Math.abs(slabShare(value, du, dv, depth) - within / 40_000)).toBeLessThan(8e-3)
    }
    expect(shareBelow(0, 1, 0)).toBe(0.5)
    expect(shareBelow(0.25, 1, 0)).toBeCloseTo(0.75, 12)
  })
})

describe('steels', () => {
  it('of which there are three show each by its own weight, light and height apart', () => {
    const three = ['dark', 'middle', 'bright'].map((steel) => ({ steel, thickness: 0.01 }))
    const view = faceOfBar({ length: 0.01, width: 0.01, height: 0.03 }, 'edge', { ppmm: 2 })
    const map = drawFaceNow(view, stack('main', three), {
      weights: [
        { dark: 0.05, middle: 0.4, bright: 0.9 },
        { dark: 0, middle: 1, bright: 0.5 },
      ],
    })
    const at = (mean: number, mm: number) =>
      map.means[mean]![(60 - 2 * mm) * map.width + 5]! / 65535
    for (const [mm, light, tall] of [
      [5, 0.05, 0],
      [15, 0.4, 1],
      [25, 0.9, 0.5],
    ] as const) {
      expect(at(0, mm)).toBeCloseTo(light, 3)
      expect(at(1, mm)).toBeCloseTo(tall, 3)
    }
  })

  it('between which carbon moved have edges as wide as it went', () => {
    const view = sectionOfBar(
      { length: 0.01, width: 0.01, height: 0.01 },
      { axis: 'x', at: 0.005 },
      { ppmm: 100 },
    )
    const widthOf = (soft: number) => {
      const map = drawFaceNow(view, stack('main', layers, soft), { weights })
      const grey = Array.from(
        { length: map.height },
        (_, j) => map.means[0]![j * map.width + 500]! / 65535,
      )
      // From a tenth to nine tenths of one edge.
      const edge = grey.slice(100, 300)
      return edge.filter((v) => v > 0.1 && v < 0.9).length / 100
    }
    expect(widthOf(0)).toBeLessThanOrEqual(0.02)
    // Even twice (both sides of a pixel's run): a triangle 2 × soft wide, of which 1.1 soft lies between the tenths.
    expect(widthOf(4e-4)).toBeCloseTo(1.106 * 0.4, 1)
  })
})
