import type { Point, Ring } from './path.ts'

export type FillRule = 'nonzero' | 'evenodd'

interface Edge {
  /** Lower end, upper end, +1 when the outline runs upwards. */
  readonly a: Point
  readonly b: Point
  readonly way: 1 | -1
}

export interface Filled {
  readonly area: number
  readonly perimeter: number
  /** Bits of the filled region's edge: two ends, and the unit normal into the metal. */
  readonly edge: readonly { readonly from: Point; readonly to: Point; readonly inward: Point }[]
}

/** A turn that leaves no edge of any sane drawing level, so that rows can be swept. */
const tilt = 0.3701237

function tilted([x, y]: Point, angle: number): Point {
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  return [c * x - s * y, s * x + c * y]
}

function edgesOf(rings: readonly Ring[]): Edge[] {
  return rings.flatMap(({ points }) =>
    points.flatMap((from, i): Edge[] => {
      const p = tilted(from, tilt)
      const q = tilted(points[(i + 1) % points.length]!, tilt)
      if (Math.abs(p[1] - q[1]) < 1e-15) return []
      return p[1] < q[1] ? [{ a: p, b: q, way: 1 }] : [{ a: q, b: p, way: -1 }]
    }),
  )
}

const xAt = ({ a, b }: Edge, y: number) => a[0] + ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1])

/** Heights where something changes: ends of edges, and crossings of edges that overlap in height. */
function rowsOf(edges: readonly Edge[]): number[] {
  const sorted = edges.toSorted((p, q) => p.a[1] - q.a[1])
  const rows = sorted.flatMap(({ a, b }) => [a[1], b[1]])
  for (let i = 0; i < sorted.length; i++)
    for (let j = i + 1; j < sorted.length && sorted[j]!.a[1] < sorted[i]!.b[1]; j++) {
      const [p, q] = [sorted[i]!, sorted[j]!]
      const [low, high] = [Math.max(p.a[1], q.a[1]), Math.min(p.b[1], q.b[1])]
      const [d0, d1] = [xAt(p, low) - xAt(q, low), xAt(p, high) - xAt(q, high)]
      if (d0 * d1 < 0) rows.push(low + ((high - low) * d0) / (d0 - d1))
    }
  return [...new Set(rows)].toSorted((p, q) => p - q)
}

/**
 * Area and edge of what an outline fills, rings crossing each other or themselves included: the
 * plane is cut into rows between all ends and crossings, where every piece is a trapezium.
 */
export function fillOutline(rings: readonly Ring[], rule: FillRule = 'nonzero'): Filled {
  const edges = edgesOf(rings).toSorted((p, q) => p.a[1] - q.a[1])
  const rows = rowsOf(edges)
  const isIn = (winding: number) =>
    rule === 'nonzero' ? winding !== 0 : Math.abs(winding) % 2 === 1
  let [area, perimeter, next] = [0, 0, 0]
  let active: Edge[] = []
  const edge: { from: Point; to: Point; inward: Point }[] = []
  for (let r = 0; r + 1 < rows.length; r++) {
    const [low, high] = [rows[r]!, rows[r + 1]!]
    const middle = 0.5 * (low + high)
    while (next < edges.length && edges[next]!.a[1] <= low) active.push(edges[next++]!)
    active = active.filter((e) => e.b[1] > middle)
    const across = active
      .filter((e) => e.a[1] < middle)
      .toSorted((p, q) => xAt(p, middle) - xAt(q, middle))
    let winding = 0
    across.forEach((e, i) => {
      const before = isIn(winding)
      winding += e.way
      const after = isIn(winding)
      if (after && i + 1 < across.length)
        area += (xAt(across[i + 1]!, middle) - xAt(e, middle)) * (high - low)
      if (before === after) return
      const [from, to]: [Point, Point] = [
        [xAt(e, low), low],
        [xAt(e, high), high],
      ]
      const length = Math.hypot(to[0] - from[0], to[1] - from[1])
      perimeter += length
      const side = after ? 1 : -1
      const inward: Point = [
        (side * (to[1] - from[1])) / length,
        (-side * (to[0] - from[0])) / length,
      ]
      edge.push({ from: tilted(from, -tilt), to: tilted(to, -tilt), inward: tilted(inward, -tilt) })
    })
  }
  return { area, perimeter, edge }
}
