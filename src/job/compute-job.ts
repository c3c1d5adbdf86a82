import { type Problem, type Result, within } from '#problem'
import { type Axis, axisLength } from '#geometry'
import { printQuantity } from '#units'
import { type PieceSolid, contradictions, weigh } from '#piece'
import { DESIGN_DENSITY, type Grade, densityOf, findGrade, grades } from '#steel'
import {
  type Billet,
  type Build,
  type Densities,
  countLayers,
  flatAxis,
  massOf,
  sharesOf,
} from '#billet'
import type { Smithy } from '#operations'
import { type Plan, planRoute } from '#planner'
import type { Job, Wanted } from './job.ts'

export interface ComputeOptions {
  readonly signal?: AbortSignal
  /** Share done, 0..1, and what is being done. */
  readonly onProgress?: (share: number, doing: string) => void
}

/** Lines met along the face: layers that stand across a direction of the bar. */
export interface FaceLines {
  readonly along: Axis
  readonly perMetre: number
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
  const smithy: Smithy = { shop: job.shop, densities, piece: solid }
  onProgress?.(0.1, 'the route')
  const planned = planRoute(job.route, smithy, { signal })
  const wishes = wishProblems(job, solid, meanDensity(planned.ok?.finished, densities))
  if (planned.problems) return { problems: [...planned.problems, ...wishes] }
  if (wishes.length > 0) return { problems: wishes }
  const plan = planned.ok
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

/** Work that leaves the lines of the face where they are: it only takes metal off, or dents it here and there. */
const leavesLines = ['stamp', 'ground', 'grind to shape', 'groove', 'drill']

function asLaid(build: Build): Build {
  return build.form === 'worked' && (build.shares || leavesLines.includes(build.by))
    ? asLaid(build.of)
    : build
}

/** Lines per metre where the layers stand square to the length or the width of the face. */
export function faceLines(billet: Billet): FaceLines | undefined {
  const build = asLaid(billet.build)
  const axis = flatAxis(build)
  if (axis === undefined || axis === 'z') return undefined
  const { merged } = countLayers(build, axis)
  return merged > 1 ? { along: axis, perMetre: merged / billet.size[axisLength[axis]] } : undefined
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
