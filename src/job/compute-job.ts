import { type Problem, type Result, within } from '#problem'
import { printQuantity } from '#units'
import { type PieceSolid, contradictions, weigh } from '#piece'
import {
  type Composition,
  DESIGN_DENSITY,
  type Grade,
  compositionOf,
  densityOf,
  findGrade,
  grades,
} from '#steel'
import { type Billet, type Densities, massOf, sharesOf } from '#billet'
import { type Smithy, judgeStep } from '#operations'
import { checkHeats } from '#heats'
import { type DoneStep, type FaceLines, type Plan, faceLines, planRoute } from '#planner'
import { smithyOf } from './smithy.ts'
import type { Job, Wanted } from './job.ts'

export interface ComputeOptions {
  readonly signal?: AbortSignal
  /** Share done, 0..1, and what is being done. */
  readonly onProgress?: (share: number, doing: string) => void
  /** Numbers left free as the plan before the last edit had them, by place: it is then quicker. */
  readonly start?: Readonly<Record<string, number>>
}

/** A job worked out. */
export interface Computed {
  readonly job: Job
  readonly solid?: PieceSolid
  readonly densities: Densities
  readonly plan: Plan
  /** kg. */
  readonly finishedMass: number
  /** kg off the rack. */
  readonly stackMass: number
  readonly lines?: FaceLines
  readonly warnings: readonly Problem[]
}

/** Density of every grade the job may name, kg/m³. */
export function densitiesFor(own: readonly Grade[]): Densities {
  return Object.fromEntries(
    [...grades, ...own].map((grade) => [grade.name, densityOf(grade).value]),
  )
}

/** Composition of every grade the job may name, wt%. */
export function compositionsFor(own: readonly Grade[]): Readonly<Record<string, Composition>> {
  return Object.fromEntries([...grades, ...own].map((grade) => [grade.name, compositionOf(grade)]))
}

/** The plan with what each step asks of the shop's tools: reckoned once, when all sizes are settled. */
function judgePlan(plan: Plan, smithy: Smithy): Plan {
  const steps = plan.steps.map((done) => judgeStep(done, smithy))
  const told = steps.flatMap(({ at, step }, i) =>
    within(at, step.warnings.slice(plan.steps[i].step.warnings.length)),
  )
  return { ...plan, steps, warnings: [...plan.warnings, ...told] }
}

/** The plan with what is wrong with its heats told in the step where it is wrong. */
function withChecks(plan: Plan, found: ReadonlyMap<string, readonly Problem[]>): Plan {
  if (found.size === 0) return plan
  const steps = plan.steps.map((done): DoneStep => {
    const own = (found.get(done.at) ?? []).map((p) => ({
      ...p,
      at: p.at.slice(done.at.length + 1),
    }))
    const step = { ...done.step, warnings: [...done.step.warnings, ...own] }
    return own.length > 0 ? { ...done, step } : done
  })
  return { ...plan, steps, warnings: [...plan.warnings, ...[...found.values()].flat()] }
}

/** Density of one grade by name or alias, kg/m³. */
export function densityNamed(name: string): Result<number> {
  const grade = findGrade(name)
  return grade.problems ? grade : { ok: densityOf(grade.ok).value }
}

/** Works a job out, or says everything that is in the way. */
export function computeJob(job: Job, options: ComputeOptions = {}): Result<Computed> {
  const { signal, onProgress } = options
  signal?.throwIfAborted()
  const densities = densitiesFor(job.steels)
  onProgress?.(0, 'the piece')
  let solid: PieceSolid | undefined
  if (job.piece) {
    const piece = buildPiece(job.piece)
    if (piece.problems) return { problems: within('piece', piece.problems) }
    solid = piece.ok
  }
  const compositions = compositionsFor(job.steels)
  const smithy = smithyOf(job, densities, compositions, solid)
  onProgress?.(0.1, 'the route')
  const planned = planRoute(job.route, smithy, { signal, start: options.start })
  const wishes = wishProblems(job, solid, meanDensity(planned.ok?.finished, densities))
  if (planned.problems) return { problems: [...planned.problems, ...wishes] }
  if (wishes.length > 0) return { problems: wishes }
  onProgress?.(0.8, 'the force')
  const judged = judgePlan(planned.ok, smithy)
  const plan = withChecks(
    judged,
    checkHeats(judged, smithy.shop, (name) => compositions[name] ?? {}),
  )
  const stackMass = plan.steps.reduce(
    (sum, { step }) => sum + Object.values(step.added).reduce((a, b) => a + b, 0),
    0,
  )
  const lines = faceLines(plan.finished)
  onProgress?.(1, 'done')
  return {
    ok: {
      job,
      solid,
      densities,
      plan,
      finishedMass: massOf(plan.finished, densities),
      stackMass,
      lines,
      warnings: [...job.warnings, ...plan.warnings, ...lineWarnings(job, lines)],
    },
  }
}

/** Pieces built lately: most edits of a job leave its piece as it is, and a solid is slow to build. */
const built = new Map<string, Result<PieceSolid>>()
const KEPT = 8

/** The solid of a piece as asked for, or what is wrong with its sizes. */
export function buildPiece({ kind, values }: Wanted): Result<PieceSolid> {
  const key = `${kind.name} ${JSON.stringify(values)}`
  const known = built.get(key)
  if (known) return known
  const solid = kind.build(values as never)
  built.set(key, solid)
  if (built.size > KEPT) built.delete(built.keys().next().value as string)
  return solid
}

/** Sizes against weight, at the density of the steels really in the piece. */
function wishProblems(job: Job, solid: PieceSolid | undefined, density: number): Problem[] {
  const { mass, massWithin } = job.wishes
  if (!job.piece || !solid || mass === undefined) return []
  if (Math.abs(weigh(solid, density) - mass) <= massWithin * mass) return []
  return within('piece', contradictions(job.piece.kind, job.piece.values, mass, density))
}

function meanDensity(billet: Billet | undefined, densities: Densities): number {
  if (!billet) return DESIGN_DENSITY
  return Object.entries(sharesOf(billet.build)).reduce(
    (sum, [steel, share]) => sum + share * densities[steel],
    0,
  )
}

/** Half as many or twice as many lines as wished is another pattern; 10 % is within the hand (common practice). */
const LINES_WITHIN = 0.1

function lineWarnings(job: Job, lines: FaceLines | undefined): Problem[] {
  const wished = job.wishes.lines
  if (wished === undefined || lines === undefined) return []
  const off = lines.perMetre / wished - 1
  if (Math.abs(off) <= LINES_WITHIN) return []
  return [
    {
      at: 'wishes.lines',
      what: `the face shows ${printQuantity(lines.perMetre, 'lines')}; ${printQuantity(wished, 'lines')} were wished for`,
      why: 'layers that cross the face divided by the length they span',
      try: [
        off > 0
          ? 'restack into fewer pieces, or lay fewer sheets'
          : 'restack into more pieces, or lay more sheets',
      ],
    },
  ]
}
