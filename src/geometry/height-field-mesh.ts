import type { HeightField } from './height-field.ts'
import type { Mesh } from './mesh.ts'
import { Column, type Span, type Strand } from './mesh-column.ts'

/** How far inside a piece of the field its ends are asked for, so that a step shows its own side, m. */
const NUDGE = 1e-13

/** Facets narrower than this are not measured, m. */
const WELD = 1e-7

/** A small rounded edge gets this share of the facets the whole width gets, so that it stays round. */
const PIECES_PER_WIDTH = 8

/** Where something finer is to be shown, facets are no finer than this many for one, each way. */
const FINER = 2

/** No more facets than this along or across one smooth piece. */
const MOST = 512

/**
 * A closed mesh of a height field. Facets follow every break of the field; facets are closer where
 * a face may turn vertical. Each corner lies on the surface, so the error is that of chords:
 * halving `facet` quarters it. Between two panels, and between a step's two heights, faces are
 * laid on common upright lines, so that no crack is left.
 */
export function meshOf(field: HeightField, facet: number): Mesh {
  const builder = new Builder(field)
  const { xBreaks } = field
  const width = widestOf(field)
  const fewest = Math.min(MOST, Math.ceil(width / facet / PIECES_PER_WIDTH))
  const panels = xBreaks.slice(1).map((end, i) => new Panel(field, xBreaks[i], end, facet, fewest))
  let joint: Column | undefined
  panels.forEach((panel, p) => {
    const columns = panel.xs.map((x) => new Column(x))
    const start = joint ?? columns[0]
    columns[0] = start
    if (p === 0) start.note(panel.spansAt(0))
    for (let i = 1; i < columns.length; i++) columns[i].note(panel.spansAt(i))
    const last = columns[columns.length - 1]
    const next = panels[p + 1]
    if (next) last.note(next.spansAt(0))
    builder.panel(panel, columns, next)
    joint = last
  })
  return builder.mesh()
}

function widestOf({ xBreaks, yBreaks }: HeightField): number {
  const middles = xBreaks.slice(1).map((end, i) => yBreaks((end + xBreaks[i]) / 2))
  return Math.max(...middles.map((ys) => ys[ys.length - 1] - ys[0]))
}

/** The field between two neighbouring breaks along x. */
class Panel {
  readonly xs: readonly number[]
  /** Which spans there are here, and whether they hold metal. */
  private readonly kept: readonly number[]
  private readonly metal: readonly boolean[]
  private readonly counts: readonly number[]
  private readonly even: readonly boolean[]
  private readonly field: HeightField

  constructor(field: HeightField, start: number, end: number, facet: number, fewest: number) {
    this.field = field
    const xs = [0.05, 0.25, 0.5, 0.75, 0.95].map((u) => start + u * (end - start))
    const probes = xs.map((x) => field.yBreaks(x))
    const spans = probes[0].slice(1).map((_, j) => {
      const widths = probes.map((ys) => ys[j + 1] - ys[j])
      const wide = Math.max(...widths)
      const p = widths.indexOf(wide)
      return { j, wide, x: xs[p], low: probes[p][j], high: probes[p][j + 1] }
    })
    const kept = spans.filter(({ wide }) => wide > WELD)
    this.kept = kept.map(({ j }) => j)
    const facets = kept.map(({ x, low, high }) => {
      const finest = field.finest?.(x, (low + high) / 2) ?? Infinity
      return finest < facet ? Math.max(facet / FINER, finest) : facet
    })
    // A turn to the vertical comes at the ends of a piece; what is fine may turn anywhere.
    this.even = facets.map((own) => own < facet)
    this.metal = kept.map(({ x, low, high }) => {
      const y = (low + high) / 2
      return field.top(x, y) - field.bottom(x, y) > 0
    })
    this.counts = kept.map(({ x, low, high }, s) => {
      const faces = [field.top, field.bottom].map(
        (face) => (u: number) => face(x, low + (high - low) * u),
      )
      const bent = this.metal[s] && faces.some((face) => !straight(face))
      return pieces(high - low, facets[s], bent ? fewest : 1)
    })
    const along = kept.flatMap(({ j }, s) => {
      const side = (x: number) => field.yBreaks(x)[j]
      const end = (x: number) => field.yBreaks(x)[j + 1]
      const middle = (x: number) => (side(x) + end(x)) / 2
      return this.metal[s]
        ? [
            side,
            end,
            (x: number) => field.top(x, middle(x)),
            (x: number) => field.bottom(x, middle(x)),
          ]
        : [side, end]
    })
    const bent = along.some((line) => !straight((u) => line(start + (end - start) * u)))
    const across = Math.min(facet, ...facets)
    const spaced = this.even.includes(true) ? evenly : spread
    this.xs = spaced(start, end, pieces(end - start, across, bent ? fewest : 1))
  }

