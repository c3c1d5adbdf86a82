import type { Billet } from '#billet'
import type { Operation, Smithy, Step } from './operation.ts'

/** A step of a plan: what is done, to what, and what came of it. */
interface Done {
  readonly operation: Operation
  readonly values: Readonly<Record<string, unknown>>
  readonly before: readonly Billet[]
  readonly step: Step
}

/** The same step with its account of force, and what that adds to warnings and notes. */
export function judgeStep<D extends Done>(done: D, smithy: Smithy): D {
  const { operation, values, before, step } = done
  const judged = operation.force?.(before, values as never, step, smithy)
  if (!judged) return done
  const told: Step = {
    ...step,
    force: judged.force,
    warnings: [...step.warnings, ...judged.warnings],
    notes: [...step.notes, ...judged.notes],
  }
  return { ...done, step: told }
}
