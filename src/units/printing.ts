import type { QuantityKind, UnitSystem } from './kind.ts'
import { type ExactUnit, unitNamed } from './unit-name.ts'

/** How a quantity is to be shown; all parts may be left out. */
export interface Printing {
  /** The unit to print in; otherwise one of a handy size. */
  readonly unit?: string
  /** Decimal places; otherwise four significant figures at most. */
  readonly digits?: number
  /** Lengths in inches: the nearest so many-th, as a reduced fraction. */
  readonly nearest?: 16 | 32 | 64
  /** Metric unless said otherwise. */
  readonly system?: UnitSystem
}

const MINUS = '\u2212'
const THIN = '\u202f'

/**
 * Prints a quantity for people: `54 mm`, `2 1/8 in`, `1150 °C`, `5 %`. What it prints,
 * `readQuantity` reads back to within the rounding. Something that is not finite prints as a dash.
 */
export function printQuantity(si: number, kind: QuantityKind, how: Printing = {}): string {
  if (!Number.isFinite(si)) return '—'
  const system = how.system ?? (how.nearest ? 'inch' : 'metric')
  if (kind === 'time' && how.unit === undefined && how.digits === undefined) return printTime(si)
  const unit = unitNamed(how.unit ?? handyUnit(si, kind, system), kind)
  if (kind === 'length' && unit.name === 'in' && how.digits === undefined) {
    const fractions = printFractions(si / 0.0254, how.nearest)
    if (fractions !== undefined) return `${fractions} in`
  }
  if (unit.inverse && si === 0) return '0 per m'
  return joined(printNumber(inUnit(si, unit), how.digits ?? usualDigits(kind)), unit.name)
}

function joined(number: string, unit: string): string {
  return /^[°'"]$/.test(unit) ? number + unit : `${number} ${unit}`
}

/** Nobody reads a furnace to a tenth of a degree. */
function usualDigits(kind: QuantityKind): number | undefined {
  return kind === 'temperature' ? 0 : undefined
}

function inUnit(si: number, unit: ExactUnit): number {
  const factor = unit.exactFactor
  const plain = unit.timesPi ? si / Math.PI : si
  const value = (plain * Number(factor.d)) / Number(factor.n)
  if (unit.inverse) return Number(factor.d) / (si * Number(factor.n))
  return value - unit.exactOffset.valueOf()
}

/** From the size down: the first whose least amount the value reaches. */
type Ladder = readonly (readonly [least: number, unit: string])[]

const POUND_FORCE = 4.4482216152605

const ladders: Record<QuantityKind, { readonly metric: Ladder; readonly inch: Ladder }> = {
  length: {
    metric: [
      [10, 'm'],
      [0.0001, 'mm'],
      [0, 'µm'],
    ],
    inch: [[0, 'in']],
  },
  mass: {
    metric: [
      [1, 'kg'],
      [0, 'g'],
    ],
    inch: [
      [0.45359237, 'lb'],
      [0, 'oz'],
    ],
  },
  temperature: { metric: [[0, '°C']], inch: [[0, '°F']] },
  time: { metric: [[0, 's']], inch: [[0, 's']] },
  angle: { metric: [[0, '°']], inch: [[0, '°']] },
  pressure: {
    metric: [
      [1e6, 'MPa'],
      [1e3, 'kPa'],
      [0, 'Pa'],
    ],
    inch: [
      [6.894757293e7, 'ksi'],
      [0, 'psi'],
    ],
  },
  force: {
    metric: [
      [1e3, 'kN'],
      [0, 'N'],
    ],
    inch: [
      [2000 * POUND_FORCE, 'US ton'],
      [0, 'lbf'],
    ],
  },
  energy: {
    metric: [
      [1e4, 'kJ'],
      [0, 'J'],
    ],
    inch: [[0, 'ft·lbf']],
  },
  lines: { metric: [[0, 'per mm']], inch: [[0, 'per inch']] },
  twist: { metric: [[0, 'mm pitch']], inch: [[0, 'per inch']] },
  ratio: { metric: [[0, '%']], inch: [[0, '%']] },
  money: { metric: [[0, '¤']], inch: [[0, '¤']] },
  speed: { metric: [[0, 'm/s']], inch: [[0, 'ft/s']] },
  area: {
    metric: [
      [1, 'm²'],
      [0.01, 'cm²'],
      [0, 'mm²'],
    ],
    inch: [[0, 'in²']],
  },
  volume: {
    metric: [
      [1, 'm³'],
      [1e-3, 'L'],
      [1e-6, 'cm³'],
      [0, 'mm³'],
    ],
    inch: [[0, 'in³']],
  },
}

function handyUnit(si: number, kind: QuantityKind, system: UnitSystem): string {
  const size = Math.abs(si)
  const ladder = ladders[kind][system]
  return (
    (ladder.find(([least]) => size > 0 && size >= least) ??
      ladder[ladder.length > 1 ? 1 : 0])?.[1] ?? ''
  )
}

/** Four significant figures, whole numbers never cut short, no exponent, a true minus. */
function printNumber(value: number, digits?: number): string {
  const size = Math.abs(value)
  const places = Math.min(
    digits ?? (size === 0 ? 0 : Math.max(0, 3 - Math.floor(Math.log10(size)))),
    15,
  )
  // toFixed goes over to exponents at 1e21; a whole number that large is exact as a BigInt.
  const fixed = size < 1e21 ? size.toFixed(places) : BigInt(size).toString()
  const [whole = '', decimals = ''] = fixed.split('.')
  const kept = digits === undefined ? decimals.replace(/0+$/, '') : decimals
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(?:\d{3})+$)/g, THIN) : whole
  const text = kept === '' ? grouped : `${grouped}.${kept}`
  return value < 0 && /[1-9]/.test(text) ? MINUS + text : text
}

/**
 * Inches in reduced fractions; undefined where the fraction would swallow the value. Unasked, that
 * is over 1 %: a 0.090 in sheet is not called 3/32. Asked for, only what would print as nothing.
 */
function printFractions(inches: number, asked: 16 | 32 | 64 | undefined): string | undefined {
  const nearest = asked ?? 32
  const size = Math.abs(inches)
  const count = Math.round(size * nearest)
  if (size > 0 && (asked ? count === 0 : Math.abs(count / nearest - size) > 0.01 * size))
    return undefined
  if (!Number.isSafeInteger(count)) return undefined
  const whole = Math.floor(count / nearest)
  let top = count % nearest
  let bottom = nearest
  while (top > 0 && top % 2 === 0) {
    top /= 2
    bottom /= 2
  }
  const parts = [whole > 0 || top === 0 ? String(whole) : '', top > 0 ? `${top}/${bottom}` : '']
  return (inches < 0 && count > 0 ? MINUS : '') + parts.filter((p) => p !== '').join(' ')
}

/** Seconds, then minutes and seconds, then hours and minutes. */
function printTime(si: number): string {
  const size = Math.abs(si)
  if (size < 59.95) return `${printNumber(Number(si.toPrecision(3)))} s`
  const sign = si < 0 ? MINUS : ''
  const seconds = Math.round(size)
  if (seconds < 3600) return sign + parts([Math.floor(seconds / 60), 'min'], [seconds % 60, 's'])
  const minutes = Math.round(size / 60)
  return sign + parts([Math.floor(minutes / 60), 'h'], [minutes % 60, 'min'])
}

function parts(...counted: readonly (readonly [number, string])[]): string {
  return counted.flatMap(([n, unit]) => (n > 0 ? [joined(printNumber(n, 0), unit)] : [])).join(' ')
}
