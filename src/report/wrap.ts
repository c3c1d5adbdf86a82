/** Where a row may break: never between a number and its fraction or unit. */
const BREAK = / (?!\d+\/\d|(?:mm²?|in|g|kg|lb|oz|min|°C|°F|HRC|%)(?![\w°]))/

/** A sentence in rows no wider than asked, each behind the indent. */
export function wrapText(text: string, width: number, indent: string): string[] {
  const rows: string[] = []
  let row = indent
  for (const word of text.split(BREAK)) {
    if (row.length + word.length + 1 > width && row.trim() !== '') {
      rows.push(row)
      row = indent
    }
    row += (row.length > indent.length ? ' ' : '') + word
  }
  return [...rows, row]
}
