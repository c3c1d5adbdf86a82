import type { Language } from './language.ts'

/** Languages that write a comma where English writes the point. */
const COMMA: ReadonlySet<Language> = new Set(['de'])

/** What stands before the decimals in a language. */
export function decimalMark(language: Language): '.' | ',' {
  return COMMA.has(language) ? ',' : '.'
}

/** Numbers of steels by EN 10027-2 have a point that is none of a decimal: 1.2842. */
const DECIMAL = /(?<![\d.,])(?!1\.\d{4}(?!\d))(\d[\d\u2009\u202f]*)\.(?=\d+(?![\d.]))/g

/** A text with the decimals a language writes: `3.5 mm` is `3,5 mm` in German. */
export function withDecimalsOf(language: Language, text: string): string {
  return COMMA.has(language) ? text.replace(DECIMAL, '$1,') : text
}

/**
 * What was typed in a language, as every language and the job file read it: in German one comma in a
 * number is the decimal mark, whatever follows it. A point is read as well.
 */
export function plainDecimals(language: Language, text: string): string {
  return COMMA.has(language) ? text.replace(/(?<![\d.,])(\d*),(?=\d+(?![\d.,]))/g, '$1.') : text
}
