import type { Result } from '#problem'
import { ok } from '#problem'
import type { Smithy } from '#operations'
import type { Rates } from '#shop'
import { costOf } from '../cost/cost.ts'
import { faceLines } from '../face-lines.ts'
import { massOf } from '#billet'
import { type PlanningOptions, planRoute } from '../plan-route.ts'
import type { Plan } from '../plan.ts'
import type { Route } from '../route.ts'

/** A number of a route that can be changed, and what it is now. */
export interface Lever {
  /** Step in the job file: `bars.plate[4]`. */
  readonly at: string
  /** Parameter of the step. */
  readonly name: string
  readonly value: number
}

/** What is watched when a number is changed. */
export interface Outcome {
  /** Steel off the rack, kg. */
  readonly steel: number
  /** Finished mass, kg. */
  readonly mass: number
  readonly heats: number
  readonly hands: number
  readonly cost: number
  /** Per metre; left out where no lines stand on edge. */
  readonly lines?: number
}

/** Numbers with a unit in every step of a route; what is left free is worked out, not set. */
export function leversOf(route: Route): readonly Lever[] {
  return Object.values(route.bars)
    .flat()
    .flatMap(({ at, operation, values, free }) =>
      Object.entries(operation.parameters).flatMap(([name, parameter]) => {
        const value = values[name]
        const left = free.some((f) => f.name === name)
        return parameter.form === 'quantity' && typeof value === 'number' && !left && value !== 0
          ? [{ at, name, value }]
          : []
      }),
    )
}

/** The route with one number changed. */
export function withChange(route: Route, { at, name }: Lever, value: number): Route {
  const bars = Object.fromEntries(
    Object.entries(route.bars).map(([bar, steps]) => [
      bar,
      steps.map((step) =>
        step.at === at ? { ...step, values: { ...step.values, [name]: value } } : step,
      ),
    ]),
  )
  return { ...route, bars }
}

export function outcomeOf(plan: Plan, smithy: Smithy, rates: Rates): Outcome {
  const { hands, expected } = costOf(plan, rates)
  const lines = faceLines(plan.finished)?.perMetre
  return {
    steel: plan.steps.flatMap(({ step }) => Object.values(step.added)).reduce((a, b) => a + b, 0),
    mass: massOf(plan.finished, smithy.densities),
    heats: plan.steps
      .flatMap(({ step }) => step.heats)
      .reduce((sum, h) => sum + (h.purpose === 'temper' ? 0 : h.count), 0),
    hands,
    cost: expected,
    ...(lines !== undefined && { lines }),
  }
}

/** Changes one number and plans again. */
export function whatIf(
  route: Route,
  lever: Lever,
  value: number,
  smithy: Smithy,
  rates: Rates,
  options: PlanningOptions = {},
): Result<Outcome> {
  const plan = planRoute(withChange(route, lever, value), smithy, options)
  return plan.problems ? plan : ok(outcomeOf(plan.ok, smithy, rates))
}
