import type { Smithy } from '#operations'
import type { Rates } from '#shop'
import { planRoute } from '../plan-route.ts'
import type { Route } from '../route.ts'
import { type Lever, type Outcome, leversOf, outcomeOf, withChange } from './change.ts'

/** How the steel a route takes moves with one of its numbers. */
export interface Sensitivity {
  readonly lever: Lever
  /** kg of steel for one unit of the number. */
  readonly steel: number
  /** Share by which the steel grows when the number grows by a hundredth of itself. */
  readonly steelForOnePercent: number
  /** The heats change nearby, so that the slope holds on one side of a step only. */
  readonly stepsNearby: boolean
}

/** Share of a number it is changed by, either way. */
const STEP = 1e-4
/** Slopes with whole and half steps that differ by more than this are not one slope. */
const ONE_SLOPE = 1e-3

/**
 * Every number of a route, the one that moves the steel most first. Slopes by central differences
 * with the leading error taken off (Richardson): fourth order in the step, exact for what moves as a
 * cubic or less.
 */
export function sensitivitiesOf(
  route: Route,
  smithy: Smithy,
  rates: Rates,
  signal?: AbortSignal,
): readonly Sensitivity[] {
  const plan = planRoute(route, smithy)
  if (plan.problems) return []
  const now = outcomeOf(plan.ok, smithy, rates)
  return leversOf(route)
    .flatMap((lever) => {
      signal?.throwIfAborted()
      const slope = slopeOf(route, lever, smithy, rates, now)
      if (!slope) return []
      const steelForOnePercent = (slope.steel * lever.value * 0.01) / now.steel
      return [{ lever, ...slope, steelForOnePercent }]
    })
    .sort((a, b) => Math.abs(b.steelForOnePercent) - Math.abs(a.steelForOnePercent))
}

/** kg of steel for one unit of a number; undefined where it cannot be moved. */
export function slopeOf(
  route: Route,
  lever: Lever,
  smithy: Smithy,
  rates: Rates,
  now: Outcome,
): Pick<Sensitivity, 'steel' | 'stepsNearby'> | undefined {
  const h = lever.value * STEP
  const at = (by: number): Outcome | undefined => {
    const plan = planRoute(withChange(route, lever, lever.value + by), smithy)
    return plan.ok && outcomeOf(plan.ok, smithy, rates)
  }
  const [far, near] = [h, h / 2].map((step) => {
    const [up, down] = [at(step), at(-step)]
    if (up && down)
      return {
        slope: (up.steel - down.steel) / (2 * step),
        heats: up.heats !== now.heats || down.heats !== now.heats,
      }
    // At the edge of what can be done one side must do.
    const side = up ?? down
    if (!side) return undefined
    return { slope: (side.steel - now.steel) / (up ? step : -step), heats: true }
  })
  if (!far || !near) return undefined
  const steel = near.slope + (near.slope - far.slope) / 3
  // A slope too small to move the steel by a millionth is rounding.
  const nothing = (1e-6 * now.steel) / Math.abs(lever.value)
  const apart = Math.abs(near.slope - far.slope) > ONE_SLOPE * Math.abs(steel) + nothing
  return { steel, stepsNearby: far.heats || near.heats || apart }
}
