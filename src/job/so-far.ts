import { type Problem, within } from '#problem'
import type { Billet } from '#billet'
import { judgeStep } from '#operations'
import type { DoneStep, PlannedStep } from '#planner'
import { buildPiece, compositionsFor, densitiesFor } from './compute-job.ts'
import { smithyOf } from './smithy.ts'
import type { Job } from './job.ts'

/** A route as far as it goes forward, and what stopped each bar that did not get to its end. */
export interface SoFar {
  readonly steps: readonly DoneStep[]
  readonly problems: readonly Problem[]
}

/**
 * The steps of an unfinished or impossible job that can be done as they stand: forward only, nothing
 * worked back. A number left free is taken from `solved` (place and name: the last sound plan), a
 * length else from its first guess; a side that nobody stated is not guessed, the bar stops before it.
 * For showing a job that is being written: what is wrong with numbers left free is the planner's to tell.
 */
export function routeSoFar(job: Job, solved: Readonly<Record<string, number>> = {}): SoFar {
  const built = job.piece && buildPiece(job.piece)
  const smithy = smithyOf(job, densitiesFor(job.steels), compositionsFor(job.steels), built?.ok)
  const steps: DoneStep[] = []
  const problems: Problem[] = []
  const made = new Map<string, Billet | undefined>()
  const visit = (bar: string): Billet | undefined => {
    if (made.has(bar)) return made.get(bar)
    // A bar that waits for itself finds nothing in hand.
    made.set(bar, undefined)
    let inHand: Billet | undefined
    for (const [index, planned] of (job.route.bars[bar] ?? []).entries()) {
      const before = takenBy(planned, inHand, visit)
      if (!before) return undefined
      if (planned.free.some(isUnknownSide(planned, solved))) return undefined
      const values = filledIn(planned, solved)
      const result = planned.operation.forward(before, values as never, smithy)
      if (result.problems) {
        problems.push(...within(planned.at, result.problems))
        return undefined
      }
      const { at, operation } = planned
      const done = { bar, index, at, operation, values, before, step: result.ok }
      steps.push(judgeStep(done, smithy))
      inHand = result.ok.after
    }
    made.set(bar, inHand)
    return inHand
  }
  for (const bar of Object.keys(job.route.bars)) visit(bar)
  return { steps, problems }
}

/** The bars a step works on, or nothing if one of them is not there. */
function takenBy(
  { operation, values }: PlannedStep,
  inHand: Billet | undefined,
  visit: (bar: string) => Billet | undefined,
): readonly Billet[] | undefined {
  if (operation.takes === 'one') return inHand && [inHand]
  const others = (operation.bars?.(values as never) ?? []).map(visit)
  if (others.some((bar) => bar === undefined)) return undefined
  return inHand && operation.takes !== 'none'
    ? [inHand, ...(others as Billet[])]
    : (others as Billet[])
}

function isUnknownSide({ at }: PlannedStep, solved: Readonly<Record<string, number>>) {
  return ({ name, side }: PlannedStep['free'][number]) =>
    side !== 'length' && solved[`${at}.${name}`] === undefined
}

function filledIn(
  planned: PlannedStep,
  solved: Readonly<Record<string, number>>,
): Readonly<Record<string, unknown>> {
  const values: Record<string, unknown> = { ...planned.values }
  for (const { name } of planned.free) {
    const last = solved[`${planned.at}.${name}`]
    if (last !== undefined) values[name] = last
  }
  return values
}
