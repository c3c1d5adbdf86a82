import type { Problem } from '#problem'
import { type QuantityKind, examplesOf, nounOf } from './kind.ts'
import { type ExactUnit, kindsWithUnit } from './unit-name.ts'

/** What is wrong with a quantity as written; forms that are read are offered as the cure. */
export function problem(
  kind: QuantityKind,
  what: string,
  why?: string,
  cures?: readonly string[],
): Problem {
  return {
    at: '',
    what,
    why: why ?? `${capital(nounOf[kind])} is written as a number and a unit.`,
    try: cures ?? examplesOf[kind],
  }
}

/** Where a number should start and none does, or one that has two readings or none. */
export function notANumber(
  number: { readonly wrong: string; readonly seen: string },
  rest: string,
  text: string,
  kind: QuantityKind,
): Problem {
  const tail = rest.slice(number.seen.length)
  switch (number.wrong) {
    case 'comma': {
      const asPoint = number.seen.replace(',', '.') + tail
      const asThousands = number.seen.replaceAll(',', '') + tail
      const twoWays = /^\d+,\d+$/.test(number.seen)
      return problem(
        kind,
        twoWays
          ? `"${text}" can be read two ways.`
          : `"${number.seen}" in "${text}" is not a number.`,
        'A comma may mark thousands or decimals.',
        twoWays ? [asThousands, asPoint] : examplesOf[kind],
      )
    }
    case 'zero denominator':
      return problem(
        kind,
        `"${number.seen}" in "${text}" divides by nothing.`,
        'A fraction needs a lower number above zero.',
      )
    case 'improper':
      return problem(
        kind,
        `"${number.seen}" in "${text}" has a fraction of one or more.`,
        'After a whole number the fraction must be less than one.',
      )
    default:
      return problem(
        kind,
        rest === text
          ? `"${text}" does not start with a number.`
          : `"${rest}" in "${text}" does not start with a number.`,
      )
  }
}

/** A bare number where a unit is needed. */
export function noUnit(text: string, kind: QuantityKind): Problem {
  return problem(kind, `"${text}" has no unit.`, 'Without a unit it could mean several things.')
}

/** A number followed by something that is no unit of this kind. */
export function notAUnit(rest: string, text: string, kind: QuantityKind): Problem {
  const word = /^[^\d\s]+/.exec(rest)?.[0] ?? rest
  if (/^e[+-]?\d/i.test(rest))
    return problem(
      kind,
      `"${text}" is not understood: powers of ten are not read.`,
      'Write the number out, or take a larger or smaller unit.',
    )
  if (/^- ?\d/.test(rest)) return problem(kind, `"${text}" is a range; one value is wanted.`)
  if (kind === 'ratio' && /^:\d/.test(rest.replaceAll(' ', '')))
    return problem(
      kind,
      `"${text}" can be read two ways.`,
      '1:3 may be one part in three, or one part to three others.',
      ['1/3', '1/4', '25 %'],
    )
  if (kind === 'temperature' && word === '°')
    return problem(kind, `"${text}" does not say which degrees.`, '°C and °F differ.')
  const others = kindsWithUnit(rest).map((k) => nounOf[k])
  const why =
    others.length > 0
      ? `"${rest}" belongs to ${others.join(' or ')}, not to ${nounOf[kind]}.`
      : undefined
  return problem(
    kind,
    `"${word}" in "${text}" is not a unit of ${nounOf[kind].replace(/^an? /, '')}.`,
    why,
  )
}

/** `5 ft 3 mm`: parts that do not add up to one way of measuring. */
export function cannotFollow(
  before: ExactUnit,
  after: ExactUnit,
  text: string,
  kind: QuantityKind,
): Problem {
  return problem(
    kind,
    `"${text}" is not understood: ${after.name} does not go after ${before.name}.`,
    'Parts are added only when each is of a smaller unit of the same system.',
  )
}

/** A pitch of nothing would be endless turns. */
export function zeroPitch(text: string, kind: QuantityKind): Problem {
  return problem(
    kind,
    `"${text}" is no twist: a turn cannot fit in no length.`,
    'A pitch is the length to one full turn.',
    ['0 per inch', '25 mm pitch'],
  )
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1)
}
