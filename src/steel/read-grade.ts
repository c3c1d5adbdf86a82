import { type Problem, type Result, ok, within } from '#problem'
import type { Figure } from '#sources'
import { checkForm } from './check-form.ts'
import { type Grade, compositionOf } from './grade.ts'
import { gradeForm } from './grade-form.ts'

/** Reads a grade in the form of the grade files; a field the form does not know is refused. */
export function readGrade(raw: unknown, at: string): Result<Grade> {
  const problems = checkForm(gradeForm, raw)
  if (problems.length > 0) return { problems: within(at, problems) }
  const grade = raw as Grade
  const contrary = contradictions(grade)
  return contrary.length > 0 ? { problems: within(at, contrary) } : ok(grade)
}

/** What no single field shows: values outside their own range, and more than the whole. */
function contradictions(grade: Grade): Problem[] {
  const { composition, forging, slag, austenitise, asQuenched, nonmagnetic, density } = grade
  const figures: readonly (readonly [string, Figure | undefined])[] = [
    ...Object.entries(composition).map(([e, figure]) => [`composition.${e}`, figure] as const),
    ...Object.entries(forging ?? {}).map(([of, figure]) => [`forging.${of}`, figure] as const),
    ...Object.entries({ slag, austenitise, asQuenched, nonmagnetic, density }),
  ]
  const total = Object.values(compositionOf(grade)).reduce((sum, value) => sum + value, 0)
  return [
    ...figures.flatMap(([at, figure]) => (figure ? outside(at, figure) : [])),
    ...(total <= 100
      ? []
      : [
          {
            at: 'composition',
            what: `The composition adds up to over 100 wt%: ${Number(total.toFixed(3))}.`,
            why: 'Each element is a share of the whole, and iron is the rest.',
            try: ['Look for a slip of the point in the largest.'],
          },
        ]),
  ]
}

function outside(at: string, { value, range, unit }: Figure): Problem[] {
  if (!range || (range[0] <= value && value <= range[1])) return []
  return [
    {
      at: `${at}.value`,
      what: `${at}: ${value} ${unit} lies outside its range, ${range[0]} to ${range[1]}.`,
      why: 'What is reckoned with must be within the limits that are printed for it.',
      try: [`${range[0]} to ${range[1]}`],
    },
  ]
}
