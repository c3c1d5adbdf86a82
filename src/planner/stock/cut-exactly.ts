import {
  type CutBar,
  type CuttingPlan,
  type CuttingRules,
  FITS,
  type StockLength,
  type WantedLength,
  costOfBar,
  roomOf,
} from './cutting.ts'

interface OpenBar {
  readonly stock: number
  taken: number
  readonly pieces: number[]
}

/** Nodes looked at before the best found so far is taken unproved. */
const MOST_NODES = 400_000

/**
 * The best way to cut a few pieces: every piece in turn, longest first, goes into each bar that is
 * open and into one of each kind not yet open; a branch is dropped when the metal it must use up
 * already costs as much as the best way found.
 */
export function cutExactly(
  wanted: readonly WantedLength[],
  stock: readonly StockLength[],
  rules: CuttingRules,
): CuttingPlan | undefined {
  const items = wanted
    .flatMap(({ length, count }, kind) => Array.from({ length: count }, () => ({ length, kind })))
    .sort((a, b) => b.length - a.length)
  const lightest = Math.min(...stock.map((s) => s.weight))
  // Metal still to be cut, at the lightest weight: what every way must at least use up.
  const still = new Float64Array(items.length + 1)
  for (let i = items.length - 1; i >= 0; i--) still[i] = still[i + 1] + items[i].length * lightest
  const left = stock.map((s) => s.count)
  const open: OpenBar[] = []
  let best: { cost: number; bars: CutBar[] } | undefined
  let nodes = 0

  const floor = (bar: OpenBar) => {
    const s = stock[bar.stock]
    return s.weight * Math.max(0, bar.taken - rules.kerf * bar.pieces.reduce((a, b) => a + b, 0))
  }
  const visit = (i: number, from: number) => {
    if (++nodes > MOST_NODES) return
    if (i === items.length) {
      const cost = open.reduce((sum, b) => sum + costOfBar(stock[b.stock], b.taken, rules), 0)
      if (!best || cost < best.cost - 1e-12)
        best = { cost, bars: open.map(({ stock, pieces }) => ({ stock, pieces: [...pieces] })) }
      return
    }
    if (best && open.reduce((sum, b) => sum + floor(b), still[i]) >= best.cost - 1e-12) return
    const { length, kind } = items[i]
    const takes = length + rules.kerf
    // Like pieces go into bars in order: their exchange would be the same way again.
    const alike = i > 0 && items[i - 1].kind === kind
    const tried = new Set<string>()
    for (let b = alike ? from : 0; b < open.length; b++) {
      const bar = open[b]
      if (bar.taken + takes > roomOf(stock[bar.stock], rules) + FITS) continue
      const key = `${bar.stock} ${bar.pieces.join()}`
      if (tried.has(key)) continue
      tried.add(key)
      bar.taken += takes
      bar.pieces[kind]++
      visit(i + 1, b)
      bar.taken -= takes
      bar.pieces[kind]--
    }
    for (let s = 0; s < stock.length; s++) {
      if (left[s] <= 0 || takes > roomOf(stock[s], rules) + FITS) continue
      left[s]--
      const pieces = wanted.map((_, k) => (k === kind ? 1 : 0))
      open.push({ stock: s, taken: takes, pieces })
      visit(i + 1, open.length - 1)
      open.pop()
      left[s]++
    }
  }
  visit(0, 0)
  if (!best) return undefined
  const proved = nodes <= MOST_NODES
  return { ...best, bound: proved ? best.cost : still[0], proved, missing: [] }
}
