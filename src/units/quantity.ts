import { type Problem, type Result, failed, ok } from '#problem'
import { Fraction, nearestNumber } from './exact.ts'
import { type QuantityKind, nounOf } from './kind.ts'
import { plainText, readNumber } from './number-text.ts'
import { cannotFollow, noUnit, notANumber, notAUnit, problem, zeroPitch } from './refusal.ts'
import { type ExactUnit, startsWithUnit, unitNamed } from './unit-name.ts'

/** A quantity as someone wrote it and as the program reckons with it. */
export interface Quantity {
  /** In the SI unit of its kind; always finite. */
  readonly si: number
  readonly kind: QuantityKind
  /** Exactly as typed, so that a saved job gives it back. */
  readonly text: string
}

const LONGEST = 80

/**
 * Reads what a person wrote: `2 1/8 in`, `54 mm`, `2300 °F`, `1 h 30 min`. The sum is done in exact
 * fractions and rounded once. `unit` is taken for a bare number; without it a bare number is a
 * problem (a bare ratio or sum of money is not). Negative values are read: the range is the caller's affair.
 */
export function readQuantity(
  text: string,
  kind: QuantityKind,
  opts: { readonly unit?: string } = {},
): Result<Quantity> {
  if (typeof text !== 'string' || text.trim() === '')
    return failed(problem(kind, `Nothing is written where ${nounOf[kind]} is wanted.`))
  if (text.length > LONGEST)
    return failed(
      problem(
        kind,
        `"${text.slice(0, 20)}…" is ${text.length} characters long; ${nounOf[kind]} is not.`,
        `Nothing over ${LONGEST} characters is read.`,
      ),
    )
  const plain = plainText(text)
  const outcome =
    (kind === 'twist' && readTurnsInLength(plain)) || readTerms(plain, text, kind, opts.unit)
  if ('what' in outcome) return failed(outcome)
  return ok({ si: outcome.si, kind, text })
}

interface Reading {
  readonly si: number
}

/** `1 turn in 25 mm`, `pitch 25 mm`: turns and the length they take. */
function readTurnsInLength(plain: string): Reading | undefined {
  const match = /^(?:pitch(?: of)?|(.+?) ?turns?(?: in| per| every| to)) (.*\d.*)$/i.exec(plain)
  if (!match) return undefined
  const turns =
    match[1] === undefined ? { value: new Fraction(1), length: 0 } : readNumber(match[1])
  if ('wrong' in turns || turns.length !== (match[1]?.length ?? 0)) return undefined
  const length = sumTerms(match[2] ?? '', 'length')
  if ('what' in length || length.sum.n === 0n) return undefined
  return { si: nearestNumber(turns.value.div(length.sum)) }
}

function readTerms(
  plain: string,
  text: string,
  kind: QuantityKind,
  unit?: string,
): Reading | Problem {
  const terms = sumTerms(plain, kind, unit, text)
  if ('what' in terms) return terms
  return { si: nearestNumber(terms.sum) * (terms.timesPi ? Math.PI : 1) }
}

interface Sum {
  readonly sum: Fraction
  readonly timesPi: boolean
}

/** Number and unit, and again for `5 ft 2 1/2 in`; the units must come down in size. */
function sumTerms(plain: string, kind: QuantityKind, unit?: string, text = plain): Sum | Problem {
  const sign = /^[+-] ?/.exec(plain)?.[0] ?? ''
  const negative = sign.startsWith('-')
  let rest = plain.slice(sign.length)
  let sum = new Fraction(0)
  let last: ExactUnit | undefined
  do {
    const number = readNumber(rest)
    if ('wrong' in number) return notANumber(number, rest, text, kind)
    rest = rest.slice(number.length).replace(/^(?:-(?=["'a-zµμ°])| )/i, '')
    const found = rest === '' ? bareUnit(kind, unit, last) : startsWithUnit(rest, kind)
    if (found === undefined) return rest === '' ? noUnit(text, kind) : notAUnit(rest, text, kind)
    rest = rest.slice(found.length)
    if (last && !mayFollow(last, found.unit)) return cannotFollow(last, found.unit, text, kind)
    const value = negative ? number.value.neg() : number.value
    if (found.unit.inverse && value.n === 0n) return zeroPitch(text, kind)
    const si = value.add(found.unit.exactOffset).mul(found.unit.exactFactor)
    sum = sum.add(found.unit.inverse ? si.inverse() : si)
    last = found.unit
    rest = rest.replace(/^(?: ?, ?| ?- ?(?=\d)| and | )/, '')
  } while (rest !== '')
  return { sum, timesPi: last.timesPi === true }
}

const ONE: ExactUnit = {
  name: '',
  also: [],
  system: 'both',
  factor: '1',
  exactFactor: new Fraction(1),
  exactOffset: new Fraction(0),
}

function bareUnit(kind: QuantityKind, unit: string | undefined, last: ExactUnit | undefined) {
  if (last) return undefined
  if (unit !== undefined && unit !== '') return { unit: unitNamed(unit, kind), length: 0 }
  return kind === 'ratio' || kind === 'money' ? { unit: ONE, length: 0 } : undefined
}

/** Feet then inches, hours then minutes: smaller, of the same system, and nothing offset. */
function mayFollow(before: ExactUnit, after: ExactUnit): boolean {
  return (
    before.system === after.system &&
    after.exactFactor.lt(before.exactFactor) &&
    before.timesPi === after.timesPi &&
    [before, after].every(
      (u) => !u.inverse && u.offset === undefined && !/\/|per|%|‰|K/.test(u.name),
    )
  )
}
