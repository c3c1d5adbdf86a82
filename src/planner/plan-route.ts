import { type Problem, type Result, failed, ok, within } from '#problem'
import { SAME_LENGTH, type Size, axisLength } from '#geometry'
import { printQuantity } from '#units'
import { type Billet, UNWEIGHED, massOf } from '#billet'
import { type Held, type Smithy, workBack } from '#operations'
import { adopt } from './measured.ts'
import type { DoneStep, Plan, Solved, Standing } from './plan.ts'
import { type PlannedStep, type Route, barsTaken, orderBars } from './route.ts'

/** How often the way back and the way forward are compared before giving up. */
const MOST_ROUNDS = 60
/** How often a guess is lengthened before a problem on the way forward is believed. */
const MOST_TRIES = 24
/** Two rounds that differ by less than this agree, relative. */
const SETTLED = 1e-13

/** The last plan's lengths are begun with a little longer: too short for its crops a bar tells nothing. */
const A_LITTLE_LONGER = 1.02

export interface PlanningOptions {
  readonly signal?: AbortSignal
  /**
   * Lengths to begin with, by place and name (`bars.core[0].length`): those of the plan before the
   * last edit. The rounds then begin near their end; they settle on the same lengths, to 1e-13.
   */
  readonly start?: Readonly<Record<string, number>>
}

type Values = Readonly<Record<string, unknown>>

/** The values of every step, by place, free numbers as they are guessed at present. */
type Guess = ReadonlyMap<string, Values>

/**
 * Works a route out: backwards from the piece for every number left free, and forwards from the
 * stacks. The two are repeated until they agree; with nothing left free one round does.
 */
export function planRoute(
  route: Route,
  smithy: Smithy,
  options: PlanningOptions = {},
): Result<Plan> {
  return route.measured.length > 0
    ? planFromMeasured(route, smithy, options)
    : work(route, smithy, options)
}

/** Numbers left free before a measurement stay as they were planned; the rest is planned anew from there. */
function planFromMeasured(route: Route, smithy: Smithy, options: PlanningOptions): Result<Plan> {
  const planned = work({ ...route, measured: [] }, smithy, options)
  if (planned.problems) return planned
  const solved = new Map(planned.ok.steps.map((step) => [step.at, step.values]))
  const bars = Object.fromEntries(
    Object.entries(route.bars).map(([bar, steps]) => {
      const last = Math.max(-1, ...route.measured.filter((m) => m.bar === bar).map((m) => m.after))
      return [
        bar,
        steps.map((step, i) =>
          i <= last ? { ...step, values: solved.get(step.at) ?? step.values, free: [] } : step,
        ),
      ]
    }),
  )
  const done = work({ ...route, bars }, smithy, options)
  if (done.ok) return done
  return { problems: [...tooLittleFound(planned.ok, route.measured, smithy), ...done.problems] }
}

/**
 * Where the rest of the route cannot be done with what was measured: how much of the bar is wanting
 * there, at the section it has now.
 */
function tooLittleFound(
  planned: Plan,
  measured: Route['measured'],
  { densities }: Smithy,
): Problem[] {
  return measured.flatMap((found) => {
    const { step, at, demand } =
      planned.steps.find((s) => s.bar === found.bar && s.index === found.after) ?? {}
    if (!step || !demand || !at) return []
    const bar = adopt(step.after, found, densities)
    const side = axisLength[bar.spare]
    const needed =
      (demand[side] / step.after.size[side]) * (step.after.volume / bar.volume) * bar.size[side]
    const short = needed - bar.size[side]
    if (short <= SAME_LENGTH) return []
    const show = (m: number) => printQuantity(m, 'length')
    return [
      {
        at,
        what: `the bar as it was measured is ${show(short)} short of what the rest of the route takes`,
        why: `at the section found it must be ${show(needed)} in ${side}; it is ${show(bar.size[side])}`,
        try: [
          'lose less from here on: fewer heats, smaller crops, less left to grind',
          'make the piece smaller',
          'weld on more, or begin again with a longer stack',
        ],
      },
    ]
  })
}

