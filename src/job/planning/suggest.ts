import { type Problem, type Result, failed, nearest, ok } from '#problem'
import {
  type Figures,
  type Suggestion,
  type Suggestions,
  presets,
  reasonsAgainst,
  stepsOfPreset,
  suggestRoutes,
} from '#planner'
import type { Job } from '../job.ts'
import { readJobObject } from '../read-job.ts'
import { smithyFor } from './smithy-for.ts'

export interface SuggestOrder {
  /** The bar whose build-up is chosen; left out, the one with the most layers. */
  readonly bar?: string
  /** A pattern by its trade name, in place of the job's own. */
  readonly pattern?: string
  readonly signal?: AbortSignal
  readonly onProgress?: (share: number, doing: string) => void
}

/** One route of the set, as data. */
export interface SuggestedRoute {
  readonly name: string
  readonly asWritten: boolean
  readonly figures: Figures
  /** What sets it apart from the first of the set, greatest first. */
  readonly reasons: readonly string[]
}

/** The routes worth considering for a job, best compromise first. */
export interface SuggestedRoutes {
  readonly bars: readonly string[]
  readonly considered: number
  readonly routes: readonly SuggestedRoute[]
  /** The route as it is: what the others are held against. */
  readonly written?: SuggestedRoute
  /** The job with one of them in place of its own, as it would be written. */
  take(number: number): Result<Readonly<Record<string, unknown>>>
}

/** Looks for other ways to build up what a job makes. */
export function suggestForJob(asked: Job, order: SuggestOrder = {}): Result<SuggestedRoutes> {
  const job = order.pattern === undefined ? ok(asked) : withPattern(asked, order.pattern)
  if (job.problems) return job
  const smithy = smithyFor(job.ok)
  if (smithy.problems) return smithy
  const { route, rates, wishes, rack } = job.ok
  const found = suggestRoutes(route, smithy.ok, rates, wishes, { ...order, rack })
  if (found.problems) return found
  const [first] = found.ok.routes
  const told = ({ name, asWritten, figures }: Suggestion): SuggestedRoute => ({
    name,
    asWritten,
    figures,
    reasons: reasonsAgainst(figures, first.figures),
  })
  return ok({
    bars: found.ok.bars,
    considered: found.ok.considered,
    routes: found.ok.routes.map(told),
    ...(found.ok.written && { written: told(found.ok.written) }),
    take: (number) => take(job.ok, found.ok, number),
  })
}

function take(
  job: Job,
  found: Suggestions,
  number: number,
): Result<Readonly<Record<string, unknown>>> {
  const chosen: Suggestion | undefined = found.routes[number - 1]
  if (!chosen) {
    return failed({
      at: '',
      what: `there is no route ${number}`,
      why: `the set has ${found.routes.length}`,
      try: ['take 1'],
    })
  }
  if (!chosen.steps) return ok(job.written)
  const bars = { ...(job.written.bars as Record<string, readonly unknown[]>) }
  for (const bar of found.bars) bars[bar] = [...chosen.steps, ...bars[bar].slice(found.headLength)]
  const { measured: _measured, ...rest } = job.written
  return ok({ ...rest, bars })
}

/** Work with which the piece itself begins; what comes before it is the pattern's. */
const finishing = ['forge to shape', 'grind to shape', 'normalise', 'anneal', 'stamp', 'harden']
/** What heats and grinding may take off a side before the piece is ground, m. */
const ROOM = 1.2e-3

/** The job with another pattern's steps between its build-up and its finishing. */
function withPattern(job: Job, name: string): Result<Job> {
  const preset = presets.find((p) => p.name === name)
  if (!preset) return failed(noSuchPattern(name))
  const smithy = smithyFor(job)
  if (smithy.problems) return smithy
  const { piece, shop } = smithy.ok
  const bar = job.route.finish
  const steps = (job.written.bars as Record<string, readonly { do: string }[]>)[bar]
  if (!piece || steps[0].do !== 'stack') return failed(notOneBar(bar))
  const over = 2 * (shop.grindStock + shop.polishStock + ROOM)
  const blank = { width: piece.blank.size.width + over, height: piece.blank.size.height + over }
  const built = builtUp(steps)
  const end = steps.findIndex((step, i) => i >= built && finishing.includes(step.do))
  const { measured: _measured, ...rest } = job.written
  const wishes = job.written.wishes as Readonly<Record<string, unknown>> | undefined
  const { lines: _lines, ...others } = wishes ?? {}
  const layers = Math.round(Math.sqrt(preset.layers[0] * preset.layers[1]))
  return readJobObject({
    ...rest,
    wishes: {
      ...others,
      pattern: name,
      ...(others.layers === undefined && { layers }),
    },
    bars: {
      ...(job.written.bars as object),
      [bar]: [
        ...steps.slice(0, built),
        ...stepsOfPreset(preset, blank),
        ...(end < 0 ? [] : steps.slice(end)),
      ],
    },
  })
}

/** Steps up to the last weld and trim of the build-up. */
function builtUp(steps: readonly { do: string }[]): number {
  let built =
    1 +
    Math.max(
      0,
      steps.findLastIndex((step) => step.do === 'restack'),
    )
  while (built < steps.length && ['tack', 'weld', 'trim'].includes(steps[built].do)) built++
  return built
}

function noSuchPattern(name: string): Problem {
  const names = presets.map((p) => p.name)
  return {
    at: 'pattern',
    what: `"${name.slice(0, 60)}" is not a pattern that is kept as steps`,
    why: `kept are: ${names.join(', ')}`,
    try: nearest(name, names).map((n) => `did you mean "${n}"?`),
  }
}

function notOneBar(bar: string): Problem {
  return {
    at: `bars.${bar}`,
    what: 'another pattern is put into a job that makes a piece of one bar, from a stack',
    why: 'where several bars are joined the pattern lies in each of them',
    try: ['choose the build-up of one bar only', 'write the steps of the pattern into the job'],
  }
}
