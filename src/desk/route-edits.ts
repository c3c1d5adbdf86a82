import { LEFT_FREE, type Parameter, type Parameters, isParameter } from '#parameters'
import type { DeclaredOperation, Written } from './engine/messages.ts'
import { barNames, valueAt, withValue } from './engine/places.ts'
import { carryMeasured } from './measurements.ts'

/** A step as a job file holds it. */
export type WrittenStep = Readonly<Record<string, unknown>>

/** Where a step stands, or is to stand. */
export interface StepPlace {
  readonly bar: string
  readonly index: number
}

/** What a step calls the bar in hand where it names bars. */
export const IN_HAND = 'this'

export function stepsOf(job: Written, bar: string): readonly WrittenStep[] {
  const steps = valueAt(job, ['bars', bar])
  return Array.isArray(steps) ? (steps as WrittenStep[]) : []
}

/** Puts a step in; the bar is begun if there is none of this name. */
export function insertStep(job: Written, { bar, index }: StepPlace, step: WrittenStep): Written {
  const carried = carryMeasured(job, bar, (i) => (i >= index ? i + 1 : i))
  return withFinish(
    withValue(carried, ['bars', bar], stepsOf(job, bar).toSpliced(index, 0, step)),
    barNames(job),
  )
}

/** Takes a step out; a bar without steps goes too. */
export function removeStep(job: Written, { bar, index }: StepPlace): Written {
  const steps = stepsOf(job, bar).toSpliced(index, 1)
  if (steps.length === 0) return removeBar(job, bar)
  const carried = carryMeasured(job, bar, (i) => (i === index ? undefined : i > index ? i - 1 : i))
  return withValue(carried, ['bars', bar], steps)
}

export function duplicateStep(job: Written, place: StepPlace): Written {
  const step = stepsOf(job, place.bar)[place.index]
  return step ? insertStep(job, { ...place, index: place.index + 1 }, step) : job
}

/** Moves a step before the one that stands at `to` now. */
export function moveStep(job: Written, from: StepPlace, to: StepPlace): Written {
  const step = stepsOf(job, from.bar)[from.index]
  if (!step) return job
  if (from.bar === to.bar) {
    const index = to.index > from.index ? to.index - 1 : to.index
    if (index === from.index) return job
    const steps = stepsOf(job, from.bar).toSpliced(from.index, 1).toSpliced(index, 0, step)
    const order = stepsOf(job, from.bar)
      .map((_, i) => i)
      .toSpliced(from.index, 1)
      .toSpliced(index, 0, from.index)
    const carried = carryMeasured(job, from.bar, (i) => order.indexOf(i))
    return withValue(carried, ['bars', from.bar], steps)
  }
  return insertStep(removeStep(job, from), to, step)
}

export function removeBar(job: Written, bar: string): Written {
  const carried = carryMeasured(job, bar, () => undefined)
  const less = withValue(carried, ['bars', bar], undefined)
  const names = barNames(less)
  const lost = job.finish === bar
  return lost ? withValue(less, ['finish'], names.length > 1 ? names.at(-1) : undefined) : less
}

/** Another name for a bar, wherever it is named. */
export function renameBar(
  job: Written,
  bar: string,
  name: string,
  operations: readonly DeclaredOperation[],
): Written {
  const names = barNames(job)
  if (name === '' || name === bar || names.includes(name)) return job
  const bars = Object.fromEntries(
    names.map((one) => [
      one === bar ? name : one,
      stepsOf(job, one).map((step) => {
        const parameters = operations.find((o) => o.name === step.do)?.parameters
        return parameters ? renamedIn(step, parameters, bar, name) : step
      }),
    ]),
  )
  const measured = Array.isArray(job.measured)
    ? (job.measured as WrittenStep[]).map((m) => (m.bar === bar ? { ...m, bar: name } : m))
    : undefined
  return {
    ...job,
    bars,
    ...(job.finish === bar && { finish: name }),
    ...(measured && { measured }),
  }
}

function renamedIn(
  group: WrittenStep,
  parameters: Parameters,
  bar: string,
  name: string,
): WrittenStep {
  const one = (p: Parameter | undefined, value: unknown): unknown => {
    if (p?.form === 'bar') return value === bar ? name : value
    if (p?.form !== 'list' || !Array.isArray(value)) return value
    const { item } = p
    return value.map((v: unknown) =>
      isParameter(item) ? one(item, v) : renamedIn(v as WrittenStep, item, bar, name),
    )
  }
  return Object.fromEntries(
    Object.entries(group).map(([key, value]) => [key, one(parameters[key], value)]),
  )
}

/** With several bars it must be said which becomes the piece: the one that did, else the new one. */
function withFinish(job: Written, before: readonly string[]): Written {
  const names = barNames(job)
  if (names.length < 2 || typeof job.finish === 'string') return job
  return withValue(job, ['finish'], before.length === 1 ? before[0] : names.at(-1))
}

/** A name for a new bar that none has yet. */
export function freshName(job: Written, word: string): string {
  const names = barNames(job)
  for (let n = 1; ; n++) {
    const name = n === 1 ? word : `${word} ${n}`
    if (!names.includes(name)) return name
  }
}

/**
 * A new step of an operation with what it cannot do without: numbers that can be worked out are left
 * free, bars are those nothing takes yet, the rest as in its own example.
 */
export function newStep(
  operation: DeclaredOperation,
  job: Written,
  { bar, index }: StepPlace,
): WrittenStep {
  const { parameters, example } = operation
  const needed = Object.entries(parameters).filter(
    ([, p]) => !p.optional && p.default === undefined,
  )
  const named =
    needed.length > 0
      ? needed
      : Object.entries(parameters).filter(([name, p]) => p.default === undefined && name in example)
  const others = barNames(job).filter((name) => name !== bar)
  return {
    do: operation.name,
    ...Object.fromEntries(
      named.flatMap(([name, p]) => {
        if (p.form === 'quantity' && p.free) return [[name, LEFT_FREE]]
        if (namesBars(p))
          return [[name, others.length > 0 ? barsFor(p, others, index > 0) : example[name]]]
        return name in example ? [[name, example[name]]] : []
      }),
    ),
  }
}

function namesBars(p: Parameter): boolean {
  if (p.form === 'bar') return true
  return p.form === 'list' && isParameter(p.item) && p.item.form === 'bar'
}

function barsFor(p: Parameter, others: readonly string[], inHand: boolean): unknown {
  if (p.form !== 'list') return others[0]
  return inHand ? [IN_HAND, ...others] : others
}
