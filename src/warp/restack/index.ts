import type { Graph, Node } from '../graph.ts'
import type { Settings, Warp, WarpKind } from '../warp.ts'

/** How a piece lies in the new stack: as it was; half a turn about its length; end for end; folded. */
export type PieceTurn = 'straight' | 'over' | 'ends' | 'folded'
const PIECE_TURNS: readonly PieceTurn[] = ['straight', 'over', 'ends', 'folded']

/**
 * Cut into n pieces and stacked (trade: cut and restack). Piece j was x ∈ [j(ℓ+k), j(ℓ+k)+ℓ] of the bar; `kerf` k lost
 * at each cut, `grind` g off each mated face, an `extra` sheet te laid in each joint (0: none). `turn`: how the odd
 * pieces lie, or one word for each piece. Sizes: `length` ℓ of a piece, `height` H of the bar before. New height
 * nH − 2(n−1)g + (n−1)te. Branch: the piece, 0 … n−1 from the bottom; n + j inside the extra sheet above piece j, where
 * the point is then given in that sheet's own frame.
 */
export function restack(given: {
  pieces: number
  length: number
  height: number
  kerf?: number
  grind?: number
  extra?: number
  turn?: PieceTurn | readonly PieceTurn[]
}): Warp {
  const { pieces, length, height, kerf = 0, grind = 0, extra = 0, turn = 'straight' } = given
  const numbers = { pieces, length, height, kerf, grind, extra }
  const form = (turn_: string) => (extra > 0 ? `${turn_} with sheets` : turn_)
  if (typeof turn === 'string') return { kind: 'restack', form: form(turn), numbers }
  const turns = Array.from({ length: pieces }, (_, j) => PIECE_TURNS.indexOf(turn[j] ?? 'straight'))
  return { kind: 'restack', form: form('each'), numbers, tables: { turns } }
}

/** +1 or −1 for the piece's x, y and z. */
function signs(g: Graph, at: Settings, piece: Node) {
  const form = at.form.split(' ')[0]
  if (form === 'each') {
    const code = g.fetch(at.table('turns').table, piece)
    const [over, ends, folded] = [1, 2, 3].map(
      (c) => (then: number, other: Node | number) =>
        g.less(g.abs(g.sub(code, c)), 0.5, then, other),
    ) as [Pick, Pick, Pick]
    return { x: ends(-1, folded(-1, 1)), y: over(-1, ends(-1, 1)), z: over(-1, folded(-1, 1)) }
  }
  const one = g.constant(1)
  if (form === 'straight') return { x: one, y: one, z: one }
  const odd = g.sub(piece, g.mul(2, g.floor(g.mul(piece, 0.5))))
  const flip = g.sub(1, g.mul(2, odd))
  return {
    x: form === 'over' ? one : flip,
    y: form === 'folded' ? one : flip,
    z: form === 'ends' ? one : flip,
  }
}
type Pick = (then: number, other: Node | number) => Node

export const restackKind: WarpKind = {
  name: 'restack',
  branches: true,
  pull(g, after, at) {
    const n = at.number
    const [H, cut, grind] = [n('height'), n('length'), n('grind')]
    const rest = g.add(g.sub(H, g.mul(2, grind)), n('extra'))
    const whole = g.add(
      g.mul(n('pieces'), H),
      g.mul(g.sub(n('pieces'), 1), g.sub(n('extra'), g.mul(2, grind))),
    )
    const last = g.sub(n('pieces'), 1)
    const half = g.mul(whole, 0.5)
    const seats = g.add(g.div(after.z, rest), g.div(g.sub(half, grind), rest))
    const piece = g.clamp(g.floor(seats), 0, last)
    // Height over the piece's middle.
    const above = g.add(g.sub(after.z, g.mul(piece, rest)), g.sub(half, g.mul(H, 0.5)))
    const s = signs(g, at, piece)
    const centre = g.mul(cut, 0.5)
    const along = g.add(g.mul(g.sub(after.x, centre), s.x), centre)
    const bar = {
      x: g.add(along, g.mul(piece, g.add(cut, n('kerf')))),
      y: g.mul(after.y, s.y),
      z: g.mul(above, s.z),
    }
    if (!at.form.endsWith('sheets')) return { ...bar, branch: piece }
    const top = g.sub(g.mul(H, 0.5), grind)
    const sheet = (a: Node, b: Node) => g.less(top, above, g.less(piece, last, a, b), b)
    return {
      x: sheet(after.x, bar.x),
      y: sheet(after.y, bar.y),
      z: sheet(g.sub(above, g.add(top, g.mul(n('extra'), 0.5))), bar.z),
      branch: sheet(g.add(piece, n('pieces')), piece),
    }
  },
  push(g, before, at) {
    const n = at.number
    const [H, cut, grind, pieces] = [n('height'), n('length'), n('grind'), n('pieces')]
    const rest = g.add(g.sub(H, g.mul(2, grind)), n('extra'))
    const whole = g.add(g.mul(g.sub(pieces, 1), rest), H)
    const branch = before.branch!
    const inSheet = (a: Node, b: Node) =>
      at.form.endsWith('sheets') ? g.less(branch, pieces, b, a) : b
    const piece = inSheet(g.sub(branch, pieces), branch)
    const s = signs(g, at, piece)
    const half = g.mul(cut, 0.5)
    const along = g.sub(g.sub(before.x, g.mul(piece, g.add(cut, n('kerf')))), half)
    const inside = inSheet(
      g.add(before.z, g.sub(H, grind), g.mul(n('extra'), 0.5)),
      g.add(g.mul(before.z, s.z), g.mul(H, 0.5)),
    )
    return {
      x: inSheet(before.x, g.add(g.mul(along, s.x), half)),
      y: inSheet(before.y, g.mul(before.y, s.y)),
      z: g.add(inside, g.mul(piece, rest), g.mul(whole, -0.5)),
    }
  },
  examples: [
    {
      warp: restack({ pieces: 3, length: 0.1, height: 0.025, kerf: 0.002, grind: 0.0004 }),
      domain: { x: [0, 0.1], y: [-0.02, 0.02], z: [-0.0367, 0.0367] },
    },
    ...(['over', 'ends', 'folded'] as const).map((turn) => ({
      warp: restack({ pieces: 4, length: 0.08, height: 0.02, kerf: 0.003, turn }),
      domain: { x: [0, 0.08], y: [-0.02, 0.02], z: [-0.04, 0.04] } as const,
    })),
    {
      warp: restack({
        pieces: 5,
        length: 0.06,
        height: 0.012,
        grind: 0.0002,
        extra: 0.0015,
        turn: ['straight', 'over', 'ends', 'folded', 'over'],
      }),
      domain: { x: [0, 0.06], y: [-0.02, 0.02], z: [-0.0322, 0.0322] },
    },
    {
      warp: restack({ pieces: 1, length: 0.1, height: 0.02 }),
      domain: { x: [0, 0.1], y: [-0.01, 0.01], z: [-0.01, 0.01] },
    },
  ],
}