  /** The x at which column i is looked at: just inside this panel. */
  private look(i: number): number {
    const x = this.xs[i]
    return i === 0 ? x + NUDGE : i === this.xs.length - 1 ? x - NUDGE : x
  }

  /** Lower and upper side of span s at x. */
  spanAt(x: number, s: number): readonly [number, number] {
    const breaks = this.field.yBreaks(x)
    return [breaks[this.kept[s]], breaks[this.kept[s] + 1]]
  }

  spansAt(i: number): Span[] {
    const x = this.look(i)
    const breaks = this.field.yBreaks(x)
    return this.kept.map((j, s) => {
      /** What is too narrow to keep goes to its neighbour, so that no gap is left between them. */
      const low = s === 0 ? breaks[j] : breaks[this.kept[s - 1] + 1]
      const high = breaks[j + 1]
      return {
        ys: (this.even[s] ? evenly : spread)(low, high, this.counts[s]),
        metal: this.metal[s],
        heights: (y: number) => {
          const inside =
            high - low > 4 * NUDGE
              ? Math.min(Math.max(y, low + NUDGE), high - NUDGE)
              : (low + high) / 2
          const top = this.field.top(x, inside)
          const bottom = this.field.bottom(x, inside)
          return top >= bottom ? [bottom, top] : [(top + bottom) / 2, (top + bottom) / 2]
        },
      }
    })
  }
}

class Builder {
  private readonly triangles: number[] = []
  private readonly positions: number[] = []
  private chord = 0
  private readonly field: HeightField

  constructor(field: HeightField) {
    this.field = field
  }

  mesh(): Mesh {
    return {
      positions: Float64Array.from(this.positions),
      triangles: Uint32Array.from(this.triangles),
      chordError: this.chord,
    }
  }

  panel(panel: Panel, columns: readonly Column[], next: Panel | undefined): void {
    const strands = columns.map((column, i) => column.strands(panel.spansAt(i)))
    if (columns[0].isFirst) {
      columns[0].isFirst = false
      this.caps(columns[0], [], strands[0])
    }
    for (let i = 1; i < columns.length; i++) this.strip(panel, columns, strands, i)
    const last = columns[columns.length - 1]
    last.isFirst = false
    this.caps(last, strands[strands.length - 1], next ? last.strands(next.spansAt(0)) : [])
  }

  /** Faces and upright walls between columns i − 1 and i. */
  private strip(
    panel: Panel,
    columns: readonly Column[],
    strands: readonly Strand[][],
    i: number,
  ): void {
    const [a, b] = [columns[i - 1], columns[i]]
    const [from, to] = [strands[i - 1], strands[i]]
    for (let s = 0; s < from.length; s++) {
      if (!from[s].metal) continue
      this.chords(a, b, from[s], to[s], panel.spanAt((a.x + b.x) / 2, s))
      const corners = (c: Column, st: Strand, heights: readonly number[]) =>
        st.lines.map((line, k) => this.corner(c, line, heights[k]))
      this.zip(corners(a, from[s], from[s].tops), corners(b, to[s], to[s].tops), false)
      this.zip(corners(a, from[s], from[s].bottoms), corners(b, to[s], to[s].bottoms), true)
    }
    for (let s = 0; s <= from.length; s++) {
      const left = [from[s - 1], to[s - 1]]
      const right = [from[s], to[s]]
      const ends = (k: 0 | 1) =>
        [
          left[k]?.metal ? left[k].end('last') : undefined,
          right[k]?.metal ? right[k].end('first') : undefined,
        ] as const
      this.wall([a, b], [ends(0), ends(1)], true)
    }
  }

  /** Upright faces across the bar where one panel's section stands out past the next one's. */
  private caps(column: Column, before: readonly Strand[], after: readonly Strand[]): void {
    for (let line = 0; line + 1 < column.count; line++) {
      const left = before.find((s) => s.covers(line))
      const right = after.find((s) => s.covers(line))
      const at = (k: 0 | 1) =>
        [
          left?.metal ? left.at(line + k) : undefined,
          right?.metal ? right.at(line + k) : undefined,
        ] as const
      this.wall([column, column], [at(0), at(1)], false)
    }
  }

