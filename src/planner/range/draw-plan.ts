import type { Problem } from '#problem'
import { type Billet, UNWEIGHED, massOf, sharesOf } from '#billet'
import type { Smithy } from '#operations'
import type { Tolerances } from '#shop'
import { faceLines } from '../face-lines.ts'
import type { DoneStep, Plan } from '../plan.ts'
import { barsTaken } from '../route.ts'
import { Draws } from './draws.ts'
import { type Vary, dayOf, variationOf } from './variation.ts'

/** Which makings to draw: the same seed and numbers give the same makings anywhere. */
export interface DrawOrder {
  readonly seed: number
  /** Number of the first draw, and how many. */
  readonly from: number
  readonly count: number
  /** Every first stack and bar is cut longer by this share. */
  readonly longer?: number
}

/** What came of some makings, one number a draw; NaN where the piece came up short before. */
export interface Drawn {
  /** Number of the first of them. */
  readonly from: number
  readonly count: number
  /** Finished mass, kg. */
  readonly mass: Float64Array
  /** Finished length, m. */
  readonly length: Float64Array
  /** Lines across the face, per metre; NaN where none stand on edge. */
  readonly lines: Float64Array
  /** What the bar is longer than need be when the piece is made from it, m; negative is short. */
  readonly spare: Float64Array
  readonly heats: Float64Array
  /** Makings that did not come through. */
  readonly short: number
  /** Where and why, the commonest first. */
  readonly reasons: readonly { readonly problem: Problem; readonly times: number }[]
}

/** One making: finished bar and how its shaping went, or what stopped it. */
interface Making {
  readonly finished: Billet
  readonly spare: number
  readonly heats: number
}

/** Steps that need a certain length of bar to make the piece from. */
const shaping = ['forge to shape', 'grind to shape']

/** Makes the piece over and over, everything as far off as it may happen to be. */
export function drawPlan(
  plan: Plan,
  smithy: Smithy,
  tolerances: Tolerances,
  { seed, from, count, longer = 0 }: DrawOrder,
): Drawn {
  const draws = new Draws(seed)
  const making = new Maker(plan, smithy, tolerances, longer)
  const column = () => new Float64Array(count).fill(NaN)
  const [mass, length, lines, spare, heats] = [column(), column(), column(), column(), column()]
  const density = meanDensity(plan.finished, smithy)
  const { piece } = smithy
  const surface = piece?.surface ?? 0
  const reasons = new Map<string, { problem: Problem; times: number }>()
  let short = 0
  for (let i = 0; i < count; i++) {
    draws.begin(from + i)
    const made = making.once(draws)
    // Drawn whatever came before, so that one draw never shifts another's.
    const finish = (tolerances.finish / 2) * draws.normal()
    if ('what' in made) {
      short++
      const key = reasonOf(made)
      const known = reasons.get(key)
      reasons.set(key, { problem: known?.problem ?? made, times: (known?.times ?? 0) + 1 })
      continue
    }
    const { finished } = made
    mass[i] = piece
      ? (piece.volume + (surface * finish) / 2) * density
      : massOf(finished, smithy.densities)
    length[i] = finished.size.length + (piece ? finish : 0)
    lines[i] = faceLines(finished)?.perMetre ?? NaN
    spare[i] = made.spare
    heats[i] = made.heats
  }
  return {
    from,
    count,
    mass,
    length,
    lines,
    spare,
    heats,
    short,
    reasons: [...reasons.values()].sort((a, b) => b.times - a.times),
  }
}

class Maker {
  private readonly plan: Plan
  private readonly tolerances: Tolerances
  private readonly smithy: Smithy
  private readonly longer: number
  private readonly varied: readonly Vary[]
  /** Length each shaping step asked for in the plan, m. */
  private readonly wanted: readonly (number | undefined)[]

  constructor(plan: Plan, smithy: Smithy, tolerances: Tolerances, longer: number) {
    this.plan = plan
    this.tolerances = tolerances
    this.longer = longer
    this.smithy = { ...smithy, densities: UNWEIGHED }
    this.varied = plan.steps.map((step) => variationOf(step, smithy.shop, tolerances))
    this.wanted = plan.steps.map((step, i) => shapingNeeds(plan.steps, step, i))
  }

  once(draws: Draws): Making | Problem {
    const day = dayOf(draws, this.tolerances)
    const made = new Map<string, Billet>()
    let spare = NaN
    let heats = 0
    let last: Billet | undefined
    for (let i = 0; i < this.plan.steps.length; i++) {
      const done = this.plan.steps[i]
      const { operation, bar } = done
      const { values, shop } = this.varied[i](draws, day)
      const inHand = done.index > 0 ? made.get(bar) : undefined
      const others = operation.bars
        ? barsTaken({ ...done, free: [] }).map((name) => made.get(name) as Billet)
        : []
      const before = inHand ? [inHand, ...others] : others
      const cut =
        this.longer !== 0 && typeof values.length === 'number' && operation.takes === 'none'
          ? { ...values, length: values.length * (1 + this.longer) }
          : values
      const there = { ...this.smithy, shop }
      const meant = operation.forward(before, cut as never, there)
      // Thinner already than it was to be forged: it is left as it is.
      const result =
        meant.problems &&
        inHand &&
        typeof cut.height === 'number' &&
        cut.height > inHand.size.height
          ? operation.forward(
              before,
              { ...cut, height: 0.9999 * inHand.size.height } as never,
              there,
            )
          : meant
      if (result.problems) return { ...result.problems[0], at: done.at }
      const wanted = this.wanted[i]
      if (wanted !== undefined && inHand && Number.isNaN(spare)) spare = inHand.size.length - wanted
      for (const heat of result.ok.heats) if (heat.purpose !== 'temper') heats += heat.count
      made.set(bar, (last = result.ok.after))
    }
    return { finished: last as Billet, spare, heats }
  }
}

/** The same trouble whatever the figures: `bars.main[3] the bar is # too short`. */
export function reasonOf({ at, what }: Problem): string {
  return `${at} ${what.replace(/[\d.,]+ ?(µm|mm|m)?/g, '#')}`
}

/** The least length of bar a shaping step needs; the first of them decides. */
function shapingNeeds(steps: readonly DoneStep[], step: DoneStep, i: number): number | undefined {
  if (!shaping.includes(step.operation.name)) return undefined
  const before = steps[i - 1]
  return before?.bar === step.bar ? before.demand?.length : undefined
}

function meanDensity(finished: Billet, { densities }: Smithy): number {
  return Object.entries(sharesOf(finished.build)).reduce(
    (sum, [steel, share]) => sum + share * densities[steel],
    0,
  )
}
