import type { Composition } from '#steel'
import { flowStress } from '../flow-stress/choose.ts'
import { type LayerShare, stackStress } from '../stack/stack.ts'
import type { Basis, Estimate } from '../estimate.ts'
import { platenPressure } from '../pressing/platen.ts'
import type { Bar, Pass } from '../spread/draw.ts'
import {
  type Hammer,
  type Press,
  type Tool,
  blowEnergy,
  efficiencyOf,
  isPress,
  strainRate,
} from './tools.ts'
import { blowsFor, formingWork } from './work.ts'

export type Verdict = 'can do' | 'marginal' | 'cannot'

/** The metal under the tool: one steel, or the layers of a stack and how they lie to the blow. */
export interface Metal {
  readonly steel?: Composition
  readonly layers?: readonly LayerShare[]
  readonly lie?: 'flat' | 'on edge'
  /** K, the mean while it is worked. */
  readonly temperature: number
}

export interface Task {
  readonly passes: readonly Pick<Pass, 'before' | 'after'>[]
  readonly metal: Metal
  /** Length of bar under the dies at one blow, m. */
  readonly bite: number
  /** Friction factor m. */
  readonly friction?: number
  /** Seconds one heat lasts between forging and stopping heat; 30 if left out (common practice). */
  readonly workingTime?: number
  /** Heats the smith allows for the step; 8 if left out. */
  readonly heatsAllowed?: number
  /** The whole face is under the dies (upsetting, welding a short billet). */
  readonly whole?: boolean
}

export interface Judgement {
  readonly verdict: Verdict
  /** J for the whole step. */
  readonly work: Estimate
  /** Greatest force, N: what a press must give; the mean force of a blow. */
  readonly force: Estimate
  /** Blows, or squeezes of a press, for the whole step. */
  readonly blows: Estimate
  readonly heats: number
  /** The bar as it lies after each heat, the work shared evenly; m. */
  readonly afterHeat: readonly Bar[]
  readonly rate: number
  readonly flowStress: Estimate
  /** What would make it possible, the likeliest first; empty when it can be done. */
  readonly wouldDo: readonly string[]
}

/** Past this many blows in a step a smith by hand is no longer forging but wearing out (common practice). */
const handBlowsLimit = 2000

/** Flow stress of the metal at a rate; strain is that of one pass. */
export function stressOf(
  { steel, layers, lie, temperature }: Metal,
  strain: number,
  rate: number,
  mean = false,
): Estimate {
  const state = { temperature, strain, rate }
  return layers && layers.length > 0
    ? stackStress(layers, state, lie ?? 'flat')
    : flowStress(steel ?? {}, state, mean)
}

interface Sum {
  readonly work: readonly [number, number, number]
  readonly force: readonly [number, number, number]
  readonly squeezes: number
  readonly rate: number
  readonly stress: Estimate
  /** Share of the work of each pass. */
  readonly shares: readonly number[]
}

const three = (e: Estimate) => [e.low, e.value, e.high] as const

function addUp(task: Task, tool: Tool): Sum {
  let work: [number, number, number] = [0, 0, 0]
  let force: [number, number, number] = [0, 0, 0]
  let squeezes = 0
  const each: number[] = []
  let [worst, rate]: [Estimate | undefined, number] = [undefined, 0]
  for (const { before, after } of task.passes) {
    const strain = Math.log(Math.max(1, before.height / Math.max(1e-9, after.height)))
    const passRate = strainRate(tool.speed, before.height)
    // Half the way: the blow slows down, the squeeze begins at full speed.
    const meanRate = isPress(tool) ? passRate : 0.5 * passRate
    const stress = stressOf(task.metal, Math.max(0.05, strain), meanRate)
    const length = task.whole ? after.length : Math.min(task.bite, after.length)
    const face = { length, width: after.width, height: after.height, overhang: !task.whole }
    const factor = platenPressure(
      task.friction === undefined ? face : { ...face, friction: task.friction },
    )
    const volume = before.height * before.width * before.length
    const area = length * after.width
    const [s, f] = [three(stress), three(factor)]
    each.push(formingWork(volume, s[1], before.height, after.height, f[1]))
    work = work.map(
      (w, i) => w + formingWork(volume, s[i]!, before.height, after.height, f[i]!),
    ) as typeof work
    force = force.map((x, i) => Math.max(x, s[i]! * f[i]! * area)) as typeof force
    squeezes += task.whole
      ? 1
      : Math.max(1, Math.ceil(before.length / Math.max(1e-4, task.bite) - 1e-9))
    if (!worst || stress.value > worst.value) worst = stress
    rate = Math.max(rate, passRate)
  }
  const stress = worst ?? stressOf(task.metal, 0.05, 1)
  const shares = each.map((w) => (work[1] > 0 ? w / work[1] : 0))
  return { work, force, squeezes, rate, stress, shares }
}

