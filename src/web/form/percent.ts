import type { Language } from '#words'

/**
 * Shares as the language writes per cent, but with the decimal point of every other number on the
 * sheet: sizes stand as they are typed.
 */
export function percentIn(
  language: Language,
  options: Intl.NumberFormatOptions = {},
): (share: number) => string {
  const format = new Intl.NumberFormat(language, { style: 'percent', ...options })
  return (share) =>
    format
      .formatToParts(share)
      .map(({ type, value }) => (type === 'decimal' ? '.' : value))
      .join('')
}
