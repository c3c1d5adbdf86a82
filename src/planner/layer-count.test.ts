import { describe, expect, it } from 'vitest'
import { countRestacks } from './layer-count.ts'

/** Layers after each restack, trade.md's worked table: N' = nN − (n−1) where outsides are alike. */
function merged(
  sheets: number,
  pieces: number[],
  lay: 'straight' | 'folded' = 'straight',
  between?: 'like' | 'other',
) {
  const steps = countRestacks(
    sheets,
    pieces.map((n) => ({ pieces: n, lay, between })),
  )
  return (steps.ok ?? []).map((s) => s.merged)
}

describe("layers through restacks (worked by hand from N' = nN − (n−1))", () => {
  it('15 → ×3 → ×4 is 43, then 169; 180 as laid', () => {
    expect(merged(15, [3, 4])).toEqual([15, 43, 169])
    expect(
      countRestacks(15, [
        { pieces: 3, lay: 'straight' },
        { pieces: 4, lay: 'straight' },
      ]).ok?.at(-1)?.laid,
    ).toBe(180)
  })
  it.each([
    [5, [3, 3, 3, 3], [5, 13, 37, 109, 325], 405],
    [11, [4], [11, 41], 44],
    [11, [4, 4, 4], [11, 41, 161, 641], 704],
    [15, [2, 2, 2, 2], [15, 29, 57, 113, 225], 240],
  ])('%i sheets restacked %j', (sheets, pieces, counts, laid) => {
    expect(merged(sheets, pieces)).toEqual(counts)
    const all = countRestacks(
      sheets,
      pieces.map((n) => ({ pieces: n, lay: 'straight' as const })),
    )
    expect(all.ok?.at(-1)?.laid).toBe(laid)
  })
  it('9 folded five times', () =>
    expect(merged(9, [2, 2, 2, 2, 2], 'folded')).toEqual([9, 17, 33, 65, 129, 257]))
  it('an even stack folded merges: 12 → 23 → 45 → 89', () =>
    expect(merged(12, [2, 2, 2], 'folded')).toEqual([12, 23, 45, 89]))
  it('an even stack the same way up does not: 12 → 24 → 48 → 96', () =>
    expect(merged(12, [2, 2, 2])).toEqual([12, 24, 48, 96]))
  it('a sheet of the other steel between: 13 → 69 → 349', () =>
    expect(merged(13, [5, 5], 'straight', 'other')).toEqual([13, 69, 349]))
  it('more layers than atoms is a problem, not a crash', () => {
    const steps = countRestacks(
      2000,
      Array.from({ length: 5 }, () => ({ pieces: 1000, lay: 'straight' as const })),
    )
    expect(steps.problems?.[0].what).toContain('layers')
  })
})
