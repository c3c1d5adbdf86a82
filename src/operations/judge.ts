import type { Problem } from '#problem'
import { printCount, printQuantity } from '#units'
import { type Size } from '#geometry'
import { type Billet, sharesOf, wholeCount } from '#billet'
import {
  type Estimate,
  type Judgement,
  type Task,
  driftOfLayers,
  judgeLoad,
  judgeTool,
  squeezeLimits,
  stressOf,
} from '#forming'
import type { Heat, Smithy, Step } from './operation.ts'
import { meanHeight } from './mean-height.ts'
import { asTold, said } from './as-told.ts'
import { metalOf, workedAt } from './metal-worked.ts'
import { type ShopTool, toolsOf } from './shop-tools.ts'
import { biteOn } from './spread.ts'
import type { Bracket, Judged, Working } from './working.ts'

export type Passes = Task['passes']

/** A step worked with dies or hammer: what is squeezed from which size to which. */
export interface Squeezing {
  readonly before: Billet
  readonly step: Step
  /** The heat it is worked in; the step's first if left out. */
  readonly heat?: Heat
  /** Squeezes in order, for a bite, m. */
  readonly passes: (bite: number) => Passes
  /** The whole face is under the dies. */
  readonly whole?: boolean
  /** The squeezes stand for a shape forged freely: nothing is to be said of how tall it stands. */
  readonly shaped?: boolean
  /** Least and most the width may be, over what the step says. */
  readonly width?: readonly [number, number]
}

export function bracket({ low, value, high }: Bracket): Bracket {
  return { low, value, high }
}

/** Squeezes as a bar of its level height, of the metal that is left after the step. */
export function barOf(bar: Billet, volume = bar.volume) {
  const height = meanHeight(bar)
  const width = bar.shape === 'cut' ? bar.size.width : bar.volume / (bar.size.length * height)
  return { height, width, length: volume / (height * width) }
}

/** Holds a squeezing against every tool of the shop and keeps the best. */
export function judgeSqueezing(given: Squeezing, smithy: Smithy): Judged | undefined {
  const heat = given.heat ?? given.step.heats[0]
  if (!heat) return undefined
  const { shop } = smithy
  const bite = biteOn(given.before, shop)
  const passes = given.passes(bite)
  const temperature = workedAt(heat)
  const metal = metalOf(given.before, smithy, temperature)
  const time = smithy.workingTime?.(given.before, heat)
  const task: Task = {
    passes,
    metal,
    bite,
    heatsAllowed: heat.count,
    ...(time !== undefined && { workingTime: time }),
    ...(given.whole && { whole: true }),
  }
  const tall = Math.max(0, ...passes.map((p) => p.before.height))
  const best = bestOf(
    toolsOf(shop).map((tool) => ({
      tool,
      judged: fitted(judgeTool(task, tool.tool), tool, tall, shop.greatestOpening),
    })),
  )
  if (!best) return undefined
  const drift = driftOf(given.before, smithy, best.judged, given.step, temperature)
  const account = accountOf(best.tool, best.judged, { ...given, heat, temperature })
  const judged = { ...account, force: { ...account.force, ...(drift && { drift }) } }
  if (given.shaped) return judged
  return { ...judged, warnings: [...judged.warnings, ...limits(passes, bite)] }
}

/** How far soft and hard layers part in thickness when they are pressed flat. */
function driftOf(
  bar: Billet,
  smithy: Smithy,
  { rate }: Judgement,
  { after }: Step,
  temperature: number,
): Working['drift'] {
  const { layers, lie } = metalOf(bar, smithy, temperature)
  if (!layers || lie !== 'flat') return undefined
  const steels = Object.entries(sharesOf(bar.build)).flatMap(([steel, s]) => (s > 0 ? [steel] : []))
  const strain = Math.log(Math.max(1, meanHeight(bar) / after.size.height))
  const thickness = bar.size.height / Math.max(1, wholeCount(bar.build).merged)
  const state = { temperature, strain: 0.2, rate: Math.max(0.1, rate) }
  const found = driftOfLayers(
    layers,
    state,
    strain,
    thickness,
    bar.size.width,
    bar.bond === 'welded',
  )
  return steels.map((steel, i) => ({
    steel,
    mean: found.thickness[i] as number,
    atSides: found.atSides[i] as number,
  }))
}

/** Work (J) and force (N), least to most. */
interface Loaded {
  readonly work: readonly [number, number, number]
  readonly force: readonly [number, number, number]
}

/** A step whose work and force follow from its own shape (a bend, a drift), at the mean heat and this strain. */
export function judgeLoaded(
  before: Billet,
  step: Step,
  strain: number,
  load: (stress: Estimate) => Loaded,
  smithy: Smithy,
  squeezes = step.heats[0]?.count ?? 1,
): Judged | undefined {
  const [heat] = step.heats
  if (!heat) return undefined
  const temperature = workedAt(heat)
  const metal = metalOf(before, smithy, temperature)
  const time = smithy.workingTime?.(before, heat)
  const best = bestOf(
    toolsOf(smithy.shop).map((tool) => {
      const rate = tool.tool.speed / Math.max(1e-3, before.size.height)
      const flowStress = stressOf(metal, Math.max(0.05, strain), rate)
      const judged = judgeLoad(
        {
          ...load(flowStress),
          flowStress,
          metal,
          squeezes,
          heatsAllowed: heat.count,
          ...(time !== undefined && { workingTime: time }),
        },
        tool.tool,
      )
      return { tool, judged }
    }),
  )
  return best && accountOf(best.tool, best.judged, { step, heat, temperature })
}

