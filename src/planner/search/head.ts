import { type Result, all, within } from '#problem'
import { readValues } from '#parameters'
import { type Operation, operations } from '#operations'
import type { PlannedStep, Route } from '../route.ts'
import type { RawStep, Recipe, RestackChoice, Style, WeldStyle } from './recipe.ts'

/** The part of a route that builds the pack up, and the bars that are built alike. */
export interface Head {
  /** Bars whose beginning is the very same. */
  readonly bars: readonly string[]
  /** Steps of it, from the stack to the last weld and trim. */
  readonly length: number
  readonly style: Style
  /** The recipe as written, where it is one. */
  readonly own?: Recipe
}

/** Steps that still belong to building the pack once it is laid. */
const afterLaying = ['tack', 'weld', 'trim']

/** Finds the beginning of each bar that starts from a stack, like ones together. */
export function headsOf(route: Route): readonly Head[] {
  const heads = new Map<string, Head>()
  for (const [bar, steps] of Object.entries(route.bars)) {
    if (steps[0]?.operation.name !== 'stack') continue
    const length = headLength(steps)
    const key = JSON.stringify(steps.slice(0, length).map((s) => [s.operation.name, s.values]))
    const twin = heads.get(key)
    if (twin) heads.set(key, { ...twin, bars: [...twin.bars, bar] })
    else {
      const head = steps.slice(0, length)
      heads.set(key, { bars: [bar], length, style: styleOf(head), own: recipeOf(head) })
    }
  }
  return [...heads.values()]
}

function headLength(steps: readonly PlannedStep[]): number {
  let length = 1 + steps.findLastIndex((step) => step.operation.name === 'restack')
  if (length === 0) length = 1
  while (length < steps.length && afterLaying.includes(steps[length].operation.name)) length++
  return length
}

/** Common practice where the route says nothing: sealed, to four fifths, in two heats. */
const usualWeld: WeldStyle = { weld: { close: '80 %', heats: 2 }, trim: {}, restack: {} }

function styleOf(head: readonly PlannedStep[]): Style {
  const welds: WeldStyle[] = []
  let restack: RawStep = {}
  let tack: RawStep | undefined
  for (const [i, step] of head.entries()) {
    const raw = rawOf(step)
    if (step.operation.name === 'restack') restack = without(raw, 'pieces')
    if (step.operation.name === 'tack') tack ??= raw
    if (step.operation.name !== 'weld') continue
    const next = head[i + 1]
    welds.push({
      weld: raw,
      restack,
      ...(next?.operation.name === 'trim' && { trim: rawOf(next) }),
    })
  }
  const [first = usualWeld] = welds
  const last = welds.length > 1 ? (welds.at(-1) as WeldStyle) : first
  return {
    tack: tack ?? { how: 'sealed' },
    first,
    middle: welds.length > 2 ? welds[1] : first,
    last,
  }
}

/** What was written of a step: what is usual is left out, so that it stays the shop's own. */
function rawOf({ operation, values }: PlannedStep): RawStep {
  const usual = readValues(operation.parameters, {}).ok?.values ?? {}
  const said: Record<string, unknown> = {}
  for (const [name, parameter] of Object.entries(operation.parameters)) {
    const value = values[name]
    if (value === undefined || value === (usual as Record<string, unknown>)[name]) continue
    said[name] = parameter.form === 'quantity' ? quantityText(parameter.of, value as number) : value
  }
  return said
}

const unit: Readonly<Record<string, string>> = {
  length: 'm',
  ratio: '',
  temperature: 'K',
  time: 's',
}

function quantityText(of: string, si: number): string {
  return of === 'length' ? `${Number((si * 1000).toFixed(6))} mm` : `${si} ${unit[of]}`.trim()
}

function without(raw: RawStep, name: string): RawStep {
  return Object.fromEntries(Object.entries(raw).filter(([key]) => key !== name))
}

interface StackValues {
  readonly sheets: readonly { steel: string; thickness: number; count: number }[]
  readonly repeat: number
  readonly closeWith?: string
  readonly outer?: number
  readonly width: number
}

/** The recipe of a head, if it is a plain one: two steels by turns, plain restacks. */
function recipeOf(head: readonly PlannedStep[]): Recipe | undefined {
  const { sheets, repeat, closeWith, outer, width } = head[0].values as unknown as StackValues
  const [dark, bright] = sheets
  if (sheets.length !== 2 || sheets.some((s) => s.count !== 1) || dark.steel === bright.steel)
    return undefined
  if (closeWith !== undefined && closeWith !== dark.steel) return undefined
  const restacks: RestackChoice[] = []
  for (const [i, step] of head.entries()) {
    if (step.operation.name !== 'restack') continue
    const drawn = head[i - 1]
    if (drawn.operation.name !== 'draw out' || step.values.between !== undefined) return undefined
    if (drawn.values.width === undefined) return undefined
    restacks.push({
      pieces: step.values.pieces as number,
      height: drawn.values.height as number,
      width: drawn.values.width as number,
    })
  }
  return {
    sheets: 2 * repeat + (closeWith === undefined ? 0 : 1),
    stack: { dark, bright, outer, width },
    restacks,
  }
}

const byName = new Map<unknown, Operation>(operations.map((o) => [o.name, o]))

/** Steps as a job file holds them, read and ready to be done. */
export function readSteps(raw: readonly RawStep[], at: string): Result<PlannedStep[]> {
  return all(
    raw.map(({ do: name, ...given }, i): Result<PlannedStep> => {
      const operation = byName.get(name) as Operation
      const place = `${at}[${i}]`
      const read = readValues(operation.parameters, given)
      if (read.problems) return { problems: within(place, read.problems) }
      const free = read.ok.free.map((name) => ({ name, side: 'length' as const }))
      return { ok: { operation, values: read.ok.values, free, at: place } }
    }),
  )
}

/** The route with the beginning of its like-built bars done another way. */
export function withHead(
  route: Route,
  head: Head,
  steps: (bar: string) => readonly PlannedStep[],
): Route {
  const bars = Object.fromEntries(
    Object.entries(route.bars).map(([bar, own]) => {
      if (!head.bars.includes(bar)) return [bar, own]
      const whole = [...steps(bar), ...own.slice(head.length)]
      return [bar, whole.map((step, i) => ({ ...step, at: `bars.${bar}[${i}]` }))]
    }),
  )
  return { ...route, bars, measured: [] }
}
