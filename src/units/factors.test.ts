import Fraction from 'fraction.js'
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { describe, expect, it } from 'vitest'
import { nearestNumber } from './exact.ts'
import { type QuantityKind, readQuantity, unitsOf } from './index.ts'

interface Measure {
  readonly scalar: number
  to(unit: string): Measure
}
// CommonJS without types of its own.
const Qty = createRequire(import.meta.url)('js-quantities') as {
  (text: string): Measure
  (value: number, unit: string): Measure
}

function si(text: string, kind: QuantityKind): number {
  const { ok } = readQuantity(text, kind)
  if (!ok) throw new Error(text)
  return ok.si
}

// Spelled as js-quantities spells them. It is independent of this project, but rounds some of its
// own factors at the seventh figure (psi); the published table below is the finer test.
const peers: readonly (readonly [QuantityKind, ours: string, theirs: string, base: string])[] = [
  ['length', 'mm', 'mm', 'm'],
  ['length', 'µm', 'um', 'm'],
  ['length', 'in', 'in', 'm'],
  ['length', 'ft', 'ft', 'm'],
  ['length', 'thou', 'mil', 'm'],
  ['mass', 'g', 'g', 'kg'],
  ['mass', 'mg', 'mg', 'kg'],
  ['mass', 'lb', 'lb', 'kg'],
  ['mass', 'oz', 'oz', 'kg'],
  ['mass', 'tonne', 'tonne', 'kg'],
  ['time', 'h', 'h', 's'],
  ['time', 'd', 'd', 's'],
  ['angle', '°', 'deg', 'rad'],
  ['pressure', 'MPa', 'MPa', 'Pa'],
  ['pressure', 'bar', 'bar', 'Pa'],
  ['pressure', 'psi', 'psi', 'Pa'],
  ['force', 'kN', 'kN', 'N'],
  ['force', 'lbf', 'lbf', 'N'],
  ['energy', 'ft·lbf', 'ft*lbf', 'J'],
  ['energy', 'kWh', 'kW*h', 'J'],
  ['speed', 'ft/min', 'ft/min', 'm/s'],
  ['speed', 'km/h', 'km/h', 'm/s'],
  ['area', 'in²', 'in^2', 'm^2'],
  ['volume', 'in³', 'in^3', 'm^3'],
  ['volume', 'ft³', 'ft^3', 'm^3'],
  ['volume', 'L', 'l', 'm^3'],
  ['volume', 'US gal', 'gal', 'm^3'],
]

describe('factors', () => {
  it.each(peers)('%s in %s agree with an independent library', (kind, ours, theirs, base) => {
    const expected = Qty(12.5, theirs).to(base).scalar
    expect(si(`12.5 ${ours}`, kind) / expected).toBeCloseTo(1, 6)
  })

  it.each([
    ['2300 °F', '2300 tempF'],
    ['-40 °C', '-40 tempC'],
  ])('temperature %s agrees with an independent library', (ours, theirs) => {
    expect(si(ours, 'temperature')).toBeCloseTo(Qty(theirs).to('tempK').scalar, 9)
  })

  // NIST SP 811 (2008) appendix B.8; figures in bold there are exact, the rest to the digits shown.
  it.each<[string, QuantityKind, string]>([
    ['1 in', 'length', '2.54E-02'],
    ['1 ft', 'length', '3.048E-01'],
    ['1 lb', 'mass', '4.5359237E-01'],
    ['1 oz', 'mass', '2.8349523125E-02'],
    ['1 lbf', 'force', '4.4482216152605E+00'],
    ['1 UK ton', 'force', '9.964016E+03'],
    ['1 US ton', 'force', '8.896443E+03'],
    ['1 psi', 'pressure', '6.894757E+03'],
    ['1 ksi', 'pressure', '6.894757E+06'],
    ['1 ft·lbf', 'energy', '1.355818E+00'],
    ['1 in³', 'volume', '1.6387064E-05'],
    ['1 imp gal', 'volume', '4.54609E-03'],
    ['1 US fl oz', 'volume', '2.957353E-05'],
    ['1 ft/min', 'speed', '5.08E-03'],
  ])('%s is the published %s to its last digit', (text, kind, printed) => {
    const digits = printed.replace(/E.*/, '').replace(/\D/g, '').length
    expect(Number(si(text, kind).toPrecision(digits))).toBe(Number(printed))
  })

  it('lists factors that can be reckoned with, and no spelling twice in a kind', () => {
    for (const units of Object.values(unitsOf)) {
      for (const unit of units) expect(new Fraction(unit.factor).compare(0), unit.name).toBe(1)
      const spellings = units.flatMap((u) => [...new Set([u.name, ...u.also])])
      expect(spellings.filter((s, i) => spellings.indexOf(s) !== i)).toEqual([])
    }
  })
})

describe('the nearest number', () => {
  it('is what reading the decimal gives, where rounding thrice would miss', () => {
    // A decimal literal is rounded once by definition of the language.
    for (const text of [
      '0.0508',
      '1.23456789012345678901234',
      '98765432109876543210.987654321',
      '0.1',
    ]) {
      expect(nearestNumber(new Fraction(text))).toBe(Number(text))
    }
    const many = Array.from(
      { length: 500 },
      (_, i) => `${(i * 7919) % 1000}.${'31415926535897932384'.slice(i % 7)}${i}`,
    )
    for (const text of many) expect(nearestNumber(new Fraction(text))).toBe(Number(text))
  })

  it('keeps the sign and nothing', () => {
    expect(nearestNumber(new Fraction(-1, 3))).toBe(-1 / 3)
    expect(Object.is(nearestNumber(new Fraction(0)), 0)).toBe(true)
  })
})

describe('the page for people', () => {
  const page = readFileSync(new URL('../../docs/units.md', import.meta.url), 'utf8')
  const rows = new Map(
    [...page.matchAll(/^\| (\w+) \|(.*)\|$/gm)].map(([, kind = '', row = '']) => [kind, row]),
  )

  it.each(Object.entries(unitsOf))('names every unit of %s', (kind, units) => {
    const row = rows.get(kind) ?? ''
    for (const { name } of units) expect(row).toContain(name)
  })
})