/** A power hammer has an opening too. */
function fitted(judged: Judgement, { way }: ShopTool, tall: number, opening: number): Judgement {
  if (way !== 'power hammer' || tall <= opening) return judged
  return {
    ...judged,
    verdict: 'cannot',
    wouldDo: [
      `an opening of ${printQuantity(Math.ceil(tall * 1000 + 2) / 1000, 'length')} between the dies`,
      'a lower stack, restacked once more',
    ],
  }
}

const rank = { 'can do': 0, marginal: 1, cannot: 2 } as const

/** The better verdict, then the fewer heats, then the shop's order. */
export function bestOf<T extends { readonly judged: Pick<Judgement, 'verdict' | 'heats'> }>(
  all: readonly T[],
): T | undefined {
  return all.toSorted(
    (a, b) =>
      rank[a.judged.verdict] - rank[b.judged.verdict] ||
      Math.min(a.judged.heats, 1e9) - Math.min(b.judged.heats, 1e9),
  )[0]
}

interface Judging {
  readonly step: Step
  readonly heat: Heat
  readonly temperature: number
  readonly width?: readonly [number, number]
}

/** A judgement as the step's account, with the warning where the tool falls short. */
export function accountOf(
  tool: ShopTool,
  judged: Judgement,
  { step, heat, temperature, width = [1, 1] }: Judging,
): Judged {
  const { size } = step.after
  const at = (f: number): Size => ({ ...size, width: size.width * f, length: size.length / f })
  const [narrow, wide] = [at(width[0]), at(width[1])]
  const force: Working = {
    tool: tool.name,
    way: tool.way,
    temperature,
    flowStress: bracket(judged.flowStress),
    laws: lawsOf(judged.flowStress),
    force: bracket(judged.force),
    blows: bracket(judged.blows),
    heats: Math.min(judged.heats, MOST_HEATS),
    planned: heat.count,
    size: {
      low: { ...narrow, length: wide.length },
      high: { ...wide, length: narrow.length },
    },
    verdict: judged.verdict,
    wouldDo: judged.wouldDo.map(said),
  }
  return { force, warnings: shortfall(force), notes: [] }
}

const MOST_HEATS = 9999

export function lawsOf({ basis }: Pick<Estimate, 'basis'>): readonly string[] {
  return [...new Set(basis.map(({ law }) => law))]
}

function shortfall(w: Working): Problem[] {
  if (w.verdict === 'can do') return []
  const heats = (n: number) => printCount(n, 'heat')
  const more = w.heats > w.planned
  const needs =
    w.way === 'press' ? kilonewtons(w.force) : `about ${printCount(rounded(w.blows), 'blow')}`
  const stress = `${Math.round(w.flowStress.value / 1e6)} MPa`
  return [
    {
      at: '',
      what:
        w.verdict === 'cannot'
          ? `the ${w.tool} cannot do this in ${heats(w.planned)}`
          : more
            ? `with the ${w.tool} this takes ${heats(w.heats)}, not ${w.planned}`
            : `for the ${w.tool} this is near the end of what it can do`,
      why:
        w.verdict === 'cannot' && more
          ? `it takes ${needs} and ${heats(w.heats)}, at a flow stress of ${stress}`
          : `it takes ${needs}, at a flow stress of ${stress}`,
      try: w.wouldDo.length > 0 ? w.wouldDo : ['a stronger tool'],
    },
  ]
}

export function kilonewtons({ value, low, high }: Bracket): string {
  const kN = (n: number) => (n < 9.95e3 ? (n / 1e3).toFixed(1) : String(Math.round(n / 1e3)))
  return `${kN(value)} kN (${kN(low)} to ${kN(high)})`
}

export function rounded({ value, low, high }: Bracket): string {
  const whole = (n: number) =>
    String(n < 100 ? Math.max(1, Math.round(n)) : Number(n.toPrecision(2)))
  return whole(low) === whole(high)
    ? whole(value)
    : `${whole(value)} (${whole(low)} to ${whole(high)})`
}

/** Edging by less than this in all is truing: taps that buckle nothing (common practice, no source). */
const TRUING = 1.1

/** Height over width at which a bar doubles over, whatever the blows (common practice). */
const DOUBLES_OVER = 2.5

/** Laps are forestalled by the squeezes taken; a bar that must be forged on edge too tall, or a bite too short for it, is told. */
function limits(passes: Passes, bite: number): Problem[] {
  const found = passes.map(({ before, after }) => ({
    by: before.height / after.height,
    stands: before.height / before.width,
    problems: squeezeLimits({ ...before, to: after.height, bite }),
  }))
  const tall = found.filter(({ stands }) => stands > DOUBLES_OVER)
  const buckles =
    tall.reduce((all, { by }) => all * by, 1) > TRUING
      ? tall[0]?.problems.find((p) => p.at === 'width')
      : undefined
  const skin = found.flatMap(({ problems }) => problems.filter((p) => p.at === 'bite')).at(0)
  return [
    ...(buckles ? [{ ...asTold(buckles), at: '', try: edging }] : []),
    ...(skin ? [{ ...asTold(skin), at: '' }] : []),
  ]
}

const edging = [
  'let it spread: leave the width out, and grind it',
  'a narrower stack or bar',
  'narrower dies, which lengthen more and spread less',
  'light blows on edge, straightened between them',
]
