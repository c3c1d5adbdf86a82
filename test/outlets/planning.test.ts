import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { type Job, rangeOfJob, readJobObject } from '#job'
import { billetwright } from './command-line.ts'

const plate = 'jobs/builders-plate.json'
const job = JSON.parse(readFileSync(plate, 'utf8')) as Record<string, Record<string, unknown>>

/** The plate with more said, as it would lie in a file. */
function withMore(more: Record<string, unknown>): string {
  return JSON.stringify({ ...job, ...more })
}

describe('suggest', () => {
  it('shows the set, best first, with reasons', () => {
    const asked = withMore({ wishes: { ...job.wishes, sheets: 15 } })
    const { code, out } = billetwright(['suggest', '-'], asked)
    expect(code).toBe(0)
    expect(out).toMatch(/15 → ×3 → ×4/)
    expect(out).toMatch(/the best compromise of the set/)
    expect(out).toMatch(/against 1: /)
  })

  it('a route that is taken is a job that works out', () => {
    const taken = billetwright(['suggest', plate, '--take', '1'])
    expect(taken.code).toBe(0)
    const plan = billetwright(['plan', '-', '--json'], taken.out)
    expect(plan.code).toBe(0)
    const record = JSON.parse(plan.out) as { totals: { heats: number }; stack: { mass_kg: number } }
    expect(record.totals.heats).toBeGreaterThan(5)
    expect(record.stack.mass_kg).toBeGreaterThan(0.6)
  })

  it('does not know every pattern', () => {
    const { code, error } = billetwright(['suggest', plate, '--pattern', 'lader'])
    expect(code).toBe(1)
    expect(error).toMatch(/did you mean "ladder"\?/)
  })
})

describe('range', () => {
  it('draws the same on all cores as on one', () => {
    // A short route: what is held here is the sharing out among threads, not the account.
    const [stack, ...rest] = (job.bars as unknown as { plate: Record<string, unknown>[] }).plate
    const short = {
      billetwright: 1,
      name: 'short',
      piece: { kind: 'bar', length: '200 mm', width: '30 mm', thickness: '12 mm' },
      bars: { a: [stack, rest[1], { do: 'draw out', height: '12 mm', width: '30 mm' }] },
    }
    const text = JSON.stringify(short)
    const { code, out } = billetwright(['range', '-', '--draws', '6000', '--json'], text)
    expect(code).toBe(0)
    const alone = rangeOfJob(readJobObject(short).ok as Job, { draws: 6000 })
    expect((JSON.parse(out) as { mass: unknown }).mass).toEqual(alone.ok?.mass)
  })

  it('refuses nonsense', () =>
    expect(billetwright(['range', plate, '--draws', 'many']).code).toBe(2))
})

describe('what-if', () => {
  it('tells what moves, and what stays', () => {
    const change = ['--change', 'bars.plate[15].start = 9 mm']
    const { code, out } = billetwright(['what-if', plate, ...change])
    expect(code).toBe(0)
    expect(out).toMatch(/steel off the rack .* \+\d/)
    expect(out).toMatch(/finished mass .* stays/)
  })

  it('knows no place that is not there', () => {
    const { code, error } = billetwright(['what-if', plate, '--change', 'bars.plate[99].x = 1 mm'])
    expect(code).toBe(1)
    expect(error).toMatch(/no such place/)
    expect(billetwright(['what-if', plate, '--change', 'thinner']).code).toBe(2)
  })
})

describe('cut, quote, from-remnant', () => {
  it('cuts from the rack and says what to buy', () => {
    const rack = [
      { steel: '1095', thickness: '1/8 in', width: '1 1/2 in', length: '1.2 m', place: 'rack 2' },
      { steel: '1095', form: 'remnant', thickness: '3/8 in', width: '1 1/2 in', length: '220 mm' },
    ]
    const { code, out } = billetwright(['cut', '-'], withMore({ rack }))
    expect(code).toBe(0)
    expect(out).toMatch(/1 × remnant 220 mm long: 2 × /)
    expect(out).toMatch(/1 × bar off the rack \(rack 2\) 1200 mm long: 6 × /)
    expect(out).toMatch(/15N20.*\n.*bar to be bought/)
  })

  it('quotes at the shop’s own rates', () => {
    const rates = { hour: '100 $', currency: '$', margin: '0 %' }
    const { code, out } = billetwright(['quote', '-', '--json'], withMore({ rates }))
    expect(code).toBe(0)
    const { cost, quote } = JSON.parse(out) as {
      cost: { hands: number; lines: { what: string; sum: number }[] }
      quote: { currency: string; margin: number; price: number; range: [number, number] }
    }
    expect(quote.currency).toBe('$')
    expect(quote.margin).toBeCloseTo(0, 9)
    expect(cost.lines.find((l) => l.what === 'hours')?.sum).toBeCloseTo(cost.hands / 36, 6)
    expect(quote.range[0]).toBeLessThan(quote.price)
    expect(quote.range[1]).toBeGreaterThan(quote.price)
  })

  it('tells what a remnant gives', () => {
    const rack = [
      { steel: '1095', form: 'remnant', thickness: '10 mm', width: '50 mm', length: '280 mm' },
    ]
    const { code, out } = billetwright(['from-remnant', '-'], withMore({ rack }))
    expect(code).toBe(0)
    expect(out).toMatch(/Knife.*up to/)
  })
})
