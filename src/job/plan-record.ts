import type { Problem } from '#problem'
import type { Size } from '#geometry'
import { massOf, wholeCount } from '#billet'
import { type ForceRecord, recordForce } from './force-record.ts'
import type { HeatPurpose } from '#operations'
import type { DoneStep } from '#planner'
import { type HeatsRecord, type Treated, recordHeats } from '#heats'
import type { Computed } from './compute-job.ts'

/** A plan as data: SI with the unit in the name, every number plain. What `plan --json` prints. */
export interface PlanRecord extends Partial<HeatsRecord> {
  readonly billetwright: { readonly record: 1 }
  readonly name: string
  readonly finished?: {
    readonly mass_kg: number
    readonly size_m: Size
    readonly lines_per_m?: number
  }
  readonly stack?: {
    readonly mass_kg: number
    readonly layers: number
    readonly sheets: readonly {
      readonly bar: string
      readonly form: string
      readonly steel: string
      readonly thickness_m: number
      readonly width_m: number
      readonly length_m: number
      readonly count: number
      readonly mass_kg: number
    }[]
  }
  readonly steps: readonly StepRecord[]
  readonly solved: readonly { readonly at: string; readonly name: string; readonly value: number }[]
  readonly standings: readonly unknown[]
  readonly totals?: {
    readonly heats: number
    readonly heatsBy: Readonly<Partial<Record<HeatPurpose, number>>>
    /** Finished mass over mass off the rack. */
    readonly yield: number
  }
  readonly problems: readonly Problem[]
}

export interface StepRecord {
  readonly do: string
  readonly bar: string
  readonly at: string
  readonly size_m: Size
  readonly mass_kg: number
  readonly layersLaid: number
  readonly layersMerged: number
  readonly heats: number
  readonly heat?: {
    readonly temperature_K: number
    readonly soak_s: number
    readonly purpose: HeatPurpose
    readonly medium: string
  }
  readonly force?: ForceRecord
  readonly losses_kg: Readonly<Record<string, number>>
  readonly added_kg: number
  readonly setAside_kg: number
  readonly warnings: readonly Problem[]
  readonly cautions: readonly string[]
  readonly notes: readonly string[]
}

/** Tempering is not counted among the heats: it does not work or burn the steel. */
const counted = (purpose: HeatPurpose) => purpose !== 'temper'

/** Heats of a step or a plan, tempers left out. */
export function heatsOf(steps: readonly DoneStep[]): number {
  return steps.reduce(
    (sum, { step }) => sum + step.heats.reduce((n, h) => n + (counted(h.purpose) ? h.count : 0), 0),
    0,
  )
}

/** With what the heats leave, where it has been worked out. */
export function recordPlan(computed: Computed, treated?: Treated): PlanRecord {
  const { plan, job, finishedMass, stackMass, lines } = computed
  const sheets = plan.steps.flatMap(({ bar, step }) =>
    step.taken.map((s) => ({
      bar,
      form: s.form,
      steel: s.steel,
      thickness_m: s.thickness,
      width_m: s.width,
      length_m: s.length,
      count: s.count,
      mass_kg: s.mass,
    })),
  )
  const starts = plan.steps.filter(({ operation }) => operation.takes === 'none')
  const heatsBy: Partial<Record<HeatPurpose, number>> = {}
  for (const { step } of plan.steps)
    for (const h of step.heats) heatsBy[h.purpose] = (heatsBy[h.purpose] ?? 0) + h.count
  return {
    billetwright: { record: 1 },
    name: job.name,
    finished: {
      mass_kg: finishedMass,
      size_m: plan.finished.size,
      ...(lines && { lines_per_m: lines.perMetre }),
    },
    stack: {
      mass_kg: stackMass,
      layers: starts.reduce((n, { step }) => n + wholeCount(step.after.build).laid, 0),
      sheets,
    },
    steps: plan.steps.map((done) => recordStep(done, computed)),
    solved: plan.solved,
    standings: plan.standings,
    totals: { heats: heatsOf(plan.steps), heatsBy, yield: finishedMass / stackMass },
    ...(treated && recordHeats(treated)),
    problems: computed.warnings,
  }
}

function recordStep(done: DoneStep, { densities }: Computed): StepRecord {
  const { step, operation, bar, at } = done
  const layers = wholeCount(step.after.build)
  const sum = (masses: Readonly<Record<string, number>>) =>
    Object.values(masses).reduce((a, b) => a + b, 0)
  const [heat] = step.heats
  return {
    do: operation.name,
    bar,
    at,
    size_m: step.after.size,
    mass_kg: massOf(step.after, densities),
    layersLaid: layers.laid,
    layersMerged: layers.merged,
    heats: heatsOf([done]),
    ...(heat && {
      heat: {
        temperature_K: heat.temperature,
        soak_s: heat.soak,
        purpose: heat.purpose,
        medium: heat.medium,
      },
    }),
    ...(step.force && { force: recordForce(step.force) }),
    losses_kg: Object.fromEntries(step.losses.map((loss) => [loss.cause, sum(loss.masses)])),
    added_kg: sum(step.added),
    setAside_kg: step.setAside.reduce((n, billet) => n + massOf(billet, densities), 0),
    warnings: step.warnings,
    cautions: step.cautions ?? operation.cautions,
    notes: step.notes,
  }
}

/** The record of a job that could not be worked out. */
export function recordProblems(name: string, problems: readonly Problem[]): PlanRecord {
  return { billetwright: { record: 1 }, name, steps: [], solved: [], standings: [], problems }
}
