import { describe, expect, it } from 'vitest'
import { isSourceKey } from '#sources'
import reference from './reference.json' with { type: 'json' }
import { type WeldTest, adviseWeld, solidus, testsOfWeld, weldBefore } from './weld.ts'

const kelvin = (celsius: number) => celsius + 273.15
const steels = [
  { C: 0.84, Mn: 0.8 },
  { C: 0.75, Mn: 0.4, Ni: 2 },
]
const plan = {
  steels,
  temperature: kelvin(1180),
  thinnest: 0.04,
  first: true,
  soak: 900,
  reduction: 0.1,
}

describe('welding advice', () => {
  it('solidus near the figures from memory: 1340 to 1360 °C at 1.0 % C, about 1380 at 0.8', () => {
    for (const [carbon, low, high] of reference.solidus.points) {
      expect(solidus(carbon!)).toBeGreaterThan(kelvin(low!))
      expect(solidus(carbon!)).toBeLessThan(kelvin(high!))
    }
  })

  it('one squeeze at the flow stress: 60 to 120 MPa from 1200 down to 1100 °C (from memory)', () => {
    const { MPa, between } = reference.squeeze
    for (const T of between)
      for (const rate of [1, 5]) {
        const { value } = adviseWeld({ ...plan, temperature: kelvin(T), rate }).squeeze
        expect(value / 1e6).toBeGreaterThan(MPa[0]! * 0.75)
        expect(value / 1e6).toBeLessThan(MPa[1]!)
      }
  })

  it('a good first weld draws no caution; each shortfall draws its own', () => {
    expect(adviseWeld(plan).cautions).toEqual([])
    const at = (change: Partial<typeof plan>) =>
      adviseWeld({ ...plan, ...change }).cautions.map((c) => c.at)
    expect(at({ temperature: kelvin(1050) })).toEqual(['temperature'])
    expect(at({ temperature: kelvin(1300) })).toEqual(['temperature'])
    expect(at({ soak: 120 })).toEqual(['soak'])
    expect(at({ reduction: 0.02 })).toEqual(['reduction'])
    expect(at({ reduction: 0.4 })).toEqual(['reduction'])
  })

  it('soak: five minutes for 25 mm, ten at least on a first weld, after the colour is even', () => {
    expect(adviseWeld({ ...plan, first: false, thinnest: 0.025 }).soak[0]).toBeCloseTo(
      60 * reference.soak.minutesPer25mm,
      9,
    )
    expect(adviseWeld({ ...plan, thinnest: 0.01, evenAfter: 400 }).leastTime).toBeCloseTo(
      400 + 60 * reference.soak.first[0]!,
      9,
    )
  })

  it('high carbon narrows the welding heat from above, mild steel widens it', () => {
    expect(adviseWeld({ ...plan, steels: [{ C: 1.5 }] }).heat[1]).toBeLessThan(
      kelvin(reference.heat.high),
    )
    expect(adviseWeld({ ...plan, steels: [{ C: 0.1 }] }).heat[1]).toBeGreaterThan(
      kelvin(reference.heat.high),
    )
  })

  it('warns before steps that test a weak weld and stops warning once it is trusted', () => {
    for (const step of Object.keys(testsOfWeld) as WeldTest[]) {
      expect(weldBefore(step, 0)[0]!.what).toContain('not yet')
      expect(weldBefore(step, testsOfWeld[step].least)[0]!.what).toContain('young')
      expect(weldBefore(step, reference.reduction.trusted)).toEqual([])
    }
  })

  it('names only sources of the bibliography', () => {
    const keys = [
      reference.solidus,
      reference.heat,
      reference.squeeze,
      reference.soak,
      reference.reduction,
    ].map((r) => r.source)
    expect(keys.filter((key) => !isSourceKey(key))).toEqual([])
  })
})
