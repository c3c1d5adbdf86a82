import type {
  Allowance,
  CutList,
  LikelyRange,
  Priced,
  RemnantUse,
  Sensitivity,
  SuggestedRoutes,
  WhatIf,
} from '#job'
import { type Ink, plainInk } from './ink.ts'
import { type CardUnits, type Say, sayIn } from './say.ts'

export interface PlanningStyle {
  readonly units?: CardUnits
  readonly ink?: Ink
}

const percent = (share: number, digits = 0) => `${(share * 100).toFixed(digits)} %`
const hours = (s: number) => `${(s / 3600).toFixed(1)} h`

/** Routes worth considering, one row each, with what sets it apart from the first. */
export function suggestionsText(found: SuggestedRoutes, style: PlanningStyle = {}): string {
  const ink = style.ink ?? plainInk
  const say = sayIn(style.units ?? 'metric')
  const head = row('', 'build-up', 'heats', 'steel', 'yield', 'hours', 'layers', 'lines', 'risk')
  const lines = [
    `${found.considered} ways of building up ${found.bars.map((b) => `"${b}"`).join(' and ')} meet the wishes; of those worked out in full none of these is better than another in everything.`,
    '',
    ink.bold(head),
  ]
  found.routes.forEach(({ name, asWritten, figures: f, reasons }, i) => {
    lines.push(
      row(
        String(i + 1),
        `${name}${asWritten ? ' (as written)' : ''}`,
        String(f.heats),
        say.mass(f.steel),
        percent(f.yield),
        hours(f.hands),
        String(f.layers),
        f.lines === undefined ? '' : say.lines(f.lines),
        percent(f.failing),
      ),
    )
    const why = i === 0 ? 'the best compromise of the set' : reasons.join(', ')
    if (why !== '') lines.push(ink.soft(`     ${i === 0 ? why : `against 1: ${why}`}`))
  })
  return `${lines.join('\n')}\n`
}

function row(...[no, name, ...cells]: readonly string[]): string {
  const widths = [7, 10, 7, 8, 8, 13, 6]
  const rest = cells.map((cell, i) => cell.padStart(widths[i] ?? 8)).join('')
  return `${no.padStart(3)}  ${name.padEnd(34)}${rest}`.trimEnd()
}

/** The bands of a likely range, and how likely the piece comes up short. `steps` are those of the card, in its order. */
export function rangeText(
  range: LikelyRange,
  steps: readonly { readonly at: string; readonly operation: { readonly name: string } }[],
  allowance: { readonly risk: number; readonly found?: Allowance } | undefined,
  style: PlanningStyle = {},
): string {
  const ink = style.ink ?? plainInk
  const say = sayIn(style.units ?? 'metric')
  const lines = [
    ink.bold(`${range.draws} makings, everything as far off as it may happen to be`),
    '',
  ]
  const band = (
    what: string,
    of: LikelyRange['mass'],
    print: (value: number) => string,
    help = '',
  ) => {
    if (!of) return
    lines.push(
      `${what.padEnd(18)}${print(of.low).padStart(13)} to ${print(of.high).padEnd(13)} middle ${print(of.middle)}${help}`,
    )
  }
  band('finished mass', range.mass, (v) => say.mass(v))
  band('finished length', range.length, (v) => say.length(v))
  band('lines on the face', range.lines, (v) => say.lines(v))
  band('length to spare', range.spare, (v) => `${v < 0 ? '−' : ''}${say.length(Math.abs(v))}`)
  band('heats', range.heats, (v) => String(Math.round(v)))
  // A making that comes up short is no piece: it has no mass, and what it lacks is told below.
  if (range.short > 0)
    lines.push(
      ink.soft(`Of those that come out (${percent(1 - range.short, 1)}), nine in ten lie between.`),
    )
  lines.push(
    '',
    ink.bold(
      `comes up short: ${percent(range.short, 1)} (± ${percent(2 * range.shortDeviation, 1)})`,
    ),
  )
  for (const { problem, times } of range.reasons.slice(0, 3)) {
    const i = steps.findIndex(({ at }) => problem.at === at || problem.at.startsWith(`${at}.`))
    const place = i < 0 ? problem.at : `step ${i + 1}, ${steps[i].operation.name}`
    const one = times > 1 ? 'in one of them, ' : ''
    lines.push(ink.soft(`  ${percent(times / range.draws, 1)} at ${place}: ${one}${problem.what}`))
  }
  if (allowance)
    lines.push(
      allowance.found
        ? allowance.found.longer === 0
          ? `No allowance is needed to stay under ${percent(allowance.risk)}.`
          : `Cut every stack and bar ${percent(allowance.found.longer, 1)} longer to bring that under ${percent(allowance.risk)} (${percent(allowance.found.short, 1)} then).`
        : `No length of stack brings that under ${percent(allowance.risk)}: it is a section that comes out too small.`,
    )
  return `${lines.join('\n')}\n`
}

