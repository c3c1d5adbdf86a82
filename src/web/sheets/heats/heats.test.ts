import { describe, expect, it } from 'vitest'
import type { HeatRecord } from '#job'
import { sayIn } from '#report'
import { csvOf, degreesIn } from './plot-table.ts'
import { spreadLabels } from './spread.ts'
import { groupSteps } from './step-marks.ts'
import { inAll, layTime, timeAbove } from './time-line.ts'

/** A heat that climbs evenly from 300 K to 1500 K in 1200 s and stays for 600 s. */
const heat = {
  bar: 'plate',
  step: 3,
  do: 'weld',
  purpose: 'weld',
  times: 2,
  again: false,
  temperature: 1500,
  soak: 600,
  medium: 'air',
  warming: { value: 1200, range: [1000, 1400], outOfRange: [] },
  history: [
    { time: 0, skin: 300, core: 300, mean: 300 },
    { time: 1200, skin: 1500, core: 1500, mean: 1500 },
    { time: 1800, skin: 1500, core: 1500, mean: 1500 },
  ],
} as unknown as HeatRecord

describe('time in the fire', () => {
  it('above a heat is what an even climb leaves of it, each time it is done', () => {
    // 1 K a second: above 1200 K from 900 s on, to the end at 1800 s; twice.
    expect(timeAbove([heat], 1200)).toEqual({ above: 2 * 900, whole: 2 * 1800 })
    expect(timeAbove([heat], 1501).above).toBe(0)
  })

  it('is told in hours that are full at sixty minutes', () => {
    expect([5340, 7199, 7500].map(inAll)).toEqual(['89 min', '2 h 0 min', '2 h 5 min'])
  })

  it('a temper is seen to soak, however long it took to warm, and its cut lies within the soak', () => {
    const temper = {
      ...heat,
      soak: 7200,
      history: [...heat.history.slice(0, 2), { time: 8400, skin: 1500, core: 1500, mean: 1500 }],
    } as HeatRecord
    const [warming] = layTime([temper])[0]!.steps[0]!.warmings
    const { points, cutAt } = warming!
    const hot = points.filter((p) => p.K === 1500).map((p) => p.x)
    expect(Math.max(...hot) - Math.min(...hot)).toBeGreaterThanOrEqual(300)
    expect(cutAt).toBeGreaterThan(Math.min(...hot))
    expect(cutAt).toBeLessThan(Math.max(...hot))
  })

  it('runs on along the line, every heat after the one before', () => {
    const [bar] = layTime([heat])
    const [step] = bar!.steps
    expect(step!.count).toBe(2)
    const [first, second] = step!.warmings
    expect(second!.from).toBeGreaterThan(first!.to)
    for (const { points, from, to } of step!.warmings) {
      for (let i = 1; i < points.length; i++)
        expect(points[i]!.x).toBeGreaterThanOrEqual(points[i - 1]!.x)
      expect(points[0]!.x).toBe(from)
      expect(points.at(-1)!.x).toBeCloseTo(to, 9)
    }
  })
})

describe('numbers of steps beneath their heats', () => {
  it('are said together where they would stand upon one another', () => {
    const steps = [11, 13, 14, 15, 16].map((step) => ({ step }))
    const at = [0, 100, 128, 131, 141]
    const marks = groupSteps(
      steps,
      (_, i) => at[i]!,
      260,
      (text) => text.length * 7,
    )
    expect(marks.map((m) => m.number)).toEqual(['11', '13', '14–16'])
    // However narrow, none is left out and none reaches into the next.
    const tight = groupSteps(
      steps,
      (_, i) => i,
      5,
      (text) => text.length * 7,
    )
    expect(tight.map((m) => m.number)).toEqual(['11–16'])
  })
})

describe('labels', () => {
  it('stand apart, in order, within their limits', () => {
    const at = [50, 52, 51, 98, 3]
    const places = spreadLabels(at, 10, 0, 100)
    const order = at.map((_, i) => i).sort((a, b) => at[a]! - at[b]!)
    for (let i = 1; i < order.length; i++)
      expect(places[order[i]!]! - places[order[i - 1]!]!).toBeGreaterThanOrEqual(10 - 1e-9)
    expect(Math.max(...places)).toBeLessThanOrEqual(100)
    expect(spreadLabels([20, 60], 10, 0, 100)).toEqual([20, 60])
  })
})

describe('a table as a file', () => {
  const table = {
    name: 't',
    columns: ['a', 'b, c', 'd; e'],
    rows: [['he said "hot"', 1.2345, -0.5]],
  }

  it('quotes as RFC 4180 has it', () => {
    expect(csvOf(table, '.')).toBe('a,"b, c",d; e\r\n"he said ""hot""",1.2345,-0.5\r\n')
  })

  it('with decimal commas has semicolons between, so that no figure falls apart', () => {
    expect(csvOf(table, ',')).toBe('a;b, c;"d; e"\r\n"he said ""hot""";1,2345;-0,5\r\n')
  })

  it('has temperatures as figures of the unit that its head names', () => {
    // 1150 °C is 2102 °F, said as a pyrometer is read.
    for (const [units, unit, there] of [
      ['metric', '°C', 1150],
      ['inch', '°F', 2100],
    ] as const) {
      const told = degreesIn(sayIn(units))
      expect([told.unit, told.degrees(1423.15)]).toEqual([unit, there])
    }
    // An unheated shop in winter.
    expect(degreesIn(sayIn('metric')).degrees(263.15)).toBe(-10)
  })
})
