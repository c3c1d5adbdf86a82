import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Composition } from '#steel'
import {
  type CriticalLaw,
  ac1,
  ac1Laws,
  ac3Laws,
  bsLaws,
  fullAustenite,
  martensiteStart,
  msLaws,
} from './critical-points.ts'
import { hardeningWindow, shareWindow } from './hardening-window.ts'
import {
  keepAustenite,
  martensiteFinish,
  retainedAustenite,
  vanBohemenCoefficient,
} from './martensite.ts'
import reference from './reference.json' with { type: 'json' }

const zero = 273.15
type Row = (typeof reference.steels.rows)['1075']

test('every law on fourteen steels, as worked outside this code', () => {
  const columns: [CriticalLaw, keyof Row][] = [
    [ac1Laws[0], 'Ac1_Andrews'],
    [ac3Laws[0], 'Ac3_Andrews'],
    [msLaws[0], 'Ms_vanBohemen'],
    [msLaws[1], 'Ms_Ingber'],
    [msLaws[2], 'Ms_Andrews_lin'],
    [msLaws[3], 'Ms_Andrews_prod'],
    [msLaws[4], 'Ms_StevenHaynes'],
    [bsLaws[0], 'Bs_StevenHaynes'],
    [bsLaws[1], 'Bs_Li98'],
  ]
  expect(Object.keys(reference.steels.rows).length).toBeGreaterThanOrEqual(14)
  for (const row of Object.values(reference.steels.rows) as Row[]) {
    for (const [law, column] of columns)
      expect(Math.abs(law.temperature(row.comp) - zero - (row[column] as number))).toBeLessThan(0.1)
    expect(Math.abs(retainedAustenite(row.comp).value - row.RA_KM_from_Ms_vB)).toBeLessThan(5e-4)
  }
})

test('the value Ingber prints, and Koistinen-Marburger', () => {
  expect(msLaws[1].temperature({ C: 1.5, Mn: 0.5, Si: 0.8 }) - zero).toBeCloseTo(
    reference.ingber.celsius,
    0,
  )
  for (const [ms, bath, share] of reference.km.rows)
    expect(keepAustenite(ms! + zero, bath! + zero)).toBeCloseTo(share!, 4)
  // van Bohemen's coefficient at .96 and .80 % carbon
  expect(vanBohemenCoefficient({ C: 0.96, Mn: 0.4, Si: 0.22 })).toBeCloseTo(0.0117, 4)
  expect(vanBohemenCoefficient({ C: 0.8, Mn: 0.75, Si: 0.22 })).toBeCloseTo(0.0129, 4)
})

test('tabulated Ms of carbon steels lies in the range given (CN-T)', () => {
  for (const [carbon, celsius] of reference.measuredMs.rows) {
    const { range } = martensiteStart({ C: carbon!, Mn: 0.3, Si: 0.25 })
    expect(celsius! + zero).toBeGreaterThan(range[0] - 10)
    expect(celsius! + zero).toBeLessThan(range[1] + 10)
  }
})

test('Acm and A3 of Fe-C (OC-TDB): Acm by its fit, A3 within Andrews’ scatter', () => {
  for (const [c, t] of Object.entries(reference.fec.acm))
    expect(Math.abs(fullAustenite({ C: Number(c) }).value - zero - t)).toBeLessThan(0.3)
  for (const [c, t] of Object.entries(reference.fec.a3))
    expect(Math.abs(fullAustenite({ C: Number(c) }).value - zero - t)).toBeLessThan(25)
})

test('windows take in the hardening heats that makers print', () => {
  for (const [, comp, low, high] of reference.practice.rows as [
    string,
    Composition,
    number,
    number,
  ][]) {
    const w = hardeningWindow(comp)
    // most of what is printed lies inside, and the middle within 20 K of its middle
    expect(w.low - zero).toBeLessThan((low + high) / 2)
    expect(w.high - zero).toBeGreaterThan((low + high) / 2)
    expect(Math.abs((w.low + w.high) / 2 - zero - (low + high) / 2)).toBeLessThan(22)
  }
})

test('a carbon and a nickel steel share a heat; mild steel and a chromium steel are told apart', () => {
  const carbon = { C: 0.8, Mn: 0.75, Si: 0.22 }
  const nickel = { C: 0.75, Mn: 0.35, Si: 0.25, Ni: 2 }
  const shared = shareWindow([carbon, nickel])
  expect(shared.low).toBeGreaterThan(ac1(carbon).value)
  expect(shared.advised - zero).toBeGreaterThan(775)
  expect(shared.advised - zero).toBeLessThan(820)
  const apart = shareWindow([nickel, { C: 0.1, Mn: 0.4, Si: 0.1 }])
  expect(apart.suitsAll).toBe(false)
  expect(apart.problems[0]!.try.length).toBeGreaterThan(0)
  expect(apart.notes.join(' ')).toContain('soft')
})

test('nothing is NaN, and order holds: Mf under Ms under Ac1 under full austenite', () => {
  const w = fc.oneof(fc.double({ min: 0, max: 2, noNaN: true }), fc.constantFrom(NaN, -1, Infinity))
  fc.assert(
    fc.property(fc.record({ C: w, Mn: w, Si: w, Ni: w, Cr: w, Mo: w, V: w, P: w }), (c) => {
      for (const e of [
        ac1(c),
        fullAustenite(c),
        martensiteStart(c),
        martensiteFinish(c),
        retainedAustenite(c),
      ]) {
        expect([e.value, ...e.range].every(Number.isFinite)).toBe(true)
        expect(e.range[0]).toBeLessThanOrEqual(e.value + 1e-9)
        expect(e.range[1]).toBeGreaterThanOrEqual(e.value - 1e-9)
      }
      const shared = shareWindow([c, { C: 0.8 }])
      expect([shared.low, shared.high, shared.advised].every(Number.isFinite)).toBe(true)
      expect(martensiteFinish(c).value).toBeLessThanOrEqual(martensiteStart(c).value)
      expect(fullAustenite(c).value).toBeGreaterThanOrEqual(ac1(c).value)
    }),
    { seed: 4 },
  )
})