function work(route: Route, smithy: Smithy, options: PlanningOptions): Result<Plan> {
  const ordered = orderBars(route)
  if (ordered.problems) return ordered
  const order = ordered.ok
  const all = order.flatMap((bar) => route.bars[bar])
  const anyFree = all.some((step) => step.free.length > 0)
  const noEnd = anyFree && !smithy.piece
  if (noEnd)
    return failed(nothingToWorkBackFrom(all.find((step) => step.free.length > 0) as PlannedStep))

  // Until the sizes agree nothing need be weighed, unless a weight is what was measured.
  const sizing = route.measured.some((m) => m.mass !== undefined)
    ? smithy
    : { ...smithy, densities: UNWEIGHED }
  let guess: Guess = new Map(all.map((step) => [step.at, firstGuess(step, options.start)]))
  let longest: Guess | undefined
  let last: Shot | undefined
  /** Share of the way back to the last guess that worked; less of it the nearer the answer is. */
  let back = 1
  let tries = 0
  let good: Guess | undefined
  let refused: Refused | undefined
  for (let round = 0; round < MOST_ROUNDS; round++) {
    options.signal?.throwIfAborted()
    const done = forward(order, route, guess, anyFree ? sizing : smithy)
    if (done.problems) {
      // A guess too short for the route's own crops says nothing about the route: guess longer.
      if (!anyFree) return done
      // What the piece itself asks for is told before what was only tried on the way to it.
      if (!refused || (good && !refused.asked))
        refused = { problems: done.problems, asked: good !== undefined }
      if (tries++ >= MOST_TRIES) return { problems: toldOf(refused, done.problems) }
      guess = good ? between(all, guess, good, Math.min(1, back)) : between(all, guess, guess, 1)
      back *= 4
      continue
    }
    good = guess
    back /= 20
    if (!anyFree && !smithy.piece) return ok(finish(done.ok, [], all))
    const demands = backward(order, route, done.ok.steps, sizing, anyFree ? 'spare' : 'all')
    if (demands.problems) {
      // With nothing left free a shortage is the answer; otherwise it is what the next round mends.
      return demands
    }
    if (!anyFree) {
      const short = shortages(done.ok.steps, demands.ok)
      // Steel that was measured is what there is: where it stands is told, not refused.
      if (short.length > 0 && route.measured.length === 0) return { problems: short }
      return ok(finish(done.ok, demands.ok, all, short))
    }
    const next = improve(all, guess, demands.ok)
    if (settled(all, guess, next)) {
      const done = forward(order, route, guess, smithy)
      if (done.problems) return done
      // Now that every bar has its own length every side must do.
      const held = backward(order, route, done.ok.steps, sizing)
      return held.problems ? held : ok(finish(done.ok, demands.ok, all))
    }
    // A heat more or less can make the rounds swing between two lengths: the longer one is enough.
    longest = round > MOST_ROUNDS / 2 ? larger(all, next, longest) : next
    const shot: Shot = { guess, next }
    guess = round > MOST_ROUNDS / 4 ? longest : aim(all, shot, last)
    last = shot
  }
  return failed({
    at: 'bars',
    what: 'the numbers left free do not settle',
    why: 'each round of working back and forward asks for another size',
    try: ['state the number of heats in each drawing step', 'state one of the sizes left free'],
  })
}

/** Numbers left free start long: a bar too short for its own crops would tell nothing. */
function firstGuess(step: PlannedStep, start: PlanningOptions['start']): Values {
  const values: Record<string, unknown> = { ...step.values }
  for (const { name, side } of step.free) {
    const last = start?.[`${step.at}.${name}`]
    if (last !== undefined) values[name] = last * A_LITTLE_LONGER
    else if (side === 'length') values[name] = Math.max(values[name] as number, 1)
  }
  return values
}

/** What a route could not be gone through for: a value the piece asks for, or one that was only tried. */
interface Refused {
  readonly problems: readonly Problem[]
  readonly asked: boolean
}

/** The problems to be told once every guess has failed: none names a value that nobody would ask for. */
function toldOf(refused: Refused, last: readonly Problem[]): readonly Problem[] {
  const [first] = refused.problems
  if (refused.asked)
    return [
      { ...first, try: [...first.try, 'begin with a larger stack: the piece asks for this size'] },
      ...refused.problems.slice(1),
    ]
  // Longer and longer bars failed alike: the first says so with a length one can picture.
  return first.at === last[0].at ? refused.problems : last
}

