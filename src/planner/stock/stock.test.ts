import { describe, expect, it } from 'vitest'
import type { Stock } from '#operations'
import { type RackItem, usualCutting, usualShop } from '#shop'
import { cutStock } from './cut-stock.ts'
import { piecesFromRemnant } from './from-remnant.ts'
import { nextStandard, standardSizes } from './standard-sizes.ts'

const sheets = (length: number, count: number): Stock => ({
  steel: '1095',
  form: 'sheet',
  thickness: 0.003,
  width: 0.04,
  length,
  count,
  mass: 1,
})
const item = (rest: Partial<RackItem>): RackItem => ({
  steel: '1095',
  form: 'bar',
  thickness: 0.003,
  width: 0.04,
  length: 1,
  count: 1,
  place: undefined,
  ...rest,
})
const cutting = usualCutting()

describe('cutting from the rack', () => {
  it('seven sheets of 89 mm from a 660 mm bar: 7·89 + 6 kerfs of 1.6 and two ends of 3 mm just fit', () => {
    const needs = 7 * 0.089 + 6 * 0.0016 + 2 * 0.003
    expect(needs).toBeCloseTo(0.6386, 9)
    const fits = cutStock([sheets(0.089, 7)], [item({ length: needs })], 0.0016, cutting)
    expect(fits[0].bars).toHaveLength(1)
    expect(fits[0].bars[0]).toMatchObject({ from: 'rack', remnant: 0 })
    expect(fits[0].bars[0].waste).toBeCloseTo(needs - 7 * 0.089, 9)
    const short = cutStock([sheets(0.089, 7)], [item({ length: needs - 1e-4 })], 0.0016, cutting)
    expect(short[0].bars.some((bar) => bar.from === 'buy')).toBe(true)
  })

  it('the remnant goes first, and what is left of a bar goes back', () => {
    const rack = [item({ length: 2 }), item({ form: 'remnant', length: 0.2, place: 'shelf 3' })]
    const [list] = cutStock([sheets(0.09, 4)], rack, 0.0016, cutting)
    expect(list.bars[0]).toMatchObject({ from: 'remnant', place: 'shelf 3', pieces: [0.09, 0.09] })
    expect(list.bars[1].from).toBe('rack')
    // 2 m less two ends, two pieces and their two cuts.
    expect(list.bars[1].remnant).toBeCloseTo(2 - 0.006 - 2 * (0.09 + 0.0016), 9)
    expect(list.gap).toBe(0)
  })

  it('another steel, thickness or width is left where it lies', () => {
    const rack = [
      item({ steel: '15N20' }),
      item({ thickness: 0.004 }),
      item({ width: 0.03 }),
      item({ width: 0.06 }),
    ]
    const [list] = cutStock([sheets(0.09, 2)], rack, 0.0016, cutting)
    expect(list.bars.every((bar) => bar.from === 'buy')).toBe(true)
    expect(list.buy).toEqual({ thickness: 0.003, width: 0.04 })
  })

  it('buys in feet where the shop buys in feet', () => {
    const [list] = cutStock([sheets(0.09, 2)], [], 0.0016, { ...cutting, sizes: 'inch' })
    expect(list.bars[0].length).toBeCloseTo(0.3048, 9)
    expect(list.buy?.thickness).toBeCloseTo(0.0254 / 8, 9)
    expect(list.buy?.width).toBeCloseTo(0.0254 * 2, 9)
  })

  it('the next standard size is enough, and no larger than need be', () => {
    expect(nextStandard(standardSizes.metric.widths, 0.0381)).toBe(0.04)
    expect(nextStandard(standardSizes.metric.widths, 0.04)).toBe(0.04)
    expect(nextStandard(standardSizes.metric.widths, 0.5)).toBe(0.5)
  })
})

describe('what a remnant gives', () => {
  const shop = usualShop()
  const remnant = { length: 0.3, width: 0.062, height: 0.0105 }
  const found = piecesFromRemnant(remnant, 7850, shop)

  it('ground as it lies each fits in it with its stock, and fills one side', () => {
    const off = 2 * (shop.polishStock + shop.grindStock)
    const ground = found.filter((p) => p.how === 'ground' && p.scale < 4)
    expect(ground.length).toBeGreaterThan(3)
    for (const { size } of ground) {
      const spare = (['length', 'width', 'height'] as const).map(
        (side) => remnant[side] - off - size[side],
      )
      expect(Math.min(...spare)).toBeGreaterThan(-1e-9)
    }
  })

  it('none holds more metal than the remnant, and the greatest come first', () => {
    const metal = remnant.length * remnant.width * remnant.height * 7850
    for (const { mass } of found) expect(mass).toBeLessThan(metal)
    const masses = found.map((p) => p.mass)
    expect(masses).toEqual([...masses].sort((a, b) => b - a))
  })

  it('a sliver gives nothing', () =>
    expect(piecesFromRemnant({ length: 0.01, width: 0.004, height: 0.001 }, 7850, shop)).toEqual(
      [],
    ))
})
