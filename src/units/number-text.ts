import { Fraction, fromDecimal } from './exact.ts'

/** A number found at the start of a text, or why there is none. */
export type NumberText =
  | { readonly value: Fraction; readonly length: number }
  | { readonly wrong: 'none' | 'comma' | 'zero denominator' | 'improper'; readonly seen: string }

/** `2 1/8`, `2-1/8`: a whole number and a fraction. */
const MIXED = /^(\d+)(?: |-)(\d+) ?\/ ?(\d+)/
/** `1/8`, `17/8`. */
const PLAIN_FRACTION = /^(\d+) ?\/ ?(\d+)/
/** Digits with whatever separators; sorted out below. */
const DIGITS = /^(?:\d+(?:[.,]\d+)*|[.,]\d+)/
/** `12 500`: thousands set apart by spaces, unless a fraction follows. */
const SPACED = /^\d{1,3}(?: \d{3})+(?!\d| ?\/)/

/** Reads an unsigned number at the start of a text that `plainText` has put in order. */
export function readNumber(text: string): NumberText {
  const mixed = MIXED.exec(text)
  if (mixed) {
    const [seen, whole = '', top = '', bottom = ''] = mixed
    if (BigInt(bottom) === 0n) return { wrong: 'zero denominator', seen }
    if (BigInt(top) >= BigInt(bottom)) return { wrong: 'improper', seen }
    const value = new Fraction(BigInt(whole), 1n).add(new Fraction(BigInt(top), BigInt(bottom)))
    return { value, length: seen.length }
  }
  const fraction = PLAIN_FRACTION.exec(text)
  if (fraction) {
    const [seen, top = '', bottom = ''] = fraction
    if (BigInt(bottom) === 0n) return { wrong: 'zero denominator', seen }
    return { value: new Fraction(BigInt(top), BigInt(bottom)), length: seen.length }
  }
  const spaced = SPACED.exec(text)?.[0]
  if (spaced !== undefined) {
    const decimals = /^[.,](\d+)/.exec(text.slice(spaced.length))
    return {
      value: fromDecimal(spaced.replaceAll(' ', ''), decimals?.[1] ?? ''),
      length: spaced.length + (decimals?.[0].length ?? 0),
    }
  }
  const seen = DIGITS.exec(text)?.[0]
  if (seen === undefined) return { wrong: 'none', seen: text }
  const value = readSeparated(seen)
  return value ? { value, length: seen.length } : { wrong: 'comma', seen }
}

/** Digits with points and commas; undefined where they can be read two ways or none. */
function readSeparated(seen: string): Fraction | undefined {
  const plain = /^(\d*)\.?(\d*)$/.exec(seen)
  if (plain) return fromDecimal(plain[1] ?? '', plain[2] ?? '')
  // One comma is a decimal comma unless it could as well mark a thousand: 3,5 but not 1,000.
  const comma = /^(\d*),(\d+)$/.exec(seen)
  if (comma) {
    const [, whole = '', decimals = ''] = comma
    if (decimals.length === 3 && /^[1-9]\d{0,2}$/.test(whole)) return undefined
    return fromDecimal(whole, decimals)
  }
  // Two kinds of mark, or the same twice, leave one reading: 1,234.5; 1.234,5; 1,000,000.
  const english = /^(\d{1,3}(?:,\d{3})+)(?:\.(\d+))?$/.exec(seen)
  if (english) return fromDecimal((english[1] ?? '').replaceAll(',', ''), english[2] ?? '')
  const continental = /^(\d{1,3}(?:\.\d{3})+)(?:,(\d+))?$/.exec(seen)
  if (continental)
    return fromDecimal((continental[1] ?? '').replaceAll('.', ''), continental[2] ?? '')
  return undefined
}

/** Typographic marks to the plain ones the reader knows; the meaning stays. */
export function plainText(text: string): string {
  return text
    .replace(/(\d)\s*([\u00bc-\u00be\u2150-\u215e])/g, '$1 $2')
    .replace(/''|[\u2033\u201c\u201d\u02ba]/g, '"')
    .replace(/[\u2032\u2019\u2018\u02b9]/g, "'")
    .replace(/[\u2010-\u2014\u2212]/g, '-')
    .replace(/[\u00ba\u02da]/g, '°')
    .replace(/[\u22c5\u2219\u2022*]/g, '·')
    .normalize('NFKC')
    .replaceAll('\u2044', '/')
    .replace(/\^(?=[23])/g, '')
    .replace(/\s+/g, ' ')
    .trim()
}
