import { printQuantity } from '#units'
import type { Say } from './say.ts'

const NUMBER = '\\d[\\d\\u202f]*(?:\\.\\d+)?'
const UNIT = '(mm²|cm²|cm³|mm|µm|m|°C|kg|g|kN|(?:per|je) mm)(?![\\p{L}\\d²³·/])'
/** Between the numbers of one unit, in English and in German. */
const BETWEEN = '(?: mm × | × | to | and | or | bis | und | oder )'
/** What stands in quotes is a name, or was typed: it stays. */
const QUANTITY = new RegExp(
  `"[^"]*"|“[^”]*”|„[^“]*“|(?<![\\p{L}\\d./])((?:${NUMBER}${BETWEEN})*${NUMBER}) ${UNIT}`,
  'gu',
)
/** A difference of temperature is no temperature: 50 °C more is not 122 °F more. */
const DIFFERENCE =
  /^ (?:(?:or more |oder mehr )?(?:below|above|under|over|unter|über)|more|less|hotter|colder|cooler|higher|lower|mehr|weniger|heißer|kälter|kühler|höher|tiefer|darunter|darüber)(?!\p{L})/u

const SQUARE_INCH = 0.0254 ** 2
const CUBIC_INCH = 0.0254 ** 3

/**
 * A sentence of the account, which speaks metric, in the units of the card and to the digits a rule
 * or a pyrometer can be read to. Two figures that differ in the sentence never come out alike: what
 * is too small by a hair is told to the hair.
 */
export function retell(sentence: string, say: Say): string {
  const alike = clashes(sentence, say)
  return sentence.replace(
    QUANTITY,
    (met, numbers: string | undefined, unit: string | undefined, at: number) => {
      if (numbers === undefined || unit === undefined) return met
      if (unit === '°C' && DIFFERENCE.test(sentence.slice(at + met.length)))
        return difference(met, numbers, say)
      const print = printer(unit, say)
      if (!print) return met
      const each = numbers
        .replace(/ mm\b/g, '')
        .replace(new RegExp(NUMBER, 'g'), (number) =>
          (alike.has(`${number} ${unit}`) ? print.exactly : print.number)(valueOf(number)),
        )
      const told = `${each} ${print.unit}`
      return say.units === 'both' ? `${met} (${told})` : told
    },
  )
}

const valueOf = (number: string) => Number(number.replaceAll('\u202f', ''))

/** Figures of the sentence that would read like another, different one. */
function clashes(sentence: string, say: Say): ReadonlySet<string> {
  const readings = new Map<string, Set<string>>()
  for (const [, numbers, unit] of sentence.matchAll(QUANTITY)) {
    const print = unit === undefined ? undefined : printer(unit, say)
    if (numbers === undefined || !print) continue
    for (const [number] of numbers.matchAll(new RegExp(NUMBER, 'g'))) {
      const reading = `${print.number(valueOf(number))} ${print.unit}`
      const same = readings.get(reading) ?? new Set()
      readings.set(reading, same.add(`${number} ${unit}`))
    }
  }
  return new Set([...readings.values()].flatMap((same) => (same.size > 1 ? [...same] : [])))
}

interface Printer {
  readonly unit: string
  number(this: void, value: number): string
  /** Where the figures of a shop would hide a difference. */
  exactly(this: void, value: number): string
}

function printer(unit: string, say: Say): Printer | undefined {
  if (say.units === 'metric') {
    if (unit === 'mm') return { unit, number: readable, exactly: String }
    return unit === '°C' ? { unit, number: toNearestFive, exactly: String } : undefined
  }
  const inch = say.units === 'both' ? say.second : say
  if (!inch) return undefined
  const bare = (text: string) => text.replace(/ [^ ]*$/, '')
  const length = (metres: number): Printer => ({
    unit: 'in',
    number: (value) => bare(inch.length(value * metres)),
    exactly: (value) =>
      bare(printQuantity(value * metres, 'length', { unit: 'in', digits: 4 })).replace(
        /\.?0+$/,
        '',
      ),
  })
  const scaled = (to: string, factor: number): Printer => ({
    unit: to,
    number: (value) => short(value * factor),
    exactly: (value) => String(Number((value * factor).toPrecision(5))),
  })
  switch (unit) {
    case 'mm':
      return length(0.001)
    case 'µm':
      return length(1e-6)
    case 'm':
      return scaled('ft', 1 / 0.3048)
    case 'mm²':
      return scaled('in²', 1e-6 / SQUARE_INCH)
    case 'cm²':
      return scaled('in²', 1e-4 / SQUARE_INCH)
    case 'cm³':
      return scaled('in³', 1e-6 / CUBIC_INCH)
    case '°C':
      return {
        unit: '°F',
        number: (c) => bare(inch.temperature(c + 273.15)),
        exactly: (c) => String(Math.round(c * 1.8 + 32)),
      }
    case 'kg':
      return scaled('lb', 1 / 0.45359237)
    case 'g':
      return scaled('oz', 1 / 28.349523125)
    case 'kN':
      return {
        ...scaled('ton', 1 / 8.896443),
        number: (kN) => bare(inch.force(kN * 1000)),
      }
    default:
      return {
        ...scaled(unit.replace('mm', unit.startsWith('je') ? 'Zoll' : 'inch'), 25.4),
        number: (perMm) => inch.lines(perMm * 1000).replace(/ .*/, ''),
      }
  }
}

/** Never finer than a hundredth of a millimetre; what was given coarser stays as it is. */
function readable(mm: number): string {
  const places = mm >= 100 ? 0 : mm >= 10 ? 1 : 2
  return String(Number(mm.toFixed(places)) || Number(mm.toPrecision(2)))
}

/** As a fire is read. */
const toNearestFive = (c: number) => String(Math.round(c / 5) * 5)

const short = (value: number) => String(Number(value.toPrecision(3)))

function difference(met: string, numbers: string, say: Say): string {
  if (say.units === 'metric' || /[^\d.]/.test(numbers)) return met
  const fahrenheit = `${Math.round(Number(numbers) * 1.8)} °F`
  return say.units === 'both' ? `${met} (${fahrenheit})` : fahrenheit
}
