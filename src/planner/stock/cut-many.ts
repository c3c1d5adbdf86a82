import { cutExactly } from './cut-exactly.ts'
import {
  type CutBar,
  type CuttingPlan,
  type CuttingRules,
  FITS,
  type StockLength,
  type WantedLength,
  costOfBar,
  roomOf,
  takenBy,
} from './cutting.ts'
import { LinearProgramme } from './simplex.ts'

/** Steps a bar is divided into when patterns are looked for; wanted lengths are rounded up to them. */
const STEPS = 6000
const MOST_PATTERNS = 600
/** Pieces that are few enough to be cut exactly. */
export const FEW_PIECES = 12

interface Pattern {
  readonly stock: number
  readonly pieces: readonly number[]
  readonly cost: number
}

/**
 * Cuts many pieces: patterns by column generation (Gilmore and Gomory, from memory), each the best
 * answer to the present prices of the pieces; whole bars of them first, what is left over again, and
 * the last few pieces exactly. The programme's optimum is the bound that is told.
 */
export function cutMany(
  wanted: readonly WantedLength[],
  stock: readonly StockLength[],
  rules: CuttingRules,
  signal?: AbortSignal,
): CuttingPlan {
  const counts = wanted.map((w) => w.count)
  const left = stock.map((s) => s.count)
  const bars: CutBar[] = []
  const patterns: Pattern[] = []
  let bound = 0
  let best: readonly CutBar[] | undefined
  const better = (ways: readonly CutBar[] | undefined) => {
    if (!ways) return
    const cost = sumCost(ways, wanted, stock, rules)
    if (!best || cost < sumCost(best, wanted, stock, rules) - 1e-12) best = ways
  }
  for (let round = 0; counts.some((n) => n > 0); round++) {
    signal?.throwIfAborted()
    const total = counts.reduce((a, b) => a + b, 0)
    const rest = wanted.map((w, i) => ({ ...w, count: counts[i] }))
    const longestFirst = fill(rest, stock, left, rules)
    better(longestFirst && [...bars, ...longestFirst])
    if (total <= FEW_PIECES) {
      const few = cutFew(rest, stock, left, rules)
      bars.push(...few)
      few.forEach((bar) => bar.pieces.forEach((n, i) => (counts[i] -= n)))
      if (round === 0) bound = sumCost(bars, wanted, stock, rules)
      break
    }
    const optimum = relax(rest, stock, left, rules, patterns)
    if (round === 0) bound = optimum.bound
    const used = optimum.amounts
      .map((amount, p) => ({ amount, pattern: patterns[p] }))
      .filter(({ amount }) => amount > 1e-7)
    const whole = used.filter(({ amount }) => amount >= 1 - 1e-7)
    const take = whole.length > 0 ? whole : used.sort((a, b) => b.amount - a.amount).slice(0, 1)
    if (take.length === 0) break
    let cutNow = 0
    for (const { amount, pattern } of take) {
      for (let k = 0; k < Math.max(1, Math.floor(amount + 1e-7)); k++) {
        const pieces = pattern.pieces.map((n, i) => Math.min(n, counts[i]))
        if (left[pattern.stock] <= 0 || pieces.every((n) => n === 0)) break
        left[pattern.stock]--
        pieces.forEach((n, i) => (counts[i] -= n))
        bars.push({ stock: pattern.stock, pieces })
        cutNow++
      }
    }
    if (cutNow === 0) break
  }
  if (counts.every((n) => n === 0)) better(bars)
  const cost = sumCost(best ?? bars, wanted, stock, rules)
  const tight = roundUp(bound, stock, rules)
  return {
    bars: best ?? bars,
    cost,
    bound: Math.min(tight, cost),
    proved: cost <= tight * (1 + 1e-9),
    missing: best ? [] : counts.flatMap((n, i) => (n > 0 ? [i] : [])),
  }
}

/**
 * Longest pieces first into each new bar, of the kind of bar that then costs least for what is cut
 * from it: how the last bars of a cutting plan are filled. Undefined where bars run out.
 */
function fill(
  wanted: readonly WantedLength[],
  stock: readonly StockLength[],
  there: readonly number[],
  rules: CuttingRules,
): CutBar[] | undefined {
  const counts = wanted.map((w) => w.count)
  const left = [...there]
  const order = [...wanted.keys()].sort((a, b) => wanted[b].length - wanted[a].length)
  const bars: CutBar[] = []
  while (counts.some((n) => n > 0)) {
    let best: { bar: CutBar; per: number } | undefined
    stock.forEach((s, index) => {
      if (left[index] <= 0) return
      const pieces = wanted.map(() => 0)
      let room = roomOf(s, rules) + FITS
      for (const i of order) {
        const takes = wanted[i].length + rules.kerf
        pieces[i] = Math.min(counts[i], Math.max(0, Math.floor(room / takes)))
        room -= pieces[i] * takes
      }
      const metal = pieces.reduce((sum, n, i) => sum + n * wanted[i].length, 0)
      if (!(metal > 0)) return
      const per = costOfBar(s, takenBy(pieces, wanted, rules), rules) / metal
      if (!best || per < best.per - 1e-12) best = { bar: { stock: index, pieces }, per }
    })
    if (!best) return undefined
    const { bar } = best as { bar: CutBar }
    bars.push(bar)
    left[bar.stock]--
    bar.pieces.forEach((n, i) => (counts[i] -= n))
  }
  return bars
}

