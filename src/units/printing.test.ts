import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Printing, type QuantityKind, printQuantity, readQuantity, unitsOf } from './index.ts'

describe('printing', () => {
  it.each<[number, QuantityKind, Printing, string]>([
    [0.054, 'length', {}, '54 mm'],
    [0.0127, 'length', {}, '12.7 mm'],
    [0.0000209, 'length', {}, '20.9 µm'],
    [12.5, 'length', {}, '12.5 m'],
    [-0.003, 'length', {}, '\u22123 mm'],
    [0, 'length', {}, '0 mm'],
    [-0, 'length', {}, '0 mm'],
    [0.053975, 'length', { nearest: 16 }, '2 1/8 in'],
    [0.0508, 'length', { system: 'inch' }, '2 in'],
    [-0.003175, 'length', { nearest: 64 }, '\u22121/8 in'],
    [0.0254 * (2 + 31 / 32), 'length', { nearest: 16 }, '3 in'],
    [0.0254 * (2 + 31 / 32), 'length', { nearest: 32 }, '2 31/32 in'],
    [0.002286, 'length', { system: 'inch' }, '0.09 in'],
    [0.0001, 'length', { nearest: 16 }, '0.003937 in'],
    [0.0508, 'length', { unit: 'in', digits: 3 }, '2.000 in'],
    [0.054, 'length', { unit: 'cm' }, '5.4 cm'],
    [1423.15, 'temperature', {}, '1150 °C'],
    [1533.15, 'temperature', { system: 'inch' }, '2300 °F'],
    [255.372, 'temperature', {}, '\u221218 °C'],
    [5400, 'time', {}, '1 h 30 min'],
    [90, 'time', {}, '1 min 30 s'],
    [3599.7, 'time', {}, '1 h'],
    [12.5, 'time', {}, '12.5 s'],
    [0.05, 'ratio', {}, '5 %'],
    [40, 'twist', {}, '25 mm pitch'],
    [0, 'twist', {}, '0 per m'],
    [5000 / 127, 'twist', { system: 'inch' }, '1 per inch'],
    [1200, 'lines', {}, '1.2 per mm'],
    [3e5, 'force', {}, '300 kN'],
    [8896.443230521 * 25, 'force', { system: 'inch' }, '25 US ton'],
    [Math.PI / 6, 'angle', {}, '30°'],
    [0.45359237 * 3, 'mass', { system: 'inch' }, '3 lb'],
    [12345, 'mass', {}, '12\u202f345 kg'],
    [NaN, 'mass', {}, '—'],
    [Infinity, 'mass', {}, '—'],
  ])('%d as %s %o is %s', (si, kind, how, text) => {
    expect(printQuantity(si, kind, how)).toBe(text)
  })

  it('never prints a positive thickness as nothing', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-7, max: 0.01, noNaN: true }), (si) =>
        [{}, { system: 'inch' }, { nearest: 16 }].every(
          (how) => !/^0 /.test(printQuantity(si, 'length', how as Printing)),
        ),
      ),
      { seed: 7 },
    )
  })
})

describe('printing, then reading', () => {
  const kinds = Object.keys(unitsOf) as QuantityKind[]
  const value = fc.tuple(
    fc.double({ min: 1, max: 10, noNaN: true }),
    fc.integer({ min: -6, max: 8 }),
    fc.boolean(),
  )
  const size = value.map(([m, e, negative]) => (negative ? -1 : 1) * m * 10 ** e)

  function back(si: number, kind: QuantityKind, how: Printing): number {
    const text = printQuantity(si, kind, how)
    const { ok } = readQuantity(text, kind)
    if (!ok) throw new Error(`${si} ${kind} printed as ${text} is not read`)
    return ok.si
  }

  it('comes back within the rounding in both systems', () => {
    const system = fc.constantFrom<Printing>({ system: 'metric' }, { system: 'inch' })
    fc.assert(
      fc.property(size, fc.constantFrom(...kinds), system, (si, kind, how) => {
        const found = back(si, kind, how)
        // Half a degree Fahrenheit or Celsius; half a minute past the hour; one inch in 100; else four figures.
        if (kind === 'temperature') return Math.abs(found - si) <= 0.5 + 1e-9 * Math.abs(si)
        if (kind === 'time') return Math.abs(found - si) <= Math.max(0.006 * Math.abs(si), 1e-9)
        const share = kind === 'length' && how.system === 'inch' ? 0.0101 : 0.000501
        return Math.abs(found - si) <= share * Math.abs(si) + 1e-21
      }),
      { seed: 11, numRuns: 2000 },
    )
  })

  it('comes back exactly in every unit, given digits enough', () => {
    const units = kinds.flatMap((kind) => unitsOf[kind].map((u) => [kind, u.name] as const))
    fc.assert(
      fc.property(size, fc.constantFrom(...units), (si, [kind, unit]) => {
        const found = back(si, kind, { unit, digits: 15 })
        // Fifteen decimals of the unit, or a double's own grain; a pitch loses by its inverse.
        const { ok } = readQuantity(`1 ${unit}`, kind)
        const one = Math.abs(ok!.si)
        const grain = unit.endsWith('pitch') ? Math.abs(si) * 1e-15 * (si / one + 1) : 1e-15 * one
        return (
          Math.abs(found - si) <=
          Math.abs(grain) + 1e-12 * Math.max(Math.abs(si), kind === 'temperature' ? 500 : 0)
        )
      }),
      { seed: 13, numRuns: 2000 },
    )
  })

  it('comes back within half a fraction of an inch', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1 / 16, max: 200, noNaN: true }),
        fc.constantFrom(16, 32, 64),
        (inches, nearest) => {
          const found = back(inches * 0.0254, 'length', { nearest: nearest as 16 | 32 | 64 })
          return Math.abs(found / 0.0254 - inches) <= 0.5 / nearest + 1e-9
        },
      ),
      { seed: 17 },
    )
  })
})
