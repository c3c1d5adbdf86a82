import { retell, sayIn } from '#report'
import type { UnitSystem } from '#units'
import { type Language, type Told, said, withDecimalsOf } from '#words'

/** A sentence as it is told; foreign where the language chosen has no words for it. */
export type Saying = Told & { readonly isForeign: boolean }

/** A sentence in a language that is ready, its figures in the units. */
export function saidIn(sentence: string, language: Language, units: UnitSystem): Saying {
  const told = said(sentence, language)
  const retold = withDecimalsOf(told.language, retell(told.text, says[units]))
  const text = told.language === 'en' ? retold.replace(QUOTED, '“$1”') : retold
  return { ...told, text, isForeign: told.language !== language }
}

/** Quotes, not marks of inches: those follow a figure. */
const QUOTED = /(?<![\w\d])"([^"]*)"/g

const says = { metric: sayIn('metric'), inch: sayIn('inch') }
