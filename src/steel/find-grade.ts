import { type Result, failed, ok } from '#problem'
import type { Grade } from './grade.ts'
import { grades } from './grades.ts'
import { nearest, plainName } from './nearest-name.ts'

/**
 * The grade of that name or alias; case, spaces and `AISI` in front do not matter. The user's own
 * grades come first. A name that is only near another's is a problem that names it: whether like is
 * good enough is for the smith to say.
 */
export function findGrade(name: string, own: readonly Grade[] = []): Result<Grade> {
  const wanted = plainName(name)
  const known = [...own, ...grades]
  const found = known.find((g) => [g.name, ...g.aliases].some((n) => plainName(n) === wanted))
  if (found) return ok(found)
  const like = known.filter((g) => g.near?.some((n) => plainName(n) === wanted))
  if (like.length > 0) {
    const names = like.map((g) => g.name)
    return failed({
      at: '',
      what: `"${name}" is not among the steels; ${names.join(' and ')} is near it.`,
      why: 'Grades of two standards that are near have different limits.',
      try: names,
    })
  }
  return failed({
    at: '',
    what:
      name.trim() === '' ? 'No steel is named.' : `"${name.slice(0, 40)}" is not among the steels.`,
    why: 'A steel is known by its grade; one of your own is added to the job in the same form.',
    try: close(name, known),
  })
}

function close(name: string, known: readonly Grade[]): string[] {
  const owner = new Map(
    known.flatMap((g) => [g.name, ...g.aliases].map((n) => [n, g.name] as const)),
  )
  const names = nearest(name, [...owner.keys()], 6).map((n) => owner.get(n) ?? n)
  const distinct = [...new Set(names)].slice(0, 3)
  return distinct.length > 0 ? distinct : [`one of: ${known.map((g) => g.name).join(', ')}`]
}
