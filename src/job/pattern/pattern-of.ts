import { type Grade, brightnessOf, grades } from '#steel'
import type { PieceSolid } from '#piece'
import type { Billet } from '#billet'
import { shift } from '#warp'
import type { Smithy } from '#operations'
import type { DoneStep } from '#planner'
import { type Origin, moved, steelsOf } from '#pattern'
import { type Computed, compositionsFor } from '../compute-job.ts'
import type { Job } from '../job.ts'
import { type History, historiesOf, placeOf } from './history.ts'

/** What the pattern room needs to draw one bar as it is after one of its steps. */
export interface BarPattern {
  readonly bar: string
  /** Step of that bar, 0 first. */
  readonly index: number
  /** In the words of the route: `twist`. */
  readonly after: string
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
  /** Forged perfectly even, as no hand does: for what is counted. */
  readonly even?: boolean
}

/** The pattern of a job worked out; undefined where there is no such bar or step. */
export function patternOf(computed: Computed, place: PatternPlace = {}): BarPattern | undefined {
  return patternOfSteps(computed.job, computed.plan.steps, computed.solid, place)
}

/** Every step of a job, in the order of the work: its pattern as the bar is handed on. */
export function patternsOf(computed: Computed, even = false): readonly BarPattern[] {
  const { job, plan, solid } = computed
  const histories = historiesOf(plan.steps, smithyOf(job, solid), { seed: job.seed, even })
  return plan.steps.flatMap((done) => {
    const history = histories.get(placeOf(done.bar, done.index))
    return history ? [told(job, done, history, solid)] : []
  })
}

/** The same of steps done so far, of a job that is being written. */
export function patternOfSteps(
  job: Job,
  steps: readonly DoneStep[],
  solid: PieceSolid | undefined,
  { bar = job.route.finish, index, even }: PatternPlace,
): BarPattern | undefined {
  const own = steps.filter((done) => done.bar === bar)
  const done = index === undefined ? own.at(-1) : own.find((step) => step.index === index)
  if (!done) return undefined
  // Steps come in the order of the work: what follows this one has no part in it.
  const upTo = steps.slice(0, steps.indexOf(done) + 1)
  const histories = historiesOf(upTo, smithyOf(job, solid), { seed: job.seed, even })
  const history = histories.get(placeOf(bar, done.index))
  return history && told(job, done, history, solid)
}

function smithyOf(job: Job, piece: PieceSolid | undefined): Smithy {
  // Where metal lies does not ask what it weighs.
  return { shop: job.shop, densities: {}, compositions: compositionsFor(job.steels), piece }
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
  const place = { bar, index, after: done.operation.name, billet, light }
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
