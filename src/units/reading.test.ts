import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type QuantityKind, examplesOf, readQuantity, unitsOf } from './index.ts'

function si(text: string, kind: QuantityKind, unit?: string): number {
  const { ok, problems } = readQuantity(text, kind, unit === undefined ? {} : { unit })
  if (!ok) throw new Error(problems.map((p) => p.what).join('; '))
  expect(ok.text).toBe(text)
  expect(ok.kind).toBe(kind)
  return ok.si
}

function problemOf(text: string, kind: QuantityKind) {
  const { problems } = readQuantity(text, kind)
  expect(problems, text).toHaveLength(1)
  return problems![0]!
}

// Right-hand sides are worked by hand from the definitions of NIST SP 811 appendix B.8
// (inch 25.4 mm, foot 304.8 mm, pound 453.592 37 g, standard gravity 9.806 65 m/s²).
describe('lengths', () => {
  it.each([
    ['2 in', 0.0508],
    ['2"', 0.0508],
    ['2 inches', 0.0508],
    ['2 in.', 0.0508],
    ['2 1/8 in', 0.053975],
    ['2-1/8"', 0.053975],
    ['2⅛ in', 0.053975],
    ['2 ⅛″', 0.053975],
    ['1/8 in', 0.003175],
    ['⅛"', 0.003175],
    ['17/8 in', 0.053975],
    ['2½ in', 0.0635],
    ['0.090 in', 0.002286],
    ['.5 in', 0.0127],
    ['90 thou', 0.002286],
    ['5 ft', 1.524],
    ['5\' 2 1/2"', 1.5875],
    ['5\'-2 1/2"', 1.5875],
    ['5 ft 2 in', 1.5748],
    ['5ft2in', 1.5748],
    ['54 mm', 0.054],
    ['54mm', 0.054],
    ['5.4 cm', 0.054],
    ['1 m 20 cm', 1.2],
    ['20 µm', 0.00002],
    ['20 μm', 0.00002],
    ['20 um', 0.00002],
    ['3,5 mm', 0.0035],
    ['0,125 in', 0.003175],
    ['1\u2009250 mm', 1.25],
    ['1\u202f250,5 mm', 1.2505],
    ['1,250.5 mm', 1.2505],
    ['1.250,5 mm', 1.2505],
    ['1,000,000 mm', 1000],
    ['−2 1/8 in', -0.053975],
    ['-3 mm', -0.003],
    ['+3 mm', 0.003],
    ['  54 mm ', 0.054],
  ])('%s', (text, metres) => {
    expect(si(text, 'length')).toBe(metres)
  })

  it('takes the caller’s unit for a bare number only', () => {
    expect(si('25', 'length', 'mm')).toBe(0.025)
    expect(si('2 1/8', 'length', 'in')).toBe(0.053975)
    expect(si('25 cm', 'length', 'mm')).toBe(0.25)
    expect(problemOf('25', 'length').what).toBe('"25" has no unit.')
    expect(readQuantity("5' 2", 'length', { unit: 'in' }).problems).toHaveLength(1)
  })
})

