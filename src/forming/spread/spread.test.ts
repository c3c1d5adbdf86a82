import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isSourceKey } from '#sources'
import { drawOut, drawPass, passesForArea, turn } from './draw.ts'
import { spreadCoefficient, spreadCoefficientLong, spreadFor } from './flat-tools.ts'
import { squeezeLimits } from './limits.ts'
import reference from './reference.json' with { type: 'json' }
import {
  hillExponent,
  hillWithBite,
  mariniWidth,
  rouxWidth,
  sparlingExponent,
  widthAfter,
  wusatowskiExponent,
} from './rolling-laws.ts'
import { areaOf, cornerLoad, freeTaperWidth, movedShare, reshape, taperFrom } from './sections.ts'

const mm = (n: number) => n / 1000
const volumeOf = (bar: { height: number; width: number; length: number }) =>
  bar.height * bar.width * bar.length

describe('published spread laws', () => {
  it('Tomlinson and Stringer, short form (from memory): listed values to the printed figure', () => {
    for (const [ratio, s] of reference.tomlinsonStringer.points)
      expect(Math.abs(spreadCoefficient(ratio!) - s!)).toBeLessThan(6e-5)
  })

  it('the long form agrees with the short where the height falls by a tenth', () => {
    for (const ratio of [0.3, 0.5, 0.8])
      expect(Math.abs(spreadCoefficientLong(0.9, ratio) - spreadCoefficient(ratio))).toBeLessThan(
        0.01,
      )
  })

  it('Hill, Wusatowski, Sparling, Roux, Marini on one pass (read secondary)', () => {
    const { rolling } = reference
    expect(hillExponent(rolling)).toBeCloseTo(rolling.Hill.w, 4)
    expect(widthAfter(rolling, hillExponent)).toBeCloseTo(rolling.Hill.b1, 2)
    expect(wusatowskiExponent(rolling)).toBeCloseTo(rolling.Wusatowski.w, 4)
    expect(widthAfter(rolling, wusatowskiExponent)).toBeCloseTo(rolling.Wusatowski.b1, 2)
    expect(sparlingExponent(rolling)).toBeCloseTo(rolling.Sparling.w, 4)
    expect(widthAfter(rolling, sparlingExponent)).toBeCloseTo(rolling.Sparling.b1, 2)
    expect(rouxWidth(rolling)).toBeCloseTo(rolling.Roux.b1, 2)
    for (const [mu, b1] of rolling.Marini.points)
      expect(mariniWidth(rolling, mu!)).toBeCloseTo(b1!, 2)
    for (const [ratio, s] of reference.hillWithBite.points)
      expect(hillWithBite(ratio!)).toBeCloseTo(s!, 4)
  })

  it('flat tools at the rolls’ contact length come to 53.78 mm, above every rolling law', () => {
    const { rolling } = reference
    const s = spreadCoefficient(Math.sqrt(rolling.radius * 8) / rolling.width)
    expect(s).toBeCloseTo(rolling.TomlinsonStringer.S, 4)
    const b1 = rolling.width * 1.25 ** s
    expect(b1).toBeCloseTo(rolling.TomlinsonStringer.b1, 2)
    expect(b1).toBeGreaterThan(rouxWidth(rolling))
  })

  it('names only sources of the bibliography', () => {
    const { rolling } = reference
    const keys = [
      rolling.Hill,
      rolling.Wusatowski,
      rolling.Sparling,
      rolling.Roux,
      rolling.Marini,
      reference.twoPasses,
    ].map((r) => r.source)
    expect(keys.filter((key) => !isSourceKey(key))).toEqual([])
  })
})

