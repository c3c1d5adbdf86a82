import type { Graph } from '../graph.ts'
import { surfaceAt } from '../surface.ts'
import type { Place, Settings, TableEntries, Warp, WarpKind } from '../warp.ts'

/**
 * A die pressed into the face: layers below are carried down by the die's depth d(x,y) times a share that falls away
 * below the face: z = z' + d·D. `single`: D = exp(−depth/reach), a die of feature size p reaching p/2π; `interlocking`:
 * D falls straight from 1 at the face to nothing at `reach`. Depth is counted from `face`, the pressed face's highest
 * place (z'). The filler's flow sideways is not in it: the volume before for one after is 1 + d·|D'|, and says so.
 * `depths`: B-spline coefficients (m), rows of `columns`; the first cell begins at `x`, `y`. `repeats`: a rolled die; the
 * first two coefficients of every row and column are then repeated at its end.
 */
export function relief(given: {
  x: number
  y: number
  cellX: number
  cellY: number
  columns: number
  depths: TableEntries
  face: number
  reach: number
  dies?: 'single' | 'interlocking'
  repeats?: boolean
}): Warp {
  const { depths, dies = 'single', repeats = false, ...numbers } = given
  const form = `${dies}${repeats ? ' repeats' : ''}`
  const rows = depths.length / numbers.columns
  return { kind: 'relief', form, numbers: { ...numbers, rows }, tables: { depths } }
}

function pressed(g: Graph, { x, y, z }: Place, at: Settings) {
  const n = at.number
  const [dies, repeats] = at.form.split(' ')
  const tx = g.div(g.sub(x, n('x')), n('cellX'))
  const ty = g.div(g.sub(y, n('y')), n('cellY'))
  const [d] = surfaceAt(g, at, ['depths'], repeats === 'repeats', tx, ty)
  const depth = g.max(g.div(g.sub(n('face'), z), n('reach')), 0)
  const share = dies === 'single' ? g.exp(g.negate(depth)) : g.max(g.sub(1, depth), 0)
  const above = g.less(n('face'), z, 0, 1)
  const fall = dies === 'single' ? share : g.less(depth, 1, 1, 0)
  return {
    down: g.mul(d!.value, share),
    stretch: g.mul(d!.value, g.div(g.mul(fall, above), n('reach'))),
  }
}

export const reliefKind: WarpKind = {
  name: 'relief',
  branches: false,
  pull: (g, after, at) => ({ ...after, z: g.add(after.z, pressed(g, after, at).down) }),
  det: (g, after, at) => g.add(1, pressed(g, after, at).stretch),
  examples: (['single', 'interlocking'] as const).flatMap((dies) =>
    [false, true].map((repeats) => {
      const [columns, rows] = [12, 10]
      const depths = Array.from({ length: columns * rows }, (_, k) => {
        const [i, j] = [(k % columns) % (columns - 2), Math.floor(k / columns) % (rows - 2)]
        return 0.001 * (1 + Math.sin((i * 2 * Math.PI) / 10) * Math.cos((j * 2 * Math.PI) / 8))
      })
      const given = { cellX: 0.002, cellY: 0.002, columns, depths, reach: 0.004, dies, repeats }
      return {
        warp: relief({ x: 0, y: -0.008, face: 0.005, ...given }),
        domain: { x: repeats ? [-0.05, 0.1] : [0, 0.02], y: [-0.008, 0.008], z: [-0.005, 0.005] },
      }
    }),
  ),
}
