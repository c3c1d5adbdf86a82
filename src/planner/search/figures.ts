import { axisLength } from '#geometry'
import { type Densities, flatAxis, massOf, wholeCount } from '#billet'
import type { Rates } from '#shop'
import { costOf, weldsOf } from '../cost/cost.ts'
import { faceLines } from '../face-lines.ts'
import type { DoneStep, Plan } from '../plan.ts'
import { carbonCreep, carbonKept } from './creep.ts'

/** What is weighed when routes are compared. */
export interface Figures {
  /** Heats of all bars, tempers left out. */
  readonly heats: number
  /** Steel off the rack, kg. */
  readonly steel: number
  /** Finished mass over steel off the rack. */
  readonly yield: number
  /** Hands on the work, s. */
  readonly hands: number
  /** Expected cost in the shop's money. */
  readonly cost: number
  /** Layers of the patterned bar once it is built up, merged. */
  readonly layers: number
  /** Lines across the face, per metre, where layers stand on edge. */
  readonly lines?: number
  /** How far lines or layers are from what is wished, share of it; 0 with no such wish. */
  readonly off: number
  /** Share of the first difference in carbon between layers that is left, 0..1. */
  readonly carbonKept: number
  /** Chance that some weld does not take, 0..1. */
  readonly failing: number
  /** Outer layers burnt or ground away altogether. */
  readonly layersLost: number
}

export interface Aim {
  /** Lines per metre wished for. */
  readonly lines?: number
  /** Layers wished for. */
  readonly layers?: number
}

/** Reads the figures off a plan worked out; `bar` is the one whose layers make the pattern. */
export function figuresOf(
  plan: Plan,
  densities: Densities,
  rates: Rates,
  { bar, headLength }: { readonly bar: string; readonly headLength: number },
  aim: Aim,
): Figures {
  const heats = plan.steps
    .flatMap(({ step }) => step.heats)
    .reduce((sum, h) => sum + (h.purpose === 'temper' ? 0 : h.count), 0)
  const steel = plan.steps
    .flatMap(({ step }) => Object.values(step.added))
    .reduce((a, b) => a + b, 0)
  const cost = costOf(plan, rates)
  const own = plan.steps.filter((step) => step.bar === bar)
  const built = own[headLength - 1].step.after
  const layers = wholeCount(built.build).merged
  const lines = faceLines(plan.finished)?.perMetre
  return {
    heats,
    steel,
    yield: massOf(plan.finished, densities) / steel,
    hands: cost.hands,
    cost: cost.expected,
    layers,
    ...(lines !== undefined && { lines }),
    off: offAim(layers, lines, aim),
    carbonKept: carbonKept(creepOf(own)),
    failing: 1 - (1 - rates.weldFails) ** weldsOf(plan),
    layersLost: layersLost(own.slice(0, headLength)),
  }
}

/** How far a count is from the wish, as a share of the wish. */
export function offAim(layers: number, lines: number | undefined, aim: Aim): number {
  if (aim.lines !== undefined && lines !== undefined) return Math.abs(lines / aim.lines - 1)
  return aim.layers !== undefined ? Math.abs(layers / aim.layers - 1) : 0
}

/** Σ D·t over the mean layer thickness squared, as long as the layers lie flat. */
function creepOf(own: readonly DoneStep[]): number {
  return own.reduce((sum, { step: { after, heats } }) => {
    const axis = flatAxis(after.build)
    if (axis === undefined || heats.length === 0) return sum
    const layer = after.size[axisLength[axis]] / wholeCount(after.build).merged
    return sum + carbonCreep(heats) / layer ** 2
  }, 0)
}

/** Layers gone in the build-up: what was there before a step and is not after, restacks left out. */
function layersLost(head: readonly DoneStep[]): number {
  return head.reduce((sum, { before, step, operation }) => {
    if (operation.name === 'restack' || before.length !== 1) return sum
    const gone = wholeCount(before[0].build).merged - wholeCount(step.after.build).merged
    return sum + Math.max(0, gone)
  }, 0)
}
