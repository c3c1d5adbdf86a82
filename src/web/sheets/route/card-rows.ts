import {
  type Declarations,
  type Row,
  type Worked,
  type Written,
  type WrittenStep,
  barNames,
  stepsOf,
} from '#desk'

/** A row of the card: the step as written, and what became of it if it could be worked out. */
export interface CardRow {
  readonly bar: string
  readonly index: number
  /** Counted through all bars, from 1. */
  readonly number: number
  readonly step: WrittenStep
  readonly row?: Row
  /** Other bars it takes in, by name. */
  readonly joins: readonly string[]
  /** Cautions that stand with an earlier step already, by name. */
  readonly told: readonly string[]
}

/** Every written step in the order in which the work can be done. */
export function cardRows(
  job: Written,
  worked: Worked | undefined,
  declared: Declarations | undefined,
): CardRow[] {
  const done = new Map(worked?.rows.map((row) => [`${row.bar}\n${row.index}`, row]))
  const names = barNames(job)
  const order = orderOf(job, names, declared)
  let number = 0
  const told = new Set<string>()
  return order.flatMap((bar) =>
    stepsOf(job, bar).map((step, index): CardRow => {
      const found = done.get(`${bar}\n${index}`)
      // While a change is worked out the old row of another operation must not stand in for it.
      const row = found?.title === step.do ? found : undefined
      const before = [...told]
      for (const caution of row?.cautions ?? []) told.add(caution.name)
      const joins = named(step, bar, names)
      return { bar, index, number: ++number, step, row, joins, told: before }
    }),
  )
}

/** Bars in an order in which each comes after those it takes; the one that becomes the piece last. */
function orderOf(
  job: Written,
  names: readonly string[],
  declared: Declarations | undefined,
): readonly string[] {
  const order: string[] = []
  const visit = (bar: string, waiting: readonly string[]): void => {
    if (order.includes(bar) || waiting.includes(bar)) return
    for (const step of stepsOf(job, bar))
      if (takesOthers(step, declared))
        for (const other of named(step, bar, names)) visit(other, [...waiting, bar])
    order.push(bar)
  }
  const finish = typeof job.finish === 'string' ? job.finish : undefined
  for (const bar of names) if (bar !== finish) visit(bar, [])
  if (finish !== undefined && names.includes(finish)) {
    const at = order.indexOf(finish)
    if (at >= 0) order.splice(at, 1)
    visit(finish, [])
  }
  return order
}

function takesOthers(step: WrittenStep, declared: Declarations | undefined): boolean {
  return declared?.operations.find((o) => o.name === step.do)?.takes === 'others'
}

/** Names of other bars anywhere among a step's values. */
function named(step: WrittenStep, own: string, names: readonly string[]): string[] {
  const found = new Set<string>()
  const look = (value: unknown): void => {
    if (typeof value === 'string') {
      if (value !== own && names.includes(value)) found.add(value)
    } else if (typeof value === 'object' && value !== null) Object.values(value).forEach(look)
  }
  for (const [key, value] of Object.entries(step)) if (key !== 'do' && key !== 'note') look(value)
  return [...found]
}