/** Where every bar costs the same, come what may, so do all ways but by whole bars. */
function roundUp(bound: number, stock: readonly StockLength[], rules: CuttingRules): number {
  const whole = stock[0].weight * stock[0].length
  const same = stock.every((s) => Math.abs(s.weight * s.length - whole) < 1e-12)
  const keptNever = stock.every((s) => roomOf(s, rules) - rules.kerf < rules.leastRemnant)
  return same && keptNever ? Math.ceil(bound / whole - 1e-6) * whole : bound
}

function sumCost(
  bars: readonly CutBar[],
  wanted: readonly WantedLength[],
  stock: readonly StockLength[],
  rules: CuttingRules,
): number {
  return bars.reduce(
    (sum, bar) => sum + costOfBar(stock[bar.stock], takenBy(bar.pieces, wanted, rules), rules),
    0,
  )
}

function cutFew(
  rest: readonly WantedLength[],
  stock: readonly StockLength[],
  left: readonly number[],
  rules: CuttingRules,
): readonly CutBar[] {
  const there = stock.map((s, i) => ({ ...s, count: left[i] }))
  return cutExactly(rest, there, rules)?.bars ?? []
}

/** The relaxed programme, patterns added until none is worth adding. */
function relax(
  wanted: readonly WantedLength[],
  stock: readonly StockLength[],
  left: readonly number[],
  rules: CuttingRules,
  patterns: Pattern[],
): { readonly amounts: number[]; readonly bound: number } {
  const bounded = stock.flatMap((_, s) => (Number.isFinite(left[s]) ? [s] : []))
  const rows = [
    ...wanted.map(({ count }) => ({ least: true, amount: count })),
    ...bounded.map((s) => ({ least: false, amount: left[s] })),
  ]
  const programme = new LinearProgramme(rows)
  const add = (pattern: Pattern) => {
    const gives = new Float64Array(rows.length)
    pattern.pieces.forEach((n, i) => (gives[i] = n))
    const row = bounded.indexOf(pattern.stock)
    if (row >= 0) gives[wanted.length + row] = 1
    programme.columns.push({ cost: pattern.cost, gives })
  }
  if (patterns.length === 0) patterns.push(...plainPatterns(wanted, stock, rules))
  patterns.forEach(add)
  let optimum = programme.solve()
  let bound = 0
  while (patterns.length < MOST_PATTERNS) {
    let worth = 0
    for (let s = 0; s < stock.length; s++) {
      if (left[s] <= 0) continue
      const row = bounded.indexOf(s)
      const rent = row >= 0 ? optimum.prices[wanted.length + row] : 0
      const found = bestPattern(wanted, stock[s], rules, optimum.prices)
      const reduced = found.cost - found.value - rent
      if (reduced > -1e-7 * Math.max(1, found.cost)) continue
      worth++
      const pattern = { stock: s, pieces: found.pieces, cost: found.cost }
      patterns.push(pattern)
      add(pattern)
    }
    bound = optimum.cost
    if (worth === 0) break
    optimum = programme.solve()
  }
  return { amounts: [...optimum.amounts], bound }
}

/** As many of one piece as a bar holds: enough to begin with. */
function plainPatterns(
  wanted: readonly WantedLength[],
  stock: readonly StockLength[],
  rules: CuttingRules,
): Pattern[] {
  return stock.flatMap((s, index) =>
    wanted.flatMap(({ length }, i) => {
      const most = Math.floor((roomOf(s, rules) + FITS) / (length + rules.kerf))
      if (most < 1) return []
      const pieces = wanted.map((_, k) => (k === i ? most : 0))
      return [{ stock: index, pieces, cost: costOfBar(s, takenBy(pieces, wanted, rules), rules) }]
    }),
  )
}

/** The pattern worth most over its cost at these prices: a knapsack over the steps of the bar. */
function bestPattern(
  wanted: readonly WantedLength[],
  stock: StockLength,
  rules: CuttingRules,
  prices: Float64Array,
): { readonly pieces: number[]; readonly value: number; readonly cost: number } {
  const room = roomOf(stock, rules)
  const step = room / STEPS
  const sizes = wanted.map(({ length }) => Math.ceil((length + rules.kerf - FITS) / step))
  const worth = new Float64Array(STEPS + 1).fill(-1)
  const last = new Int16Array(STEPS + 1).fill(-1)
  worth[0] = 0
  for (let i = 0; i < wanted.length; i++) {
    const price = prices[i]
    const size = sizes[i]
    if (!(price > 0) || wanted[i].count === 0) continue
    for (let at = size; at <= STEPS; at++) {
      if (worth[at - size] < 0) continue
      const value = worth[at - size] + price
      if (value > worth[at]) {
        worth[at] = value
        last[at] = i
      }
    }
  }
  let best = { at: 0, gain: -Infinity, cost: 0 }
  for (let at = 1; at <= STEPS; at++) {
    if (worth[at] < 0) continue
    const cost = costOfBar(stock, at * step, rules)
    if (worth[at] - cost > best.gain) best = { at, gain: worth[at] - cost, cost }
  }
  const pieces = wanted.map(() => 0)
  for (let at = best.at; at > 0 && last[at] >= 0; at -= sizes[last[at]]) pieces[last[at]]++
  const cost = costOfBar(stock, takenBy(pieces, wanted, rules), rules)
  return { pieces, value: worth[best.at], cost }
}
