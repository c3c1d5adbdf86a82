import { describe, expect, it } from 'vitest'
import { sampleBar, samplePack } from '../samples.ts'
import { attempt, tryOut, workedBack } from '../trials.ts'
import { edgeBar } from './index.ts'
import { cornersOff, roundThePoint, tipCurvature } from './point.ts'

const mm = (n: number) => n / 1000

describe('the point of a core', () => {
  it('has the perimeter of half an ellipse (SciPy 2 a E(1 − b²/a²))', () => {
    const half = (length: number, width: number) =>
      roundThePoint({ form: 'rounded', length, width })
    expect(half(40, 35.2)).toBeCloseTo(93.93234873142723, 10)
    expect(half(18, 36)).toBeCloseTo(56.548667764616276, 10)
    expect(half(100, 30)).toBeCloseTo(206.3050147053769, 9)
  })

  it('or of two straight lines, 3-4-5', () => {
    expect(roundThePoint({ form: 'pointed', length: 4, width: 6 })).toBe(10)
    expect(cornersOff({ form: 'pointed', length: 4, width: 6 })).toBe(12)
    expect(tipCurvature({ form: 'rounded', length: 15, width: 30 })).toBeCloseTo(1 / 15, 12)
  })
})

describe('a wrapped edge', () => {
  const core = samplePack(700, 36, 10)
  const edge = sampleBar(1600, 4, 10, 'W2')
  const values = { bar: 'edge', fit: 'wrapped', cleanUp: '0 mm' }
  const step = tryOut(edgeBar, values, core, edge)

  it('takes the perimeter of the core and 5 % over', () => {
    // Straight sides 2 × (700 − 18) and half a circle of 18: 1364 + 56.549 = 1420.549, × 1.05 = 1491.6.
    const used = mm(1.05 * (2 * (700 - 18) + Math.PI * 18))
    expect(edge.size.length - step.setAside[0].size.length).toBeCloseTo(used + mm(1.6), 9)
  })

  it('fills the band round a half-round core exactly', () => {
    const flat = 2 * (700 - 18) * 4
    const ring = (Math.PI / 2) * (22 ** 2 - 18 ** 2)
    const middle = (700 - 18) * 36 + (Math.PI / 2) * 18 ** 2
    expect(step.after.volume).toBeCloseTo((flat + ring + middle) * 10 * 1e-9, 14)
    expect(step.after.size).toEqual({ length: mm(704), width: mm(44), height: mm(10) })
  })

  it('speaks up where the bar is too thick to follow the point', () => {
    expect(step.warnings).toEqual([])
    // Half of 8 mm at the tip of an ellipse 40 by 18: 4 × 40 / 18² = 0.49 of its radius.
    const tight = tryOut(
      edgeBar,
      { ...values, pointLength: '40 mm' },
      core,
      sampleBar(1600, 8, 10, 'W2'),
    )
    expect(tight.warnings.map((w) => w.at)).toEqual(['point'])
  })
})

describe('a butted edge', () => {
  it('is asked for twice the length and a cut', () => {
    const bars = [samplePack(400, 30, 12), sampleBar(900, 12, 12, 'W2')]
    const values = { bar: 'edge', kerf: '2 mm', cleanUp: '0.5 mm' }
    const demand = { length: mm(500), width: mm(52), height: mm(12) }
    const needed = workedBack(edgeBar, demand, values, ...bars).ok ?? []
    expect(needed.map((size) => size.length)).toEqual([mm(500), mm(1002)])
    const wider = workedBack(edgeBar, { ...demand, width: mm(60) }, values, ...bars)
    expect(wider.problems).toHaveLength(1)
  })

  it('needs a core', () => {
    expect(attempt(edgeBar, { bar: 'edge' }, sampleBar()).problems?.[0].at).toBe('core')
  })
})
