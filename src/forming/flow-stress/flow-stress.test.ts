import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isSourceKey } from '#sources'
import { flowStress, steelStress } from './choose.ts'
import { freibergRows, henselSpittel } from './hensel-spittel.ts'
import { alloyFactor, misakaAtStrain, misakaMean } from './misaka.ts'
import { powerRows, powerStress } from './power-law.ts'
import reference from './reference.json' with { type: 'json' }
import { carbonEquivalent, shida, shidaBranch, shidaMean } from './shida.ts'
import { hotWorkingConstant, hotWorkingEnergy, sinhPeak, zenerHollomon } from './sinh-law.ts'

const kelvin = (celsius: number) => celsius + 273.15
const MPa = (pascals: number) => pascals / 1e6
/** To the last figure printed, with a tenth of it to spare for points printed off the half. */
const printed = (value: number, shown: number, decimals: number) =>
  expect(Math.abs(value - shown)).toBeLessThanOrEqual(0.6 * 10 ** -decimals)

describe('published flow-stress points, to the printed figure', () => {
  it('Misaka-Yoshimoto (PYR-MIS, ROLLJS; read secondary)', () => {
    for (const { C, T, strain, rate, MPa: shown } of reference.misaka.points)
      printed(MPa(misakaMean(C, { temperature: kelvin(T), strain, rate })), shown, 2)
  })

  it('Shida, both branches (PYR-LEE, ROLLJS; read secondary)', () => {
    for (const { C, T, strain, rate, MPa: shown } of reference.shida.points)
      printed(MPa(shida(C, { temperature: kelvin(T), strain, rate })), shown, 2)
  })

  it('the table of Shida at strain 0.3 (computed)', () => {
    for (const [C, byHeat] of Object.entries(reference.shidaTable.rows))
      for (const [T, row] of Object.entries(byHeat))
        row.forEach((shown, i) => {
          const state = {
            temperature: kelvin(+T),
            strain: 0.3,
            rate: reference.shidaTable.rates[i]!,
          }
          printed(MPa(shida(+C, state)), shown, 1)
        })
  })

  it('Hensel-Spittel rows (PYR-FRB; read secondary)', () => {
    for (const { steel, T, rate, MPa: shown } of reference.henselSpittel.points) {
      const row = freibergRows.find((r) => r.steel === steel)!
      printed(MPa(henselSpittel(row, { temperature: kelvin(T), strain: 0.3, rate })), shown, 2)
    }
  })

  it('Medina-Hernandez (MEDCODE; alpha and n from memory)', () => {
    for (const point of reference.sinh.points) {
      const state = { temperature: kelvin(point.T), strain: 0.3, rate: point.rate }
      printed(MPa(sinhPeak(point.composition, state)), point.MPa, 2)
      if (point.Q) printed(hotWorkingEnergy(point.composition), point.Q, 1)
      if (point.A) expect(hotWorkingConstant(point.composition) / point.A).toBeCloseTo(1, 3)
      if (point.Z) expect(zenerHollomon(point.composition, state) / point.Z).toBeCloseTo(1, 3)
    }
  })

  it('handbook power rows (from memory): 120 MPa and 0.13 for 1045 at 1000 °C', () => {
    const row = powerRows.find((r) => r.steel === '1045')!
    expect(MPa(powerStress(row, 10))).toBeCloseTo(120 * 10 ** 0.13, 6)
  })

  it('names only sources of the bibliography', () => {
    const named = [
      reference.misaka,
      reference.shida,
      reference.henselSpittel,
      reference.sinh,
    ].flatMap((r) => r.source)
    expect(named.filter((key) => !isSourceKey(key))).toEqual([])
  })
})

