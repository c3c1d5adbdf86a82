import { column, columnNodes, type ColumnAxis } from './index.ts'
import { turn } from '../turn/index.ts'
import type { Warp } from '../warp.ts'

/** A bar's section as a closed line of points (y, z), metres, either way round. */
export type Outline = readonly { readonly y: number; readonly z: number }[]

export function discOutline(radius: number, points = 720): Outline {
  return Array.from({ length: points }, (_, i) => {
    const a = (2 * Math.PI * i) / points
    return { y: radius * Math.cos(a), z: radius * Math.sin(a) }
  })
}

export function boxOutline(width: number, height: number): Outline {
  const [y, z] = [width / 2, height / 2]
  return [
    { y, z },
    { y: -y, z },
    { y: -y, z: -z },
    { y, z: -z },
  ]
}

export function outlineSize(outline: Outline): { width: number; height: number } {
  const range = (values: readonly number[]) => Math.max(...values) - Math.min(...values)
  return { width: range(outline.map((p) => p.y)), height: range(outline.map((p) => p.z)) }
}

/**
 * Columns of the metal between a top and a bottom line (evenly spaced samples of z over `before`), pressed between flat
 * dies to `gap`: r = max(1, height/gap) where the dies reach, untouched where they do not. Columns that stick out of
 * one die only are carried along by it. With an `edge` the change from pressed to untouched is gradual.
 */
export function closeColumns(given: {
  axis: ColumnAxis
  before: readonly [number, number]
  from: number
  top: readonly number[]
  bottom: readonly number[]
  gap: number
  /** Share of the deepest squeeze over which the edge of the contact is spread; 0 is a sharp edge. */
  edge?: number
  cells?: number
}): { warp: Warp; after: readonly [number, number] } {
  const { top, bottom, gap, edge = 0, ...rest } = given
  const deepest = Math.max(...top.map((t, i) => (t - bottom[i]!) / gap)) - 1
  const soft = edge * Math.max(0, deepest)
  const over = (d: number) => (d + Math.hypot(d, soft)) / 2
  const columns = top.map((t, i) => {
    const b = bottom[i]!
    const height = t - b
    const carried = Math.max(t - gap / 2, 0) + Math.min(b + gap / 2, 0)
    return {
      shortening: 1 + over(height / gap - 1),
      middle: height > gap ? (t + b) / 2 : carried,
    }
  })
  return column({ ...rest, columns })
}

/** One closing of the dies: the section lies turned by `turns` from how it was given. */
export interface Closing {
  readonly turns: number
  readonly gap: number
}

const SAMPLES = 801

/**
 * A section pressed between flat dies again and again, turned between closings, and turned back at the end (trade:
 * squaring up, octagon, round to square; set on its corner first: bias). Columns stand and slip: no friction, no print
 * of the hammer; `edge` as for `closeColumns`. Gives the warps and the section as it has become.
 */
export function closeDies(
  outline: Outline,
  closings: readonly Closing[],
  { edge = 0, cells = 256 }: { readonly edge?: number; readonly cells?: number } = {},
): { warps: readonly Warp[]; outline: Outline } {
  const warps: Warp[] = []
  let section = outline
  let turned = 0
  const turnTo = (turns: number) => {
    if (turns === turned) return
    // A quarter or half turn moves coordinates about and costs nothing; others need a sine.
    const by = turns - turned
    warps.push(
      by === 0.25
        ? turn('quarter-back')
        : by === -0.25
          ? turn('quarter')
          : turn('angle', { turns: by }),
    )
    section = rotateOutline(section, by)
    turned = turns
  }
  for (const { turns, gap } of closings) {
    turnTo(turns)
    const closed = closeSection(section, { gap, edge, cells })
    if (!closed) continue
    warps.push(closed.warp)
    section = closed.outline
  }
  turnTo(0)
  return { warps, outline: section }
}

/** Closings on two sides by turns, each pair to the same gap, by equal ratios down to `side`; `halfSteps` in all. */
export function squaringClosings(from: number, side: number, halfSteps: number, at = 0): Closing[] {
  const pairs = Math.ceil(halfSteps / 2)
  return Array.from({ length: halfSteps }, (_, i) => ({
    turns: at + (i % 2) / 4,
    gap: from * (side / from) ** ((Math.floor(i / 2) + 1) / pairs),
  }))
}

