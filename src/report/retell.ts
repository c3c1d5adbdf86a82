import type { Say } from './say.ts'

const NUMBER = '\\d[\\d\\u202f]*(?:\\.\\d+)?'
const UNIT = '(mm²|mm|°C|kg|g)(?![\\w²³·/])'
const QUANTITY = new RegExp(
  `(?<![\\d./])((?:${NUMBER}(?: mm)?(?: to | × | and | or ))*${NUMBER}) ${UNIT}`,
  'g',
)
/** A difference of temperature is no temperature: 50 °C more is not 122 °F more. */
const DIFFERENCE = /^ (?:or )?(?:more|less|hotter|colder|cooler|higher|lower|above|below)\b/

const SQUARE_INCH = 0.0254 ** 2

/**
 * A sentence of the account, which speaks metric, in the units of the card and to the digits a rule
 * or a pyrometer can be read to.
 */
export function retell(sentence: string, say: Say): string {
  return sentence.replace(QUANTITY, (met, numbers: string, unit: string, at: number) => {
    if (unit === '°C' && DIFFERENCE.test(sentence.slice(at + met.length)))
      return difference(met, numbers, say)
    const told = say.units === 'both' ? [met] : []
    const print = printer(unit, say)
    if (!print) return met
    const each = numbers.replace(/ mm\b/g, '').replace(new RegExp(NUMBER, 'g'), (number) => {
      return print.number(Number(number.replaceAll('\u202f', '')))
    })
    if (say.units === 'metric') return `${each} ${unit}`
    told.push(`${each} ${print.unit}`)
    return told.length > 1 ? `${told[0]} (${told[1]})` : told[0]
  })
}

interface Printer {
  readonly unit: string
  number(value: number): string
}

function printer(unit: string, say: Say): Printer | undefined {
  if (say.units === 'metric') return unit === 'mm' ? { unit, number: readable } : undefined
  const inch = say.units === 'both' ? say.second : say
  if (!inch) return undefined
  const bare = (text: string) => text.replace(/ [^ ]*$/, '')
  switch (unit) {
    case 'mm':
      return { unit: 'in', number: (mm) => bare(inch.length(mm / 1000)) }
    case 'mm²':
      return { unit: 'in²', number: (mm2) => short(mm2 / 1e6 / SQUARE_INCH) }
    case '°C':
      return { unit: '°F', number: (c) => bare(inch.temperature(c + 273.15)) }
    case 'kg':
      return { unit: 'lb', number: (kg) => short(kg / 0.45359237) }
    default:
      return { unit: 'oz', number: (g) => short(g / 28.349523125) }
  }
}

/** Never finer than a hundredth of a millimetre; what was given coarser stays as it is. */
function readable(mm: number): string {
  const places = mm >= 100 ? 0 : mm >= 10 ? 1 : 2
  return String(Number(mm.toFixed(places)) || Number(mm.toPrecision(2)))
}

const short = (value: number) => String(Number(value.toPrecision(3)))

function difference(met: string, numbers: string, say: Say): string {
  if (say.units === 'metric' || /[^\d.]/.test(numbers)) return met
  const fahrenheit = `${Math.round(Number(numbers) * 1.8)} °F`
  return say.units === 'both' ? `${met} (${fahrenheit})` : fahrenheit
}
