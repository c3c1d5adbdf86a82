import { searchTable } from '../curve.ts'
import type { Warp, WarpKind } from '../warp.ts'

/**
 * Bars laid side by side across y and welded; stacked bars are this between two quarter turns. `widths`: of the bars
 * before, from −y to +y; `grind` off each mated face, or what each bar loses on its two sides. Branch: the bar, 0 … n−1.
 */
export function sideBySide(given: {
  widths: readonly number[]
  grind?: number | readonly { readonly low: number; readonly high: number }[]
}): Warp {
  const { widths, grind = 0 } = given
  const last = widths.length - 1
  const ground = widths.map((_, i) =>
    typeof grind === 'number'
      ? { low: i > 0 ? grind : 0, high: i < last ? grind : 0 }
      : (grind[i] ?? { low: 0, high: 0 }),
  )
  const total = widths.reduce((sum, w, i) => sum + w - ground[i]!.low - ground[i]!.high, 0)
  const edges: number[] = []
  const middles: number[] = []
  let at = -total / 2
  widths.forEach((width, i) => {
    const { low: left, high: right } = ground[i]!
    edges.push(at)
    middles.push(at - left + width / 2)
    at += width - left - right
  })
  return { kind: 'side-by-side', numbers: {}, tables: { edges, middles } }
}

export const sideBySideKind: WarpKind = {
  name: 'side-by-side',
  branches: true,
  pull(g, { x, y, z }, at) {
    const edges = at.table('edges')
    const bar = searchTable(g, edges.table, edges.length, y)
    return { x, y: g.sub(y, g.fetch(at.table('middles').table, bar)), z, branch: bar }
  },
  push(g, { x, y, z, branch }, at) {
    return { x, y: g.add(y, g.fetch(at.table('middles').table, branch!)), z }
  },
  examples: [
    {
      warp: sideBySide({ widths: [0.012, 0.012], grind: 0.0005 }),
      domain: { x: [0, 0.5], y: [-0.0115, 0.0115], z: [-0.006, 0.006] },
    },
    {
      warp: sideBySide({
        widths: [0.012, 0.005, 0.008],
        grind: [
          { low: 0.001, high: 0.0005 },
          { low: 0, high: 0 },
          { low: 0.0005, high: 0 },
        ],
      }),
      domain: { x: [0, 0.5], y: [-0.0115, 0.0115], z: [-0.006, 0.006] },
    },
    {
      warp: sideBySide({ widths: [0.01, 0.006, 0.006, 0.008, 0.006, 0.006, 0.01] }),
      domain: { x: [0, 0.5], y: [-0.026, 0.026], z: [-0.006, 0.006] },
    },
  ],
}
