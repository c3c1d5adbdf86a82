import { type Problem, failed } from '#problem'
import type { Billet } from '#billet'

/** The bar in hand, where a step names bars. */
export const THIS = 'this'

/** The names in order of first meeting, the bar in hand left out. */
export function othersIn(names: readonly (string | undefined)[]): readonly string[] {
  return [...new Set(names.filter((name): name is string => name !== undefined && name !== THIS))]
}

/** The bars of a step by name; the bar in hand, if there is one, is called "this". */
export function barsByName(
  before: readonly Billet[],
  others: readonly string[],
): ReadonlyMap<string, Billet> {
  const inHand = before.length > others.length ? [THIS] : []
  return new Map([...inHand, ...others].map((name, i) => [name, before[i]]))
}

/** A step that begins a bar named the bar in hand, or one was left out that it needs. */
export function nothingInHand(at: string): { readonly problems: readonly Problem[] } {
  return failed({
    at,
    what: 'there is no bar in hand here',
    why: `"${THIS}" is the bar in hand, and this step begins a bar`,
    try: ['name the bar that is meant', 'make it the step of a bar that is under way'],
  })
}