const fromMemory: Basis = {
  law: 'work over blow energy and efficiency',
  sources: ['memory'],
  standing: 'from memory',
}

function asEstimate(
  [low, value, high]: readonly [number, number, number],
  like: Estimate,
): Estimate {
  return { low, value, high, basis: [...like.basis, fromMemory], cautions: like.cautions }
}

function heatsFor(blows: number, perMinute: number, workingTime: number): number {
  const perHeat = Math.max(1, (perMinute / 60) * workingTime)
  return Number.isFinite(blows)
    ? Math.max(blows > 0 ? 1 : 0, Math.ceil(blows / perHeat - 1e-9))
    : Infinity
}

/** The bar part of the way through a pass, by the share of its strain given. */
function partWay({ before, after }: Pick<Pass, 'before' | 'after'>, share: number): Bar {
  const at = (from: number, to: number) => (from > 0 && to > 0 ? from * (to / from) ** share : to)
  return {
    height: at(before.height, after.height),
    width: at(before.width, after.width),
    length: at(before.length, after.length),
  }
}

function sizesAfter({ passes }: Task, { shares }: Sum, heats: number): Bar[] {
  const last = passes.at(-1)
  if (!last || !Number.isFinite(heats) || heats > 200) return last ? [last.after] : []
  return Array.from({ length: heats }, (_, i) => {
    let left = (i + 1) / heats
    for (const [n, pass] of passes.entries()) {
      const share = shares[n]!
      if (left < share * (1 - 1e-9)) return partWay(pass, left / share)
      left -= share
    }
    return last.after
  })
}

function judgeHammer(task: Task, hammer: Hammer, sum: Sum): Judgement {
  const energy = blowEnergy(hammer)
  const eta = efficiencyOf(hammer)
  const counts = sum.work.map((w) => Math.max(w > 0 ? 1 : 0, blowsFor(w, energy, eta))) as [
    number,
    number,
    number,
  ]
  const perMinute = hammer.blowsPerMinute ?? (hammer.kind === 'hand' ? 60 : 180)
  const workingTime = task.workingTime ?? 30
  const allowed = task.heatsAllowed ?? 8
  const heats = heatsFor(counts[1], perMinute, workingTime)
  const most = heatsFor(counts[2], perMinute, workingTime)
  const tired = hammer.kind === 'hand' && counts[1] > handBlowsLimit
  // Strain one blow gives the metal under it; less than a thousandth only works the skin.
  const bites = Math.max(1, sum.squeezes / Math.max(1, task.passes.length))
  const strain = totalStrain(task)
  const skin = strain > 0 && (energy * eta * bites * strain) / sum.work[1] < 1e-3
  const verdict: Verdict =
    heats > 5 * allowed || tired || skin
      ? 'cannot'
      : heats > allowed || most > 5 * allowed
        ? 'marginal'
        : 'can do'
  const wanted = (heats / Math.max(1, allowed)) * energy * eta
  const wouldDo =
    verdict === 'can do'
      ? []
      : [
          `Blows of ${Math.ceil((wanted * 1.1) / eta)} J (now ${Math.round(energy)} J): ${moreMass(hammer, wanted / eta)}.`,
          hotterBy(task),
          'A press, whose slow squeeze meets about half the stress of a blow.',
          ...(heats > allowed ? [`${heats} heats instead of ${allowed}.`] : []),
        ]
  return {
    verdict,
    work: asEstimate(sum.work, sum.stress),
    force: asEstimate(sum.force, sum.stress),
    blows: asEstimate(counts, sum.stress),
    heats,
    afterHeat: sizesAfter(task, sum, heats),
    rate: sum.rate,
    flowStress: sum.stress,
    wouldDo,
  }
}

function hotterBy({ metal }: Task): string {
  const at = (more: number) =>
    stressOf({ ...metal, temperature: metal.temperature + more }, 0.2, 1).value
  const less = Math.round(100 * (1 - at(50) / at(0)))
  return `Hotter metal: 50 °C more takes off ${less} %, if the steel stands it.`
}