/** Every free number moved from `a` toward `b`; from a guess toward itself lengths double and sides halve. */
function between(all: readonly PlannedStep[], a: Guess, b: Guess, share: number): Guess {
  return new Map(
    all.map((step) => {
      const values: Record<string, unknown> = { ...a.get(step.at) }
      for (const { name, side } of step.free) {
        const from = values[name] as number
        const to = b.get(step.at)?.[name] as number
        // Too short a bar cannot be cropped; too thick a side cannot be drawn to.
        const further = side === 'length' ? from * (1 + share) : from / (1 + share)
        values[name] = a === b ? further : from + (to - from) * share
      }
      return [step.at, values]
    }),
  )
}

interface Forward {
  readonly steps: readonly DoneStep[]
  readonly finished: Billet
  readonly standings: readonly Standing[]
}

function forward(
  order: readonly string[],
  route: Route,
  guess: Guess,
  smithy: Smithy,
): Result<Forward> {
  const made = new Map<string, Billet>()
  const steps: DoneStep[] = []
  const standings: Standing[] = []
  for (const bar of order) {
    let inHand: Billet | undefined
    for (const [index, planned] of route.bars[bar].entries()) {
      const others = barsTaken(planned).map((name) => made.get(name) as Billet)
      const before = inHand && planned.operation.takes !== 'none' ? [inHand, ...others] : others
      const values = guess.get(planned.at) as Values
      const result = planned.operation.forward(before, values as never, smithy)
      if (result.problems) return { problems: within(planned.at, result.problems) }
      steps.push({
        bar,
        index,
        at: planned.at,
        operation: planned.operation,
        values,
        before,
        step: result.ok,
      })
      inHand = result.ok.after
      for (const found of route.measured.filter((m) => m.bar === bar && m.after === index)) {
        const measured = adopt(inHand, found, smithy.densities)
        standings.push({
          bar,
          index,
          planned: { size: inHand.size, mass: massOf(inHand, smithy.densities) },
          measured: { size: measured.size, mass: massOf(measured, smithy.densities) },
          spare: 0,
        })
        inHand = measured
      }
    }
    made.set(bar, inHand as Billet)
  }
  return ok({ steps, finished: made.get(route.finish) as Billet, standings })
}

/** The demand after each step, in the order of the steps; none before a measurement. */
type Demands = readonly (Size | undefined)[]

/** The way back: what each step must leave for the rest to work out. */
function backward(
  order: readonly string[],
  route: Route,
  steps: readonly DoneStep[],
  smithy: Smithy,
  held: Held = 'all',
): Result<Demands> {
  const demandOf = new Map<string, Size>([
    [route.finish, (smithy.piece as NonNullable<Smithy['piece']>).size],
  ])
  const demands: (Size | undefined)[] = new Array(steps.length).fill(undefined)
  const problems: Problem[] = []
  for (const bar of order.toReversed()) {
    let demand = demandOf.get(bar) as Size
    const own = steps.map((step, i) => ({ step, i })).filter(({ step }) => step.bar === bar)
    for (const { step, i } of own.toReversed()) {
      demands[i] = demand
      // What was measured is there, whatever was planned to come before it.
      if (
        i !== own.at(-1)?.i &&
        route.measured.some((m) => m.bar === bar && m.after === step.index)
      )
        break
      if (step.operation.takes === 'none') break
      const needed = workBack(step.operation, demand, step.values, step.before, smithy, held)
      if (needed.problems) {
        problems.push(...within(step.at, needed.problems))
        return { problems }
      }
      const names = barsTaken(route.bars[bar][step.index])
      const inHand = step.before.length > names.length
      names.forEach((name, k) =>
        demandOf.set(name, greatest(demandOf.get(name), needed.ok[k + (inHand ? 1 : 0)])),
      )
      if (inHand) demand = needed.ok[0]
    }
  }
  return ok(demands)
}

function greatest(a: Size | undefined, b: Size): Size {
  if (!a) return b
  return {
    length: Math.max(a.length, b.length),
    width: Math.max(a.width, b.width),
    height: Math.max(a.height, b.height),
  }
}

function improve(all: readonly PlannedStep[], guess: Guess, demands: Demands): Guess {
  return new Map(
    all.map((step, i) => {
      const values: Record<string, unknown> = { ...guess.get(step.at) }
      for (const { name, side } of step.free) values[name] = demands[i]?.[side] ?? values[name]
      return [step.at, values]
    }),
  )
}

