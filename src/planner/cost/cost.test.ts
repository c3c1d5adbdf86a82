import { describe, expect, it } from 'vitest'
import { usualRates, usualShop } from '#shop'
import type { Smithy } from '#operations'
import { planRoute } from '../plan-route.ts'
import type { Plan } from '../plan.ts'
import { Draws } from '../range/draws.ts'
import { readSteps } from '../search/head.ts'
import { type Cost, costOf } from './cost.ts'
import { quoteOf } from './quote.ts'

const smithy: Smithy = { shop: usualShop(), densities: { '1095': 7850, '15N20': 7850 } }
const rates = {
  ...usualRates(),
  hour: 60,
  steel: 10,
  steelPrices: [{ steel: '15N20', perKilogram: 30 }],
  perHeat: 600,
  perSheet: 240,
  perCut: 300,
  perFace: 180,
  perStack: 900,
  weldFails: 0.1,
  fuelPerHeat: 2,
  perWeld: 4,
  fittings: 25,
}
const steps = readSteps(
  [
    {
      do: 'stack',
      sheets: [
        { steel: '1095', thickness: '4 mm' },
        { steel: '15N20', thickness: '2 mm' },
      ],
      repeat: 3,
      closeWith: '1095',
      width: '40 mm',
      length: '200 mm',
    },
    { do: 'tack' },
    { do: 'weld', heats: 2, soak: '10 min' },
    { do: 'draw out', height: '12 mm', width: '40 mm', heats: 3 },
    { do: 'restack', pieces: 3 },
    { do: 'tack' },
    { do: 'weld', heats: 2, soak: '10 min' },
  ],
  'bars.main',
).ok
const plan = planRoute({ bars: { main: steps ?? [] }, finish: 'main', measured: [] }, smithy)
  .ok as Plan
const cost = costOf(plan, rates)

describe('hours and cost summed by hand', () => {
  it('hours', () => {
    // 7 sheets, 2 tacks, 7 heats, 2 cuts with 4 faces and their stack laid.
    const minutes = 7 * 4 + 2 * 15 + 7 * 10 + 2 * 5 + 4 * 3 + 15
    expect(cost.hands / 60).toBeCloseTo(minutes, 9)
    expect(cost.waiting / 60).toBeCloseTo(4 * 10, 9)
  })
  it('every line', () => {
    const kg = (mm: number) => (7850 * 0.2 * 0.04 * mm) / 1000
    const line = (what: string) => cost.lines.find((l) => l.what === what)?.sum
    expect(line('hours')).toBeCloseTo((cost.hands / 3600) * 60, 9)
    expect(line('steel')).toBeCloseTo(kg(16) * 10 + kg(6) * 30, 9)
    expect(line('fire')).toBe(14)
    expect(line('rod and flux')).toBe(8)
    expect(line('fittings')).toBe(25)
  })
  it('two welds that each fail one time in ten', () => {
    expect(cost.failing).toBeCloseTo(0.19, 12)
    // Begun again once in 1/(1 − 0.19) − 1 of the cases, fittings kept.
    expect(cost.expected).toBeCloseTo(cost.once + (0.19 / 0.81) * (cost.once - 25), 9)
  })
})

describe('the range of a quote against a hundred thousand pieces made on paper', () => {
  it('quantiles and the chance of a loss', () => {
    const quote = quoteOf(cost, rates)
    const draws = new Draws(11)
    const sums: number[] = []
    const sd = (rates.hoursOff * (cost.hands / 3600) * rates.hour) / 1.6448536
    for (let i = 0; i < 100_000; i++) {
      draws.begin(i)
      let sum = 0
      do sum += cost.once - rates.fittings + sd * draws.normal()
      while (draws.even() < cost.failing)
      sums.push(sum + rates.fittings)
    }
    sums.sort((a, b) => a - b)
    const at = (share: number) => sums[Math.round(share * (sums.length - 1))]
    expect(Math.abs(quote.range[0] / at(0.05) - 1)).toBeLessThan(0.01)
    expect(Math.abs(quote.range[1] / at(0.95) - 1)).toBeLessThan(0.01)
    const loss = sums.filter((s) => s > quote.price).length / sums.length
    expect(quote.atLoss).toBeCloseTo(loss, 2)
    const mean = sums.reduce((a, b) => a + b, 0) / sums.length
    expect(Math.abs(quote.cost / mean - 1)).toBeLessThan(0.01)
  })
  it('a sure hand and sure welds have one price', () => {
    const sure: Cost = { ...cost, failing: 0, expected: cost.once }
    const quote = quoteOf(sure, { ...rates, hoursOff: 0, margin: 0 })
    expect(quote.range[0]).toBeCloseTo(cost.once, 6)
    expect(quote.range[1]).toBeCloseTo(cost.once, 6)
    expect(quote.failureAllowance).toBeCloseTo(0, 9)
  })
})