describe('drawing out', () => {
  it('two passes with a turn between them, as worked by hand (computed)', () => {
    const { bite, first, second, total } = reference.twoPasses
    const start = { height: mm(first.height), width: mm(first.width), length: 1 }
    const one = drawPass(start, mm(first.to), { bite: mm(bite) })
    expect(one.coefficient.value).toBeCloseTo(first.S, 4)
    expect(one.after.width * 1000).toBeCloseTo(first.b1, 3)
    expect(one.elongation).toBeCloseTo(first.elongation, 5)
    const stood = turn(one.after)
    const two = drawPass(stood, stood.height / 1.25, { bite: mm(bite) })
    expect(two.coefficient.value).toBeCloseTo(second.S, 5)
    expect(two.after.height * 1000).toBeCloseTo(second.h1, 3)
    expect(two.after.width * 1000).toBeCloseTo(second.b1, 3)
    expect(two.elongation).toBeCloseTo(second.elongation, 5)
    expect(one.elongation * two.elongation).toBeCloseTo(total, 4)
  })

  it('passes for an area ratio of 4 (computed), and the trade’s worked ratio 1.776', () => {
    for (const [g, n] of reference.passes.points)
      expect(passesForArea(4, 0.3, g!)).toBeCloseTo(n!, 2)
    const { ratio, S, width, length } = reference.practice
    const { after } = drawPass({ height: ratio, width: 1, length: 1 }, 1, { bite: 1, measured: S })
    expect(after.width).toBeCloseTo(width, 2)
    expect(Math.abs(after.length / length - 1)).toBeLessThan(0.01)
  })

  it('the width lies in its bracket, the shop’s own measure overrules, a peen along the bar widens', () => {
    const start = { height: mm(40), width: mm(50), length: 0.1 }
    const { after, width } = drawPass(start, mm(32), { bite: mm(25) })
    expect(width[0]).toBeLessThan(after.width)
    expect(width[1]).toBeGreaterThan(after.width)
    expect(spreadFor(mm(50), { bite: mm(25), measured: 0.2 }).value).toBe(0.2)
    expect(spreadFor(mm(50), { bite: mm(25), peenAlong: true }).value).toBeGreaterThan(0.6)
  })

  it('reaches a smaller square with turns, keeps each pass under its limits, and loses no metal', () => {
    const start = { height: mm(40), width: mm(60), length: 0.15 }
    const drawn = drawOut(start, { height: mm(20), width: mm(20) }, { bite: mm(30) })
    expect(Math.abs(drawn.bar.height / mm(20) - 1)).toBeLessThan(3e-4)
    expect(Math.abs(drawn.bar.width / mm(20) - 1)).toBeLessThan(3e-4)
    expect(volumeOf(drawn.bar)).toBeCloseTo(volumeOf(start), 15)
    expect(drawn.passes.some((p) => p.turned)).toBe(true)
    for (const pass of drawn.passes)
      expect(pass.before.height / pass.after.height).toBeLessThanOrEqual(1.3)
    // Spread is worked out anew: the coefficient differs from pass to pass.
    expect(new Set(drawn.passes.map((p) => p.coefficient.value.toFixed(4))).size).toBeGreaterThan(3)
  })

  it('volume is exact, length rises with reduction, no NaN, for any bar', () => {
    const size = fc.double({ min: 0.002, max: 0.3, noNaN: true })
    const share = fc.double({ min: 0.05, max: 1, noNaN: true })
    fc.assert(
      fc.property(
        size,
        size,
        size,
        share,
        size,
        fc.option(share),
        (height, width, length, cut, bite, side) => {
          const start = { height, width, length }
          const to = { height: height * cut, ...(side === null ? {} : { width: width * side }) }
          const drawn = drawOut(start, to, { bite })
          expect(Math.abs(volumeOf(drawn.bar) / volumeOf(start) - 1)).toBeLessThan(1e-12)
          for (const { before, after, coefficient } of drawn.passes) {
            expect(Math.abs(volumeOf(after) / volumeOf(before) - 1)).toBeLessThan(1e-12)
            expect(after.length).toBeGreaterThanOrEqual(before.length * (1 - 1e-12))
            expect(coefficient.value).toBeGreaterThanOrEqual(coefficient.low)
          }
          if (side === null) {
            const less = drawOut(start, { height: height * (0.5 + cut / 2) }, { bite })
            expect(drawn.bar.length).toBeGreaterThanOrEqual(less.bar.length * (1 - 1e-9))
            expect(drawn.length[0]).toBeLessThanOrEqual(drawn.bar.length * (1 + 1e-12))
            expect(drawn.length[1]).toBeGreaterThanOrEqual(drawn.bar.length * (1 - 1e-12))
          }
        },
      ),
      { seed: 5, numRuns: 300 },
    )
  })

  it('says which limit a squeeze runs into, and says nothing when it runs into none', () => {
    const at = (squeeze: Parameters<typeof squeezeLimits>[0]) =>
      squeezeLimits(squeeze).map((p) => p.at)
    expect(at({ height: 0.03, width: 0.04, to: 0.025, bite: 0.02 })).toEqual([])
    expect(at({ height: 0.03, width: 0.04, to: 0.02, bite: 0.02 })).toEqual(['height'])
    expect(at({ height: 0.09, width: 0.04, to: 0.08, bite: 0.04 })).toEqual(['width'])
    expect(at({ height: 0.06, width: 0.06, to: 0.05, bite: 0.015 })).toEqual(['bite'])
  })
})

