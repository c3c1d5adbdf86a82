import fc from 'fast-check'
import { isDeepStrictEqual } from 'node:util'
import { type Size, CONSERVED, SAME_LENGTH, axisLength } from '#geometry'
import { readValues, writeValues } from '#parameters'
import { type Billet, checkBillet, massesOf } from '#billet'
import { judgeStep } from './judge-step.ts'
import { workBack } from './lengthen.ts'
import type { LossCause, Operation, Step } from './operation.ts'
import {
  type Trial,
  done,
  endsOfRanges,
  examplesOf,
  frozen,
  inBars,
  resized,
  trials,
} from './trials.ts'

/** A law an operation breaks, and how. */
export interface Breach {
  readonly operation: string
  readonly law: string
  readonly what: string
}

/** What must hold of every operation. `find` gives every way in which one breaks it. */
interface Law {
  readonly name: string
  find(operation: Operation, run: Run): readonly string[]
}

/** How the trials are drawn: the same seed draws the same trials. */
export interface Run {
  readonly seed: number
  readonly runs: number
}

/** Less than this is rounding, kg. */
const NO_MASS = 1e-12

export const laws: readonly Law[] = [
  { name: 'examples are there and work', find: examplesWork },
  { name: 'metal is kept', find: everyTrial(metalIsKept) },
  { name: 'every declared loss occurs, and no other', find: lossesAreDeclared },
  { name: 'what comes out is a sound billet', find: everyTrial(billetIsSound) },
  { name: 'what goes in is not altered', find: everyTrial(inputsStand) },
  { name: 'done twice gives the same bytes', find: everyTrial(sameTwice) },
  { name: 'values survive the file', find: everyTrial(valuesSurvive) },
  { name: 'both ends of every range compute', find: endsCompute },
  { name: 'a longer or thicker bar gives no less metal', find: moreGivesMore },
  { name: 'worked back, then forward, meets the demand', find: backThenForward },
  { name: 'heats are heats, and carry cautions', find: everyTrial(heatsAreSound) },
  { name: 'movement says where metal came from', find: movementSays },
  {
    name: 'force is told where metal is worked, in finite brackets, with cures',
    find: forceIsTold,
  },
  { name: 'words are whole sentences', find: wordsAreWhole },
]

/** Every breach of every law by one operation. Trials are drawn from the seed, which breaches name. */
export function breachesOf(operation: Operation, run: Run, only = laws): readonly Breach[] {
  return only.flatMap((law) => {
    const breach = (what: string): Breach => ({ operation: operation.name, law: law.name, what })
    try {
      return law.find(operation, run).map(breach)
    } catch (thrown) {
      return [breach(`throws: ${String(thrown)}`)]
    }
  })
}

/** Tries a check on every example as written, then on examples varied at random. */
function everyTrial(check: (operation: Operation, trial: Trial) => void): Law['find'] {
  return (operation, { seed, runs }) => {
    const breaches: string[] = []
    for (const trial of examplesOf(operation)) {
      try {
        check(operation, trial)
      } catch (thrown) {
        breaches.push(`${trial.told}: ${(thrown as Error).message}`)
      }
    }
    if (breaches.length > 0) return breaches
    const drawn = fc.check(
      fc.property(trials(operation), (trial) => check(operation, trial)),
      { seed, numRuns: runs },
    )
    if (!drawn.failed) return []
    const why = drawn.errorInstance instanceof Error ? drawn.errorInstance.message : ''
    return [`${drawn.counterexample?.[0].told ?? ''}: ${why} (seed ${seed})`]
  }
}

function must(holds: boolean, otherwise: () => string): void {
  if (!holds) throw new Error(otherwise())
}

function examplesWork(operation: Operation): string[] {
  const all = examplesOf(operation)
  const breaches = all.length < 2 ? ['fewer than two examples'] : []
  for (const trial of all) {
    const { problems } = done(operation, trial)
    if (problems)
      breaches.push(`${trial.told}: ${problems.map((p) => `${p.at} ${p.what}`).join('; ')}`)
    const named = operation.bars?.(trial.values as never).length ?? 0
    const fits = {
      none: trial.before.length === 0,
      one: trial.before.length === 1,
      others: trial.before.length === named || trial.before.length === named + 1,
    }
    if (!fits[operation.takes])
      breaches.push(`${trial.told}: ${trial.before.length} bars lie there for "${operation.takes}"`)
  }
  return breaches
}

