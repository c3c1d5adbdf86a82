import type { Composition } from '#steel'
import type { SourceKey, Standing } from '#sources'
import tables from './tempering-tables.json' with { type: 'json' }

/** One published table: HRC by temperature (rows) and time (columns). */
export interface TemperingTable {
  readonly steel: string
  /** The paper or maker the figures come from. */
  readonly paper: string
  readonly source: SourceKey
  readonly standing: Standing
  readonly composition: Composition
  readonly asQuenched: number | null
  /** HRC either way. */
  readonly scatter: number
  readonly celsius: readonly number[]
  readonly seconds: readonly number[]
  readonly hrc: readonly (readonly (number | null)[])[]
}

export const temperingTables = tables as readonly TemperingTable[]

/**
 * Hollomon and Jaffe's constant, log10 hours, by carbon: fitted to their own data, .31 C 16.1,
 * .56 15.7, .74 15.1, .89 15.0, 1.15 14.5 (RAIIPA, computed). Good to a few parts in ten.
 */
export function hollomonConstant(carbon: number): number {
  return 16.7 - 1.9 * Math.min(Math.max(carbon || 0, 0.1), 1.3)
}

/** Hollomon-Jaffe parameter T (c + log10 hours). Temperature K, time s. */
export function hollomon(temperature: number, seconds: number, constant = 20): number {
  return temperature * (constant + Math.log10(Math.max(seconds, 1e-3) / 3600))
}

/** The temperature (K) that tempers as far in `toSeconds` as this one does in `seconds`. */
export function equalTemper(
  temperature: number,
  seconds: number,
  toSeconds: number,
  constant = 20,
): number {
  return (
    hollomon(temperature, seconds, constant) /
    (constant + Math.log10(Math.max(toSeconds, 1e-3) / 3600))
  )
}

export interface Reading {
  readonly hrc: number
  /** False where the temper asked lies beyond the table. */
  readonly inside: boolean
}

/** HRC of a table at a temper (K, s): between its rows and columns, time carried by Hollomon-Jaffe. */
export function readTable(table: TemperingTable, temperature: number, seconds: number): Reading {
  const constant = hollomonConstant(table.composition.C ?? 0.5)
  const times = table.seconds
  const first = times[0]!
  const last = times[times.length - 1]!
  if (seconds < first || seconds > last) {
    // Carried to the nearest column of the table: equal parameter, equal hardness.
    const to = seconds < first ? first : last
    return readColumns(table, equalTemper(temperature, seconds, to, constant), to)
  }
  return readColumns(table, temperature, seconds)
}

function readColumns(table: TemperingTable, temperature: number, seconds: number): Reading {
  const celsius = temperature - 273.15
  const rows = table.celsius
  const n = rows.length
  if (celsius < rows[0]!) {
    const cold = table.asQuenched ?? readRow(table, 0, seconds)
    const f = Math.min(Math.max((celsius - 20) / (rows[0]! - 20), 0), 1)
    return { hrc: cold + f * (readRow(table, 0, seconds) - cold), inside: true }
  }
  for (let i = 1; i < n; i++) {
    if (celsius > rows[i]!) continue
    const f = (celsius - rows[i - 1]!) / (rows[i]! - rows[i - 1]!)
    const a = readRow(table, i - 1, seconds)
    return { hrc: a + f * (readRow(table, i, seconds) - a), inside: true }
  }
  return { hrc: readRow(table, n - 1, seconds), inside: celsius <= rows[n - 1]! + 1e-6 }
}

/** Along one row, straight in the logarithm of time; blanks are bridged. */
function readRow(table: TemperingTable, row: number, seconds: number): number {
  const cells = table.hrc[row]!
  let before: readonly [number, number] | undefined
  for (let j = 0; j < cells.length; j++) {
    const hrc = cells[j]
    if (hrc === null || hrc === undefined) continue
    const x = Math.log10(table.seconds[j]!)
    const at = Math.log10(seconds)
    if (at <= x + 1e-12) {
      if (before === undefined) return hrc
      const f = (at - before[0]) / (x - before[0])
      return before[1] + f * (hrc - before[1])
    }
    before = [x, hrc]
  }
  return before === undefined ? 20 : before[1]
}
