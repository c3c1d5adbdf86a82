import { type Node, type TailStage, compile } from '#warp'

/**
 * Bend within a pixel, or a step to its neighbour not told by its slopes, above which it is split: a share of the
 * layer's run through it.
 */
export const BEND = 0.06

/** A row of pixels' layer coordinates and their runs along a pixel's two sides. */
export interface LayerRow {
  readonly layer: Float32Array
  readonly alongU: Float32Array
  readonly alongV: Float32Array
}

/** Tells where the layer coordinate does not run straight from pixel to pixel: joints, folds, creases, sharp bends. */
export interface BendReader {
  /** Above 0 where pixel `from + i` and its left, and its upper, neighbour do not lie on one straight run. */
  read(
    row: LayerRow,
    above: LayerRow,
    from: number,
    count: number,
  ): { readonly left: ArrayLike<number>; readonly up: ArrayLike<number> }
}

/**
 * The step between neighbours against the mean of their slopes, and how their slopes differ, over a half pixel. A run
 * of less than `least` cells is taken as so much: finer bends are rounding, or not worth it.
 */
export function bendStage(least: number): TailStage {
  return {
    form: 'bend',
    numbers: { least },
    outputs: ['left', 'up'],
    read(g, { x, y, z }, at, rates) {
      // Own layer and runs in x, y, z; the left neighbour's in their first rate, the upper one's in the second.
      const [own, left, up] = [0, 1, 2].map((k) =>
        k === 0 ? [x, y, z] : [x, y, z].map((node) => rates(node)[k - 1]!),
      ) as [Node[], Node[], Node[]]
      const [layer, u, v] = own as [Node, Node, Node]
      const bound = g.mul(g.max(g.add(g.abs(u), g.abs(v)), at.number('least')), BEND)
      const bend = (step: Node, a: Node, b: Node, other: Node) =>
        g.sub(
          g.add(
            g.abs(g.sub(step, g.mul(g.add(a, b), 0.5))),
            g.mul(g.abs(g.sub(a, b)), 0.125),
            g.mul(g.abs(other), 0.25),
          ),
          bound,
        )
      return [
        bend(g.sub(layer, left[0]!), u, left[1]!, g.sub(v, left[2]!)),
        bend(g.sub(up[0]!, layer), v, up[2]!, g.sub(u, up[1]!)),
      ]
    },
  }
}

/** Below this rounding of the layer coordinate tells as a bend, cells. */
export const LEAST = 0.0625

export function bendReader(tile: number): BendReader {
  const evaluator = compile([], {
    precision: 'f32',
    directions: 2,
    tile,
    tail: bendStage(LEAST),
    groupSize: Infinity,
  })
  const [left, up] = evaluator.program.outputs.map((o) => evaluator.channel(o.channel))
  return {
    read(row, above, from, count) {
      const put = (channel: number, values: Float32Array, at: number) =>
        evaluator.channel(channel).set(values.subarray(at, at + count))
      const names = ['layer', 'alongU', 'alongV'] as const
      names.forEach((name, k) => {
        put(k, row[name], from)
        put(3 + k, row[name], from - 1)
        put(6 + k, above[name], from)
      })
      evaluator.run(count)
      return { left: left!, up: up! }
    },
  }
}
