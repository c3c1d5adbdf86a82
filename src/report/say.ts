import { printQuantity } from '#units'

/** Which units the card is written in. */
export type CardUnits = 'metric' | 'inch' | 'both'

/** Prints sizes, masses and temperatures the way one card prints them. */
export interface Say {
  length(m: number): string
  /** Width × thickness × length, the order a smith says them in. */
  size(size: { readonly length: number; readonly width: number; readonly height: number }): string
  mass(kg: number): string
  temperature(K: number): string
  lines(perMetre: number): string
  readonly units: CardUnits
}

export function sayIn(units: CardUnits): Say {
  const metric = metricSay()
  const inch = inchSay()
  if (units === 'metric') return metric
  if (units === 'inch') return inch
  const both = (key: 'length' | 'mass' | 'temperature' | 'lines') => (si: number) =>
    `${metric[key](si)} (${inch[key](si)})`
  return {
    length: both('length'),
    mass: both('mass'),
    temperature: both('temperature'),
    lines: both('lines'),
    size: (size) => `${metric.size(size)} (${inch.size(size)})`,
    units,
  }
}

function metricSay(): Say {
  const mm = (m: number) => {
    const value = m * 1000
    return value.toFixed(value >= 99.95 ? 0 : value >= 9.995 ? 1 : 2)
  }
  return {
    length: (m) => `${mm(m)} mm`,
    size: ({ length, width, height }) => `${mm(width)} × ${mm(height)} × ${mm(length)} mm`,
    mass: (kg) =>
      kg >= 9.9995
        ? `${kg.toFixed(2)} kg`
        : `${spaced((kg * 1000).toFixed(kg < 0.0995 ? 1 : 0))} g`,
    temperature: (K) => `${Math.round(K - 273.15)} °C`,
    lines: (perMetre) => `${(perMetre / 1000).toFixed(2)} per mm`,
    units: 'metric',
  }
}

function inchSay(): Say {
  const inch = (m: number) => printQuantity(m, 'length', { nearest: 64 }).replace(/ in$/, '')
  return {
    length: (m) => `${inch(m)} in`,
    size: ({ length, width, height }) => `${inch(width)} × ${inch(height)} × ${inch(length)} in`,
    mass: (kg) => printQuantity(kg, 'mass', { system: 'inch' }),
    temperature: (K) => `${Math.round(((K - 273.15) * 9) / 5 + 32)} °F`,
    lines: (perMetre) => `${Math.round(perMetre * 0.0254)} per inch`,
    units: 'inch',
  }
}

/** A thin space between thousands. */
function spaced(digits: string): string {
  return digits.replace(/\B(?=(\d{3})+(?!\d))/g, '\u202f')
}
