import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { type Grade, findGrade, gradeForm, grades, readGrade } from './index.ts'

const template = grades.find((g) => g.name === '1075')!

/** The template with fields changed; those without a value are left out. */
function draft(change: Record<string, unknown>): unknown {
  const changed = Object.entries({ ...structuredClone(template), ...change })
  return Object.fromEntries(changed.filter(([, value]) => value !== undefined))
}

describe('finding a grade', () => {
  it.each([
    ['1084', '1084'],
    ['AISI 1084', '1084'],
    ['SAE-1084', '1084'],
    ['w2', 'W2'],
    ['15n20', '15N20'],
    ['75Ni8', '15N20'],
    ['1.5634', '15N20'],
    ['100cr6', '52100'],
    ['c 105 u', 'C105U'],
    ['St 37-2', 'S235JR'],
    ['Wrought  Iron', 'wrought iron'],
    ['nickel', 'Nickel 200'],
  ])('%s is %s', (written, name) => {
    expect(findGrade(written).ok?.name).toBe(name)
  })

  it.each([
    ['1O84', '1084'],
    ['15N2O', '15N20'],
    ['80CRV', '80CrV2'],
    ['wrougth iron', 'wrought iron'],
    ['5610', '5160'],
    ['521000', '52100'],
  ])('%s is not found, and %s is what to try first', (written, name) => {
    const { problems } = findGrade(written)
    expect(problems?.[0]?.what).toContain(written)
    expect(problems?.[0]?.try[0]).toBe(name)
  })

  it('does not take a near grade for the same, but names it', () => {
    const { ok, problems } = findGrade('C45')
    expect(ok).toBeUndefined()
    expect(problems?.[0]?.try).toEqual(['1045'])
    expect(problems?.[0]?.what).toMatch(/near/)
  })

  it('lists what there is when nothing is close', () => {
    const cures = findGrade('adamant').problems?.[0]?.try ?? []
    expect(cures).toHaveLength(1)
    for (const { name } of grades) expect(cures[0]).toContain(name)
    expect(findGrade('').problems?.[0]?.what).toBe('No steel is named.')
  })

  it('puts the user’s own grade first', () => {
    const own: Grade = { ...template, name: '1084', standard: 'the bar in the rack' }
    expect(findGrade('1084', [own]).ok).toBe(own)
    expect(findGrade('Rack', [{ ...own, name: 'rack' }]).ok?.name).toBe('rack')
  })
})

describe('a user’s own grade', () => {
  it('is read when it is whole', () => {
    const own = draft({ name: 'keel bolt', aliases: ['Kittiwake bolt'], near: undefined })
    expect(readGrade(own, 'steels[0]').ok?.name).toBe('keel bolt')
  })

  it('is refused with a field that is not known, by name and place', () => {
    const { problems } = readGrade(draft({ austenitize: template.austenitise }), 'steels[0]')
    expect(problems).toHaveLength(1)
    expect(problems?.[0]).toMatchObject({
      at: 'steels[0].austenitize',
      what: '"austenitize" is not a field of a grade.',
      try: ['austenitise'],
    })
  })

  it('is refused with an element that is not one', () => {
    const { problems } = readGrade(draft({ composition: { Mg: template.composition.C } }), 'own')
    expect(problems?.[0]?.at).toBe('own.composition.Mg')
    expect(problems?.[0]?.what).toBe('"Mg" is not a field of composition.')
  })

  const figure = template.composition.C!
  it.each<[string, Record<string, unknown>, string, RegExp]>([
    ['a missing field', { family: undefined }, 'own.family', /missing/],
    [
      'a bare number',
      { composition: { C: 0.8 } },
      'own.composition.C',
      /0\.8 is not a group of values/,
    ],
    [
      'a source not in the bibliography',
      { composition: { C: { ...figure, source: 'hearsay' } } },
      'own.composition.C.source',
      /"hearsay" is not a key of the bibliography/,
    ],
    [
      'another unit',
      { composition: { C: { ...figure, unit: '%' } } },
      'own.composition.C.unit',
      /wt%/,
    ],
    [
      'a value outside its range',
      { composition: { C: { ...figure, value: 0.9 } } },
      'own.composition.C.value',
      /outside its range/,
    ],
    [
      'over a hundred per cent',
      {
        composition: {
          Ni: { ...figure, value: 60, range: [0, 100] },
          Cr: { ...figure, value: 60, range: [0, 100] },
        },
      },
      'own.composition',
      /over 100/,
    ],
    [
      'degrees Fahrenheit',
      { austenitise: { ...template.austenitise!, value: 1500, range: [1475, 1700] } },
      'own.austenitise.range.1',
      /1600/,
    ],
    [
      'not a number',
      { composition: { C: { ...figure, value: NaN } } },
      'own.composition.C.value',
      /NaN/,
    ],
    ['an unknown family', { family: 'damask' }, 'own.family', /carbon/],
  ])('is refused with %s', (_, change, at, what) => {
    const { ok, problems } = readGrade(draft(change), 'own')
    expect(ok).toBeUndefined()
    expect(problems?.map((p) => p.at)).toContain(at)
    expect(problems?.find((p) => p.at === at)?.what).toMatch(what)
    for (const problem of problems ?? []) expect(problem.try.length).toBeGreaterThan(0)
  })

  it.each([null, undefined, 7, 'steel', []])('is refused when it is %o', (raw) => {
    expect(readGrade(raw, 'own').problems?.[0]?.at).toMatch(/^own/)
  })
})

describe('the form of a grade', () => {
  // A second reader of JSON Schema, which knows nothing of ours.
  const published = z.fromJSONSchema(structuredClone(gradeForm) as never)

  it('is JSON Schema by which another reader takes and refuses the same values', () => {
    const strange = [undefined, null, 0, -1, 1e9, NaN, '', 'x'.repeat(60), [], {}, [1, 2], true]
    const grade = template as unknown as Record<string, unknown>
    expect(published.safeParse(grade).success).toBe(true)
    let refused = 0
    for (const path of pathsIn(grade))
      for (const value of strange) {
        const raw = withValue(grade, path, value)
        const { problems } = readGrade(raw, 'own')
        // What no single field shows is beyond JSON Schema.
        const ours = problems?.some(({ what }) => !/its range|over 100/.test(what)) ?? false
        expect(ours, `${path.join('.')} ${String(value)}`).toBe(!published.safeParse(raw).success)
        refused += Number(ours)
      }
    expect(refused).toBeGreaterThan(300)
  })
})

function pathsIn(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [path]
  return [
    path,
    ...Object.keys(value).flatMap((key) => pathsIn((value as never)[key], [...path, key])),
  ]
}

function withValue(of: unknown, [key, ...rest]: readonly string[], value: unknown): unknown {
  if (key === undefined) return value
  const copy = structuredClone(of) as Record<string, unknown>
  copy[key] = withValue(copy[key], rest, value)
  if (copy[key] === undefined && !Array.isArray(copy)) delete copy[key]
  return copy
}
