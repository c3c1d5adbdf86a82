import type { Rates } from '#shop'
import type { Plan } from '../plan.ts'
import { type StepHours, hoursOf, lost } from './hours.ts'

/** One line of what the work costs, in the shop's own money. */
export interface CostLine {
  readonly what: string
  readonly sum: number
}

/** What a plan takes in hours and money. */
export interface Cost {
  readonly hours: readonly StepHours[]
  /** Hands on the work, s. */
  readonly hands: number
  /** Soaks and tempers besides, s. */
  readonly waiting: number
  readonly lines: readonly CostLine[]
  /** Work and material once through. */
  readonly once: number
  /** Chance that some weld of the plan does not take, 0..1. */
  readonly failing: number
  /** What it costs on the average, pieces begun again counted in. */
  readonly expected: number
  readonly currency: string
}

/** Welds of a plan: every step that closes a stack. */
export function weldsOf({ steps }: Pick<Plan, 'steps'>): number {
  return steps.filter(({ step }) => step.heats.some((heat) => heat.purpose === 'weld')).length
}

/** Chance that at least one of so many welds does not take. */
export function failingOf(welds: number, rates: Rates): number {
  return 1 - (1 - rates.weldFails) ** welds
}

/** Hours, fire, steel and the rest, line by line. A piece that fails is begun again. */
export function costOf(plan: Plan, rates: Rates): Cost {
  const hours = hoursOf(plan.steps, rates)
  const hands = hours.reduce((sum, h) => sum + h.hands, 0) + rates.assembly
  const waiting = hours.reduce((sum, h) => sum + h.waiting, 0)
  const heats = plan.steps.flatMap(({ step }) => step.heats).reduce((sum, h) => sum + h.count, 0)
  const prices = new Map(rates.steelPrices.map((p) => [p.steel, p.perKilogram]))
  const steel = plan.steps
    .flatMap(({ step }) => step.taken)
    .reduce((sum, stock) => sum + stock.mass * (prices.get(stock.steel) ?? rates.steel), 0)
  const ground = plan.steps.reduce(
    (sum, done) => sum + lost(done, 'ground', 'polished', 'cut out', 'drilled'),
    0,
  )
  const etches = plan.steps.filter(({ operation }) => operation.name === 'etch').length
  const welds = weldsOf(plan)
  const lines = [
    { what: 'hours', sum: (hands / 3600) * rates.hour },
    { what: 'steel', sum: steel },
    { what: 'fire', sum: heats * rates.fuelPerHeat },
    { what: 'belts', sum: (ground / rates.beltTakes) * rates.beltPrice },
    { what: 'rod and flux', sum: welds * rates.perWeld },
    { what: 'acid', sum: etches * rates.acid },
    { what: 'fittings', sum: rates.fittings },
  ].filter((line) => line.sum > 0)
  const once = lines.reduce((sum, line) => sum + line.sum, 0)
  const failing = failingOf(welds, rates)
  // A weld that fails costs what was done until then, the whole at most; fittings are not lost.
  const again = (failing / (1 - failing)) * (once - rates.fittings)
  return {
    hours,
    hands,
    waiting,
    lines,
    once,
    failing,
    expected: once + again,
    currency: rates.currency,
  }
}
