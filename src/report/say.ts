import { printQuantity } from '#units'

/** Which units the card is written in. */
export type CardUnits = 'metric' | 'inch' | 'both'

/** Prints sizes, masses and temperatures the way one card prints them. */
export interface Say {
  length(m: number): string
  /** Width × thickness × length, the order of the columns: what a bar is drawn to, then how long it comes. */
  size(size: { readonly length: number; readonly width: number; readonly height: number }): string
  /** Length × width × thickness, as a finished piece or a block is ordered. */
  block(size: { readonly length: number; readonly width: number; readonly height: number }): string
  mass(kg: number): string
  temperature(K: number): string
  /** N: kilonewtons, or United States tons. */
  force(N: number): string
  lines(perMetre: number): string
  readonly units: CardUnits
  /** Of a card in both: the inch side alone. */
  readonly second?: Say
}

export function sayIn(units: CardUnits): Say {
  const metric = metricSay()
  const inch = inchSay()
  if (units === 'metric') return metric
  if (units === 'inch') return inch
  const both = (key: 'length' | 'mass' | 'temperature' | 'force' | 'lines') => (si: number) =>
    `${metric[key](si)} (${inch[key](si)})`
  return {
    length: both('length'),
    mass: both('mass'),
    temperature: both('temperature'),
    force: both('force'),
    lines: both('lines'),
    size: (size) => `${metric.size(size)} (${inch.size(size)})`,
    block: (size) => `${metric.block(size)} (${inch.block(size)})`,
    units,
    second: inch,
  }
}

function metricSay(): Say {
  const mm = (m: number) => {
    // A hair up: 1/8 in is 3.175 mm, which binary would round to 3.17.
    const value = m * 1000 + 1e-9
    return value.toFixed(value >= 99.95 ? 0 : value >= 9.995 ? 1 : 2)
  }
  return {
    length: (m) => `${mm(m)} mm`,
    size: ({ length, width, height }) => `${mm(width)} × ${mm(height)} × ${mm(length)} mm`,
    block: ({ length, width, height }) => `${mm(length)} × ${mm(width)} × ${mm(height)} mm`,
    mass: (kg) =>
      kg >= 9.9995
        ? `${kg.toFixed(2)} kg`
        : `${spaced((kg * 1000).toFixed(kg < 0.0995 ? 1 : 0))} g`,
    temperature: (K) => `${Math.round(K - 273.15)} °C`,
    force: (N) => `${plain(N / 1e3)} kN`,
    lines: (perMetre) => `${(perMetre / 1000).toFixed(2)} per mm`,
    units: 'metric',
  }
}

/** A fraction further than this from the length is no name for it: 0.065 in sheet is not 1/16. */
const FRACTION_WITHIN = 0.01

/** To the nearest 1/64 in; thin things, which no 64th meets, in thousandths. */
function inchLength(m: number): string {
  const fraction = Math.round((m / 0.0254) * 64) * (0.0254 / 64)
  const how =
    Math.abs(fraction - m) <= FRACTION_WITHIN * m
      ? { nearest: 64 as const }
      : { unit: 'in', digits: 3 }
  return printQuantity(m, 'length', how).replace(/ in$/, '')
}

/** Nobody reads a fire to a degree Fahrenheit. */
function fahrenheit(K: number): number {
  return Math.round((((K - 273.15) * 9) / 5 + 32) / 5) * 5
}

function inchSay(): Say {
  const inch = inchLength
  return {
    length: (m) => `${inch(m)} in`,
    size: ({ length, width, height }) => `${inch(width)} × ${inch(height)} × ${inch(length)} in`,
    block: ({ length, width, height }) => `${inch(length)} × ${inch(width)} × ${inch(height)} in`,
    mass: inchMass,
    temperature: (K) => `${fahrenheit(K)} °F`,
    force: (N) => `${plain(N / 8896.443)} ton`,
    lines: (perMetre) => `${Math.round(perMetre * 0.0254)} per inch`,
    units: 'inch',
  }
}

/** Pounds from one pound up, else ounces; three figures, and never finer than a hundredth of an ounce. */
function inchMass(kg: number): string {
  const [value, unit] = kg >= 0.45359237 ? [kg / 0.45359237, 'lb'] : [kg / 0.028349523125, 'oz']
  return `${value.toFixed(value >= 99.95 ? 0 : value >= 9.995 ? 1 : 2)} ${unit}`
}

/** Two figures below a hundred, whole numbers above. */
function plain(value: number): string {
  return value >= 99.5 ? String(Math.round(value)) : String(Number(value.toPrecision(2)))
}

/** A thin space between thousands. */
function spaced(digits: string): string {
  return digits.replace(/\B(?=(\d{3})+(?!\d))/g, '\u202f')
}
