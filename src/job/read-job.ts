import { printCount } from '#units'
import { type Problem, type Result, nearest, within } from '#problem'
import type { Quantity } from '#units'
import { type Parameter, type Parameters, declare, isParameter, readValues } from '#parameters'
import { findPieceKind } from '#piece'
import { type Grade, findGrade, readGrade } from '#steel'
import {
  type RackItem,
  cuttingParameters,
  rackItemParameters,
  rateParameters,
  readShop,
  toleranceParameters,
  usualCutting,
  usualRates,
  usualShop,
  usualTolerances,
} from '#shop'
import { type Operation, operations } from '#operations'
import type { Measured, PlannedStep } from '#planner'
import { readJobText } from './file-text.ts'
import { FORMAT, type Job, type Wanted, type Wishes } from './job.ts'
import { migrate } from './migrate.ts'

export const wishParameters = declare({
  mass: {
    form: 'quantity',
    of: 'mass',
    min: 1e-4,
    max: 200,
    optional: true,
    help: 'What the finished piece should weigh',
  },
  massWithin: {
    form: 'quantity',
    of: 'ratio',
    min: 0,
    max: 1,
    default: '5 %',
    help: 'How far the weight may be off',
  },
  lines: {
    form: 'quantity',
    of: 'lines',
    min: 1,
    max: 1e6,
    optional: true,
    help: 'Lines wanted across the face',
  },
  pattern: { form: 'text', optional: true, longest: 120, help: 'The pattern by its trade name' },
  layers: {
    form: 'count',
    min: 1,
    max: 1e6,
    optional: true,
    help: 'Layers wanted in the bar that shows the pattern, merged',
  },
  sheets: {
    form: 'count',
    min: 2,
    max: 400,
    optional: true,
    help: 'The most sheets in a first stack',
  },
  heats: {
    form: 'count',
    min: 1,
    max: 2000,
    optional: true,
    help: 'The most heats the whole work may take',
  },
  hours: {
    form: 'quantity',
    of: 'time',
    min: 60,
    max: 1e7,
    optional: true,
    help: 'The longest the whole work may take',
  },
  steel: {
    form: 'quantity',
    of: 'mass',
    min: 1e-3,
    max: 1000,
    optional: true,
    help: 'The most steel that may come off the rack',
  },
})

export const measuredParameters = declare({
  bar: { form: 'bar', help: 'The bar that was measured' },
  after: { form: 'count', min: 1, max: 1000, help: 'After which of its steps, counted from 1' },
  length: {
    form: 'quantity',
    of: 'length',
    min: 1e-4,
    max: 20,
    optional: true,
    help: 'Length found',
  },
  width: { form: 'quantity', of: 'length', min: 1e-4, max: 2, optional: true, help: 'Width found' },
  height: {
    form: 'quantity',
    of: 'length',
    min: 1e-4,
    max: 2,
    optional: true,
    help: 'Thickness found',
  },
  mass: { form: 'quantity', of: 'mass', min: 1e-4, max: 500, optional: true, help: 'Weight found' },
})

/** Names a job file may hold at its top, with what each is for. */
export const jobNames = {
  billetwright: 'format number of this file',
  name: 'what the job is called',
  note: 'anything worth remembering',
  piece: 'the finished piece: its kind and sizes',
  wishes: 'weight, lines and pattern wished for',
  shop: 'what the shop has and loses, where it differs from common practice',
  rates: 'what hours, fire and steel cost, where it differs from common practice',
  tolerances: 'how far things turn out from what was meant',
  rack: 'the bars and remnants there are',
  cutting: 'how bars are cut: ends lost, the least remnant kept, metric or inch sizes',
  steels: "the smith's own grades",
  bars: 'the bars by name, each a list of steps',
  finish: 'the bar that becomes the piece',
  measured: 'what was measured at the anvil',
  seed: 'seed of everything random',
} as const

const MOST_STEPS = 400

