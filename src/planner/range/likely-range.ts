import type { Smithy } from '#operations'
import type { Tolerances } from '#shop'
import type { Problem } from '#problem'
import type { Plan } from '../plan.ts'
import { type DrawOrder, type Drawn, drawPlan, reasonOf } from './draw-plan.ts'

/** A figure as it is likely to turn out. */
export interface Band {
  readonly mean: number
  readonly deviation: number
  /** One making in twenty is below, one in twenty above. */
  readonly low: number
  readonly middle: number
  readonly high: number
}

/** How a plan is likely to turn out in this shop. */
export interface LikelyRange {
  readonly draws: number
  readonly mass?: Band
  readonly length?: Band
  readonly lines?: Band
  /** Length to spare when the piece is made from the bar, m. */
  readonly spare?: Band
  readonly heats?: Band
  /** Share of the makings that come up short of the piece, and its own deviation. */
  readonly short: number
  readonly shortDeviation: number
  readonly reasons: readonly { readonly problem: Problem; readonly times: number }[]
}

/** Bands of some draws, however many threads drew them. */
export function rangeOf(drawn: readonly Drawn[]): LikelyRange {
  const parts = drawn.toSorted((a, b) => a.from - b.from)
  const draws = parts.reduce((sum, part) => sum + part.count, 0)
  const short = parts.reduce((sum, part) => sum + part.short, 0) / Math.max(1, draws)
  const bands: Partial<Record<'mass' | 'length' | 'lines' | 'spare' | 'heats', Band>> = {}
  for (const name of ['mass', 'length', 'lines', 'spare', 'heats'] as const) {
    const band = bandOf(parts.map((part) => part[name]))
    if (band) bands[name] = band
  }
  const reasons = new Map<string, { problem: Problem; times: number }>()
  for (const { problem, times } of parts.flatMap((part) => part.reasons)) {
    const key = reasonOf(problem)
    reasons.set(key, {
      problem: reasons.get(key)?.problem ?? problem,
      times: (reasons.get(key)?.times ?? 0) + times,
    })
  }
  return {
    draws,
    ...bands,
    short,
    shortDeviation: Math.sqrt((short * (1 - short)) / Math.max(1, draws)),
    reasons: [...reasons.values()].sort((a, b) => b.times - a.times),
  }
}

function bandOf(columns: readonly Float64Array[]): Band | undefined {
  const whole = new Float64Array(columns.reduce((sum, c) => sum + c.length, 0))
  let n = 0
  for (const column of columns) for (const v of column) if (Number.isFinite(v)) whole[n++] = v
  if (n === 0) return undefined
  const values = whole.subarray(0, n).sort()
  const mean = values.reduce((sum, v) => sum + v, 0) / n
  const square = values.reduce((sum, v) => sum + (v - mean) ** 2, 0)
  return {
    mean,
    deviation: Math.sqrt(square / Math.max(1, n - 1)),
    low: quantile(values, 0.05),
    middle: quantile(values, 0.5),
    high: quantile(values, 0.95),
  }
}

/** Between the ordered values, linearly. */
function quantile(values: Float64Array, share: number): number {
  const at = share * (values.length - 1)
  const [low, high] = [Math.floor(at), Math.ceil(at)]
  return values[low] + (values[high] - values[low]) * (at - low)
}

/** How much longer to cut the stacks so that no more than a share of the makings comes up short. */
export interface Allowance {
  /** Share by which every stack is cut longer. */
  readonly longer: number
  /** Share that still comes up short then. */
  readonly short: number
}

/** Longest allowance worth naming: past it something else than length is short. */
const MOST_LONGER = 0.5
const HALVINGS = 9

/** The least allowance that keeps the risk, found on the same makings each time; undefined where no length does. */
export function allowanceFor(
  risk: number,
  plan: Plan,
  smithy: Smithy,
  tolerances: Tolerances,
  order: Pick<DrawOrder, 'seed' | 'count'>,
  signal?: AbortSignal,
): Allowance | undefined {
  const shortAt = (longer: number) => {
    signal?.throwIfAborted()
    return drawPlan(plan, smithy, tolerances, { ...order, from: 0, longer }).short / order.count
  }
  const now = shortAt(0)
  if (now <= risk) return { longer: 0, short: now }
  let [low, high] = [0, MOST_LONGER]
  let least = shortAt(high)
  if (least > risk) return undefined
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2
    const short = shortAt(middle)
    if (short > risk) low = middle
    else [high, least] = [middle, short]
  }
  return { longer: high, short: least }
}