describe('laws among themselves', () => {
  it("Shida's two branches meet within 2 %", () => {
    for (const C of [0.1, 0.2, 0.45, 0.8, 1.1]) {
      const at = (d: number) => shida(C, { temperature: shidaBranch(C) + d, strain: 0.2, rate: 10 })
      expect(at(1e-6) / at(-1e-6)).toBeGreaterThan(0.98)
      expect(at(1e-6) / at(-1e-6)).toBeLessThan(1.02)
    }
  })

  it('a mean over the strain is the integral of the stress (quadrature)', () => {
    const [end, parts] = [0.4, 4000]
    for (const [mean, stress] of [
      [misakaMean, misakaAtStrain],
      [shidaMean, shida],
    ] as const) {
      let sum = 0
      for (let i = 0; i < parts; i++)
        sum +=
          stress(0.6, { temperature: 1350, strain: ((i + 0.5) * end) / parts, rate: 40 }) / parts
      expect(mean(0.6, { temperature: 1350, strain: end, rate: 40 }) / sum).toBeCloseTo(1, 3)
    }
  })

  it('four independent laws agree within 25 % at 0.45 % C, 1100 °C, 0.3, 10 /s', () => {
    const { readings } = flowStress(
      { C: 0.45, Mn: 0.7, Si: 0.25 },
      { temperature: kelvin(1100), strain: 0.3, rate: 10 },
    )
    const stresses = readings.filter((r) => !r.law.startsWith('power')).map((r) => r.stress)
    expect(stresses.length).toBeGreaterThanOrEqual(4)
    expect(Math.max(...stresses) / Math.min(...stresses)).toBeLessThan(1.25)
  })

  it('two per cent nickel raises the alloy factor by 0.008', () => {
    expect(alloyFactor({ Ni: 2 }) - alloyFactor({})).toBeCloseTo(0.008, 12)
    expect(carbonEquivalent({ C: 0.4, Mn: 0.6, Cr: 0.5, Ni: 1.5 })).toBeCloseTo(0.7, 12)
  })
})

describe('the chooser', () => {
  const steel = { C: 0.8, Mn: 0.7 }

  it('takes Shida at press speed, reports Misaka beside it and brackets both where ranges overlap', () => {
    const press = flowStress(steel, { temperature: kelvin(1100), strain: 0.3, rate: 1 })
    expect(press.readings.filter((r) => r.inRange).map((r) => r.law)).toEqual(['Shida'])
    expect(press.cautions).toEqual([])
    const both = flowStress(steel, { temperature: kelvin(1100), strain: 0.3, rate: 60 })
    expect(both.readings.filter((r) => r.inRange).map((r) => r.law)).toEqual([
      'Shida',
      'Misaka-Yoshimoto',
    ])
    expect(both.spread).toBeGreaterThan(0.02)
    const [slow, fast] = both.readings.filter((r) => r.inRange).map((r) => r.stress)
    expect(both.low).toBeLessThanOrEqual(slow!)
    expect(both.high).toBeGreaterThanOrEqual(1.21 * fast!)
  })

  it('says so outside every range, with numbers still finite', () => {
    const far = flowStress(steel, { temperature: kelvin(1300), strain: 2, rate: 500 })
    expect(far.cautions.map((c) => c.at).toSorted()).toEqual(['rate', 'strain', 'temperature'])
    expect(Number.isFinite(far.value)).toBe(true)
    const nickel = flowStress({ Ni: 99.5 }, { temperature: kelvin(1100), strain: 0.2, rate: 1 })
    expect(nickel.cautions.some((c) => c.at === 'composition')).toBe(true)
    expect(nickel.high / nickel.low).toBeGreaterThan(1.5)
    // Two per cent nickel is within what the alloy factor knows; chromium at 5 % is not.
    const at = (composition: Record<string, number>) =>
      flowStress(composition, { temperature: kelvin(1100), strain: 0.2, rate: 1 }).cautions.length
    expect(at({ C: 0.75, Mn: 0.4, Ni: 2 })).toBe(0)
    expect(at({ C: 0.4, Cr: 5, Mo: 1.3, V: 1 })).toBe(1)
  })

  it('falls with temperature and rises with rate, and is never NaN', () => {
    const steels = [
      steel,
      { C: 0.1 },
      { C: 1.2, Mn: 0.3 },
      { C: 0.4, Cr: 5, Mo: 1.3, V: 1 },
      { C: 0.05, Cr: 18, Ni: 9 },
      { Ni: 99 },
    ]
    fc.assert(
      fc.property(
        fc.constantFrom(...steels),
        fc.double({ min: 900, max: 1340, noNaN: true }),
        fc.double({ min: 0, max: 1.5, noNaN: true }),
        fc.double({ min: 0.01, max: 400, noNaN: true }),
        (composition, T, strain, rate) => {
          const at = (t: number, r: number) =>
            steelStress(composition, { temperature: kelvin(t), strain, rate: r })
          const here = at(T, rate)
          expect(Number.isFinite(here) && here > 0).toBe(true)
          expect(at(T + 10, rate)).toBeLessThan(here)
          expect(at(T, rate * 1.1)).toBeGreaterThanOrEqual(here * (1 - 1e-9))
        },
      ),
      { seed: 5, numRuns: 400 },
    )
    for (const end of [0, 1e-9, 1e9])
      expect(
        Number.isFinite(flowStress(steel, { temperature: 1300, strain: end, rate: end }).value),
      ).toBe(true)
  })
})
