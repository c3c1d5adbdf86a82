import { cellOf } from '../curve.ts'
import type { Warp, WarpKind } from '../warp.ts'

/**
 * Drawn to a taper, or upset: the section runs from W₀ × H₀ everywhere to W(x') × H(x'), slender bar:
 * x = (1/A₀)∫A dx', y = y'·W₀/W, z = z'·H₀/H. `widths`, `heights`: at evenly spaced places along the new `length`, two or
 * more, straight between. Volume is kept exactly; the shear of order y·W'/W is not in it.
 */
export function taper(given: {
  width: number
  height: number
  length: number
  widths: readonly number[]
  heights: readonly number[]
}): Warp {
  const { width, height, length, widths, heights } = given
  const cell = length / (widths.length - 1)
  const run = [0]
  for (let i = 1; i < widths.length; i++) {
    const [w, v, h, k] = [widths[i - 1]!, widths[i]!, heights[i - 1]!, heights[i]!]
    run.push(
      run[i - 1]! + cell * (w * h + (w * (k - h) + h * (v - w)) / 2 + ((v - w) * (k - h)) / 3),
    )
  }
  return { kind: 'taper', numbers: { width, height, cell }, tables: { widths, heights, run } }
}

export const taperKind: WarpKind = {
  name: 'taper',
  branches: false,
  pull(g, { x, y, z }, at) {
    const n = at.number
    const widths = at.table('widths')
    const heights = at.table('heights')
    const { cell, into, beyond } = cellOf(g, g.div(x, n('cell')), widths.length - 1)
    const side = (table: number) => {
      const first = g.fetch(table, cell)
      return { first, change: g.sub(g.fetch(table, cell, 1), first) }
    }
    const [w, h] = [side(widths.table), side(heights.table)]
    const W = g.add(w.first, g.mul(into, w.change))
    const H = g.add(h.first, g.mul(into, h.change))
    const mixed = g.add(g.mul(w.first, h.change), g.mul(h.first, w.change))
    const rise = g.add(
      g.mul(w.first, h.first),
      g.mul(into, g.add(g.mul(mixed, 0.5), g.mul(into, g.mul(w.change, h.change), 1 / 3))),
    )
    const cells = g.add(g.mul(into, rise), g.mul(beyond, W, H))
    const area = g.mul(n('width'), n('height'))
    return {
      x: g.div(g.add(g.fetch(at.table('run').table, cell), g.mul(cells, n('cell'))), area),
      y: g.mul(g.div(y, W), n('width')),
      z: g.mul(g.div(z, H), n('height')),
    }
  },
  examples: [
    {
      warp: taper({
        width: 0.03,
        height: 0.01,
        length: 0.2,
        widths: [0.03, 0.012],
        heights: [0.01, 0.004],
      }),
      domain: { x: [0, 0.2], y: [-0.005, 0.005], z: [-0.002, 0.002] },
    },
    {
      warp: taper({
        width: 0.02,
        height: 0.02,
        length: 0.12,
        widths: [0.02, 0.021, 0.024, 0.03, 0.03],
        heights: [0.02, 0.021, 0.026, 0.028, 0.002],
      }),
      domain: { x: [0, 0.12], y: [-0.009, 0.009], z: [-0.001, 0.001] },
    },
  ],
}