describe('other kinds', () => {
  it.each<[string, QuantityKind, number]>([
    ['2 lb', 'mass', 0.90718474],
    ['1 lb 4 oz', 'mass', 0.5669904625],
    ['250 g', 'mass', 0.25],
    ['1 cwt', 'mass', 50.80234544],
    ['1150 °C', 'temperature', 1423.15],
    ['1150 C', 'temperature', 1423.15],
    ['32 °F', 'temperature', 273.15],
    ['212 F', 'temperature', 373.15],
    ['2300 F', 'temperature', 1533.15],
    ['-40 °F', 'temperature', 233.15],
    ['300 K', 'temperature', 300],
    ['1 h 30 min', 'time', 5400],
    ['90 s', 'time', 90],
    ['20 min', 'time', 1200],
    ['180°', 'angle', Math.PI],
    ['90 deg', 'angle', Math.PI / 2],
    ['1/4 turn', 'angle', Math.PI / 2],
    ['0.5 rad', 'angle', 0.5],
    ['7 bar', 'pressure', 700000],
    ['6 N/mm²', 'pressure', 6e6],
    ['1 psi', 'pressure', 6894.757293168362],
    ['25 tonne', 'force', 245166.25],
    ['1 ton', 'force', 8896.443230521],
    ['1 US ton', 'force', 8896.443230521],
    ['1 kgf', 'force', 9.80665],
    ['1 ft·lbf', 'energy', 1.3558179483314004],
    ['1 ft-lb', 'energy', 1.3558179483314004],
    ['5 %', 'ratio', 0.05],
    ['5%', 'ratio', 0.05],
    ['0.05', 'ratio', 0.05],
    ['1/3', 'ratio', 1 / 3],
    ['1.2 per mm', 'lines', 1200],
    ['1.2/mm', 'lines', 1200],
    ['127 per inch', 'lines', 5000],
    ['127 lpi', 'lines', 5000],
    ['127 layers per inch', 'lines', 5000],
    ['25 mm pitch', 'twist', 40],
    ['25 mm per turn', 'twist', 40],
    ['1 turn in 25 mm', 'twist', 40],
    ['2 turns in 50 mm', 'twist', 40],
    ['127 tpi', 'twist', 5000],
    ['1 turn per 5 in', 'twist', 1000 / 127],
    ['1 in pitch', 'twist', 5000 / 127],
    ['60 ft/min', 'speed', 0.3048],
    ['6 mm^2', 'area', 6e-6],
    ['1 sq in', 'area', 0.00064516],
    ['1 in³', 'volume', 0.000016387064],
    ['1 US gal', 'volume', 0.003785411784],
  ])('%s', (text, kind, value) => {
    expect(si(text, kind)).toBe(value)
  })

  it('reads every example it offers and every spelling it lists', () => {
    for (const [kind, units] of Object.entries(unitsOf) as [
      QuantityKind,
      (typeof unitsOf)['mass'],
    ][]) {
      for (const example of examplesOf[kind]) si(example, kind)
      for (const unit of units) {
        const value = si(`3 ${unit.name}`, kind)
        for (const spelling of unit.also) expect(si(`3 ${spelling}`, kind), spelling).toBe(value)
      }
    }
  })
})

describe('what cannot be read', () => {
  it.each<[string, QuantityKind, string, RegExp]>([
    ['an empty text', 'length', '', /Nothing is written/],
    ['blanks', 'length', ' \t', /Nothing is written/],
    ['an unknown unit', 'length', '12 bananas', /"bananas"/],
    ['a unit of another kind', 'length', '5 kg', /"kg".*not a unit of length/],
    ['no number', 'length', 'two inches', /does not start with a number/],
    ['Infinity', 'length', 'Infinity', /does not start with a number/],
    ['NaN', 'length', 'NaN mm', /does not start with a number/],
    ['a power of ten', 'length', '1e999 mm', /powers of ten/],
    ['a comma with two readings', 'length', '1,000 mm', /two ways/],
    ['commas that mark nothing', 'length', '1,00,000 mm', /not a number/],
    ['division by nothing', 'length', '1/0 in', /divides by nothing/],
    ['a fraction over one', 'length', '2 9/8 in', /fraction of one or more/],
    ['two systems', 'length', '5 ft 3 mm', /mm does not go after ft/],
    ['parts the wrong way round', 'length', '2 in 5 ft', /ft does not go after in/],
    ['a range', 'length', '2–3 mm', /range/],
    ['degrees of neither scale', 'temperature', '800°', /which degrees/],
    ['temperatures added', 'temperature', '2 K 3 °C', /does not go after/],
    ['a proportion', 'ratio', '1:3', /two ways/],
    ['a pitch of nothing', 'twist', '0 mm pitch', /no twist/],
    ['minutes as metres', 'time', '5 m', /"m".*not a unit of time/],
    ['a very long text', 'length', '1'.repeat(5000) + ' mm', /5006|5003/],
  ])('%s', (_, kind, text, what) => {
    const problem = problemOf(text, kind)
    expect(problem.what).toMatch(what)
    expect(problem.why.length).toBeGreaterThan(10)
    expect(problem.try.length).toBeGreaterThan(0)
    expect(problem.what.length).toBeLessThan(200)
  })

  it('offers cures that are read, and differ where there were two readings', () => {
    const cures = problemOf('1,000 mm', 'length').try.map((text) => si(text, 'length'))
    expect(cures).toEqual([1, 0.001])
  })

  it('never throws and never lets a number through that is not finite', () => {
    const bits = fc.constantFrom(...'0123456789 .,/-\'"°½eE%:mMinftlbzKFC()+^²\u2009'.split(''))
    const text = fc.oneof(fc.string({ maxLength: 100 }), fc.string({ unit: bits, maxLength: 90 }))
    const kind = fc.constantFrom(...(Object.keys(unitsOf) as QuantityKind[]))
    fc.assert(
      fc.property(text, kind, (written, k) => {
        const { ok, problems } = readQuantity(written, k)
        if (ok) return Number.isFinite(ok.si) && ok.text === written
        return problems.every((p) => p.what !== '' && p.why !== '' && p.try.length > 0)
      }),
      { seed: 34, numRuns: 3000 },
    )
  })
})
