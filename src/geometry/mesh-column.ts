/** Corners closer than this are one corner: 0.1 µm. */
const WELD = 1e-7

/** One smooth piece of the section at a column, as its panel sees it. */
export interface Span {
  readonly ys: readonly number[]
  readonly metal: boolean
  /** Bottom and top there. */
  heights(y: number): readonly [number, number]
}

/** The same piece on the column's upright lines. */
export class Strand {
  readonly lines: readonly number[]
  readonly bottoms: readonly number[]
  readonly tops: readonly number[]
  readonly metal: boolean

  constructor(
    lines: readonly number[],
    bottoms: readonly number[],
    tops: readonly number[],
    metal: boolean,
  ) {
    this.lines = lines
    this.bottoms = bottoms
    this.tops = tops
    this.metal = metal
  }

  end(which: 'first' | 'last'): readonly [number, number, number] {
    const k = which === 'first' ? 0 : this.lines.length - 1
    return [this.lines[k], this.bottoms[k], this.tops[k]]
  }

  at(line: number): readonly [number, number, number] {
    const k = line - this.lines[0]
    return [line, this.bottoms[k], this.tops[k]]
  }

  /** Whether the strip from this line to the next lies in it. */
  covers(line: number): boolean {
    return line >= this.lines[0] && line < this.lines[this.lines.length - 1]
  }
}

/**
 * All corners at one x: upright lines, and on each the heights where faces meet. Both neighbours
 * must be noted before corners are asked for, so that a face's upright side is divided wherever
 * any other face ends on it.
 */
export class Column {
  readonly x: number
  isFirst = true
  private readonly noted: (readonly Span[])[] = []
  private lines: { readonly y: number; readonly zs: number[]; readonly ids: number[] }[] | undefined

  constructor(x: number) {
    this.x = x
  }

  note(spans: readonly Span[]): void {
    this.noted.push(spans)
  }

  get count(): number {
    return this.grown().length
  }

  y(line: number): number {
    return this.grown()[line].y
  }

  strands(spans: readonly Span[]): Strand[] {
    const lines = this.grown()
    return spans.map((span) => {
      const first = nearestIn(lines, span.ys[0])
      const last = nearestIn(lines, span.ys[span.ys.length - 1])
      const own = Array.from({ length: last - first + 1 }, (_, k) => first + k)
      const heights = own.map((line) => span.heights(lines[line].y))
      return new Strand(
        own,
        heights.map(([bottom]) => bottom),
        heights.map(([, top]) => top),
        span.metal,
      )
    })
  }

  /** Heights on a line from one to another, both ends with it, in that order. */
  between(line: number, from: number, to: number): number[] {
    const { zs } = this.grown()[line]
    const [i, j] = [nearestOf(zs, from), nearestOf(zs, to)]
    return i <= j ? zs.slice(i, j + 1) : zs.slice(j, i + 1).reverse()
  }

  corner(line: number, z: number, make: (y: number, z: number) => number): number {
    const { y, zs, ids } = this.grown()[line]
    const k = nearestOf(zs, z)
    return (ids[k] ??= make(y, zs[k]))
  }

  private grown() {
    if (this.lines) return this.lines
    const ys = joined(this.noted.flatMap((spans) => spans.flatMap((span) => span.ys)))
    const lines = ys.map((y) => ({ y, zs: [] as number[], ids: [] as number[] }))
    this.lines = lines
    for (const spans of this.noted)
      for (const strand of this.strands(spans))
        if (strand.metal)
          strand.lines.forEach((line, k) => lines[line].zs.push(strand.bottoms[k], strand.tops[k]))
    for (const line of lines) line.zs.splice(0, Infinity, ...joined(line.zs))
    return lines
  }
}

function joined(values: readonly number[]): number[] {
  const sorted = [...values].sort((a, b) => a - b)
  const kept: number[] = []
  for (const value of sorted)
    if (kept.length === 0 || value - kept[kept.length - 1] > WELD) kept.push(value)
  return kept
}

function nearestOf(sorted: readonly number[], value: number): number {
  let best = 0
  for (let i = 1; i < sorted.length; i++)
    if (Math.abs(sorted[i] - value) < Math.abs(sorted[best] - value)) best = i
  return best
}

function nearestIn(lines: readonly { readonly y: number }[], y: number): number {
  let [low, high] = [0, lines.length - 1]
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (lines[middle].y <= y) low = middle
    else high = middle
  }
  return Math.abs(lines[low].y - y) <= Math.abs(lines[high].y - y) ? low : high
}
