import type { Declared } from '#job'
import { type Parameter, type Parameters, isParameter } from '#parameters'

interface Kind {
  readonly title: string
  readonly parameters: Parameters
}

/** Every word of the declarations that a form, a menu or the card shows, as the catalogue spells it. */
export function wordsOf(declared: Declared, kinds: readonly Kind[]): string[] {
  const { operations, patterns, wishes, shop, measured, rates, tolerances, rackItem, cutting } =
    declared
  const groups = [wishes, shop, measured, rates, tolerances, rackItem, cutting]
  const words = [
    ...operations.flatMap(({ name, loses, parameters }) => [
      name,
      ...loses,
      ...inGroup(parameters),
    ]),
    ...patterns.map(({ name }) => name),
    ...kinds.flatMap(({ title, parameters }) => [title, ...inGroup(parameters)]),
    ...groups.flatMap(inGroup),
  ]
  return [...new Set(words.map(spaced))]
}

function inGroup(parameters: Parameters): string[] {
  return Object.entries(parameters).flatMap(([name, parameter]) => [name, ...choicesOf(parameter)])
}

function choicesOf(parameter: Parameter): string[] {
  if (parameter.form === 'choice') return Object.keys(parameter.options)
  if (parameter.form !== 'list') return []
  const { item } = parameter
  return isParameter(item) ? choicesOf(item) : inGroup(item)
}

/** `closeWith` is two words. */
function spaced(word: string): string {
  return /^[A-Z]/.test(word) ? word : word.replace(/[A-Z]/g, (l) => ` ${l.toLowerCase()}`)
}
