import { type Grade, brightnessOf, grades } from '#steel'
import type { PieceSolid } from '#piece'
import { type Billet, UNWEIGHED } from '#billet'
import { shift } from '#warp'
import { type Smithy, partOf } from '#operations'
import type { DoneStep } from '#planner'
import { type Origin, moved, steelsOf } from '#pattern'
import { type Computed, compositionsFor } from '../compute-job.ts'
import type { Job } from '../job.ts'
import { type History, followStep, historiesOf, placeOf } from './history.ts'

/** What the pattern room needs to draw one bar as it is after one of its steps. */
export interface BarPattern {
  readonly bar: string
  /** Step of that bar, 0 first. */
  readonly index: number
  /** In the words of the route: `twist`. */
  readonly after: string
  /** Whether that step is done bit by bit and can be looked at part done; else it is done at a stroke. */
  readonly gradual: boolean
  /** How far that step has come, where it is looked at before it is done. */
  readonly done?: number
  /** In the piece's frame where it has been ground to the piece, else in the bar's. */
  readonly origin: Origin
  readonly billet: Billet
  /** The piece it has been ground to; left out, it is a bar: its own box is its faces. */
  readonly solid?: PieceSolid
  /** How bright each of its steels comes out of the acid: 0 the darkest class, 1 the brightest. */
  readonly light: Readonly<Record<string, number>>
}

/** Which bar, and after which of its steps. Left out: the bar that becomes the piece, at the end. */
export interface PatternPlace {
  readonly bar?: string
  readonly index?: number
  /** How far that step has come, 0 … 1; left out, it is done. */
  readonly done?: number
  /** Forged perfectly even, as no hand does: for what is counted. */
  readonly even?: boolean
}

/** The pattern of a job worked out; undefined where there is no such bar or step. */
export function patternOf(computed: Computed, place: PatternPlace = {}): BarPattern | undefined {
  return patternOfSteps(computed.job, computed.plan.steps, computed.solid, place)
}

/** The patterns of a whole route: every bar as it is handed on, and on the way there. */
export interface RoutePatterns {
  /** After every step, in the order of the work. */
  readonly steps: readonly BarPattern[]
  /** With a share `done` of step `i`, 0 … 1: true in size and pattern. What is done at a stroke is not done before the middle. */
  partly(i: number, done: number): BarPattern | undefined
}

/** Every step of a job followed once: any part of any step is then soon told. */
export function routePatterns(computed: Computed, even = false): RoutePatterns {
  return patternsOfSteps(computed.job, computed.plan.steps, computed.solid, even)
}

function patternsOfSteps(
  job: Job,
  all: readonly DoneStep[],
  solid: PieceSolid | undefined,
  even = false,
): RoutePatterns {
  const [smithy, options] = [smithyOf(job, solid), { seed: job.seed, even }]
  const histories = historiesOf(all, smithy, options)
  const historyAt = ({ bar, index }: DoneStep) => histories.get(placeOf(bar, index))
  const steps = all.flatMap((done) => {
    const history = historyAt(done)
    return history ? [told(job, done, history, solid)] : []
  })
  return {
    steps,
    partly(i, share) {
      const done = all[i]
      const history = done && historyAt(done)
      if (!history) return undefined
      if (share >= 1) return steps[i]
      const part = share < LEAST ? undefined : partDone(done, share, smithy)
      if (part) {
        const way = followStep(part, history.given, smithy, options)
        return { ...told(job, part, way, solid), done: share }
      }
      const had = steps.find((p) => p.bar === done.bar && p.index === done.index - 1)
      return share < 0.5 && had ? had : steps[i]
    },
  }
}

/** Less of a step than this is none of it: a twist of no turns has no pitch. */
const LEAST = 1e-3

/** The step with a share of it done; undefined where it is done at a stroke, or cannot be stopped there. */
function partDone(done: DoneStep, share: number, smithy: Smithy): DoneStep | undefined {
  if (!done.operation.gradual) return undefined
  const operation = partOf(done.operation, share)
  const step = operation.forward(done.before, done.values as never, smithy)
  return step.problems ? undefined : { ...done, operation, step: step.ok }
}

/** The same of steps done so far, of a job that is being written. */
export function patternOfSteps(
  job: Job,
  steps: readonly DoneStep[],
  solid: PieceSolid | undefined,
  { bar = job.route.finish, index, done = 1, even }: PatternPlace,
): BarPattern | undefined {
  const own = steps.filter((step) => step.bar === bar)
  const last = index === undefined ? own.at(-1) : own.find((step) => step.index === index)
  if (!last) return undefined
  // Steps come in the order of the work: what follows this one has no part in it.
  const i = steps.indexOf(last)
  return patternsOfSteps(job, steps.slice(0, i + 1), solid, even).partly(i, done)
}

function smithyOf(job: Job, piece: PieceSolid | undefined): Smithy {
  // Where metal lies does not ask what it weighs.
  return { shop: job.shop, densities: UNWEIGHED, compositions: compositionsFor(job.steels), piece }
}

function told(
  job: Job,
  done: DoneStep,
  { origin, imprint }: History,
  solid: PieceSolid | undefined,
): BarPattern {
  const { bar, index } = done
  const billet = done.step.after
  const shaped = billet.made?.includes('shape') ?? false
  const names = steelsOf(origin)
  const light = Object.fromEntries(names.map((steel) => [steel, lightOf(steel, job.steels)]))
  const { name: after, gradual = false } = done.operation
  const place = { bar, index, after, gradual, billet, light }
  if (!shaped || !solid) return { ...place, origin }
  const stock = (billet.size.length - solid.size.length) / 2
  return {
    ...place,
    // Weighed by the box, seen by what the stamp has pressed in, once it has.
    solid: solid.edges.stamp ? solid.stamped(imprint) : solid,
    origin: stock === 0 ? origin : moved(origin, [shift({ x: stock })]),
  }
}

function lightOf(steel: string, own: readonly Grade[]): number {
  const grade = [...own, ...grades].find((g) => g.name === steel)
  return grade ? brightnessOf(grade) : 0.5
}
