/**
 * The words nearest to one that was not found, best first: for "did you mean".
 * Distance is the number of single letters to insert, drop, change or swap (optimal string alignment).
 */
export function nearest(word: string, words: readonly string[], most = 3): string[] {
  const wanted = word.toLowerCase().slice(0, 60)
  return words
    .map((candidate) => ({ candidate, d: distance(wanted, candidate.toLowerCase()) }))
    .filter(({ candidate, d }) => d <= Math.max(2, Math.ceil(candidate.length / 2)))
    .sort((a, b) => a.d - b.d || (a.candidate < b.candidate ? -1 : 1))
    .slice(0, most)
    .map(({ candidate }) => candidate)
}

function distance(a: string, b: string): number {
  let before: number[] = []
  let above = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let j = 1; j <= b.length; j++) {
      const change = above[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1)
      row[j] = Math.min(above[j] + 1, row[j - 1] + 1, change)
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]
      if (swapped) row[j] = Math.min(row[j], before[j - 2] + 1)
    }
    before = above
    above = row
  }
  return above[b.length]
}
