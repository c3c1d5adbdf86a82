/** A grade name as it is compared: no case, spaces or hyphens, no name of a standard in front. */
export function plainName(name: string): string {
  return name
    .normalize('NFKC')
    .toLowerCase()
    .trim()
    .replace(/^(?:aisi|sae|astm|din|en|uns|w\.?\s?-?nr\.?)[\s:-]+/, '')
    .replace(/[\s_/-]/g, '')
}

/** The names closest in spelling, best first; none if nothing is close. */
export function nearest(name: string, among: readonly string[], most: number): string[] {
  const wanted = plainName(name)
  return among
    .map((candidate) => ({ candidate, slips: slips(wanted, plainName(candidate)) }))
    .filter(({ candidate, slips }) => slips <= Math.max(1, Math.floor(candidate.length / 3)))
    .sort((a, b) => a.slips - b.slips)
    .slice(0, most)
    .map(({ candidate }) => candidate)
}

/**
 * How many slips of the pen lie between two words: a letter wrong, missing, extra, or two swapped
 * (optimal string alignment distance).
 */
function slips(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)]
  const at = (i: number, j: number) => rows[i]?.[j] ?? 0
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    rows.push(row)
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1
      let best = Math.min(at(i - 1, j) + 1, at(i, j - 1) + 1, at(i - 1, j - 1) + same)
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]
      if (swapped) best = Math.min(best, at(i - 2, j - 2) + 1)
      row.push(best)
    }
  }
  return at(a.length, b.length)
}