/** A guess and what the rest of the route then asked for. */
interface Shot {
  readonly guess: Guess
  readonly next: Guess
}

/**
 * The next guess from the last two: where what is asked for falls as the guess grows, the rounds
 * would swing about the answer; a secant through both goes straight to it. The answer asked for
 * itself where there is no such line.
 */
function aim(all: readonly PlannedStep[], now: Shot, before: Shot | undefined): Guess {
  if (!before) return now.next
  const aimed = new Map(now.next)
  everyFree(all, (step, name) => {
    const of = (guess: Guess) => guess.get(step.at)?.[name] as number
    const [x1, x0] = [of(now.guess), of(before.guess)]
    const [g1, g0] = [of(now.next) - x1, of(before.next) - x0]
    const slope = (g1 - g0) / (x1 - x0)
    // Far out a crop or a heat more bends the line: only what looks like one answer is followed.
    if (slope < -0.2 && slope > -5 && Math.abs(g1) < 0.5 * x1) {
      const values = aimed.get(step.at) as Values
      aimed.set(step.at, { ...values, [name]: x1 - g1 / slope })
    }
    return true
  })
  return aimed
}

function settled(all: readonly PlannedStep[], a: Guess, b: Guess): boolean {
  return everyFree(all, (step, name) => {
    const [was, is] = [a.get(step.at)?.[name] as number, b.get(step.at)?.[name] as number]
    return Math.abs(was - is) <= SETTLED * Math.abs(is)
  })
}

function larger(all: readonly PlannedStep[], a: Guess, b: Guess | undefined): Guess {
  if (!b) return a
  const merged = new Map(a)
  everyFree(all, (step, name) => {
    const values = merged.get(step.at) as Values
    const most = Math.max(values[name] as number, b.get(step.at)?.[name] as number)
    merged.set(step.at, { ...values, [name]: most })
    return true
  })
  return merged
}

function everyFree(
  all: readonly PlannedStep[],
  test: (step: PlannedStep, name: string) => boolean,
): boolean {
  return all.every((step) => step.free.every(({ name }) => test(step, name)))
}

function finish(
  done: Forward,
  demands: Demands,
  all: readonly PlannedStep[],
  more: readonly Problem[] = [],
): Plan {
  const steps = done.steps.map((step, i) => ({ ...step, demand: demands[i] }))
  const solved: Solved[] = all.flatMap((planned, i) =>
    planned.free.map(({ name }) => ({
      at: planned.at,
      name,
      value: steps[i].values[name] as number,
    })),
  )
  const standings = done.standings.map((standing) => {
    const i = steps.findIndex((s) => s.bar === standing.bar && s.index === standing.index)
    const needed = demands[i]
    const side = axisLength[steps[i].step.after.spare]
    return { ...standing, needed, spare: needed ? standing.measured.size[side] - needed[side] : 0 }
  })
  const warnings = steps.flatMap((step) => within(step.at, step.step.warnings))
  return {
    steps,
    finished: done.finished,
    solved,
    standings,
    warnings: [...warnings, ...more],
  }
}

/** With nothing left free: where a bar is shorter than the rest of the route needs. */
function shortages(steps: readonly DoneStep[], demands: Demands): Problem[] {
  const problems: Problem[] = []
  for (const [i, { step, at, operation }] of steps.entries()) {
    const demand = demands[i]
    if (operation.takes !== 'none' || !demand) continue
    const side = axisLength[step.after.spare]
    const less = demand[side] - step.after.size[side]
    if (less <= 1e-5) continue
    problems.push({
      at,
      what: `the bar is ${printQuantity(less, 'length')} too short for the piece`,
      why: `worked back from the piece it must be ${printQuantity(demand[side], 'length')} long; it is ${printQuantity(step.after.size[side], 'length')}`,
      try: [
        `cut it ${printQuantity(demand[side], 'length')} long`,
        'write "?" and have the length worked out',
      ],
    })
  }
  return problems
}

function nothingToWorkBackFrom(step: PlannedStep): Problem {
  return {
    at: `${step.at}.${step.free[0].name}`,
    what: 'this number is left free, and there is no piece to work back from',
    why: 'the planner works back from the finished piece',
    try: ['describe the piece', 'state the number'],
  }
}
