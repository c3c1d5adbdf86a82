import { alternate } from '../slices/index.ts'
import type { Graph, Node } from '../graph.ts'
import type { Place, Settings, Warp, WarpKind } from '../warp.ts'

/**
 * Bars welded into one section. `straight`: n across × m high, all the same way round; `bookmatched`: every second one
 * turned end for end (across), folded (up) or over (both), so that neighbours mirror one another though none is
 * mirrored; `quarters`: square bars, each turned by its own number of quarter turns (`quarters`, across first); `rotated`: two by two of a square bar, each a quarter turned from the last; `triangles`: four wedges of the
 * square cut on its diagonals, the bar's middle line running out from the centre. Sizes are one bar's (for triangles
 * the `width` is the wedge's height: half the new square). `grind`: off each face that meets another; `kerf`: lost between
 * bars that were cut one after another from one bar, which is then what the point is given in (left out: each bar in its
 * own frame). Neither is for `rotated` and `triangles`. Branch: the bar, across first, or the quarter.
 */
export type TileForm = 'straight' | 'bookmatched' | 'quarters' | 'rotated' | 'triangles'

export function tile(given: {
  form: TileForm
  across?: number
  high?: number
  length: number
  width: number
  height: number
  grind?: number
  kerf?: number
  quarters?: readonly number[]
}): Warp {
  const { form, across = 2, high = 2, grind = 0, kerf, quarters, ...sizes } = given
  const step = kerf === undefined ? 0 : sizes.length + kerf
  const numbers = { across, high, grind, step, ...sizes }
  return quarters
    ? { kind: 'tile', form, numbers, tables: { quarters } }
    : { kind: 'tile', form, numbers }
}

/** Which bar of a row of `count`, each taking `side` and the row centred. */
function seat(g: Graph, at: number | Node, count: Node, side: Node) {
  const first = g.mul(count, side, 0.5)
  return g.clamp(g.floor(g.div(g.add(at, first), side)), 0, g.sub(count, 1))
}
function middleOf(g: Graph, i: Node, count: Node, side: Node): Node {
  return g.mul(g.add(i, g.mul(g.sub(1, count), 0.5)), side)
}

/** Quarter turns back (k of 0 … 3) of y, z. */
function quarterTurns(g: Graph, y: Node, z: Node, k: Node) {
  const [minusY, minusZ] = [g.negate(y), g.negate(z)]
  const of = (a: Node, b: Node, c: Node, d: Node) =>
    g.less(k, 0.5, a, g.less(k, 1.5, b, g.less(k, 2.5, c, d)))
  return { y: of(y, z, minusY, minusZ), z: of(z, minusY, minusZ, y) }
}

function pullQuarter(g: Graph, { x, y, z }: Place, at: Settings): Place {
  const triangles = at.form === 'triangles'
  const k = triangles
    ? g.less(g.abs(z), g.abs(y), g.less(y, 0, 2, 0), g.less(z, 0, 3, 1))
    : g.less(z, 0, g.less(y, 0, 2, 3), g.less(y, 0, 1, 0))
  const turned = quarterTurns(g, y, z, k)
  const half = g.mul(at.number('width'), 0.5)
  return {
    x,
    y: g.sub(turned.y, half),
    z: triangles ? turned.z : g.sub(turned.z, half),
    branch: k,
  }
}

export const tileKind: WarpKind = {
  name: 'tile',
  branches: true,
  pull(g, after, at) {
    if (at.form === 'rotated' || at.form === 'triangles') return pullQuarter(g, after, at)
    const n = at.number
    const [wide, tall] = [taken(g, at, 'width'), taken(g, at, 'height')]
    const i = seat(g, after.y, n('across'), wide)
    const j = seat(g, after.z, n('high'), tall)
    const y = g.sub(after.y, middleOf(g, i, n('across'), wide))
    const z = g.sub(after.z, middleOf(g, j, n('high'), tall))
    const branch = g.add(i, g.mul(j, n('across')))
    const turned = (p: Place): Place => {
      if (at.form === 'straight') return p
      if (at.form === 'bookmatched') return flip(g, p.x, p as Seated, i, j, n('length'))
      return { ...p, ...quarterTurns(g, p.y, p.z, g.fetch(at.table('quarters').table, branch)) }
    }
    const own = turned({ x: after.x, y, z, branch })
    return { ...own, x: g.add(own.x, g.mul(branch, n('step'))) }
  },
  push(g, before, at) {
    const n = at.number
    const branch = before.branch!
    if (at.form === 'rotated' || at.form === 'triangles') {
      const half = g.mul(n('width'), 0.5)
      const z = at.form === 'triangles' ? before.z : g.add(before.z, half)
      const back = g.less(branch, 0.5, 0, g.sub(4, branch))
      return { x: before.x, ...quarterTurns(g, g.add(before.y, half), z, back) }
    }
    const j = g.floor(g.div(g.add(branch, 0.5), n('across')))
    const i = g.sub(branch, g.mul(j, n('across')))
    const own = { ...before, x: g.sub(before.x, g.mul(branch, n('step'))) }
    const turned = (): Place => {
      if (at.form === 'straight') return own
      if (at.form === 'bookmatched') return flip(g, own.x, own as Seated, i, j, n('length'))
      const k = g.fetch(at.table('quarters').table, branch)
      return { ...own, ...quarterTurns(g, own.y, own.z, g.less(k, 0.5, 0, g.sub(4, k))) }
    }
    const p = turned()
    return {
      x: p.x,
      y: g.add(p.y, middleOf(g, i, n('across'), taken(g, at, 'width'))),
      z: g.add(p.z, middleOf(g, j, n('high'), taken(g, at, 'height'))),
    }
  },
  examples: [
    ...(['straight', 'bookmatched', 'rotated', 'triangles'] as const).flatMap((form) => {
      const square: boolean = form === 'rotated' || form === 'triangles'
      return [2, 3].slice(0, square ? 1 : 2).map((across) => {
        const [width, height] = [0.012, square ? 0.012 : 0.009]
        const half = (across * width) / 2
        return {
          warp: tile({ form, across, length: 0.15, width, height }),
          domain: { x: [0, 0.15], y: [-half, half], z: [-height, height] } as const,
        }
      })
    }),
    ...(['bookmatched', 'quarters'] as const).map((form) => ({
      warp: tile({
        ...{ form, across: 3, high: 3, length: 0.05, width: 0.012, height: 0.012 },
        ...{ grind: 0.0004, kerf: 0.0016 },
        quarters: form === 'quarters' ? [0, 3, 0, 1, 2, 1, 0, 3, 0] : undefined,
      }),
      domain: { x: [0, 0.05], y: [-0.0172, 0.0172], z: [-0.0172, 0.0172] } as const,
    })),
  ],
}

interface Seated {
  readonly y: Node
  readonly z: Node
  readonly branch?: Node
}

/** What one bar takes of the row: ground on both its sides. */
function taken(g: Graph, at: Settings, side: 'width' | 'height'): Node {
  return g.sub(at.number(side), g.mul(2, at.number('grind')))
}

function flip(g: Graph, x: Node, p: Seated, i: Node, j: Node, length: Node): Place {
  const [a, b] = [alternate(g, i), alternate(g, j)]
  const half = g.mul(length, 0.5)
  const along = g.add(g.mul(g.sub(x, half), g.mul(a, b)), half)
  return { x: along, y: g.mul(p.y, a), z: g.mul(p.z, b), branch: p.branch }
}
