import type { Graph, Node } from '../graph.ts'
import type { Example, Place, Settings, Warp, WarpKind } from '../warp.ts'

/**
 * Which way the piece is turned over on the anvil.
 * `quarter`: a quarter about its length, the upper face going to the right edge (y' = z, z' = −y); `quarter-back` the
 * other way; `over`: half a turn about its length; `ends`: end for end, flat on the anvil; `fold`: end for end, upside
 * down, as a folded half lies; `flat`: a quarter flat on the anvil (width becomes length); `upright`: stood on its end
 * (height becomes length); `angle`: by any angle about its length, rising y towards z (a bias bar: ⅛ turn).
 */
export type TurnForm =
  'quarter' | 'quarter-back' | 'over' | 'ends' | 'fold' | 'flat' | 'upright' | 'angle'

/** A rigid turn; sizes are those before it and matter only to the forms that move the start of the bar. */
export function turn(
  form: TurnForm,
  given: { length?: number; width?: number; height?: number; turns?: number } = {},
): Warp {
  const { length = 0, width = 0, height = 0, turns = 0 } = given
  return { kind: 'turn', form, numbers: { length, width, height, turns } }
}

const maps: Record<TurnForm, { pull: Move; push: Move }> = {
  quarter: {
    pull: (g, { x, y, z }) => ({ x, y: g.negate(z), z: y }),
    push: (g, { x, y, z }) => ({ x, y: z, z: g.negate(y) }),
  },
  'quarter-back': {
    pull: (g, { x, y, z }) => ({ x, y: z, z: g.negate(y) }),
    push: (g, { x, y, z }) => ({ x, y: g.negate(z), z: y }),
  },
  over: both((g, { x, y, z }) => ({ x, y: g.negate(y), z: g.negate(z) })),
  ends: both((g, { x, y, z }, at) => ({ x: g.sub(at.number('length'), x), y: g.negate(y), z })),
  fold: both((g, { x, y, z }, at) => ({ x: g.sub(at.number('length'), x), y, z: g.negate(z) })),
  flat: {
    pull: (g, { x, y, z }, at) => ({
      x: g.sub(half(g, at, 'length'), y),
      y: g.sub(x, half(g, at, 'width')),
      z,
    }),
    push: (g, { x, y, z }, at) => ({
      x: g.add(y, half(g, at, 'width')),
      y: g.sub(half(g, at, 'length'), x),
      z,
    }),
  },
  upright: {
    pull: (g, { x, y, z }, at) => ({
      x: g.sub(half(g, at, 'length'), z),
      y,
      z: g.sub(x, half(g, at, 'height')),
    }),
    push: (g, { x, y, z }, at) => ({
      x: g.add(z, half(g, at, 'height')),
      y,
      z: g.sub(half(g, at, 'length'), x),
    }),
  },
  angle: {
    pull: (g, p, at) => rotate(g, p, at.number('turns')),
    push: (g, p, at) => rotate(g, p, g.negate(at.number('turns'))),
  },
}
type Move = (g: Graph, p: Place, at: Settings) => Place

function both(move: Move) {
  return { pull: move, push: move }
}
function half(g: Graph, at: Settings, side: string): Node {
  return g.mul(at.number(side), 0.5)
}

/** The section turned back by an angle in turns: y = y'·cos + z'·sin, z = −y'·sin + z'·cos. */
export function rotate(g: Graph, { x, y, z }: Place, turns: Node): Place {
  const [cos, sin] = [g.cos(turns), g.sin(turns)]
  return { x, y: g.add(g.mul(y, cos), g.mul(z, sin)), z: g.sub(g.mul(z, cos), g.mul(y, sin)) }
}

export const turnKind: WarpKind = {
  name: 'turn',
  branches: false,
  pull: (g, after, at) => maps[at.form as TurnForm].pull(g, after, at),
  push: (g, before, at) => maps[at.form as TurnForm].push(g, before, at),
  examples: (Object.keys(maps) as TurnForm[]).map((form): Example => ({
    warp: turn(form, { length: 0.2, width: 0.04, height: 0.025, turns: 0.125 }),
    domain: { x: [0, 0.2], y: [-0.02, 0.02], z: [-0.0125, 0.0125] },
  })),
}
