import { type QuantityKind, type UnitSystem, printAsRead, reexpress, systemOf } from '#units'
import { type Language, said, withDecimalsOf } from '#words'

/** With the decimals of the language, and the thin space the face has, not the narrow one. */
export const setIn = (language: Language, text: string) =>
  withDecimalsOf(language, text).replaceAll('\u202f', '\u2009')

/** Sizes of fields and rows. */
export interface Express {
  /**
   * What was typed, in the units chosen: as typed where it is in them already, else as it is read in
   * them. What was typed stays in the job; nothing is rounded there.
   */
  typed(text: string, kind: QuantityKind): string
  /** What was worked out, SI. */
  solved(si: number, kind: QuantityKind): string
}

export function expressIn(units: UnitSystem, language: Language): Express {
  const set = (text: string) => setIn(language, said(text, language).text)
  return {
    typed: (text, kind) => {
      const system = systemOf(text, kind)
      return set(
        system === undefined || system === units ? text.trim() : reexpress(text, kind, units),
      )
    },
    solved: (si, kind) => set(printAsRead(si, kind, units)),
  }
}
