import { printAsRead } from '#units'

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
      kg >= 9.9995 ? `${kg.toFixed(2)} kg` : `${(kg * 1000).toFixed(kg < 0.0995 ? 1 : 0)} g`,
    temperature: (K) => `${Math.round(K - 273.15)} °C`,
    force: (N) => `${plain(N / 1e3)} kN`,
    lines: (perMetre) => `${(perMetre / 1000).toFixed(2)} per mm`,
    units: 'metric',
  }
}

function inchSay(): Say {
  const inch = (m: number) => printAsRead(m, 'length', 'inch').replace(/ in$/, '')
  return {
    length: (m) => `${inch(m)} in`,
    size: ({ length, width, height }) => `${inch(width)} × ${inch(height)} × ${inch(length)} in`,
    block: ({ length, width, height }) => `${inch(length)} × ${inch(width)} × ${inch(height)} in`,
    mass: (kg) => printAsRead(kg, 'mass', 'inch'),
    temperature: (K) => printAsRead(K, 'temperature', 'inch'),
    force: (N) => `${plain(N / 8896.443)} ton`,
    lines: (perMetre) => printAsRead(perMetre, 'lines', 'inch'),
    units: 'inch',
  }
}

/** Two figures below a hundred, whole numbers above. */
function plain(value: number): string {
  return value >= 99.5 ? String(Math.round(value)) : String(Number(value.toPrecision(2)))
}