/** Mass before + added = after + set aside + losses, for each steel and so for the whole. */
function metalIsKept(operation: Operation, trial: Trial): void {
  const { ok: step } = done(operation, trial)
  if (!step) return
  const { densities } = trial.smithy
  const balance: Record<string, number> = {}
  const put = (masses: Readonly<Record<string, number>>, sign: number) => {
    for (const [steel, mass] of Object.entries(masses))
      balance[steel] = (balance[steel] ?? 0) + sign * mass
  }
  trial.before.forEach((bar) => put(massesOf(bar, densities), 1))
  put(step.added, 1)
  const whole = Object.values(balance).reduce((sum, mass) => sum + mass, 0)
  put(massesOf(step.after, densities), -1)
  step.setAside.forEach((bar) => put(massesOf(bar, densities), -1))
  step.losses.forEach((loss) => put(loss.masses, -1))
  for (const [steel, over] of Object.entries(balance)) {
    must(Math.abs(over) <= CONSERVED * whole, () => {
      const causes = step.losses.map((loss) => loss.cause).join(', ') || 'none'
      return `${(over * 1000).toPrecision(6)} g of ${steel} is unaccounted for (losses: ${causes})`
    })
  }
  const taken: Record<string, number> = {}
  for (const stock of step.taken) taken[stock.steel] = (taken[stock.steel] ?? 0) + stock.mass
  for (const steel of new Set([...Object.keys(taken), ...Object.keys(step.added)])) {
    const [off, added] = [taken[steel] ?? 0, step.added[steel] ?? 0]
    must(
      Math.abs(off - added) <= CONSERVED * Math.max(whole, added),
      () => `${off} kg of ${steel} is taken off the rack and ${added} kg is added`,
    )
  }
  for (const { cause, masses } of step.losses) {
    for (const [steel, mass] of Object.entries(masses))
      must(mass >= -CONSERVED * whole, () => `loss "${cause}" gives ${-mass} kg of ${steel} back`)
  }
}

function causesIn(step: Step): LossCause[] {
  const lost = (masses: Readonly<Record<string, number>>) =>
    Object.values(masses).reduce((sum, mass) => sum + mass, 0)
  return step.losses.filter((loss) => lost(loss.masses) > NO_MASS).map((loss) => loss.cause)
}

function lossesAreDeclared(operation: Operation, run: Run): string[] {
  const met = new Set(
    examplesOf(operation).flatMap((trial) => {
      const { ok: step } = done(operation, trial)
      return step ? causesIn(step) : []
    }),
  )
  const never = operation.loses
    .filter((cause) => !met.has(cause))
    .map((cause) => `loss "${cause}" is declared and no example has it`)
  const undeclared = everyTrial((_, trial) => {
    const { ok: step } = done(operation, trial)
    for (const cause of step ? causesIn(step) : [])
      must(operation.loses.includes(cause), () => `loss "${cause}" occurs and is not declared`)
  })
  return [...never, ...undeclared(operation, run)]
}

function billetIsSound(operation: Operation, trial: Trial): void {
  const { ok: step } = done(operation, trial)
  if (!step) return
  for (const bar of [step.after, ...step.setAside]) {
    const [fault] = checkBillet(bar)
    must(!fault, () => `${fault.at}: ${fault.what}`)
  }
  const odd = oddNumber(step, 'step')
  must(odd === undefined, () => `${odd} is no finite number`)
}

/** Path of the first number that is NaN or infinite. */
function oddNumber(value: unknown, at: string): string | undefined {
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : at
  if (typeof value !== 'object' || value === null) return undefined
  for (const [key, inner] of Object.entries(value)) {
    const odd = oddNumber(inner, `${at}.${key}`)
    if (odd) return odd
  }
  return undefined
}

function inputsStand(operation: Operation, trial: Trial): void {
  // Frozen through and through: writing to it throws, and the throw is the breach.
  done(operation, frozen(trial))
}

function sameTwice(operation: Operation, trial: Trial): void {
  const [once, again] = [done(operation, trial), done(operation, trial)]
  must(JSON.stringify(once) === JSON.stringify(again), () => 'the second time differs')
}

