import { describe, expect, it } from 'vitest'
import { Draws } from '../range/draws.ts'
import type { Passage } from './passages.ts'
import { type Choices, type Front, type State, fronts, restacksOf } from './states.ts'

const sums = ['length', 'outer', 'heats', 'hands', 'creep'] as const
type Sums = Record<(typeof sums)[number], number>

/** A small world of sections and pieces with losses drawn at random. */
function smallWorld(seed: number): Choices {
  const draws = new Draws(seed)
  draws.begin(0)
  const between = (low: number, high: number) => low + (high - low) * draws.even()
  const whole = (low: number, high: number) => Math.floor(between(low, high + 1))
  const sections = whole(2, 3)
  const pieces = [2, 3, 4, 5].slice(0, whole(2, 3))
  const passage = (): Passage => ({
    to: { width: 0.04, height: 0.03 },
    length: { grows: between(0.3, 1.6), loses: between(0, 0.02) },
    outer: { grows: between(0.2, 0.9), loses: between(0, 2e-4) },
    heats: whole(2, 9),
    hands: between(100, 4000),
    creep: between(0, 3e-6),
    tallest: between(0.03, 0.12),
  })
  const maybe = <T>(one: T) => (draws.even() < 0.85 ? one : undefined)
  return {
    sections,
    pieces,
    middle: Array.from({ length: sections }, () =>
      pieces.map(() => Array.from({ length: sections }, () => maybe(passage()))),
    ),
    last: Array.from({ length: sections }, () =>
      pieces.map(() =>
        maybe({ passage: passage(), length: between(0.05, 0.2), heats: whole(3, 9), hands: 9000 }),
      ),
    ),
    restacks: 3,
    layers: whole(30, 400),
    limits: { opening: 0.11, bar: between(0.5, 3) },
  }
}

interface Plan extends Sums {
  readonly times: number
  readonly steps: readonly { section: number; pieces: number }[]
}

/** Every way there is, one after another, with nothing kept from one to the next. */
function everyPlan(world: Choices): Plan[] {
  const found: Plan[] = []
  const steps: { section: number; p: number }[] = []
  const visit = (left: number) => {
    if (steps.length > 0) {
      const plan = account(world, steps)
      if (plan) found.push(plan)
    }
    if (left === 0) return
    for (let section = 0; section < world.sections; section++)
      for (let p = 0; p < world.pieces.length; p++) {
        steps.push({ section, p })
        visit(left - 1)
        steps.pop()
      }
  }
  visit(world.restacks)
  return found
}

/** One way worked back from its end, straight from the definition. */
function account(
  { middle, last, pieces, limits, layers }: Choices,
  steps: readonly { section: number; p: number }[],
): Plan | undefined {
  const [end, ...before] = [...steps].reverse()
  const ending = last[end.section][end.p]
  if (!ending) return undefined
  let times = 1
  let at: Sums = {
    length: ending.length,
    outer: 0,
    heats: ending.heats,
    hands: ending.hands,
    creep: 0,
  }
  const back = (passage: Passage, n: number): boolean => {
    const length = (at.length + passage.length.loses) / passage.length.grows
    at = {
      length,
      outer: (at.outer + passage.outer.loses) / passage.outer.grows,
      heats: at.heats + passage.heats,
      hands: at.hands + passage.hands,
      creep: at.creep + passage.creep / times ** 2,
    }
    times *= n
    return passage.tallest <= limits.opening && length <= limits.bar && 2 * times <= layers
  }
  if (!back(ending.passage, pieces[end.p])) return undefined
  let after = end.section
  for (const { section, p } of before) {
    const passage = middle[section][p][after]
    if (!passage || !back(passage, pieces[p])) return undefined
    after = section
  }
  return { ...at, times, steps: steps.map((s) => ({ section: s.section, pieces: pieces[s.p] })) }
}

const keyOf = (restacks: number, times: number, section: number) =>
  `${restacks} ${times} ${section}`

function grouped(plans: readonly Plan[]): Map<string, Plan[]> {
  const groups = new Map<string, Plan[]>()
  for (const plan of plans) {
    const key = keyOf(plan.steps.length, plan.times, plan.steps[0].section)
    groups.set(key, [...(groups.get(key) ?? []), plan])
  }
  return groups
}

const weigh = (one: Sums, weights: readonly number[]) =>
  sums.reduce((sum, name, k) => sum + one[name] * weights[k], 0)

describe('non-dominated states against every way there is (240 random small worlds)', () => {
  const worlds = Array.from({ length: 240 }, (_, seed) => smallWorld(seed + 1))

  it('the best by any weighing is the same', () => {
    let compared = 0
    for (const world of worlds) {
      const groups = grouped(everyPlan(world))
      const found = fronts(world)
      expect(found.map((f) => keyOf(f.restacks, f.times, f.section)).sort()).toEqual(
        [...groups.keys()].sort(),
      )
      const draws = new Draws(compared + 7)
      for (const front of found) {
        draws.begin(front.times)
        const plans = groups.get(keyOf(front.restacks, front.times, front.section)) as Plan[]
        for (let k = 0; k < 4; k++) {
          const scale = [1, 1e3, 0.05, 1e-4, 1e5]
          const weights = scale.map((s) => s * draws.even())
          const best = Math.min(...plans.map((plan) => weigh(plan, weights)))
          const ours = Math.min(...front.states.map((state) => weigh(state, weights)))
          expect(Math.abs(ours - best)).toBeLessThanOrEqual(1e-9 * Math.abs(best))
          compared++
        }
      }
    }
    expect(compared).toBeGreaterThan(3000)
  })

  it('what is kept is just what none is better than, pruned early or not at all', () => {
    for (const world of worlds) {
      const whole = new Map(
        fronts(world, false).map((f) => [keyOf(f.restacks, f.times, f.section), f]),
      )
      for (const front of fronts(world)) {
        const all = (whole.get(keyOf(front.restacks, front.times, front.section)) as Front).states
        const best = all.filter((a) => !all.some((b) => b !== a && betterOrSame(b, a)))
        expect(told(front.states)).toEqual(told(best))
      }
    }
  })

  it('a state tells the way it stands for', () => {
    for (const world of worlds.slice(0, 40)) {
      for (const front of fronts(world)) {
        for (const state of front.states) {
          const steps = restacksOf(state).map(({ section, pieces }) => ({
            section,
            p: world.pieces.indexOf(pieces),
          }))
          expect(account(world, steps)?.length).toBeCloseTo(state.length, 12)
        }
      }
    }
  })
})

function betterOrSame(a: State, b: State): boolean {
  return sums.every((name) => a[name] <= b[name])
}

function told(states: readonly State[]): string[] {
  return states.map((s) => sums.map((name) => s[name].toPrecision(12)).join(' ')).sort()
}
