import type { QuantityKind, UnitSystem } from './kind.ts'
import { type Printing, printQuantity } from './printing.ts'
import { readQuantity } from './quantity.ts'

/**
 * Prints a quantity to the figures a rule, a scale or a pyrometer in the shop is read to, in one form
 * wherever it stands: `5 33/64 in`, `0.177 in`, `133 mm`, `1.12 lb`, `2100 °F`. Something that is not
 * finite prints as a dash.
 */
export function printAsRead(si: number, kind: QuantityKind, system: UnitSystem): string {
  if (!Number.isFinite(si)) return '—'
  const read = (system === 'inch' ? inchReading : metricReading)[kind]?.(Math.abs(si))
  if (read === undefined) return printQuantity(si, kind, { system })
  if (typeof read === 'object') return printQuantity(si, kind, read)
  return printQuantity(Math.sign(si) * read, kind, { system })
}

/**
 * What was typed in other units, said in these: as it reads on a rule, with `≈` before it where that is
 * not the very same size. What hundredths of a millimetre hold is the same.
 */
export function reexpress(text: string, kind: QuantityKind, system: UnitSystem): string {
  const typed = readQuantity(text, kind).ok
  if (!typed) return text.trim()
  const { si } = typed
  const isSame = (said: string) => {
    const back = readQuantity(said, kind).ok
    return back !== undefined && Math.abs(back.si - si) <= 1e-9 * Math.abs(si)
  }
  const read = printAsRead(si, kind, system)
  if (isSame(read)) return read
  if (kind === 'length' && system === 'metric') {
    const hundredths = printQuantity(toPlaces(si, 0.001, 2), kind, { unit: 'mm', digits: 2 })
    if (isSame(hundredths)) return hundredths.replace(/\.?0+(?= )/, '')
  }
  return `≈ ${read}`
}

/** How it is printed, or what of it is read, SI. */
type Reading = Readonly<Partial<Record<QuantityKind, (si: number) => Printing | number>>>

const INCH = 0.0254
const POUND = 0.45359237

const inchReading: Reading = {
  length: (m) => inches(m / INCH),
  mass: (kg) => threeFigures(kg, kg >= POUND ? POUND : POUND / 16),
  // Nobody reads a fire to a degree Fahrenheit.
  temperature: (K) => (toNearest((K - 273.15) * 1.8 + 32, 5) - 32) / 1.8 + 273.15,
  lines: (perMetre) => toPlaces(perMetre, 1 / INCH, perMetre * INCH >= 9.95 ? 0 : 1),
  twist: (perMetre) => toPlaces(perMetre, 1 / INCH, 2),
}

const metricReading: Reading = {
  length: (m) => (m < 0.0001 || m >= 10 ? m : threeFigures(m, 0.001)),
  mass: (kg) =>
    kg >= 9.9995
      ? { unit: 'kg', digits: 2 }
      : { unit: 'g', digits: kg < 0.0995 && toPlaces(kg, 0.001, 1) % 0.001 > 1e-9 ? 1 : 0 },
  lines: (perMetre) => toPlaces(perMetre, 1000, 2),
}

/** A fraction farther than this from a thin thing is no name for it: 0.065 in sheet is not 1/16. */
const FRACTION_WITHIN = 0.01
/** From here up a rule is laid on it, and rules are cut in fractions; thinner things go between jaws. */
const BY_RULE = 1 / 4

/** 64ths by the rule; thinner things that no 64th meets in thousandths, foils in two figures. */
function inches(size: number): Printing {
  const fraction = Math.round(size * 64) / 64
  if (size >= BY_RULE || Math.abs(fraction - size) <= FRACTION_WITHIN * size) return { nearest: 64 }
  const digits = size >= 0.0095 ? 3 : Math.min(15, 1 - Math.floor(Math.log10(size)))
  return { unit: 'in', digits }
}

/** Three figures, and never finer than a hundredth of the unit. */
function threeFigures(si: number, unit: number): number {
  const value = si / unit
  return toPlaces(si, unit, value >= 99.95 ? 0 : value >= 9.995 ? 1 : 2)
}

/** A hair up: 1/8 in is 3.175 mm, which binary would round to 3.17. */
function toPlaces(si: number, unit: number, places: number): number {
  return Number((si / unit + 1e-9).toFixed(places)) * unit
}

function toNearest(value: number, step: number): number {
  return Math.round(value / step) * step
}
