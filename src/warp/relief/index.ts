import type { Graph, Node } from '../graph.ts'
import { surfaceAt } from '../surface.ts'
import type { Place, Settings, TableEntries, Warp, WarpKind } from '../warp.ts'

/** B-spline coefficients (m), rows of `columns`; the first cell begins at `x`, `y`. */
interface Depths {
  x: number
  y: number
  cellX: number
  cellY: number
  columns: number
  depths: TableEntries
}

/**
 * A die pressed into the face: layers below are carried down by the die's depth d(x,y) times a share that falls away
 * below the face: z = z' + d·D, D = exp(−depth/reach); a die of feature size p reaches p/2π. Depth is counted from
 * `face`, the pressed face's highest place (z'). The filler's flow sideways is not in it: the volume before for one after
 * is 1 + d·|D'|, and says so.
 * `broad`: a smooth part b of d; D holds of it alone. The rest, walls and thin strokes, dies out by F = (1 + q)·exp(−q),
 * q = depth/fineReach: z = z' + b·D + (d − b)·F. At the face that is d, whatever the part; below, layers fold nowhere
 * while b is nowhere deeper than d by e·fineReach.
 * `repeats`: a rolled die; the first two coefficients of every row and column are then repeated at its end.
 */
export function relief(
  given: Depths & {
    face: number
    reach: number
    repeats?: boolean
    broad?: Depths & { fineReach: number }
  },
): Warp {
  const { depths, repeats = false, broad, ...numbers } = given
  const form = [...(repeats ? ['repeats'] : []), ...(broad ? ['broad'] : [])].join(' ')
  const rows = depths.length / numbers.columns
  const own = { kind: 'relief' as const, form, numbers: { ...numbers, rows }, tables: { depths } }
  if (!broad) return own
  const { depths: smooth, fineReach, ...place } = broad
  const of = { ...place, rows: smooth.length / place.columns }
  const named = Object.fromEntries(Object.entries(of).map(([name, v]) => [`broad ${name}`, v]))
  return {
    ...own,
    numbers: { ...own.numbers, ...named, fineReach },
    tables: { depths, broad: smooth },
  }
}

/** The depth at a place, read off a table by the numbers that are called by these names. */
function depthAt(g: Graph, { x, y }: Place, at: Settings, table: string, repeats: boolean): Node {
  const n = at.number
  const tx = g.div(g.sub(x, n('x')), n('cellX'))
  const ty = g.div(g.sub(y, n('y')), n('cellY'))
  return surfaceAt(g, at, [table], repeats, tx, ty)[0]!.value
}

function pressed(g: Graph, place: Place, at: Settings) {
  const n = at.number
  const words = at.form.split(' ')
  const d = depthAt(g, place, at, 'depths', words.includes('repeats'))
  const below = g.max(g.sub(n('face'), place.z), 0)
  const share = g.exp(g.negate(g.div(below, n('reach'))))
  // Above the highest place of the face nothing falls away any more.
  const loses = g.div(g.mul(share, g.less(n('face'), place.z, 0, 1)), n('reach'))
  if (!words.includes('broad')) return { down: g.mul(d, share), stretch: g.mul(d, loses) }
  const named: Settings = { ...at, number: (name) => n(`broad ${name}`) }
  const b = depthAt(g, place, named, 'broad', false)
  const rest = g.sub(d, b)
  const q = g.div(below, n('fineReach'))
  const gone = g.exp(g.negate(q))
  const fineLoses = g.div(g.mul(q, gone), n('fineReach'))
  const fineShare = g.mul(g.add(q, 1), gone)
  return {
    down: g.add(g.mul(b, share), g.mul(rest, fineShare)),
    stretch: g.add(g.mul(b, loses), g.mul(rest, fineLoses)),
  }
}

/** Bumps all over a grid, none higher than twice `height`. */
function bumps(columns: number, rows: number, height: number): number[] {
  return Array.from({ length: columns * rows }, (_, k) => {
    const [i, j] = [(k % columns) % (columns - 2), Math.floor(k / columns) % (rows - 2)]
    return height * (1 + Math.sin((i * 2 * Math.PI) / 10) * Math.cos((j * 2 * Math.PI) / 8))
  })
}

export const reliefKind: WarpKind = {
  name: 'relief',
  branches: false,
  pull: (g, after, at) => ({ ...after, z: g.add(after.z, pressed(g, after, at).down) }),
  det: (g, after, at) => g.add(1, pressed(g, after, at).stretch),
  examples: (
    [
      [false, false],
      [true, false],
      [false, true],
    ] as const
  ).map(([repeats, parts]) => {
    const grid = { x: 0, y: -0.008, cellX: 0.002, cellY: 0.002, columns: 12 }
    // Out of step with the bumps: the rest is now above and now below nothing, by less than 1 mm; that is under e·fineReach.
    const smooth = { ...grid, x: -0.003, cellX: 0.003, columns: 10, depths: bumps(10, 10, 5e-4) }
    return {
      warp: relief({
        ...{ ...grid, depths: bumps(12, 10, 1e-3), face: 0.005, reach: 0.004, repeats },
        ...(parts && { broad: { ...smooth, fineReach: 6e-4 } }),
      }),
      domain: { x: repeats ? [-0.05, 0.1] : [0, 0.02], y: [-0.008, 0.008], z: [-0.005, 0.005] },
    }
  }),
}
