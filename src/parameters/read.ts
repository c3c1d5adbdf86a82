import { type Problem, type Result, nearest, within } from '#problem'
import { type Quantity, type QuantityKind, printQuantity, readQuantity } from '#units'
import {
  type Parameter,
  type Parameters,
  type QuantityParameter,
  type ValuesOf,
  isParameter,
} from './parameter.ts'

/** What a group of parameters was read into. */
export interface Reading<V> {
  readonly values: V
  /** Paths of the numbers written `"?"`, left for the planner; their value here is a first guess. */
  readonly free: readonly string[]
  /** Quantities as the person typed them, by path. */
  readonly typed: Readonly<Record<string, Quantity>>
}

/** Written in place of a number that the planner is to work out. */
export const LEFT_FREE = '?'

/** A first guess for a number left free: the middle of its range on a ratio scale. */
function guess(p: QuantityParameter): number {
  return p.min > 0 ? Math.sqrt(p.min * p.max) : (p.min + p.max) / 2
}

/**
 * Reads a raw object (from a job file, a form or flags) against its declaration.
 * Unknown names, missing values, wrong kinds and values out of range are problems.
 */
export function readValues<P extends Parameters>(
  parameters: P,
  raw: unknown,
): Result<Reading<ValuesOf<P>>> {
  const reader = new Reader()
  const values = reader.group(parameters, raw, '')
  if (reader.problems.length > 0) return { problems: reader.problems }
  return { ok: { values: values as ValuesOf<P>, free: reader.free, typed: reader.typed } }
}

class Reader {
  readonly problems: Problem[] = []
  readonly free: string[] = []
  readonly typed: Record<string, Quantity> = {}