/** Turned forward by an angle: what the metal does, so y' = y·cos − z·sin. */
function rotateOutline(outline: Outline, turns: number): Outline {
  const [c, s] = [Math.cos(2 * Math.PI * turns), Math.sin(2 * Math.PI * turns)]
  return outline.map(({ y, z }) => ({ y: y * c - z * s, z: y * s + z * c }))
}

function closeSection(
  outline: Outline,
  { gap, edge, cells }: { readonly gap: number; readonly edge: number; readonly cells: number },
) {
  if (outlineSize(outline).height <= gap) return undefined
  const ys = outline.map((p) => p.y)
  const [low, high] = [Math.min(...ys), Math.max(...ys)]
  const at = (i: number) => low + ((high - low) * i) / (SAMPLES - 1)
  const spans = verticalSpans(outline, SAMPLES, at)
  const { warp } = closeColumns({
    axis: 'y',
    before: [low, high],
    from: 0,
    top: spans.map((s) => s.top),
    bottom: spans.map((s) => s.bottom),
    gap,
    edge,
    cells,
  })
  // The column over the axis of the bar stays where it is: y' is counted from there.
  const moved = { ...warp, numbers: { ...warp.numbers, from: -carrier(warp)({ y: 0, z: 0 }).y } }
  const fine = refine(outline, (high - low) / cells)
  return { warp: moved, outline: fine.map(carrier(moved)) }
}

/** With points added till no side is longer than this. */
function refine(outline: Outline, longest: number): Outline {
  return outline.flatMap((p, i) => {
    const q = outline[(i + 1) % outline.length]!
    const parts = Math.max(1, Math.ceil(Math.hypot(q.y - p.y, q.z - p.z) / longest))
    return Array.from({ length: parts }, (_, k) => ({
      y: p.y + ((q.y - p.y) * k) / parts,
      z: p.z + ((q.z - p.z) * k) / parts,
    }))
  })
}

/** Where points of the section go, straight between the table's nodes. */
function carrier(warp: Warp): (point: Outline[number]) => Outline[number] {
  const { place, thin } = columnNodes(warp)
  const middle = warp.tables!['middle']!
  const { cell, from } = warp.numbers as Record<'cell' | 'from', number>
  return (point) => {
    let [i, top] = [0, place.length - 1]
    while (top - i > 1) {
      const half = (i + top) >> 1
      if (place[half]! <= point.y) i = half
      else top = half
    }
    const f = (point.y - place[i]!) / (place[i + 1]! - place[i]!)
    const at = (table: ArrayLike<number>) => table[i]! + f * (table[i + 1]! - table[i]!)
    return { y: from + cell * (i + f), z: (point.z - at(middle)) * at(thin) }
  }
}

interface Span {
  readonly top: number
  readonly bottom: number
}

/** Highest and lowest crossing of the outline above each place. */
function verticalSpans(outline: Outline, count: number, at: (i: number) => number): Span[] {
  const [first, step] = [at(0), at(1) - at(0)]
  const tops = new Array<number>(count).fill(-Infinity)
  const bottoms = new Array<number>(count).fill(Infinity)
  outline.forEach((p, k) => {
    const q = outline[(k + 1) % outline.length]!
    const [left, right] = p.y <= q.y ? [p, q] : [q, p]
    const begin = Math.max(0, Math.ceil((left.y - first) / step - 1e-6))
    const end = Math.min(count - 1, Math.floor((right.y - first) / step + 1e-6))
    for (let i = begin; i <= end; i++) {
      const width = right.y - left.y
      const f = width > 1e-12 ? Math.min(1, Math.max(0, (at(i) - left.y) / width)) : 0
      for (const z of width > 1e-12 ? [left.z + f * (right.z - left.z)] : [left.z, right.z]) {
        tops[i] = Math.max(tops[i]!, z)
        bottoms[i] = Math.min(bottoms[i]!, z)
      }
    }
  })
  return tops.map((top, i) => ({ top, bottom: bottoms[i]! }))
}