describe('sections and tapers', () => {
  it('areas are those of geometry', () => {
    // A regular octagon of side 1 is 1 + √2 across flats and 2(1 + √2) in area.
    expect(areaOf.octagon * (1 + Math.SQRT2) ** 2).toBeCloseTo(2 * (1 + Math.SQRT2), 12)
  })

  it('square to octagon to round keeps volume and lies between all and none lengthening', () => {
    const octagon = reshape('square', 0.02, 'octagon')
    expect(areaOf.octagon * octagon.across ** 2 * octagon.elongation).toBeCloseTo(0.02 ** 2, 15)
    expect(octagon.across).toBeGreaterThan(octagon.range[0])
    expect(octagon.across).toBeLessThan(octagon.range[1])
    expect(octagon.range[1] / 0.02).toBeCloseTo(1 / Math.sqrt(0.828427), 5)
    const round = reshape('octagon', octagon.across, 'round')
    expect(round.elongation).toBeGreaterThan(1)
    expect(round.elongation).toBeLessThan(1.03)
    // A square and a circle of one area share all but 9.05 % of it (numerical integration).
    expect(1 - 1 / reshape('square', 1, 'round', 0).elongation).toBeCloseTo(0.0905, 3)
    expect(reshape('round', 0.02, 'round').elongation).toBe(1)
  })

  it('what moves from square to octagon: nine parts in a hundred and a half, counted on a grid', () => {
    const n = 1000
    const across = 1 / Math.sqrt(areaOf.octagon)
    let out = 0
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++) {
        const [x, y] = [(i + 0.5) / n - 0.5, (j + 0.5) / n - 0.5]
        if ((Math.abs(x) + Math.abs(y)) / Math.SQRT2 > across / 2) out++
      }
    expect(movedShare('square', 'octagon')).toBeCloseTo(out / (n * n), 3)
    const { work, force } = cornerLoad(
      { low: 90e6, value: 100e6, high: 110e6, basis: [], cautions: [] },
      1e-6,
      1e-4,
    )
    expect(work[0]).toBeGreaterThan(90)
    expect(work[2]).toBeLessThan(2.98 * 110)
    expect(force[1]).toBeCloseTo(18e3, 6)
  })

  it('a taper to a point of one side takes half its length, a pyramid a third', () => {
    const thick = { height: 0.02, width: 0.02 }
    expect(taperFrom(thick, { height: 0, width: 0.02 }, 0.3).stock).toBeCloseTo(0.15, 12)
    expect(taperFrom(thick, { height: 0, width: 0 }, 0.3).stock).toBeCloseTo(0.1, 12)
    expect(taperFrom(thick, thick, 0.3).elongation).toBeCloseTo(1, 12)
    expect(freeTaperWidth(thick, 0.01, 0.3)).toBeCloseTo(0.02 * 2 ** 0.3, 12)
  })
})
