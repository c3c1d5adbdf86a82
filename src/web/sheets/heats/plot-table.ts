/** What a plot was drawn from. */
export interface PlotTable {
  /** Of the file. */
  readonly name: string
  readonly columns: readonly string[]
  readonly rows: readonly (readonly (string | number)[])[]
}

/** Comma-separated values as RFC 4180 has them. */
export function csvOf({ columns, rows }: PlotTable): string {
  const cell = (value: string | number) => {
    const text = String(value)
    return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
  }
  return [columns, ...rows].map((row) => row.map(cell).join(',')).join('\r\n') + '\r\n'
}
