/**
 * What cannot be, said so that it can be mended. Problems stop the work; warnings have the same
 * shape and do not.
 */
export interface Problem {
  /** Where, as a path a person can follow: `bars.main.steps[3].draw-out.height`. */
  readonly at: string
  /** What is wrong, in the smith's words. */
  readonly what: string
  /** Why it is wrong: the figure, law or limit it runs into. */
  readonly why: string
  /** What to try; the first cure is the one most likely wanted. */
  readonly try: readonly string[]
}

/** Either the answer, or everything found wrong with the question. Never both. */
export type Result<T> =
  | { readonly ok: T; readonly problems?: undefined }
  | { readonly ok?: undefined; readonly problems: readonly Problem[] }

export function ok<T>(value: T): Result<T> {
  return { ok: value }
}

export function failed(...problems: readonly Problem[]): { readonly problems: readonly Problem[] } {
  return { problems }
}

/** Every answer in order, or every problem of all of them. */
export function all<T>(results: readonly Result<T>[]): Result<T[]> {
  const problems = results.flatMap((r) => r.problems ?? [])
  return problems.length > 0 ? { problems } : { ok: results.map((r) => r.ok as T) }
}

/** The same problem, told from one level further out: `at` gains the outer place in front. */
export function within(place: string, problems: readonly Problem[]): Problem[] {
  const join = (at: string) =>
    at === '' ? place : at.startsWith('[') ? place + at : `${place}.${at}`
  return problems.map((p) => ({ ...p, at: join(p.at) }))
}