/** Reads the text of a job file. */
export function readJob(text: string): Result<Job> {
  const raw = readJobText(text)
  if (raw.problems) return raw
  return readJobObject(raw.ok)
}

/**
 * Reads a job already parsed from JSON. Finds every problem it can before giving up. One whose route is
 * not begun yet is read if asked for: its piece and its wishes stand without any bar.
 */
export function readJobObject(
  given: Readonly<Record<string, unknown>>,
  { notBegun = false } = {},
): Result<Job> {
  const migrated = migrate(given)
  if (migrated.problems) return migrated
  return new JobReader(migrated.ok, notBegun).read()
}

class JobReader {
  private readonly problems: Problem[] = []
  private readonly typed: Record<string, Quantity> = {}
  private readonly raw: Readonly<Record<string, unknown>>
  private readonly notBegun: boolean

  constructor(raw: Readonly<Record<string, unknown>>, notBegun: boolean) {
    this.raw = raw
    this.notBegun = notBegun
  }

  read(): Result<Job> {
    this.unknownNames(this.raw, Object.keys(jobNames), '')
    const name = this.words('name', 'Unnamed job')
    const steels = this.ownSteels()
    const shop = this.part('shop', readShop(this.raw.shop)) ?? usualShop()
    const wishes = this.part('wishes', readValues(wishParameters, this.raw.wishes ?? {})) as
      Wishes | undefined
    const rates = this.part('rates', readValues(rateParameters, this.raw.rates ?? {}))
    const tolerances = this.part(
      'tolerances',
      readValues(toleranceParameters, this.raw.tolerances ?? {}),
    )
    const cutting = this.part('cutting', readValues(cuttingParameters, this.raw.cutting ?? {}))
    const rack = this.rack(steels)
    const piece = this.piece()
    const bars = this.bars(steels)
    const finish = this.finish(Object.keys(bars))
    const measured = this.measured(bars)
    const seed = this.raw.seed ?? 1
    if (!Number.isSafeInteger(seed))
      this.wrong(
        'seed',
        'the seed is not a whole number',
        'the same seed gives the same unevenness',
        ['write a whole number, such as 1'],
      )
    if (this.problems.length > 0) return { problems: this.problems }
    return {
      ok: {
        format: FORMAT,
        name,
        note: typeof this.raw.note === 'string' ? this.raw.note : undefined,
        piece,
        wishes: wishes as Wishes,
        shop,
        rates: rates ?? usualRates(),
        tolerances: tolerances ?? usualTolerances(),
        cutting: cutting ?? usualCutting(),
        rack,
        steels,
        route: { bars, finish, measured },
        seed: seed as number,
        typed: this.typed,
        written: this.raw,
        warnings: [],
      },
    }
  }

  private part<V>(
    at: string,
    result: Result<{ readonly values: V; readonly typed: Readonly<Record<string, Quantity>> }>,
  ): V | undefined {
    if (result.problems) {
      this.problems.push(...within(at, result.problems))
      return undefined
    }
    for (const [place, quantity] of Object.entries(result.ok.typed))
      this.typed[`${at}.${place}`] = quantity
    return result.ok.values
  }

  private words(at: 'name', otherwise: string): string {
    const value = this.raw[at]
    if (value === undefined) return otherwise
    if (typeof value === 'string' && value.trim() !== '' && value.length <= 200) return value
    this.wrong(at, 'the name is not words', 'a job is called by a name of at most 200 characters', [
      'write "name": "Builder\'s plate"',
    ])
    return otherwise
  }

  private ownSteels(): Grade[] {
    const given = this.raw.steels ?? []
    if (!Array.isArray(given) || given.length > 100) {
      this.wrong(
        'steels',
        'the own steels are not a list',
        'each own grade is one entry of a list',
        ['write "steels": [ … ]'],
      )
      return []
    }
    return given.flatMap((one, i) => {
      const grade = readGrade(one, `steels[${i}]`)
      if (grade.problems) this.problems.push(...grade.problems)
      return grade.ok ? [grade.ok] : []
    })
  }

