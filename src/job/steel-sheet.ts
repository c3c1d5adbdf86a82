import type { Result } from '#problem'
import { type Figure, cite } from '#sources'
import { type Grade, densityOf, findGrade, grades } from '#steel'

/** A grade as a page: every figure in words, with where it comes from. */
export interface SteelSheet {
  readonly name: string
  readonly aliases: readonly string[]
  readonly standard: string
  readonly etch: string
  readonly density: string
  /** The analysis on one line. */
  readonly analysis: string
  readonly figures: readonly {
    readonly what: string
    readonly value: string
    readonly source: string
  }[]
  readonly notes: readonly string[]
}

export function steelSheets(): readonly SteelSheet[] {
  return grades.map(sheetOf)
}

/** One grade by its name or an alias; an unknown name comes back with the nearest ones. */
export function steelSheet(name: string, own: readonly Grade[] = []): Result<SteelSheet> {
  const grade = findGrade(name, own)
  return grade.problems ? grade : { ok: sheetOf(grade.ok) }
}

function sheetOf(grade: Grade): SteelSheet {
  const density = densityOf(grade)
  const gcc = `${(density.value / 1000).toFixed(3)} g/cm³`
  const row = (what: string, figure: Figure) => ({
    what,
    value: valueOf(figure),
    source: cite(figure),
  })
  const figures = [
    ...Object.entries(grade.composition).map(([element, figure]) => row(element, figure)),
    ...(grade.slag ? [row('slag', grade.slag)] : []),
    ...Object.entries(grade.forging ?? {}).map(([what, figure]) => row(`forging, ${what}`, figure)),
    ...(grade.austenitise ? [row('austenitise', grade.austenitise)] : []),
    ...(grade.quench
      ? [{ what: 'quench', value: grade.quench.text, source: cite(grade.quench) }]
      : []),
    ...(grade.asQuenched ? [row('as quenched', grade.asQuenched)] : []),
    ...(grade.nonmagnetic ? [row('non-magnetic at', grade.nonmagnetic)] : []),
    { what: 'density', value: gcc, source: cite(density) },
    { what: 'after the acid', value: grade.etch.class, source: cite(grade.etch) },
  ]
  const analysis = Object.entries(grade.composition)
    .map(([element, figure]) => `${element} ${figure.value}`)
    .join('  ')
  return {
    name: grade.name,
    aliases: grade.aliases,
    standard: grade.standard,
    etch: grade.etch.class,
    density: gcc,
    analysis,
    figures,
    notes: grade.notes ?? [],
  }
}

function valueOf({ value, range, unit }: Figure): string {
  return range ? `${value} (${range[0]} to ${range[1]}) ${unit}` : `${value} ${unit}`
}
