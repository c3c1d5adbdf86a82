import type { Graph, Node, Place, Settings, TailStage } from '#warp'
import { INSIDE, SMALLEST, THINNEST, type Weighing } from './weighing.ts'

/** Read at the end of a chain that carries a pixel's two sides: the layer coordinate and its run along them, in cells. */
export function layerStage(weighing: Weighing): TailStage {
  return {
    form: 'layer',
    numbers: { bottom: weighing.bottom, perCell: 1 / weighing.cell },
    outputs: ['layer', 'alongU', 'alongV'],
    read(g, { z }, at, rates) {
      const perCell = at.number('perCell')
      const layer = g.mul(g.sub(z, at.number('bottom')), perCell)
      return [layer, ...rates(z).map((rate) => g.mul(rate, perCell))]
    },
  }
}

/** Near; far, but within the pile alone; far, over its joints. */
export type Reach = 'near' | 'alone' | 'far'

/** The mean of each weighing over a pixel, from the layer coordinate and its runs as x, y, z: see Weighing. */
export function meanStage(
  weighings: readonly Weighing[],
  precision: 'f32' | 'f64',
  reach: Reach,
): TailStage {
  const whole = weighings[0]!
  // Near, the outer sheets go on beyond the stack; far, what a joint leaves of it repeats, in cells of its own.
  const used = reach === 'far' ? weighings.map((w) => w.joined ?? w) : weighings
  const first = used[0]!
  const { cells } = first
  const numbers: Record<string, number> = {
    scale: whole.cell / first.cell,
    from: (whole.bottom - first.bottom) / first.cell,
    to: (whole.bottom - first.bottom + whole.cells * whole.cell) / first.cell,
    least: Math.max(...used.map((w) => w.least[precision])),
    cells,
    soft: first.soft,
    end: cells - INSIDE,
    last: cells - 1,
    perStack: 1 / cells,
  }
  const tables: Record<string, readonly number[]> = {}
  const pad = (values: readonly number[], outer: (end: number) => number) =>
    reach === 'near' ? [outer(values[0]!), ...values, outer(values[cells - 1]!)] : values
  tables.joint = pad(first.tables.joint, () => 0.5)
  used.forEach((w, i) => {
    numbers[`mean${i}`] = w.mean
    numbers[`first${i}`] = w.first
    numbers[`last${i}`] = w.last
    tables[`kink${i}`] = pad(w.tables.kink, () => 0)
    if (reach === 'near')
      tables[`level${i}`] = pad(
        w.tables.bow.map((bow) => w.mean + 2 * bow),
        (end) => end,
      )
    else
      for (const name of ['start', 'rise', 'bow'] as const) tables[`${name}${i}`] = w.tables[name]
  })
  const read = reach === 'near' ? readNear : readFar
  return {
    form: `${reach} means of ${weighings.length}`,
    numbers,
    tables,
    outputs: weighings.map((_, i) => `mean${i}`),
    read: (g, place, at) =>
      read(
        g,
        pixelOf(g, reach === 'near' ? place : inOwnCells(g, place, at), at),
        at,
        used.length,
      ).map((mean) => g.clamp(mean, 0, 1)),
  }
}

function inOwnCells(g: Graph, { x, y, z }: Place, at: Settings): Place {
  const scale = at.number('scale')
  return {
    x: g.add(g.mul(x, scale), at.number('from')),
    y: g.mul(y, scale),
    z: g.mul(z, scale),
  }
}

interface Pixel {
  /** Where the middle lies, and where it is taken to lie: inside the stack. */
  readonly raw: Node
  readonly u: Node
  readonly p: Node
  readonly q: Node
  readonly product: Node
}

function pixelOf(g: Graph, { x, y, z }: Place, at: Settings): Pixel {
  const [a, b] = [g.abs(y), g.abs(z)]
  const soft = at.number('soft')
  const long = g.max(g.max(a, b), g.max(soft, SMALLEST))
  // An edge is at least as wide as it is soft, across the pixel's lesser run.
  const short = g.max(g.max(g.min(a, b), soft), g.mul(long, THINNEST))
  return {
    raw: x,
    u: g.clamp(x, INSIDE, at.number('end')),
    p: g.mul(g.add(long, short), 0.5),
    q: g.mul(g.sub(long, short), 0.5),
    product: g.mul(long, short),
  }
}

function readNear(g: Graph, { u, p, q, product }: Pixel, at: Settings, count: number): Node[] {
  // Entry c + 1 of a table is cell c's: a blank cell lies before the first and after the last.
  const c = g.clamp(g.floor(u), 0, at.number('last'))
  const s = g.sub(u, c)
  const over = g.div(1, product)
  const square = (v: Node) => {
    const above = g.max(v, 0)
    return g.mul(above, above)
  }
  const back = g.negate(p)
  const steps = [0, 1, 2].map((i) => {
    const joint = g.fetch(at.table('joint').table, c, i)
    const t = g.clamp(g.sub(g.sub(s, joint), i - 1), back, p)
    const rise = g.sub(square(g.add(t, p)), square(g.add(t, q)))
    const fall = g.sub(square(g.sub(t, q)), square(g.sub(t, p)))
    return g.mul(g.sub(rise, fall), over)
  })
  return Array.from({ length: count }, (_, k) => {
    const kink = at.table(`kink${k}`).table
    return steps.reduce<Node>(
      (sum, step, i) => g.add(sum, g.mul(step, g.fetch(kink, c, i))),
      g.fetch(at.table(`level${k}`).table, c),
    )
  })
}

function readFar(g: Graph, { raw, u, p, q, product }: Pixel, at: Settings, count: number): Node[] {
  const cell = (t: Node) => {
    const whole = g.floor(t)
    const before = g.floor(g.mul(g.add(whole, 0.5), at.number('perStack')))
    // Whole but for rounding of absurdly large runs: a table is never read beyond its ends.
    const c = g.clamp(g.sub(whole, g.mul(before, at.number('cells'))), 0, at.number('last'))
    const s = g.sub(t, whole)
    const past = g.max(g.sub(s, g.fetch(at.table('joint').table, c)), 0)
    return { c, s, square: g.mul(past, past) }
  }
  const corners = [g.add(u, p), g.add(u, q), g.sub(u, q), g.sub(u, p)].map(cell)
  const over = g.div(1, g.max(product, at.number('least')))
  // A middle beyond the whole stack lies in no joint: there the outer sheet goes on.
  const beyond = g.max(g.sub(at.number('from'), raw), g.sub(raw, at.number('to')))
  const outside = g.clamp(g.div(beyond, p), 0, 1)
  return Array.from({ length: count }, (_, i) => {
    const of = (name: string, c: Node) => g.fetch(at.table(`${name}${i}`).table, c)
    const [a, b, c, d] = corners.map((k) =>
      g.add(
        g.add(of('start', k.c), g.mul(k.s, g.add(of('rise', k.c), g.mul(k.s, of('bow', k.c))))),
        g.mul(of('kink', k.c), k.square),
      ),
    ) as [Node, Node, Node, Node]
    const difference = g.sub(g.sub(a, b), g.sub(c, d))
    const mean = g.add(g.mul(difference, over), at.number(`mean${i}`))
    const outer = g.less(raw, 0, at.number(`first${i}`), at.number(`last${i}`))
    return g.add(mean, g.mul(outside, g.sub(outer, mean)))
  })
}
