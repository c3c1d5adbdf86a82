import { useDesk, useWords } from '#desk'
import { decimalMark } from '#words'
import { type PlotTable, cellOf, csvOf } from './plot-table.ts'

/** The figures behind a plot: as a table to open, and as a file. */
export function PlotData({
  table,
  caption,
}: {
  readonly table: PlotTable
  readonly caption: string
}) {
  const words = useWords()
  const mark = decimalMark(useDesk((desk) => desk.language))
  return (
    <details className="plot-data">
      <summary className="note soft">
        {words.heatsSheet.table}
        <span className="hidden">: {caption}</span>
      </summary>
      <button
        type="button"
        className="word note"
        onClick={() => saveCsv(table.name, csvOf(table, mark))}
      >
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
                    {cellOf(cell, mark)}
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

function saveCsv(name: string, text: string): void {
  // The mark tells spreadsheets that the text is UTF-8.
  const file = new Blob(['\uFEFF', text], { type: 'text/csv' })
  const link = document.createElement('a')
  link.href = URL.createObjectURL(file)
  link.download = `${name}.csv`
  link.click()
  URL.revokeObjectURL(link.href)
}
