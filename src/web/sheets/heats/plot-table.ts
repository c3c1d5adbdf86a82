import type { Say } from '#report'

type Cell = string | number

/** What a plot was drawn from. */
export interface PlotTable {
  /** Of the file. */
  readonly name: string
  readonly columns: readonly string[]
  readonly rows: readonly (readonly Cell[])[]
}

/** A cell as a language writes it: figures with its decimal mark, and nothing between thousands. */
export function cellOf(value: Cell, mark: '.' | ','): string {
  return typeof value === 'number' ? String(value).replace('.', mark) : value
}

/**
 * The table as a spreadsheet of the language opens it. Where a comma is the decimal mark cells are set
 * apart by semicolons (common practice, no source); else comma-separated values as RFC 4180 has them.
 */
export function csvOf({ columns, rows }: PlotTable, mark: '.' | ','): string {
  const between = mark === ',' ? ';' : ','
  const cell = (value: Cell) => {
    const text = cellOf(value, mark)
    const isOdd = text.includes(between) || /["\r\n]/.test(text)
    return isOdd ? `"${text.replaceAll('"', '""')}"` : text
  }
  return [columns, ...rows].map((row) => row.map(cell).join(between)).join('\r\n') + '\r\n'
}

/** Temperatures as the sheet says them, yet as figures: their unit stands at the head of the column. */
export function degreesIn(say: Say) {
  const degrees = (K: number) => Number.parseInt(say.temperature(K).replace('−', '-'), 10)
  return { unit: say.units === 'inch' ? '°F' : '°C', degrees }
}
