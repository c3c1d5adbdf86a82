import fc from 'fast-check'
import { type Result, failed } from '#problem'
import type { Size } from '#geometry'
import type { Quantity } from '#units'
import { type Parameter, type Parameters, isParameter, readValues, writeValues } from '#parameters'
import { type PieceSolid, findPieceKind } from '#piece'
import { usualShop } from '#shop'
import { type Billet, stretch } from '#billet'
import { volumeAt } from './fire.ts'
import { workBack } from './lengthen.ts'
import type { Example, Operation, Smithy, Step } from './operation.ts'

/** One try of an operation: values read, bars on the anvil, the shop; `told` says which it is. */
export interface Trial {
  readonly told: string
  readonly values: Readonly<Record<string, unknown>>
  readonly typed: Readonly<Record<string, Quantity>>
  readonly before: readonly Billet[]
  readonly smithy: Smithy
}

/**
 * Densities for the trials, kg/m³: each steel its own, further apart than real ones are, so that
 * one taken for another shows.
 */
const densities: Smithy['densities'] = Object.fromEntries(
  ['1018', '1075', '1084', '1095', '15N20', '5160', '52100', 'W2', 'L6', '304', '316'].map(
    (steel, i) => [steel, 7000 + 137 * i],
  ),
)

export function done(operation: Operation, trial: Trial): Result<Step> {
  return operation.forward(trial.before, trial.values as never, trial.smithy)
}

export function inBars(trial: Trial, before: readonly Billet[]): Trial {
  return { ...trial, before }
}

/** The same bar at another size, its layers carried along. */
export function resized(bar: Billet, size: Size): Billet {
  const by = {
    x: size.length / bar.size.length,
    y: size.width / bar.size.width,
    z: size.height / bar.size.height,
  }
  return { ...bar, size, volume: volumeAt(bar, size), build: stretch(bar.build, by) }
}

/** The operation's own examples as trials. One that does not read is a fault, and throws. */
export function examplesOf(operation: Operation): Trial[] {
  return operation.examples.map((example, i) => {
    const trial = trialOf(operation, example, example.values, `example ${i + 1}`)
    if (trial.problems)
      throw new Error(`example ${i + 1}: ${trial.problems[0].at} ${trial.problems[0].what}`)
    return trial.ok
  })
}

function trialOf(
  operation: Operation,
  example: Example,
  raw: Readonly<Record<string, unknown>>,
  told: string,
): Result<Trial> {
  const read = readValues(operation.parameters, raw)
  if (read.problems) return read
  const smithy = smithyFor(example)
  if (smithy.problems) return smithy
  const { values, typed } = read.ok
  return { ok: { told, values, typed, before: example.before, smithy: smithy.ok } }
}

/** Pieces built so far: the same few serve thousands of trials. */
const pieces = new Map<string, Result<PieceSolid>>()

function smithyFor({ piece }: Example): Result<Smithy> {
  const shop = usualShop()
  if (!piece) return { ok: { shop, densities } }
  const key = JSON.stringify(piece)
  const built = pieces.get(key) ?? pieceOf(piece)
  pieces.set(key, built)
  return built.problems ? built : { ok: { shop, densities, piece: built.ok } }
}

function pieceOf({ kind: name, ...raw }: NonNullable<Example['piece']>): Result<PieceSolid> {
  const kind = findPieceKind(name)
  if (kind.problems) return failed(...kind.problems)
  const read = readValues(kind.ok.parameters, raw)
  if (read.problems) return read
  return kind.ok.build(read.ok.values)
}

/** Each example with one parameter at one end of its range, or at one of its choices. */
export function endsOfRanges(operation: Operation): Trial[] {
  return operation.examples.flatMap((example, i) =>
    withEnds(operation.parameters, example.values).flatMap(({ raw, name, end }) => {
      const told = `example ${i + 1} with ${name} ${JSON.stringify(end)}`
      const { ok: trial } = trialOf(operation, example, raw, told)
      return trial ? [trial] : []
    }),
  )
}

interface WithEnd {
  readonly raw: Readonly<Record<string, unknown>>
  readonly name: string
  readonly end: unknown
}

function withEnds(
  parameters: Parameters,
  raw: Readonly<Record<string, unknown>>,
): readonly WithEnd[] {
  return Object.entries(parameters).flatMap(([name, p]): readonly WithEnd[] => {
    const { item } = p.form === 'list' ? p : { item: undefined }
    const given = (raw[name] ?? []) as readonly Readonly<Record<string, unknown>>[]
    if (item && !isParameter(item)) {
      return given.flatMap((one, i) =>
        withEnds(item, one).map((inner) => ({
          ...inner,
          raw: { ...raw, [name]: given.with(i, inner.raw) },
          name: `${name}[${i}].${inner.name}`,
        })),
      )
    }
    return endsOf(p).map((end) => ({ raw: { ...raw, [name]: end }, name, end }))
  })
}

