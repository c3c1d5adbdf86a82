import { type Language, withDecimalsOf } from '#words'

/**
 * Numbers as all the sheets have them: a thin space between thousands from five digits up, a space
 * before the per cent sign, whole per cents from ten up.
 */
export function numberIn(
  language: Language,
  options: Intl.NumberFormatOptions,
): (value: number) => string {
  const isPercent = options.style === 'percent'
  const format = (digits: number | undefined) =>
    new Intl.NumberFormat('en', {
      ...options,
      maximumFractionDigits: digits,
      useGrouping: 'min2',
    })
  const fine = format(options.maximumFractionDigits)
  // Figures with decimals of their own are never whole ones: the format would refuse to be made.
  const whole = isPercent ? format(0) : fine
  const set: Partial<Record<Intl.NumberFormatPartTypes, string>> = {
    group: '\u2009',
    percentSign: ' %',
    minusSign: '\u2212',
  }
  return (value) => {
    const parts = (isPercent && Math.abs(value) >= 0.0995 ? whole : fine).formatToParts(value)
    return withDecimalsOf(language, parts.map((part) => set[part.type] ?? part.value).join(''))
  }
}