function valuesSurvive(operation: Operation, trial: Trial): void {
  const { parameters } = operation
  const written = writeValues(parameters, trial.values, trial.typed)
  const read = readValues(parameters, written)
  must(isDeepStrictEqual(read.ok?.values, trial.values), () => 'as typed: other values come back')
  const bare = readValues(parameters, writeValues(parameters, trial.values))
  must(isDeepStrictEqual(bare.ok?.values, trial.values), () => 'in SI: other values come back')
}

function endsCompute(operation: Operation): string[] {
  const breaches: string[] = []
  for (const trial of endsOfRanges(operation)) {
    try {
      billetIsSound(operation, trial)
      metalIsKept(operation, trial)
    } catch (thrown) {
      breaches.push(`${trial.told}: ${(thrown as Error).message}`)
    }
  }
  return breaches
}

/** A tenth more of one bar's length or height. More heats may then burn more; never a tenth. */
function moreGivesMore(operation: Operation): string[] {
  const breaches: string[] = []
  const metal = (step: Step) =>
    step.after.volume + step.setAside.reduce((sum, bar) => sum + bar.volume, 0)
  for (const trial of examplesOf(operation)) {
    const { ok: usual } = done(operation, trial)
    for (const [i, bar] of trial.before.entries()) {
      for (const side of ['length', 'height'] as const) {
        const larger = resized(bar, { ...bar.size, [side]: bar.size[side] * 1.1 })
        const { ok: more } = done(operation, inBars(trial, trial.before.with(i, larger)))
        if (usual && more && metal(more) < metal(usual) * (1 - CONSERVED))
          breaches.push(`${trial.told}: more ${side} of bar ${i} gives less metal`)
      }
    }
  }
  return breaches
}

/**
 * The demand is what the example leaves, and that with its spare side shorter and longer. Bars of
 * the sizes worked back must meet it, and must be the least that do: met within the one tolerance,
 * or (where metal comes in whole pieces) not met once any of them is a millionth shorter.
 */
function backThenForward(operation: Operation): string[] {
  return examplesOf(operation).flatMap((trial) => {
    const { ok: usual } = done(operation, trial)
    if (!usual) return []
    return [1, 0.8, 1.3].flatMap((factor) => {
      const demand = demandOn(usual.after, factor)
      const told = `${trial.told}, ${factor} of what it leaves`
      const needed = workBack(operation, demand, trial.values, trial.before, trial.smithy)
      if (operation.takes === 'none')
        return needed.ok?.length === 0 ? [] : [`${told}: bars are asked for where none are taken`]
      if (needed.problems) return factor === 1 ? [`${told}: ${needed.problems[0].what}`] : []
      const faults = needed.ok.length === trial.before.length ? [] : ['sizes are not one a bar']
      needed.ok.forEach((size, i) => faults.push(...sectionStands(trial.before[i], size)))
      if (faults.length > 0) return faults.map((fault) => `${told}: ${fault}`)
      const bars = trial.before.map((bar, i) => resized(bar, needed.ok[i]))
      return isLeast(operation, trial, bars, demand).map((fault) => `${told}: ${fault}`)
    })
  })
}

/** A bar with its spare side made another; a round bar stays round. */
function demandOn({ size, spare, shape }: Billet, factor: number): Size {
  if (spare === 'x' || shape === 'rectangle')
    return { ...size, [axisLength[spare]]: size[axisLength[spare]] * factor }
  const both = Math.sqrt(factor)
  return { ...size, width: size.width * both, height: size.height * both }
}

function sectionStands(bar: Billet, needed: Size): string[] {
  const sides = (['length', 'width', 'height'] as const).filter(
    (side) =>
      side !== axisLength[bar.spare] &&
      needed[side] > bar.size[side] * (1 + CONSERVED) + SAME_LENGTH,
  )
  return sides.map((side) => `more ${side} is asked for, which the bar cannot give`)
}

function shortOf(demand: Size, bar: Billet): string | undefined {
  return (['length', 'width', 'height'] as const).find(
    (side) => bar.size[side] < demand[side] - SAME_LENGTH,
  )
}

