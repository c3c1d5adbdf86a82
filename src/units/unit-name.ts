import { Fraction } from './exact.ts'
import type { QuantityKind } from './kind.ts'
import { plainText } from './number-text.ts'
import { type Unit, unitsOf } from './unit-table.ts'

/** A unit with its factor ready to reckon with. */
export interface ExactUnit extends Unit {
  readonly exactFactor: Fraction
  readonly exactOffset: Fraction
}

interface Spelling {
  readonly text: string
  readonly unit: ExactUnit
}

const cache = new Map<QuantityKind, readonly Spelling[]>()

/** Every spelling of a kind's units, longest first so that `mm` is tried before `m`. */
function spellingsOf(kind: QuantityKind): readonly Spelling[] {
  const known = cache.get(kind)
  if (known) return known
  const spellings = unitsOf[kind].flatMap((u) => {
    const unit = {
      ...u,
      exactFactor: new Fraction(u.factor),
      exactOffset: new Fraction(u.offset ?? '0'),
    }
    return [...new Set([u.name, ...u.also].map(plainText))].map((text) => ({ text, unit }))
  })
  spellings.sort((a, b) => b.text.length - a.text.length)
  cache.set(kind, spellings)
  return spellings
}

/** The unit a text starts with, and how much of the text it took. Case counts only if it must. */
export function startsWithUnit(
  text: string,
  kind: QuantityKind,
): { readonly unit: ExactUnit; readonly length: number } | undefined {
  const spellings = spellingsOf(kind)
  const lower = text.toLowerCase()
  const found =
    spellings.find((s) => text.startsWith(s.text) && ends(text, s.text)) ??
    spellings.find((s) => lower.startsWith(s.text.toLowerCase()) && ends(text, s.text))
  if (!found) return undefined
  const length = found.text.length
  // "in." and "ft." with the full stop of an abbreviation.
  const dot = /[a-z]$/i.test(found.text) && /^\.(?!\d)/.test(text.slice(length)) ? 1 : 0
  return { unit: found.unit, length: length + dot }
}

/** A word that goes on is another word: `min` does not start with `m`. */
function ends(text: string, spelling: string): boolean {
  const next = text.charAt(spelling.length)
  if (/\p{L}/u.test(next) && /\p{L}$/u.test(spelling)) return false
  return !/[/·^²³]/.test(next)
}

/** Units found by name: the program asks for the same few in every sentence it prints. */
const named = new Map<string, ExactUnit>()

/** The unit of that name. Names come from the program, so an unknown one is a fault in it. */
export function unitNamed(name: string, kind: QuantityKind): ExactUnit {
  const key = `${kind} ${name}`
  const known = named.get(key)
  if (known) return known
  const text = plainText(name)
  const found = startsWithUnit(text, kind)
  if (!found || found.length !== text.length) throw new Error(`${name} is no unit of ${kind}`)
  named.set(key, found.unit)
  return found.unit
}

/** The kinds that have a unit spelled so. */
export function kindsWithUnit(text: string): QuantityKind[] {
  return (Object.keys(unitsOf) as QuantityKind[]).filter(
    (kind) => startsWithUnit(text, kind)?.length === text.length,
  )
}