  group(parameters: Parameters, raw: unknown, at: string): Record<string, unknown> {
    if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) {
      this.wrong(
        at,
        `${show(raw)} stands where named values are wanted`,
        'a group of values is written in braces',
        [
          `write { ${Object.keys(parameters)
            .slice(0, 3)
            .map((k) => `"${k}": …`)
            .join(', ')} }`,
        ],
      )
      return {}
    }
    const given = raw as Record<string, unknown>
    for (const name of Object.keys(given)) {
      if (Object.hasOwn(parameters, name)) continue
      const close = nearest(name, Object.keys(parameters))
      this.wrong(
        path(at, name),
        `"${name.slice(0, 60)}" is not asked for here`,
        'no parameter has this name',
        [
          ...close.map((c) => `did you mean "${c}"?`),
          Object.keys(parameters).length === 0
            ? 'leave it out: nothing is asked for here'
            : `asked for here: ${Object.keys(parameters).join(', ')}`,
        ],
      )
    }
    const values: Record<string, unknown> = {}
    for (const [name, parameter] of Object.entries(parameters)) {
      values[name] = this.one(
        parameter,
        Object.hasOwn(given, name) ? given[name] : undefined,
        path(at, name),
      )
    }
    return values
  }

  one(p: Parameter, raw: unknown, at: string): unknown {
    if (raw === undefined || raw === null) {
      if (p.default !== undefined) return this.one(p, p.default, at)
      if (!p.optional) this.wrong(at, 'a value is missing', p.help, [example(p)])
      return undefined
    }
    switch (p.form) {
      case 'quantity':
        return this.quantity(p, raw, at)
      case 'count':
        if (typeof raw === 'number' && Number.isInteger(raw) && raw >= p.min && raw <= p.max)
          return raw
        return this.wrong(
          at,
          `${show(raw)} is not a whole number from ${p.min} to ${p.max}`,
          p.help,
          [example(p)],
        )
      case 'choice':
        if (typeof raw === 'string' && Object.hasOwn(p.options, raw)) return raw
        return this.wrong(at, `${show(raw)} is not one of the choices`, p.help, [
          ...(typeof raw === 'string'
            ? nearest(raw, Object.keys(p.options), 1).map((c) => `did you mean "${c}"?`)
            : []),
          `one of: ${Object.keys(p.options).join(', ')}`,
        ])
      case 'flag':
        if (typeof raw === 'boolean') return raw
        return this.wrong(at, `${show(raw)} is neither true nor false`, p.help, ['true', 'false'])
      case 'list':
        return this.list(p, raw, at)
      default:
        if (typeof raw === 'string' && raw.trim() !== '' && raw.length <= (p.longest ?? 80))
          return raw
        return this.wrong(
          at,
          `${show(raw)} is not ${p.form === 'text' ? 'words' : `the name of a ${p.form}`}`,
          p.help,
          [example(p)],
        )
    }
  }

  private quantity(p: QuantityParameter, raw: unknown, at: string): number | undefined {
    if (raw === LEFT_FREE) {
      if (p.free) {
        this.free.push(at)
        return guess(p)
      }
      this.wrong(at, 'this number cannot be left free', 'the planner does not work this one out', [
        example(p),
      ])
      return undefined
    }
    if (typeof raw !== 'string') {
      this.wrong(at, `${show(raw)} has no unit`, `a ${p.of} is written with its unit, in quotes`, [
        typeof raw === 'number' ? withUnits(raw, p) : example(p),
      ])
      return undefined
    }
    const read = readQuantity(raw, p.of)
    if (read.problems) {
      this.problems.push(...within(at, read.problems))
      return undefined
    }
    const { si } = read.ok
    if (!(si >= p.min && si <= p.max)) {
      this.wrong(
        at,
        `${raw} is outside ${printQuantity(p.min, p.of)} to ${printQuantity(p.max, p.of)}`,
        p.help,
        [
          si < p.min
            ? `at least ${printQuantity(p.min, p.of)}`
            : `at most ${printQuantity(p.max, p.of)}`,
        ],
      )
      return undefined
    }
    this.typed[at] = read.ok
    return si
  }

  private list(p: Extract<Parameter, { form: 'list' }>, raw: unknown, at: string): unknown {
    if (!Array.isArray(raw) || raw.length < p.fewest || raw.length > p.most) {
      return this.wrong(at, `${show(raw)} is not a list of ${p.fewest} to ${p.most}`, p.help, [
        'write them in square brackets: [ … ]',
      ])
    }
    const { item } = p
    return raw.map((one, i) =>
      isParameter(item) ? this.one(item, one, `${at}[${i}]`) : this.group(item, one, `${at}[${i}]`),
    )
  }

  private wrong(at: string, what: string, why: string, cures: readonly string[]): undefined {
    this.problems.push({ at, what, why, try: cures })
    return undefined
  }
}

function path(at: string, name: string): string {
  return at === '' ? name : `${at}.${name}`
}

function show(raw: unknown): string {
  if (Array.isArray(raw)) return `a list of ${raw.length}`
  if (typeof raw === 'object' && raw !== null) return 'a group of values'
  const text = String(raw)
  return text.length > 40 ? `"${text.slice(0, 40)}…"` : typeof raw === 'string' ? `"${text}"` : text
}

/** What could have been written. */
/** What a bare number most likely means in a shop. */
const likely: Partial<Record<QuantityKind, readonly string[]>> = {
  length: ['mm', 'in'],
  mass: ['g', 'oz'],
  temperature: ['°C', '°F'],
  time: ['min', 's'],
  angle: ['°'],
  ratio: ['%'],
  lines: ['per mm', 'per inch'],
}

/** The number as it was written, with the units it most likely lacks; another example where there are none. */
function withUnits(value: number, p: QuantityParameter): string {
  const units = likely[p.of]
  if (!units || !Number.isFinite(value)) return example(p)
  return `write ${units.map((unit) => `"${value} ${unit}"`).join(' or ')}`
}

function example(p: Parameter): string {
  switch (p.form) {
    case 'quantity':
      return `for example "${p.default ?? printQuantity(guess(p), p.of)}"`
    case 'count':
      return `for example ${p.default ?? p.min}`
    case 'choice':
      return `one of: ${Object.keys(p.options).join(', ')}`
    case 'steel':
      return 'for example "1095"'
    default:
      return p.default === undefined
        ? 'see the reference page of this step'
        : `for example ${JSON.stringify(p.default)}`
  }
}
