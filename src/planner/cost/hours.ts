import type { Rates } from '#shop'
import type { LossCause } from '#operations'
import type { DoneStep } from '../plan.ts'

/** Time one step takes the smith, s. */
export interface StepHours {
  readonly at: string
  readonly title: string
  /** Hands on the work, s. */
  readonly hands: number
  /** Waiting that nobody is paid for: soak, tempering, s. */
  readonly waiting: number
}

/** Time of every step, from its heats, its cuts and what is ground off, at the shop's own rates. */
export function hoursOf(steps: readonly DoneStep[], rates: Rates): readonly StepHours[] {
  return steps.map((done) => ({
    at: done.at,
    title: done.operation.name,
    hands: handsOn(done, rates),
    waiting: done.step.heats.reduce((sum, heat) => sum + heat.count * heat.soak, 0),
  }))
}

/** Seconds of work on the anvil, the saw and the grinder in one step. */
function handsOn(done: DoneStep, rates: Rates): number {
  const own = byOperation[done.operation.name]?.(done, rates)
  return (own ?? (heatsIn(done) > 0 ? 0 : rates.otherStep)) + inTheFire(done, rates)
}

function inTheFire({ step }: DoneStep, rates: Rates): number {
  return step.heats.reduce((sum, { purpose, count }) => {
    if (purpose === 'temper') return sum + count * rates.tempering
    if (purpose === 'harden') return sum + rates.hardening + (count - 1) * rates.perHeat
    return sum + count * rates.perHeat
  }, 0)
}

function heatsIn({ step }: DoneStep): number {
  return step.heats.reduce((sum, heat) => sum + heat.count, 0)
}

/** Mass lost to these causes in a step, kg. */
export function lost({ step }: DoneStep, ...causes: readonly LossCause[]): number {
  return step.losses
    .filter((loss) => causes.includes(loss.cause))
    .reduce((sum, { masses }) => sum + Object.values(masses).reduce((a, b) => a + b, 0), 0)
}

type Work = (done: DoneStep, rates: Rates) => number

const ground: Work = (done, rates) =>
  lost(done, 'ground', 'drilled', 'cut out', 'polished') * rates.perKilogramGround

/** Pieces a step cuts a bar into, by what its declaration calls them. */
function piecesOf({ values }: DoneStep): number {
  const said = values.pieces ?? values.slices ?? values.tiles
  return typeof said === 'number' ? said : 1
}

const sheets: Work = ({ step }, rates) =>
  step.taken.reduce((sum, stock) => sum + stock.count, 0) * rates.perSheet

const cutAndLay: Work = (done, rates) => {
  const joints = Math.max(1, piecesOf(done) - 1, done.before.length - 1)
  return joints * (rates.perCut + 2 * rates.perFace) + rates.perStack + sheets(done, rates)
}

const sawBoth: Work = (_done, rates) => 2 * rates.perCut

/** What is counted otherwise than by heats; a step not named here takes the shop's `otherStep`. */
const byOperation: Readonly<Record<string, Work>> = {
  stack: sheets,
  'take bar': (done, rates) => sheets(done, rates) + rates.perCut,
  can: (done, rates) => sheets(done, rates) + 2 * rates.perStack,
  tack: (_done, rates) => rates.perStack,
  trim: sawBoth,
  crop: sawBoth,
  'cut off': (_done, rates) => rates.perCut,
  turn: () => 0,
  restack: cutAndLay,
  slices: cutAndLay,
  bookmatch: cutAndLay,
  'four-way': (done, rates) => 3 * (rates.perCut + 2 * rates.perFace) + cutAndLay(done, rates),
  'lay side by side': cutAndLay,
  'edge bar': cutAndLay,
  clad: cutAndLay,
  grind: ground,
  'grind to shape': ground,
  ladder: ground,
  dimple: ground,
  groove: (done, rates) => Math.max(ground(done, rates), rates.perDent),
  drill: (done, rates) => Math.max(ground(done, rates), rates.perDent),
  stamp: (_done, rates) => rates.otherStep,
  polish: (_done, rates) => rates.polishing,
  etch: (_done, rates) => rates.etching,
}
