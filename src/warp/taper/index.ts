import { cellOf, searchTable } from '../curve.ts'
import type { Graph, Node } from '../graph.ts'
import type { Settings, Warp, WarpKind } from '../warp.ts'

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

/** A point drawn out to nothing is taken as this thick (m). */
const POINTED = 1e-9

/** Width and height at a place within a cell, and the volume up to it for a cell of unit length. */
function sectionAt(g: Graph, at: Settings, cell: Node, into: Node) {
  const side = (name: string) => {
    const { table } = at.table(name)
    const first = g.fetch(table, cell)
    return { first, change: g.sub(g.fetch(table, cell, 1), first) }
  }
  const [w, h] = [side('widths'), side('heights')]
  const mixed = g.add(g.mul(w.first, h.change), g.mul(h.first, w.change))
  const rise = g.add(
    g.mul(w.first, h.first),
    g.mul(into, g.add(g.mul(mixed, 0.5), g.mul(into, g.mul(w.change, h.change), 1 / 3))),
  )
  return {
    width: g.add(w.first, g.mul(into, w.change)),
    height: g.add(h.first, g.mul(into, h.change)),
    volume: g.mul(into, rise),
  }
}

export const taperKind: WarpKind = {
  name: 'taper',
  branches: false,
  pull(g, { x, y, z }, at) {
    const n = at.number
    const run = at.table('run')
    const { cell, into, beyond } = cellOf(g, g.div(x, n('cell')), run.length - 1)
    const { width, height, volume } = sectionAt(g, at, cell, into)
    const cells = g.add(volume, g.mul(beyond, width, height))
    return {
      x: g.div(
        g.add(g.fetch(run.table, cell), g.mul(cells, n('cell'))),
        g.mul(n('width'), n('height')),
      ),
      y: g.mul(g.div(y, g.max(width, POINTED)), n('width')),
      z: g.mul(g.div(z, g.max(height, POINTED)), n('height')),
    }
  },
  push(g, { x, y, z }, at) {
    const n = at.number
    const run = at.table('run')
    const wanted = g.mul(x, g.mul(n('width'), n('height')))
    const cell = searchTable(g, run.table, run.length - 1, wanted)
    const left = g.div(g.sub(wanted, g.fetch(run.table, cell)), n('cell'))
    const whole = sectionAt(g, at, cell, g.constant(1)).volume
    const inside = g.clamp(left, 0, whole)
    // Newton within the cell, where the volume rises all the way.
    let into = g.div(inside, whole)
    for (let i = 0; i < 10; i++) {
      const here = sectionAt(g, at, cell, into)
      const step = g.div(g.sub(inside, here.volume), g.mul(here.width, here.height))
      into = g.clamp(g.add(into, step), 0, 1)
    }
    const { width, height } = sectionAt(g, at, cell, into)
    const beyond = g.div(g.sub(left, inside), g.mul(width, height))
    return {
      x: g.mul(g.add(cell, into, beyond), n('cell')),
      y: g.mul(g.div(y, n('width')), width),
      z: g.mul(g.div(z, n('height')), height),
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
