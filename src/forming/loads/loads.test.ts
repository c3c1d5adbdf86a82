import { describe, expect, it } from 'vitest'
import type { Estimate } from '../estimate.ts'
import { bendLoad } from './bend.ts'
import { holeLoad, openingPressure } from './open-hole.ts'

const stress: Estimate = { low: 90e6, value: 100e6, high: 110e6, basis: [], cautions: [] }

describe('bending', () => {
  it('is one and a half times the moment at which a rectangle begins to yield (textbook shape factor)', () => {
    // Elastic limit of a rectangle: Y w t²/6.
    const { moment } = bendLoad({ width: 0.01, thickness: 0.02, length: 0.1, radius: 0.2 }, stress)
    expect(moment[1] / ((100e6 * 0.01 * 0.02 ** 2) / 6)).toBeCloseTo(1.5, 12)
  })

  it('work is moment times angle: a bar bent right round takes 2π of it, however long', () => {
    for (const length of [0.1, 0.3]) {
      const bend = bendLoad(
        { width: 0.01, thickness: 0.01, length, radius: length / (2 * Math.PI) },
        stress,
      )
      expect(bend.work[1] / bend.moment[1]).toBeCloseTo(2 * Math.PI, 12)
    }
  })
})

describe('a drift', () => {
  it('ring e times as wide as the hole: pressure 2Y/√3 (thick cylinder, textbook)', () => {
    const ring = (Math.E ** 2 - 1) * 0.01 ** 2
    expect(openingPressure(0.01, ring)).toBeCloseTo(2 / Math.sqrt(3), 12)
  })

  it('work is the pressure summed over the hole: against a thousand thin rings', () => {
    for (const from of [0, 0.004]) {
      const plan = { from, to: 0.02, height: 0.015, width: 0.03 }
      const [a0, a1] = [plan.from / 2, plan.to / 2]
      const ring = 0.015 ** 2 - a0 * a0
      const n = 200_000
      let sum = 0
      for (let i = 0; i < n; i++) {
        const a = a0 + ((a1 - a0) * (i + 0.5)) / n
        sum += Math.log(1 + ring / (a * a)) * a * ((a1 - a0) / n)
      }
      const frictionless = ((2 * Math.PI * plan.height * 100e6) / Math.sqrt(3)) * sum
      // Friction of 0.3 on a drift of one in ten: four times the work.
      expect(holeLoad(plan, stress).work[1] / (4 * frictionless)).toBeCloseTo(1, 6)
    }
  })

  it('takes more for a larger hole and a thicker bar, and nothing for none', () => {
    const plan = { from: 0.006, to: 0.012, height: 0.012, width: 0.025 }
    const work = (change: Partial<typeof plan>) => holeLoad({ ...plan, ...change }, stress).work[1]
    expect(work({ to: 0.016 })).toBeGreaterThan(work({}))
    expect(work({ height: 0.02 })).toBeGreaterThan(work({}))
    expect(work({ to: 0.006 })).toBe(0)
  })
})
