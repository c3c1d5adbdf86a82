import { describe, expect, it } from 'vitest'
import { usualRates, usualShop } from '#shop'
import type { Smithy } from '#operations'
import { following, passageOf } from './passages.ts'
import { readSteps } from './head.ts'
import { carbonKept } from './creep.ts'
import { nonDominated, ranked } from './pareto.ts'

const smithy: Smithy = { shop: { ...usualShop(), spread: 0.3 }, densities: {} }
const works = { smithy, rates: usualRates() }
const read = (steps: readonly Record<string, unknown>[]) => readSteps(steps, '').ok ?? []

describe('passages read off the operations, against their arithmetic by hand', () => {
  const section = { width: 0.04, height: 0.016 }

  it('a restack: three pieces, two kerfs, crops at both ends, faces ground that meet', () => {
    const found = passageOf(section, read([{ do: 'restack', pieces: 3 }]), works, 3)
    const { crop, kerf, cleanUp } = smithy.shop
    expect(found?.to.height).toBeCloseTo(3 * 0.016 - 4 * cleanUp, 12)
    expect(found?.length.grows).toBeCloseTo(1 / 3, 9)
    expect(found?.length.loses).toBeCloseTo((2 * crop + 2 * kerf) / 3, 9)
    expect(found?.outer.grows).toBeCloseTo(1, 9)
    expect(found?.heats).toBe(0)
  })

  it('drawing in one heat: a skin off every face, then the section, metal kept', () => {
    const to = { height: '12 mm', width: '30 mm', heats: 1 }
    const found = passageOf(section, read([{ do: 'draw out', ...to }]), works)
    const skin = 2 * smithy.shop.forgingScale
    const area = ((0.04 - skin) * (0.016 - skin)) / (0.03 * 0.012)
    expect(found?.length.grows).toBeCloseTo(area, 9)
    expect(found?.length.loses).toBeCloseTo(area * skin, 9)
    const thinner = 0.012 / (0.016 - skin)
    expect(found?.outer.grows).toBeCloseTo(thinner, 9)
    expect(found?.outer.loses).toBeCloseTo(thinner * smithy.shop.forgingScale, 9)
    expect(found?.hands).toBe(works.rates.perHeat)
  })

  it('one after another is both together', () => {
    const [first, second] = [
      [
        { do: 'restack', pieces: 4 },
        { do: 'weld', close: '80 %', heats: 2 },
      ],
      [{ do: 'draw out', height: '14 mm', width: '40 mm' }],
    ].map(read)
    const a = passageOf(section, first, works, 4)
    const b = a && passageOf(a.to, second, works)
    const both = passageOf(section, [...first, ...second], works, 4)
    const chained = a && b && following(a, b)
    expect(chained?.length.grows).toBeCloseTo(both?.length.grows as number, 8)
    expect(chained?.length.loses).toBeCloseTo(both?.length.loses as number, 8)
    expect(chained?.outer.loses).toBeCloseTo(both?.outer.loses as number, 8)
    expect(chained?.heats).toBe(both?.heats)
    expect(chained?.creep).toBeCloseTo(both?.creep as number, 12)
  })

  it('what cannot be done is no passage', () =>
    expect(
      passageOf(section, read([{ do: 'draw out', height: '30 mm', width: '60 mm' }]), works),
    ).toBeUndefined())
})

describe('carbon kept between layers', () => {
  it('against the worked figure: layers of 4.5 mm period level with a time of 94 min at 1100 °C', () => {
    // τ = λ²/(4π²D), D 9.1e-11 m²/s, λ 4.5 mm; after one τ the first harmonic is at 1/e.
    const tau = 0.0045 ** 2 / (4 * Math.PI ** 2 * 9.1e-11)
    expect(tau / 60).toBeCloseTo(94, 0)
    expect(carbonKept((9.1e-11 * tau) / (0.0045 / 2) ** 2)).toBeCloseTo(1 / Math.E, 9)
  })
})

describe('what none is better than', () => {
  const measures = [
    { name: 'a', of: (p: number[]) => p[0], better: 'less' as const, tells: 1 },
    { name: 'b', of: (p: number[]) => p[1], better: 'more' as const, tells: 1 },
  ]
  it('keeps the edge of the cloud, and the first of two alike', () => {
    const all = [
      [1, 1],
      [2, 5],
      [3, 4],
      [2, 5],
      [0, 0],
    ]
    expect(nonDominated(all, measures)).toEqual([
      [1, 1],
      [2, 5],
      [0, 0],
    ])
  })
  it('ranks the best compromise first', () =>
    expect(
      ranked(
        [
          [0, 0],
          [2, 9],
          [10, 10],
        ],
        measures,
      )[0],
    ).toEqual([2, 9]))
})
