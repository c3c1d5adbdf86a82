import { useWords } from '#desk'
import { type PlotTable, csvOf } from './plot-table.ts'

/** The figures behind a plot: as a table to open, and as a file. */
export function PlotData({
  table,
  caption,
}: {
  readonly table: PlotTable
  readonly caption: string
}) {
  const words = useWords()
  return (
    <details className="plot-data">
      <summary className="note soft">
        {words.heatsSheet.table}
        <span className="hidden">: {caption}</span>
      </summary>
      <button type="button" className="word note" onClick={() => saveCsv(table)}>
        {words.heatsSheet.csv}
      </button>
      <div className="scrolls" tabIndex={0} role="region" aria-label={caption}>
        <table className="note">
          <thead>
            <tr>
              {table.columns.map((column) => (
                <th key={column} scope="col">
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {table.rows.map((row, i) => (
              <tr key={i}>
                {row.map((cell, k) => (
                  <td key={k} className={typeof cell === 'number' ? 'figure' : ''}>
                    {cell}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  )
}

function saveCsv(table: PlotTable): void {
  // The mark tells spreadsheets that the text is UTF-8.
  const file = new Blob(['\uFEFF', csvOf(table)], { type: 'text/csv' })
  const link = document.createElement('a')
  link.href = URL.createObjectURL(file)
  link.download = `${table.name}.csv`
  link.click()
  URL.revokeObjectURL(link.href)
}