function endsOf(p: Parameter): readonly unknown[] {
  switch (p.form) {
    case 'quantity':
      return [written(p, p.min), written(p, p.max)]
    case 'count':
      return [p.min, p.max]
    case 'choice':
      return Object.keys(p.options)
    case 'flag':
      return [false, true]
    default:
      return []
  }
}

function written(p: Parameter, value: unknown): unknown {
  return writeValues({ it: p }, { it: value }).it
}

/** Trials at random: an example with some of its values and the sizes of its bars made others. */
export function trials(operation: Operation): fc.Arbitrary<Trial> {
  const picked = fc.nat({ max: operation.examples.length - 1 })
  return picked
    .chain((i) => {
      const { values, before } = operation.examples[i]
      const factor = fc.double({ min: 0.5, max: 2, noNaN: true })
      const by = fc.record({ length: factor, width: factor, height: factor })
      return fc.record({
        i: fc.constant(i),
        raw: varied(operation.parameters, values),
        sizes: fc.tuple(...before.map(() => fc.option(by, { nil: undefined, freq: 2 }))),
      })
    })
    .map(({ i, raw, sizes }) => {
      const example = operation.examples[i]
      const before = example.before.map((bar, k) => {
        const f = sizes[k]
        if (!f) return bar
        const { length, width, height } = bar.size
        return resized(bar, {
          length: length * f.length,
          width: width * f.width,
          height: height * f.height,
        })
      })
      const told = `example ${i + 1} with ${JSON.stringify(raw)}, sizes × ${JSON.stringify(sizes)}`
      const { ok } = trialOf(operation, { ...example, before }, raw, told)
      return ok
    })
    .filter((trial): trial is Trial => trial !== undefined)
}

function varied(
  parameters: Parameters,
  raw: Readonly<Record<string, unknown>>,
): fc.Arbitrary<Record<string, unknown>> {
  const each = Object.entries(parameters).map(([name, p]): [string, fc.Arbitrary<unknown>] => [
    name,
    fc.oneof(
      { weight: 3, arbitrary: fc.constant(raw[name]) },
      { weight: 1, arbitrary: drawn(p, raw[name]) },
    ),
  ])
  return fc.record(Object.fromEntries(each))
}

/** A parameter's raw value at random within its range; names of bars stay as they are. */
function drawn(p: Parameter, raw: unknown): fc.Arbitrary<unknown> {
  switch (p.form) {
    case 'quantity':
      return within(p.min, p.max).map((value) => written(p, value))
    case 'count':
      return within(p.min, p.max).map(Math.round)
    case 'choice':
      return fc.constantFrom(...Object.keys(p.options))
    case 'flag':
      return fc.boolean()
    case 'steel':
      return fc.constantFrom(...Object.keys(densities))
    case 'list': {
      const { item } = p
      if (isParameter(item) || !Array.isArray(raw)) return fc.constant(raw)
      return fc.tuple(...raw.map((one) => varied(item, one as Record<string, unknown>)))
    }
    default:
      return fc.constant(raw)
  }
}

/** Even on a ratio scale where the range allows: most of a range of lengths is too long for use. */
function within(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min: 0, max: 1, noNaN: true }).map((t) => {
    const value = min > 0 ? min * (max / min) ** t : min + (max - min) * t ** 3
    return Math.min(Math.max(value, min), max)
  })
}

/** The trial with everything in it frozen, all the way down. */
export function frozen(trial: Trial): Trial {
  const copy = structuredClone({ before: trial.before, values: trial.values, densities })
  freeze(copy)
  const smithy = {
    ...trial.smithy,
    shop: freeze({ ...trial.smithy.shop }),
    densities: copy.densities,
  }
  return { ...trial, before: copy.before, values: copy.values, smithy: Object.freeze(smithy) }
}

function freeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value)
    Object.values(value).forEach(freeze)
  }
  return value
}

/** One step done in the usual shop with values as a job file writes them; a problem throws. */
export function tryOut(
  operation: Operation,
  raw: Readonly<Record<string, unknown>>,
  ...before: readonly Billet[]
): Step {
  const step = attempt(operation, raw, ...before)
  if (step.problems) throw new Error(step.problems.map((p) => `${p.at}: ${p.what}`).join('; '))
  return step.ok
}

/** The same, problems and all. */
export function attempt(
  operation: Operation,
  raw: Readonly<Record<string, unknown>>,
  ...before: readonly Billet[]
): Result<Step> {
  const trial = trialOf(operation, { values: raw, before }, raw, 'tried out')
  return trial.problems ? trial : done(operation, trial.ok)
}

/** The sizes bars must have before a step for what is wanted after it. */
export function workedBack(
  operation: Operation,
  demand: Size,
  raw: Readonly<Record<string, unknown>>,
  ...before: readonly Billet[]
): Result<readonly Size[]> {
  const trial = trialOf(operation, { values: raw, before }, raw, 'tried out')
  if (trial.problems) return trial
  return workBack(operation, demand, trial.ok.values, before, trial.ok.smithy)
}