function totalStrain({ passes }: Task): number {
  return passes.reduce(
    (e, { before, after }) =>
      e + Math.log(Math.max(1, before.height / Math.max(1e-9, after.height))),
    0,
  )
}

function moreMass({ kind, speed }: Hammer, energy: number): string {
  const mass = (2 * energy) / (speed * speed)
  return kind === 'hand' && mass > 4
    ? `a striker with a sledge, or a power hammer of ${Math.ceil(mass / 5) * 5} kg`
    : `a ${mass < 10 ? mass.toFixed(1) : Math.ceil(mass / 5) * 5} kg head at the same speed`
}

function judgePress(task: Task, press: Press, sum: Sum): Judgement {
  const [low, value, high] = sum.force
  const tallest = Math.max(0, ...task.passes.map((p) => p.before.height))
  const travel = Math.max(0, ...task.passes.map((p) => p.before.height - p.after.height))
  const noRoom = tallest > (press.opening ?? Infinity) || travel > (press.stroke ?? Infinity)
  const squeezes: [number, number, number] = [sum.squeezes, sum.squeezes, sum.squeezes]
  const heats = heatsFor(sum.squeezes, press.squeezesPerMinute ?? 12, task.workingTime ?? 30)
  const allowed = task.heatsAllowed ?? 8
  const verdict: Verdict =
    noRoom || low > press.force || heats > 5 * allowed || value > 1.15 * press.force
      ? 'cannot'
      : high > press.force || heats > allowed
        ? 'marginal'
        : 'can do'
  const wouldDo: string[] = []
  if (tallest > (press.opening ?? Infinity))
    wouldDo.push(`An opening of ${Math.ceil(tallest * 1000) + 2} mm between the dies.`)
  if (travel > (press.stroke ?? Infinity)) wouldDo.push('More passes, each within the stroke.')
  if (high > press.force) {
    const bite = Math.floor(task.bite * 1000 * Math.min(0.9, press.force / Math.max(1, value)))
    if (!task.whole && bite >= 3) wouldDo.push(`Narrower dies: a bite of about ${bite} mm.`)
    wouldDo.push(`A press of ${Math.ceil(high / 1e4) * 10} kN.`, hotterBy(task))
    if (task.whole) wouldDo.push('Press it in steps along its length instead of all at once.')
  }
  if (heats > allowed) wouldDo.push(`${heats} heats instead of ${allowed}, or wider dies.`)
  return {
    verdict,
    work: asEstimate(sum.work, sum.stress),
    force: asEstimate(sum.force, sum.stress),
    blows: asEstimate(squeezes, sum.stress),
    heats,
    afterHeat: sizesAfter(task, sum, heats),
    rate: sum.rate,
    flowStress: sum.stress,
    wouldDo: verdict === 'can do' ? [] : wouldDo,
  }
}

/**
 * Whether a tool can do a step: force, work, blows and heats with their ranges, a verdict, and what
 * would do it if this tool cannot. Passes come from `drawOut`, or a single before and after.
 */
export function judgeTool(task: Task, tool: Tool): Judgement {
  const sum = addUp(task, tool)
  return isPress(tool) ? judgePress(task, tool, sum) : judgeHammer(task, tool, sum)
}

/** Work and force reckoned elsewhere (a bend, a drift), to be held against a tool. */
export interface Load {
  /** J and N: least, likely, most. */
  readonly work: readonly [number, number, number]
  readonly force: readonly [number, number, number]
  readonly flowStress: Estimate
  readonly metal: Metal
  /** Squeezes a press takes; 1 if left out. */
  readonly squeezes?: number
  readonly workingTime?: number
  readonly heatsAllowed?: number
}

/** Whether a tool can do a load: as `judgeTool`, the sizes left out. */
export function judgeLoad(load: Load, tool: Tool): Judgement {
  const { work, force, flowStress, metal, squeezes = 1, workingTime, heatsAllowed } = load
  const task: Task = { passes: [], metal, bite: 0, workingTime, heatsAllowed }
  const sum: Sum = { work, force, squeezes, rate: 0, stress: flowStress, shares: [] }
  return isPress(tool) ? judgePress(task, tool, sum) : judgeHammer(task, tool, sum)
}
