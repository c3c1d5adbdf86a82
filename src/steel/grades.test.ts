import { readFileSync, readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { isSourceKey } from '#sources'
import {
  brightnessOf,
  compositionOf,
  densityOf,
  elements,
  grades,
  percent,
  readGrade,
} from './index.ts'

const folder = new URL('./grades/', import.meta.url)

/** Every object in a grade that names a source, with its path. */
function sourcedIn(value: unknown, path = ''): [string, { source: string; standing: string }][] {
  if (typeof value !== 'object' || value === null) return []
  const own =
    'source' in value ? [[path, value] as [string, { source: string; standing: string }]] : []
  return [...own, ...Object.entries(value).flatMap(([k, v]) => sourcedIn(v, `${path}.${k}`))]
}

describe('the grades that come with the program', () => {
  it('lists every file once, and there are enough of them', () => {
    const files = readdirSync(folder).map(
      (f) => JSON.parse(readFileSync(new URL(f, folder), 'utf8')) as unknown,
    )
    expect(grades).toHaveLength(files.length)
    for (const file of files) expect(grades).toContainEqual(file)
    expect(grades.length).toBeGreaterThanOrEqual(24)
  })

  it('gives no name or alias to two grades', () => {
    const names = grades.flatMap((g) => [g.name, ...g.aliases].map((n) => n.toLowerCase()))
    expect(names.filter((n, i) => names.indexOf(n) !== i)).toEqual([])
  })

  it.each(grades.map((g) => [g.name, g] as const))('%s is read by the schema', (name, grade) => {
    expect(readGrade(structuredClone(grade), name)).toEqual({ ok: grade })
  })

  it.each(grades.map((g) => [g.name, g] as const))(
    '%s: sources are known and fit the standing',
    (_, grade) => {
      const sourced = sourcedIn(grade)
      expect(sourced.length).toBeGreaterThan(4)
      for (const [path, { source, standing }] of sourced) {
        expect(isSourceKey(source), path).toBe(true)
        expect(standing === 'from memory', path).toBe(source === 'memory')
        expect(standing === 'common practice', path).toBe(source === 'practice')
      }
    },
  )

  it.each(grades.map((g) => [g.name, g] as const))(
    '%s adds up: iron or nickel is most of it',
    (_, grade) => {
      const composition = compositionOf(grade)
      const named = elements.reduce((sum, e) => sum + percent(composition, e), 0)
      const iron = 100 - named
      expect(Math.max(iron, percent(composition, 'Ni'))).toBeGreaterThan(60)
      expect(iron).toBeGreaterThanOrEqual(0)
      expect(percent(composition, 'C')).toBeLessThanOrEqual(1.5)
    },
  )

  it('keeps heats in order: stop below start and most; hardening below forging', () => {
    for (const { name, forging, austenitise } of grades) {
      const most = forging?.max?.value ?? forging?.start?.range?.[1] ?? forging?.start?.value
      if (forging?.stop && most !== undefined) expect(forging.stop.value, name).toBeLessThan(most)
      if (austenitise && most !== undefined) expect(austenitise.value, name).toBeLessThan(most)
    }
  })

  // Analyses of heats that were made and tested under the grade's name: [RAIIPA] for 1045, 1050 and
  // 5160, the certificate in [1084], the disc in [RYE-W2]. Check-analysis allowance 0.03 wt%.
  it.each([
    ['1045', { C: 0.45, Mn: 0.73, Si: 0.17 }],
    ['1050', { C: 0.5, Mn: 0.91 }],
    ['5160', { C: 0.62, Mn: 0.88, Si: 0.22, Cr: 0.79 }],
    ['1084', { C: 0.876, Mn: 0.803, Si: 0.274 }],
    ['W2', { C: 1.0 }],
  ])('a published heat of %s lies within its limits', (name, heat) => {
    const grade = grades.find((g) => g.name === name)!
    for (const [element, value] of Object.entries(heat)) {
      const [low, high] = grade.composition[element as 'C']!.range!
      expect(value, element).toBeGreaterThanOrEqual(low - 0.03)
      expect(value, element).toBeLessThanOrEqual(high + 0.03)
    }
  })

  it('draws nickel steel lighter than the carbon steel it is laid against', () => {
    const light = (name: string) => brightnessOf(grades.find((g) => g.name === name)!)
    for (const dark of ['1075', '1084', '1095', 'W2', 'O1'])
      for (const bright of ['15N20', 'L6', 'Nickel 200'])
        expect(light(bright) - light(dark)).toBeGreaterThan(0.4)
  })
})

describe('the page for people', () => {
  const page = readFileSync(new URL('../../docs/steel.md', import.meta.url), 'utf8')

  it.each(grades.map((g) => [g.name, g] as const))('has a true row for %s', (name, grade) => {
    const row = page.split('\n').find((line) => line.startsWith(`| ${name} |`)) ?? ''
    const cells = row.split('|').map((c) => c.trim())
    expect(cells[2]).toBe(grade.family)
    expect(cells[4]).toBe(Math.round(densityOf(grade).value).toString())
    const sources = new Set(Object.values(grade.composition).map((f) => f.source))
    expect(cells[3]?.split(', ').sort()).toEqual([...sources].sort())
    expect(cells[5]).toBe(grade.etch.class)
  })
})