/** What to cut from which bar, and what to buy. */
export function cutListText(lists: readonly CutList[], style: PlanningStyle = {}): string {
  const ink = style.ink ?? plainInk
  const say = sayIn(style.units ?? 'metric')
  const lines: string[] = []
  for (const list of lists) {
    lines.push(
      ink.bold(`${list.steel}, ${say.length(list.width)} × ${say.length(list.thickness)}`),
      ...list.bars.map((bar) => `  ${barLine(bar, say)}`),
    )
    if (list.buy)
      lines.push(
        `  to buy: the next standard section is ${say.length(list.buy.width)} × ${say.length(list.buy.thickness)}`,
      )
    lines.push(
      ink.soft(
        list.gap === 0
          ? '  no other way uses less'
          : `  within ${percent(list.gap, 2)} of the best`,
      ),
    )
  }
  return `${lines.join('\n')}\n`
}

function barLine(bar: CutList['bars'][number], say: Say): string {
  const from = { remnant: 'remnant', rack: 'bar off the rack', buy: 'bar to be bought' }[bar.from]
  const counts = new Map<number, number>()
  for (const piece of bar.pieces) counts.set(piece, (counts.get(piece) ?? 0) + 1)
  const cut = [...counts].map(([length, n]) => `${n} × ${say.length(length)}`).join(', ')
  const left = bar.remnant > 0 ? `, ${say.length(bar.remnant)} goes back on the rack` : ''
  const place = bar.place === undefined ? '' : ` (${bar.place})`
  return `${bar.count} × ${from}${place} ${say.length(bar.length)} long: ${cut}${left}; ${say.length(bar.waste)} lost`
}

/** Hours, costs and the price with its honest range. */
export function quoteText({ computed, cost, quote }: Priced, style: PlanningStyle = {}): string {
  const ink = style.ink ?? plainInk
  const money = (sum: number) => `${sum.toFixed(2)} ${quote.currency}`
  const line = (what: string, sum: number) => `  ${what.padEnd(28)}${money(sum).padStart(14)}`
  const most = [...cost.hours].sort((a, b) => b.hands - a.hands).slice(0, 6)
  return `${[
    ink.bold(computed.job.name),
    `${hours(cost.hands)} of work, ${hours(cost.waiting)} of soaking and tempering besides`,
    ...most.map((h) => ink.soft(`  ${h.title.padEnd(20)} ${hours(h.hands).padStart(8)}  ${h.at}`)),
    '',
    ...cost.lines.map(({ what, sum }) => line(what, sum)),
    line(`begun again (${percent(cost.failing)} fail)`, quote.failureAllowance),
    line('margin', quote.margin),
    ink.bold(line('price', quote.price)),
    `Nine times in ten it costs between ${money(quote.range[0])} and ${money(quote.range[1])}; one time in ${Math.max(2, Math.round(1 / Math.max(quote.atLoss, 1e-3)))} more than the price.`,
  ].join('\n')}\n`
}

/** What remnants would make. */
export function remnantText(uses: readonly RemnantUse[], style: PlanningStyle = {}): string {
  const ink = style.ink ?? plainInk
  const say = sayIn(style.units ?? 'metric')
  const lines: string[] = []
  for (const { what, size, pieces } of uses) {
    lines.push(ink.bold(`${what}: ${say.size(size)}`))
    for (const p of pieces) {
      const usual = p.pieces > 0 ? `; ${p.pieces} of the usual size` : ''
      lines.push(
        `  ${p.title.padEnd(24)} ${p.how}: up to ${say.size(p.size)}, ${say.mass(p.mass)}${usual}`,
      )
    }
    if (pieces.length === 0) lines.push('  nothing of any usual kind')
  }
  return `${lines.join('\n')}\n`
}

/** The numbers that move the steel most, strongest first. */
export function sensitivityText(all: readonly Sensitivity[], most = 8): string {
  return `${all
    .slice(0, most)
    .map(({ lever, steelForOnePercent, stepsNearby }) => {
      const sign = steelForOnePercent < 0 ? '−' : '+'
      const steps = stepsNearby ? '  (a heat more or less is near)' : ''
      return `  ${`${lever.at}.${lever.name}`.padEnd(30)} ${sign}${percent(Math.abs(steelForOnePercent), 2)} steel for 1 % more${steps}`
    })
    .join('\n')}\n`
}

/** What moved when one number was changed. */
export function whatIfText({ before, after }: WhatIf, style: PlanningStyle = {}): string {
  const say = sayIn(style.units ?? 'metric')
  const rows: readonly (readonly [string, keyof typeof before, (value: number) => string])[] = [
    ['steel off the rack', 'steel', (v) => say.mass(v)],
    ['finished mass', 'mass', (v) => say.mass(v)],
    ['heats', 'heats', (v) => String(v)],
    ['work', 'hands', hours],
    ['expected cost', 'cost', (v) => v.toFixed(2)],
    ['lines on the face', 'lines', (v) => say.lines(v)],
  ]
  const lines = rows.flatMap(([what, name, print]) => {
    const [was, is] = [before[name], after[name]]
    if (was === undefined || is === undefined) return []
    const share = was === 0 ? 0 : is / was - 1
    const moved =
      Math.abs(share) < 5e-5
        ? 'stays'
        : `${print(is).padEnd(14)} ${share < 0 ? '−' : '+'}${percent(Math.abs(share), 1)}`
    return [`${what.padEnd(20)}${print(was).padStart(14)}   ${moved}`]
  })
  return `${lines.join('\n')}\n`
}
