import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { shida } from '../flow-stress/shida.ts'
import type { Press, Hammer } from '../machines/tools.ts'
import { emblemFromMeasures, measureEmblem } from '../emblem/emblem.ts'
import { type StampPlan, adviseStamp, depthReached, sinkingOf, stampPressure } from './press-in.ts'
import reference from './reference.json' with { type: 'json' }

const kelvin = (celsius: number) => celsius + 273.15

/** A gull in flight, drawn for this test. */
const gull =
  'M2 30C14 14 28 12 38 24C46 10 62 4 80 8C66 12 56 20 50 32L58 36L49 37C44 46 34 48 26 44L14 50L20 41C14 38 8 34 2 30Z'
const emblem = measureEmblem(gull, 0.03).ok!
const steel = { C: 0.8, Mn: 0.7 }
const fourPounds: Hammer = { kind: 'hand', mass: 1.814, speed: 8 }
const press: Press = { kind: 'press', force: 250e3, speed: 0.03 }
const planAt = (T: number, change: Partial<StampPlan> = {}): StampPlan => ({
  emblem,
  metal: { steel, temperature: kelvin(T) },
  depth: 0.0012,
  thickness: 0.0085,
  takenOff: 0.0007,
  ...change,
})

describe('the stamp', () => {
  it('30 mm² at 100 MPa: 9 to 15 kN (from memory)', () => {
    const { area: face, stress, low, high } = reference.force
    for (const [stroke, thickness, depth] of [
      [0.001, 0.008, 0.0005],
      [0.002, 0.01, 0.001],
      [0.0008, 0.006, 0.0012],
    ] as const) {
      const force = stampPressure(stroke, thickness, depth, 0.85) * stress * face
      expect(force).toBeGreaterThan(low * 0.98)
      expect(force).toBeLessThanOrEqual(high)
    }
    expect(stampPressure(0.001, 0.02, 0, 0)).toBeCloseTo(reference.punch.overYield, 4)
  })

  it('a gull 30 mm across on a builder’s plate: press force and four-pound blows at two heats', () => {
    for (const T of [1000, 1100]) {
      const plan = planAt(T)
      const byPress = adviseStamp(plan, press)
      // By hand: Shida's stress at this strain and rate times 1 to 5 times the raised area.
      const stress = shida(0.8, {
        temperature: kelvin(T),
        strain: 0.13,
        rate: press.speed / plan.emblem.stroke,
      })
      expect(byPress.force.value).toBeGreaterThan(stress * plan.emblem.area)
      expect(byPress.force.value).toBeLessThan(5 * stress * plan.emblem.area)
      const byHand = adviseStamp(plan, fourPounds)
      expect(byHand.blows.value).toBeGreaterThan(1)
      expect(byHand.work.value / (byHand.blows.value * 58)).toBeLessThan(1)
      expect(byHand.verdict).not.toBe('can do')
      expect(byHand.wouldDo.some((w) => w.includes('press'))).toBe(true)
    }
    expect(adviseStamp(planAt(1100), press).force.value).toBeLessThan(
      adviseStamp(planAt(1000), press).force.value,
    )
  })

  it('depth left after polishing, and what to press when too little is left', () => {
    const enough = adviseStamp(planAt(1100), press)
    expect(enough.depthLeft).toBeCloseTo(0.0005, 12)
    expect(enough.cautions.map((c) => c.at)).not.toContain('depth')
    const shallow = adviseStamp(planAt(1100, { depth: 0.0008 }), press)
    expect(shallow.cautions.map((c) => c.at)).toContain('depth')
    expect(shallow.depthNeeded).toBeCloseTo(0.0009, 12)
    expect(
      adviseStamp(planAt(1100, { depth: 0.0005 }), press).cautions.some((c) =>
        c.what.includes('ground off'),
      ),
    ).toBe(true)
  })

  it('thin strokes, sharp feet and deep marks are named; rounding the die helps', () => {
    const fine = emblemFromMeasures({ area: 4e-5, perimeter: 0.2, stroke: 0.0003 })
    const at = (change: Partial<StampPlan>) =>
      adviseStamp(planAt(1100, { emblem: fine, ...change }), press)
    expect(at({ depth: 0.001 }).cautions.map((c) => c.at)).toContain('stroke')
    expect(at({ depth: 0.0004, takenOff: 0.0001 }).cautions.map((c) => c.at)).not.toContain(
      'stroke',
    )
    expect(at({ depth: 0.003 }).cautions.map((c) => c.at)).toEqual(
      expect.arrayContaining(['corner', 'thickness']),
    )
    expect(at({ edgeRadius: 0.0005 }).crack.raiser).toBeLessThan(
      at({ edgeRadius: 0.0001 }).crack.raiser,
    )
    expect(at({ edgeRadius: 0.0005 }).crack.risk).toBe('low')
    expect(at({ mark: 'raised', scale: 0.0001 }).smallestStroke).toBeGreaterThan(
      at({ mark: 'sunk' }).smallestStroke,
    )
  })

  it('layers are bent by the full depth at the floor and a tenth at the reach', () => {
    const { bending } = adviseStamp(planAt(1100), press)
    expect(sinkingOf(bending, 0)).toBe(bending.depth)
    expect(sinkingOf(bending, bending.reach)).toBeCloseTo(bending.depth / 10, 12)
    // One wavelength down next to nothing is left: e^−2π.
    expect(sinkingOf(bending, bending.feature) / bending.depth).toBeCloseTo(0.001867, 6)
  })

  it('more energy reaches deeper, and the depth reached needs just that energy', () => {
    const plan = planAt(1100)
    const { flowStress } = adviseStamp(plan, press)
    const reached = [20, 60, 180].map((energy) => depthReached(plan, flowStress, energy))
    expect(reached[0]).toBeLessThan(reached[1]!)
    expect(reached[1]).toBeLessThan(reached[2]!)
  })

  it('force rises with depth and friction, falls with heat; all finite at the ends', () => {
    const unit = fc.double({ min: 0, max: 1, noNaN: true })
    fc.assert(
      fc.property(unit, unit, unit, (a, b, c) => {
        const T = 950 + 220 * a
        const depth = 0.0002 + 0.002 * b
        const at = (t: number, d: number, friction: number) =>
          adviseStamp(planAt(t, { depth: d, friction }), press).force
        const here = at(T, depth, 0.9 * c)
        expect(at(T + 15, depth, 0.9 * c).value).toBeLessThan(here.value)
        expect(at(T, depth * 1.05, 0.9 * c).value).toBeGreaterThanOrEqual(here.value * (1 - 1e-9))
        expect(at(T, depth, 0.9 * c + 0.1).value).toBeGreaterThanOrEqual(here.value * (1 - 1e-9))
        expect(here.low).toBeLessThanOrEqual(here.value)
        expect(here.value).toBeLessThanOrEqual(here.high)
      }),
      { seed: 5, numRuns: 60 },
    )
    for (const emblem of [
      emblemFromMeasures({ area: 0, perimeter: 0 }),
      emblemFromMeasures({ area: 1, perimeter: 1e-6 }),
    ])
      for (const depth of [0, 0.02])
        for (const tool of [press, fourPounds])
          expect(
            Number.isFinite(adviseStamp(planAt(1100, { emblem, depth }), tool).force.high),
          ).toBe(true)
  })
})