  /** What of the first run of metal stands past the second, and the other way, as upright faces. */
  private wall(
    columns: readonly [Column, Column],
    ends: readonly [readonly [End?, End?], readonly [End?, End?]],
    flipped: boolean,
  ): void {
    const chain = (k: 0 | 1, from: number, to: number, line: number) =>
      columns[k].between(line, from, to).map((z) => this.corner(columns[k], line, z))
    const face = (pick: (end: readonly [End?, End?]) => readonly [number, number, number]) => {
      const [p, q] = [pick(ends[0]), pick(ends[1])]
      this.zip(chain(0, p[1], p[2], p[0]), chain(1, q[1], q[2], q[0]), flipped)
    }
    const [first, second] = ends[0]
    if (first && !second) face(([l]) => [l![0], l![1], l![2]])
    if (!first && second) face(([, r]) => [r![0], r![2], r![1]])
    if (first && second) {
      face(([l, r]) => [l![0], r![2], l![2]])
      face(([l, r]) => [l![0], l![1], r![1]])
    }
  }

  /** Triangles between two chains of corners running the same way. */
  private zip(a: readonly number[], b: readonly number[], flipped: boolean): void {
    let [i, j] = [0, 0]
    while (i + 1 < a.length || j + 1 < b.length) {
      const stepA =
        j + 1 >= b.length ||
        (i + 1 < a.length && (i + 1) * (b.length - 1) <= (j + 1) * (a.length - 1))
      const [p, q, r] = stepA ? [a[i], b[j], a[i + 1]] : [a[i], b[j], b[j + 1]]
      if (p !== q && q !== r && r !== p) this.triangles.push(p, flipped ? r : q, flipped ? q : r)
      if (stepA) i++
      else j++
    }
  }

  private corner(column: Column, line: number, z: number): number {
    return column.corner(line, z, (y, height) => {
      this.positions.push(column.x, y, height)
      return this.positions.length / 3 - 1
    })
  }

  /** How far the surface stands off the middle of each facet, and each side off its chord in plan. */
  private chords(
    a: Column,
    b: Column,
    from: Strand,
    to: Strand,
    span: readonly [number, number],
  ): void {
    const wide = b.x - a.x
    if (from.lines.length !== to.lines.length || wide < WELD) return
    const x = (a.x + b.x) / 2
    const [low, high] = span
    for (const k of [0, from.lines.length - 1]) {
      const [p, q] = [a.y(from.lines[k]), b.y(to.lines[k])]
      const off = Math.abs((k === 0 ? low : high) - (p + q) / 2)
      this.chord = Math.max(this.chord, (off * wide) / Math.hypot(wide, q - p))
    }
    for (let k = 1; k < from.lines.length; k++) {
      const [p, q] = [
        a.y(from.lines[k - 1]) + b.y(to.lines[k - 1]),
        a.y(from.lines[k]) + b.y(to.lines[k]),
      ]
      const y = (p + q) / 4
      if (q - p < WELD || y < low + WELD || y > high - WELD) continue
      for (const [which, height] of [
        ['tops', this.field.top(x, y)],
        ['bottoms', this.field.bottom(x, y)],
      ] as const) {
        const [f, t] = [from[which], to[which]]
        const across = (f[k] + t[k] - f[k - 1] - t[k - 1]) / (q - p)
        const along = (t[k] + t[k - 1] - f[k] - f[k - 1]) / (2 * wide)
        const off = Math.abs(height - (f[k] + t[k] + f[k - 1] + t[k - 1]) / 4)
        this.chord = Math.max(this.chord, off / Math.hypot(1, across, along))
      }
    }
  }
}

/** Line, bottom, top of one run of metal where it ends. */
type End = readonly [line: number, bottom: number, top: number]

function pieces(length: number, facet: number, fewest: number): number {
  return Math.max(fewest, Math.min(MOST, Math.ceil(length / facet)))
}

/** Whether a line over 0…1 stays within 10 nm of its chord at three places. */
function straight(line: (u: number) => number): boolean {
  const [a, b] = [line(0.01), line(0.99)]
  return [0.2, 0.5, 0.85].every(
    (u) => Math.abs(line(u) - (a + ((b - a) * (u - 0.01)) / 0.98)) < 1e-8,
  )
}

/** n + 1 places from a to b, closer at both ends (equal steps of angle), ends exact. */
function spread(a: number, b: number, n: number): number[] {
  return Array.from({ length: n + 1 }, (_, i) =>
    i === 0 ? a : i === n ? b : (a + b) / 2 - ((b - a) / 2) * Math.cos((Math.PI * i) / n),
  )
}

function evenly(a: number, b: number, n: number): number[] {
  return Array.from({ length: n + 1 }, (_, i) => (i === n ? b : a + ((b - a) * i) / n))
}
