import type { Problem } from '#problem'
import type { Size } from '#geometry'
import { type Densities, massOf, sharesOf, wholeCount } from '#billet'
import {
  CAUTIONS_DEFER,
  type Caution,
  type Heat,
  type Stock,
  type Working,
  cautions,
} from '#operations'
import type { DoneStep } from '#planner'
import type { Computed } from './compute-job.ts'
import { heatsOf } from './plan-record.ts'

/** One row of a route card, whatever it is printed on. */
export interface CardStep {
  readonly bar: string
  readonly at: string
  readonly title: string
  readonly size: Size
  readonly mass: number
  readonly laid: number
  readonly merged: number
  readonly heats: readonly Heat[]
  readonly taken: readonly Stock[]
  readonly losses: readonly { readonly cause: string; readonly mass: number }[]
  readonly setAside: readonly { readonly size: Size; readonly mass: number }[]
  /** What it asks of the shop's tools, where metal is worked. */
  readonly force?: Working
  readonly notes: readonly string[]
  readonly warnings: readonly Problem[]
  readonly cautions: readonly (Caution & { readonly name: string })[]
}

export interface CardTotals {
  readonly bars: number
  readonly finishedSize: Size
  readonly finishedMass: number
  readonly stackMass: number
  readonly yield: number
  readonly heats: number
  readonly tempers: number
  /** Steels of the piece by share of volume, greatest first. */
  readonly shares: readonly (readonly [steel: string, share: number])[]
  readonly solved: readonly { readonly place: string; readonly value: number }[]
}

/** One step done as a row of a card. */
export function cardStep({ bar, at, operation, step }: DoneStep, densities: Densities): CardStep {
  const sum = (masses: Readonly<Record<string, number>>) =>
    Object.values(masses).reduce((a, b) => a + b, 0)
  const count = wholeCount(step.after.build)
  return {
    bar,
    at,
    title: operation.name,
    size: step.after.size,
    mass: massOf(step.after, densities),
    laid: count.laid,
    merged: count.merged,
    heats: step.heats,
    taken: step.taken,
    losses: step.losses
      .map((l) => ({ cause: l.cause, mass: sum(l.masses) }))
      .filter((l) => l.mass > 0),
    setAside: step.setAside.map((b) => ({ size: b.size, mass: massOf(b, densities) })),
    ...(step.force && { force: step.force }),
    notes: step.notes,
    warnings: step.warnings,
    cautions: (step.cautions ?? operation.cautions).map((name) => ({ name, ...cautions[name] })),
  }
}

/** The plan as the rows of a card, with its foot. */
export function cardSteps(computed: Computed): {
  readonly steps: readonly CardStep[]
  readonly totals: CardTotals
  readonly cautionsDefer: string
} {
  const { plan, densities, finishedMass, stackMass } = computed
  const steps = plan.steps.map((done) => cardStep(done, densities))
  const tempers = plan.steps.reduce(
    (n, { step }) => n + step.heats.reduce((m, h) => m + (h.purpose === 'temper' ? h.count : 0), 0),
    0,
  )
  return {
    steps,
    totals: {
      bars: new Set(plan.steps.map((s) => s.bar)).size,
      finishedSize: plan.finished.size,
      finishedMass,
      stackMass,
      yield: finishedMass / stackMass,
      heats: heatsOf(plan.steps),
      tempers,
      shares: Object.entries(sharesOf(plan.finished.build)).sort((a, b) => b[1] - a[1]),
      solved: plan.solved.map((s) => ({ place: `${s.name} of ${s.at}`, value: s.value })),
    },
    cautionsDefer: CAUTIONS_DEFER,
  }
}