  private rack(own: readonly Grade[]): RackItem[] {
    const given = this.raw.rack ?? []
    if (!Array.isArray(given) || given.length > 2000) {
      this.wrong('rack', 'the rack is not a list', 'each bar on the rack is one entry of a list', [
        'write "rack": [ { "steel": "1095", "thickness": "3 mm", "width": "40 mm", "length": "1 m" } ]',
      ])
      return []
    }
    return given.flatMap((one, i) => {
      const at = `rack[${i}]`
      const values = this.part(at, readValues(rackItemParameters, one))
      return values
        ? [this.withGradeNames(rackItemParameters, values, own, at) as unknown as RackItem]
        : []
    })
  }

  private piece(): Wanted | undefined {
    const given = this.raw.piece
    if (given === undefined) return undefined
    const group = asGroup(given)
    if (!group || typeof group.kind !== 'string') {
      this.wrong('piece', 'the piece has no kind', 'the kind says which sizes are asked for', [
        'write "piece": { "kind": "plaque", … }',
      ])
      return undefined
    }
    const kind = findPieceKind(group.kind)
    if (kind.problems) {
      this.problems.push(...within('piece', kind.problems))
      return undefined
    }
    const { kind: _kind, ...rest } = group
    const values = this.part('piece', readValues(kind.ok.parameters, rest))
    return values && { kind: kind.ok, values }
  }

  private bars(own: readonly Grade[]): Record<string, PlannedStep[]> {
    const group = asGroup(this.raw.bars)
    const bars: Record<string, PlannedStep[]> = {}
    if (!group || Object.keys(group).length === 0) {
      if (this.notBegun) return bars
      this.wrong('bars', 'the job has no bars', 'a piece is forged from at least one bar', [
        'write "bars": { "main": [ { "do": "stack", … } ] }',
      ])
      return bars
    }
    for (const [name, steps] of Object.entries(group)) {
      if (!Array.isArray(steps) || steps.length > MOST_STEPS) {
        this.wrong(
          `bars.${name}`,
          'the steps of this bar are not a list',
          `a bar is a list of at most ${MOST_STEPS} steps`,
          ['write [ { "do": "stack", … } ]'],
        )
        continue
      }
      bars[name] = steps.flatMap((one, i) => this.step(one, `bars.${name}[${i}]`, own) ?? [])
    }
    return bars
  }

  private step(given: unknown, at: string, own: readonly Grade[]): PlannedStep | undefined {
    const group = asGroup(given)
    const known = operations.map((o) => o.name)
    if (!group || typeof group.do !== 'string') {
      this.wrong(at, 'this step does not say what to do', 'each step names one operation', [
        'write { "do": "draw out", … }',
        `one of: ${known.join(', ')}`,
      ])
      return undefined
    }
    const operation = operations.find((o) => o.name === group.do)
    if (!operation) {
      const word = group.do.slice(0, 60)
      this.wrong(
        `${at}.do`,
        `"${word}" is not something the program knows how to do`,
        'no operation has this name',
        [...nearest(word, known).map((n) => `did you mean "${n}"?`), `one of: ${known.join(', ')}`],
      )
      return undefined
    }
    const { do: _do, note: _note, ...rest } = group
    const reading = readValues(operation.parameters, rest)
    const values = this.part(at, reading)
    if (!values || !reading.ok) return undefined
    const free = reading.ok.free.map((name) => ({ name, side: sideOf(operation, name) }))
    return {
      operation,
      values: this.withGradeNames(operation.parameters, values, own, at),
      free,
      at,
    }
  }

