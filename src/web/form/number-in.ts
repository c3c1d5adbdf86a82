import type { Language } from '#words'

/**
 * Numbers as a language writes them, but with the point and the thin space of every other number on
 * the sheet: sizes stand as they are typed.
 */
export function numberIn(
  language: Language,
  options: Intl.NumberFormatOptions,
): (value: number) => string {
  const format = new Intl.NumberFormat(language, options)
  if (language === 'en') return (value) => format.format(value)
  const set: Partial<Record<Intl.NumberFormatPartTypes, string>> = { decimal: '.', group: '\u2009' }
  return (value) =>
    format
      .formatToParts(value)
      .map((part) => set[part.type] ?? part.value)
      .join('')
}
