import { type Problem, type Result, nearest } from '#problem'
import type { Size } from '#geometry'
import type { Operation } from '#operations'

/** One step of a bar's way, read and checked. */
export interface PlannedStep {
  readonly operation: Operation
  readonly values: Readonly<Record<string, unknown>>
  /** Parameters written `"?"`, and the side of the bar after the step that each sets. */
  readonly free: readonly { readonly name: string; readonly side: keyof Size }[]
  /** Where it stands in the job file: `bars.core[3]`. */
  readonly at: string
}

/** What was measured after a step: it takes the place of what was planned there. */
export interface Measured {
  readonly bar: string
  /** Index of the step in its bar. */
  readonly after: number
  readonly length?: number
  readonly width?: number
  readonly height?: number
  /** kg. */
  readonly mass?: number
}

/** Bars by name, each with its steps; bars that take others in make it a tree. */
export interface Route {
  readonly bars: Readonly<Record<string, readonly PlannedStep[]>>
  /** The bar that becomes the piece. */
  readonly finish: string
  readonly measured: readonly Measured[]
}

/** Names of the other bars a step takes. */
export function barsTaken(step: PlannedStep): readonly string[] {
  return step.operation.bars?.(step.values as never) ?? []
}

/**
 * The bars in an order in which each comes after every bar it takes. Problems: a bar that is not
 * there, bars that wait for one another, a bar taken twice, a bar nothing takes.
 */
export function orderBars(route: Route): Result<readonly string[]> {
  const problems: Problem[] = []
  const names = Object.keys(route.bars)
  const takenAt = new Map<string, string>()
  for (const [name, steps] of Object.entries(route.bars)) {
    steps.forEach((step, i) => {
      const starts = step.operation.takes === 'none'
      if (i === 0 && step.operation.takes === 'one') problems.push(nothingInHand(step))
      if (i > 0 && starts) problems.push(startsTwice(step))
      for (const other of new Set(barsTaken(step))) {
        if (!Object.hasOwn(route.bars, other)) problems.push(missing(step, other, names))
        else if (takenAt.has(other))
          problems.push(takenTwice(step, other, takenAt.get(other) as string))
        else takenAt.set(other, step.at)
      }
    })
    if (steps.length === 0) problems.push(empty(name))
  }
  if (problems.length > 0) return { problems }

  const order: string[] = []
  const visit = (name: string, waiting: readonly string[]): void => {
    if (order.includes(name)) return
    if (waiting.includes(name)) {
      problems.push(cycle([...waiting.slice(waiting.indexOf(name)), name]))
      return
    }
    for (const step of route.bars[name])
      for (const other of new Set(barsTaken(step))) visit(other, [...waiting, name])
    if (problems.length === 0) order.push(name)
  }
  visit(route.finish, [])
  for (const name of names)
    if (problems.length === 0 && !order.includes(name))
      problems.push(unused(name, route.finish, takenAt.has(name)))
  return problems.length > 0 ? { problems } : { ok: order }
}

function nothingInHand(step: PlannedStep): Problem {
  return {
    at: step.at,
    what: `"${step.operation.name}" has no bar to work on`,
    why: 'the first step of a bar lays a stack, takes a bar off the rack or joins other bars',
    try: ['begin this bar with "stack"', 'begin it with "take bar"'],
  }
}

function startsTwice(step: PlannedStep): Problem {
  return {
    at: step.at,
    what: `"${step.operation.name}" starts a bar, and this one is under way`,
    why: 'what was in hand would be dropped',
    try: ['give it a bar of its own', 'leave the step out'],
  }
}

function missing(step: PlannedStep, name: string, names: readonly string[]): Problem {
  return {
    at: step.at,
    what: `there is no bar called "${name}"`,
    why: `"${step.operation.name}" takes it, and the job has: ${names.join(', ')}`,
    try: [...nearest(name, names).map((n) => `did you mean "${n}"?`), `add a bar called "${name}"`],
  }
}

function takenTwice(step: PlannedStep, name: string, first: string): Problem {
  return {
    at: step.at,
    what: `the bar "${name}" is used up already`,
    why: `${first} took it`,
    try: [
      'make a second bar with the same steps',
      'name it twice in one step: it is then cut in two',
    ],
  }
}

function empty(name: string): Problem {
  return {
    at: `bars.${name}`,
    what: `the bar "${name}" has no steps`,
    why: 'a bar is what its steps make of it',
    try: ['add a "stack" or "take bar" step', 'leave the bar out'],
  }
}

function cycle(names: readonly string[]): Problem {
  return {
    at: `bars.${names[0]}`,
    what: 'these bars wait for one another',
    why: names.map((n) => `"${n}"`).join(' takes '),
    try: ['start one of them from a stack of its own'],
  }
}

function unused(name: string, finish: string, taken: boolean): Problem {
  return {
    at: `bars.${name}`,
    what: `nothing is made of the bar "${name}"`,
    why: taken
      ? 'the bar that takes it is itself not used'
      : `no step takes it, and the piece is made of "${finish}"`,
    try: ['join it in a later step', `finish with "${name}"`, 'leave it out'],
  }
}