  private finish(names: readonly string[]): string {
    const given = this.raw.finish
    if (given === undefined || (this.notBegun && names.length === 0)) {
      if (names.length === 1) return names[0]
      if (names.length > 1)
        this.wrong(
          'finish',
          'it is not said which bar becomes the piece',
          `there are several: ${names.join(', ')}`,
          [`write "finish": "${names.at(-1)}"`],
        )
      return names[0] ?? ''
    }
    if (typeof given === 'string' && names.includes(given)) return given
    this.wrong(
      'finish',
      `there is no bar called "${String(given).slice(0, 60)}"`,
      `the job has: ${names.join(', ')}`,
      nearest(String(given), names).map((n) => `did you mean "${n}"?`),
    )
    return ''
  }

  private measured(bars: Readonly<Record<string, readonly PlannedStep[]>>): Measured[] {
    const given = this.raw.measured ?? []
    if (!Array.isArray(given) || given.length > 1000) {
      this.wrong(
        'measured',
        'the measurements are not a list',
        'each measurement is one entry of a list',
        ['write "measured": [ { "bar": "main", "after": 3, "mass": "590 g" } ]'],
      )
      return []
    }
    return given.flatMap((one, i) => {
      const at = `measured[${i}]`
      const values = this.part(at, readValues(measuredParameters, one))
      if (!values) return []
      const steps = Object.hasOwn(bars, values.bar) ? bars[values.bar] : undefined
      if (!steps || values.after > steps.length) {
        this.wrong(
          at,
          `there is no step ${values.after} of a bar called "${values.bar}"`,
          'a measurement belongs to a step',
          steps
            ? [`"${values.bar}" has ${printCount(steps.length, 'step')}`]
            : [`bars: ${Object.keys(bars).join(', ')}`],
        )
        return []
      }
      return [{ ...values, after: values.after - 1 }]
    })
  }

  /** The values with every steel under its grade's own name: an alias must merge like with like. */
  private withGradeNames(
    parameters: Parameters,
    values: Readonly<Record<string, unknown>>,
    own: readonly Grade[],
    at: string,
  ): Record<string, unknown> {
    const named = (p: Parameter, value: unknown, place: string): unknown => {
      if (value === undefined) return value
      if (p.form === 'list') {
        const { item } = p
        return (value as readonly unknown[]).map((one, i) =>
          isParameter(item)
            ? named(item, one, `${place}[${i}]`)
            : this.withGradeNames(item, one as Record<string, unknown>, own, `${place}[${i}]`),
        )
      }
      if (p.form !== 'steel') return value
      const grade = findGrade(value as string, own)
      if (grade.problems) this.problems.push(...within(place, grade.problems))
      return grade.ok?.name ?? value
    }
    return Object.fromEntries(
      Object.entries(parameters).map(([name, p]) => [
        name,
        named(p, values[name], `${at}.${name}`),
      ]),
    )
  }

  private unknownNames(
    group: Readonly<Record<string, unknown>>,
    known: readonly string[],
    at: string,
  ): void {
    for (const name of Object.keys(group)) {
      if (known.includes(name)) continue
      this.wrong(
        at === '' ? name.slice(0, 60) : `${at}.${name.slice(0, 60)}`,
        `"${name.slice(0, 60)}" is not part of a job`,
        'no part of a job file has this name',
        [
          ...nearest(name, known, 1).map((n) => `did you mean "${n}"?`),
          `parts: ${known.join(', ')}`,
        ],
      )
    }
  }

  private wrong(at: string, what: string, why: string, cures: readonly string[]): void {
    this.problems.push({ at, what, why, try: cures })
  }
}

function asGroup(given: unknown): Readonly<Record<string, unknown>> | undefined {
  return typeof given === 'object' && given !== null && !Array.isArray(given)
    ? (given as Record<string, unknown>)
    : undefined
}

const sides = ['length', 'width', 'height'] as const

/** The side of the bar after the step that a free parameter sets. */
function sideOf(operation: Operation, name: string): (typeof sides)[number] {
  const parameter = operation.parameters[name]
  if (parameter?.form === 'quantity' && typeof parameter.free === 'string') return parameter.free
  return sides.find((side) => side === name) ?? 'length'
}