function isLeast(
  operation: Operation,
  trial: Trial,
  bars: readonly Billet[],
  demand: Size,
): string[] {
  const { ok: step, problems } = done(operation, inBars(trial, bars))
  if (problems) return [`the bars worked back do not work: ${problems[0].what}`]
  const short = shortOf(demand, step.after)
  if (short)
    return [
      `${short} is ${step.after.size[short as keyof Size]} m; ${demand[short as keyof Size]} is wanted`,
    ]
  const spare = axisLength[step.after.spare]
  if (Math.abs(step.after.size[spare] - demand[spare]) <= SAME_LENGTH) return []
  for (const [i, bar] of bars.entries()) {
    const side = axisLength[bar.spare]
    if (bar.size[side] === trial.before[i].size[side]) continue
    const less = resized(bar, { ...bar.size, [side]: bar.size[side] * (1 - 1e-6) })
    const { ok: still } = done(operation, inBars(trial, bars.with(i, less)))
    if (still && !shortOf(demand, still.after))
      return [`bar ${i} is longer than need be (${bar.size[side]} m)`]
  }
  return []
}

function heatsAreSound(operation: Operation, trial: Trial): void {
  const { ok: step } = done(operation, trial)
  for (const heat of step?.heats ?? []) {
    must(Number.isInteger(heat.count) && heat.count >= 0, () => `${heat.count} heats`)
    must(heat.temperature > 273.15, () => `a heat at ${heat.temperature} K`)
    must(heat.soak >= 0, () => `a soak of ${heat.soak} s`)
    const met = step?.cautions ?? operation.cautions
    must(met.includes('heat'), () => 'it heats steel and does not say that hot steel burns')
  }
  for (const name of step?.cautions ?? [])
    must(operation.cautions.includes(name), () => `the danger "${name}" is not declared`)
}

function movementSays(operation: Operation): string[] {
  return examplesOf(operation).flatMap((trial) => {
    const { ok: step } = done(operation, trial)
    if (!step) return []
    const { before, values, smithy, told } = trial
    const movement = operation.movement(before, values as never, step.after, smithy)
    const odd = oddNumber(movement, 'movement')
    return odd ? [`${told}: ${odd} is no finite number`] : []
  })
}

function wordsAreWhole(operation: Operation): string[] {
  const breaches: string[] = []
  if (!/^[A-Z].*\.$/.test(operation.summary)) breaches.push('the summary is no whole sentence')
  if (operation.name !== operation.name.toLowerCase()) breaches.push('the name is not lower case')
  for (const trial of examplesOf(operation)) {
    const step = done(operation, trial).ok
    for (const note of step?.notes ?? [])
      if (!note.endsWith('.')) breaches.push(`the note "${note}" has no full stop`)
    for (const warning of step?.warnings ?? [])
      if (warning.try.length === 0) breaches.push(`"${warning.what}" has no cure`)
  }
  return breaches
}

/** Over the examples and both ends of every range: the account of force never runs out of numbers or cures. */
function forceIsTold(operation: Operation): string[] {
  if (!operation.force) return []
  const breaches: string[] = []
  const told = new Set<boolean>()
  for (const trial of [...examplesOf(operation), ...endsOfRanges(operation)]) {
    const { ok: step } = done(operation, trial)
    if (!step) continue
    const { force, warnings, notes } = judgeStep({ ...trial, operation, step }, trial.smithy).step
    told.add(force !== undefined)
    const odd = oddNumber(force, 'force')
    if (odd) breaches.push(`${trial.told}: ${odd} is no finite number`)
    for (const key of ['force', 'blows', 'flowStress'] as const) {
      const { low, value, high } = force?.[key] ?? { low: 1, value: 1, high: 1 }
      if (!(low >= 0 && low <= value && value <= high))
        breaches.push(`${trial.told}: ${key} ${low} to ${high} does not hold ${value}`)
    }
    if (force && force.verdict !== 'can do' && force.wouldDo.length === 0)
      breaches.push(`${trial.told}: it cannot be done, and nothing is said to cure it`)
    for (const note of notes) if (!note.endsWith('.')) breaches.push(`"${note}" has no full stop`)
    for (const warning of warnings)
      if (warning.try.length === 0) breaches.push(`"${warning.what}" has no cure`)
  }
  if (!told.has(true)) breaches.push('no example is given an account of force')
  return breaches
}
