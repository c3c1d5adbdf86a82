/** The bars of a route as lines in the margin: each from its first row to the row that takes it in. */
export interface Lane {
  readonly bar: string
  /** 0 next to the card, counted outwards. */
  readonly lane: number
  readonly from: number
  readonly to: number
  /** Row of another bar it ends in. */
  readonly joins: boolean
}

interface LaidRow {
  readonly bar: string
  readonly joins: readonly string[]
}

/** Lays the lanes: the bar that becomes the piece runs next to the card, others where there is room. */
export function layLanes(rows: readonly LaidRow[], finish: string): Lane[] {
  const bars = [...new Set(rows.map((row) => row.bar))]
  const spans = bars.map((bar) => {
    const from = rows.findIndex((row) => row.bar === bar)
    const last = rows.findLastIndex((row) => row.bar === bar)
    const taken = rows.findIndex((row, i) => i > last && row.bar !== bar && row.joins.includes(bar))
    return { bar, from, to: taken < 0 ? last : taken, joins: taken >= 0 }
  })
  const lanes: Lane[] = []
  const ordered = [...spans].sort(
    (a, b) => Number(b.bar === finish) - Number(a.bar === finish) || a.from - b.from,
  )
  for (const span of ordered) {
    let lane = span.bar === finish ? 0 : 1
    while (lanes.some((l) => l.lane === lane && l.from <= span.to && span.from <= l.to)) lane++
    lanes.push({ ...span, lane })
  }
  return lanes
}
