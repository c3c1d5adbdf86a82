/** A line to plot: points in order of x, drawn with one sign. */
export interface PlotLine {
  readonly sign: string
  readonly points: readonly (readonly [x: number, y: number])[]
}

export interface PlotAxes {
  /** Characters inside the frame. */
  readonly width: number
  readonly height: number
  /** Lowest and highest shown on each axis; left out, what the points reach. */
  readonly x?: readonly [number, number]
  readonly y?: readonly [number, number]
  /** How numbers are told on each axis. */
  sayX(x: number): string
  sayY(y: number): string
}

/** Lines drawn with letters: y upward, numbers at the ends of both axes and half way up. */
export function textPlot(lines: readonly PlotLine[], axes: PlotAxes): string[] {
  const points = lines.flatMap((l) => l.points)
  if (points.length === 0) return []
  const { width, height } = axes
  const [x0, x1] = axes.x ?? span(points.map(([x]) => x))
  const [y0, y1] = axes.y ?? span(points.map(([, y]) => y))
  const grid = Array.from({ length: height }, () => new Array<string>(width).fill(' '))
  for (const { sign, points: own } of lines) {
    for (let c = 0; c < width; c++) {
      const x = x0 + ((x1 - x0) * (c + 0.5)) / width
      const y = valueAt(own, x)
      if (y === undefined) continue
      const r = Math.round(((y1 - y) / (y1 - y0)) * (height - 1))
      if (r >= 0 && r < height) grid[r]![c] = sign
    }
  }
  const marks = new Map([
    [0, axes.sayY(y1)],
    [Math.round((height - 1) / 2), axes.sayY((y0 + y1) / 2)],
    [height - 1, axes.sayY(y0)],
  ])
  const margin = Math.max(...[...marks.values()].map((m) => m.length))
  const rows = grid.map(
    (row, r) => `${(marks.get(r) ?? '').padStart(margin)} ┤${row.join('').trimEnd()}`,
  )
  const [left, right] = [axes.sayX(x0), axes.sayX(x1)]
  const gap = Math.max(1, width - left.length - right.length)
  return [
    ...rows,
    `${' '.repeat(margin)} └${'─'.repeat(width)}`,
    `${' '.repeat(margin + 2)}${left}${' '.repeat(gap)}${right}`,
  ]
}

/** Lowest and highest, a little apart where they are one. */
function span(values: readonly number[]): readonly [number, number] {
  const low = Math.min(...values)
  const high = Math.max(...values)
  return high > low ? [low, high] : [low - 0.5, high + 0.5]
}

/** The line at a place between its points; nothing beyond its ends. */
function valueAt(points: PlotLine['points'], x: number): number | undefined {
  for (let i = 1; i < points.length; i++) {
    const [a, p] = points[i - 1]!
    const [b, q] = points[i]!
    if (x >= a && x <= b) return b > a ? p + ((q - p) * (x - a)) / (b - a) : q
  }
  return undefined
}
