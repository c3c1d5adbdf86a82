import { printCount } from '#units'
import type { Problem } from '#problem'
import { type Computed, type Treated, cardSteps } from '#job'
import { type Ink, plainInk } from './ink.ts'
import { heatLine, heatsLeave } from './heat-words.ts'
import { retell } from './retell.ts'
import { forceLine } from './force-line.ts'
import { type CardUnits, type Say, sayIn } from './say.ts'

export interface CardStyle {
  readonly units?: CardUnits
  readonly ink?: Ink
  /** Columns of the terminal. */
  readonly width?: number
  /** Leave the cautions out: for a second look, never for the anvil. */
  readonly brief?: boolean
  /** What the heats leave; left out, the card says nothing of it. */
  readonly treated?: Treated
}

/** Where a row may break: never between a number and its fraction or unit. */
const BREAK = / (?!\d+\/\d|(?:mm²?|in|g|kg|lb|oz|°C|°F)(?![\w°]))/

/** A loss smaller than this prints as nothing: it is left out, kg. */
const LEAST_TOLD = 5e-5

/** The route card as text: one row a step, what the bar is after it, what it lost, where the danger is. */
export function routeCard(computed: Computed, style: CardStyle = {}): string {
  const say = sayIn(style.units ?? 'metric')
  const ink = style.ink ?? plainInk
  const width = Math.max(72, Math.min(style.width ?? 96, 120))
  const card = new Card(say, ink, width, style.brief ?? false, style.treated)
  return card.write(computed)
}

class Card {
  private readonly lines: string[] = []
  private readonly warned = new Set<string>()
  /** What the rows are in; sentences below a row may be in both. */
  private readonly rows: Say
  private readonly second?: Say
  private readonly say: Say
  private readonly ink: Ink
  private readonly width: number
  private readonly brief: boolean
  private readonly treated?: Treated

  constructor(say: Say, ink: Ink, width: number, brief: boolean, treated?: Treated) {
    this.say = say
    this.rows = say.units === 'both' ? sayIn('metric') : say
    this.second = say.units === 'both' ? sayIn('inch') : undefined
    this.ink = ink
    this.width = width
    this.brief = brief
    this.treated = treated
  }

  write(computed: Computed): string {
    const { ink, say } = this
    const { steps, totals, cautionsDefer } = cardSteps(computed)
    this.lines.push(ink.bold(computed.job.name))
    if (computed.job.piece)
      this.lines.push(
        `${computed.job.piece.kind.title}, ${say.block(totals.finishedSize)}, ${say.mass(totals.finishedMass)}`,
      )
    this.lines.push(
      '',
      this.row('', 'step', 'width × thickness × length', 'mass', 'layers', 'heats'),
      this.rule('─'),
    )
    let bar = ''
    for (const [i, step] of steps.entries()) {
      if (step.bar !== bar && totals.bars > 1) this.lines.push(ink.bold(`bar "${step.bar}"`))
      bar = step.bar
      const layers =
        step.laid === step.merged ? `${step.merged}` : `${step.merged} (${step.laid} laid)`
      const row = (say: Say, first: boolean) => {
        const heats = step.heats.map((h) => `${h.count} × ${say.temperature(h.temperature)}`)
        const size = say.size(step.size).replace(/ mm$/, '')
        const mass = say.mass(step.mass)
        const cells = [size, mass, first ? layers : '', heats.join(', ')] as const
        this.lines.push(
          first
            ? this.row(String(i + 1), step.title, ...cells)
            : ink.soft(this.row('', '', ...cells)),
        )
      }
      row(this.rows, true)
      if (this.second) row(this.second, false)
      for (const stock of step.taken) this.detail(this.stockLine(stock))
      const losses = step.losses.filter((l) => l.mass >= LEAST_TOLD)
      if (losses.length > 0)
        this.detail(`lost: ${losses.map((l) => `${l.cause} ${say.mass(l.mass)}`).join(', ')}`)
      for (const aside of step.setAside)
        this.detail(`set aside: ${say.size(aside.size)}, ${say.mass(aside.mass)}`)
      for (const heat of this.treated?.heats ?? [])
        if (heat.step === i + 1) this.detail(`heat: ${heatLine(heat, say)}`)
      if (step.force) this.detail(forceLine(step.force, say))
      for (const note of step.notes) this.detail(retell(note, say))
      for (const warning of step.warnings) this.warning(warning)
      if (!this.brief) this.cautions(step.cautions)
    }
    this.lines.push(this.rule('─'))
    this.totals(computed, totals)
    if (this.treated) this.heats(this.treated, computed)
    if (!this.brief) this.lines.push('', this.wrapped(cautionsDefer, 0, ink.soft))
    return `${this.lines.join('\n')}\n`
  }

  private cautions(cautions: ReturnType<typeof cardSteps>['steps'][number]['cautions']): void {
    const first = cautions.filter((c) => !this.warned.has(c.name))
    for (const c of first) {
      this.warned.add(c.name)
      this.lines.push(this.wrapped(` ⚠   ${c.danger} ${c.care} (${c.restsOn})`, 5, (t) => t))
    }
    const again = cautions.filter((c) => !first.includes(c)).map((c) => c.name)
    if (again.length > 0) this.detail(`⚠ as above: ${again.join(', ')}`)
  }

  private stockLine(stock: ReturnType<typeof cardSteps>['steps'][number]['taken'][number]): string {
    const { say } = this
    if (stock.form === 'powder')
      return `off the rack: ${say.mass(stock.mass)} of ${stock.steel} powder`
    if (!(stock.length > 0))
      return `off the rack: ${say.mass(stock.mass)} of ${stock.steel}, weighed`
    return `off the rack: ${stock.count} × ${stock.steel}, ${say.length(stock.thickness)} thick, ${say.length(stock.width)} wide, cut ${say.length(stock.length)} long: ${say.mass(stock.mass)}`
  }

  private totals(computed: Computed, totals: ReturnType<typeof cardSteps>['totals']): void {
    const { say, ink } = this
    const percent = `${Math.round(totals.yield * 100)} % of the steel stays in the piece`
    this.lines.push(
      ink.bold(
        `off the rack ${say.mass(totals.stackMass)}, finished ${say.mass(totals.finishedMass)}: ${percent}; ${printCount(totals.heats, 'heat')}${totals.tempers > 0 ? `, then ${printCount(totals.tempers, 'temper')}` : ''}`,
      ),
    )
    if (computed.lines)
      this.lines.push(
        `lines along the ${computed.lines.along === 'x' ? 'length' : 'width'} of the face: ${say.lines(computed.lines.perMetre)}`,
      )
    for (const [steel, share] of totals.shares)
      this.lines.push(`${steel}: ${Math.round(share * 1000) / 10} % of the piece by volume`)
    for (const solved of totals.solved)
      this.lines.push(`worked out: ${solved.place} ${say.length(solved.value)}`)
    for (const s of computed.plan.standings) {
      const word = s.spare >= 0 ? 'to spare' : 'short'
      this.lines.push(
        ink.bold(
          `measured after step ${s.index + 1} of "${s.bar}": ${say.size(s.measured.size)}, ${say.mass(s.measured.mass)} (planned ${say.size(s.planned.size)}, ${say.mass(s.planned.mass)}): ${say.length(Math.abs(s.spare))} ${word}`,
        ),
      )
    }
    const general = computed.warnings.filter(
      (w) => !computed.plan.steps.some((s) => w.at.startsWith(s.at)),
    )
    for (const warning of general) this.warning(warning)
  }

  private heats(treated: Treated, { warnings }: Computed): void {
    this.lines.push('', this.ink.bold('What the heats leave'))
    for (const line of heatsLeave(treated, this.say)) this.listed(line)
    const told = new Set(warnings.map((w) => `${w.at} ${w.what}`))
    for (const warning of treated.warnings)
      if (!told.has(`${warning.at} ${warning.what}`)) this.warning(warning)
  }

  private listed(line: string): void {
    this.lines.push(this.wrapped(`  ${retell(line, this.say)}`, 2, (text) => text))
  }

  private warning({ what, why, try: cures }: Problem): void {
    const told = retell(`${what}: ${why}. Try: ${cures.join('; or ')}.`, this.say)
    this.lines.push(this.wrapped(` !   ${told}`, 5, this.ink.bold))
  }

  private row(
    no: string,
    step: string,
    size: string,
    mass: string,
    layers: string,
    heats: string,
  ): string {
    return `${no.padStart(3)}  ${this.ink.bold(step.padEnd(20))}${size.padStart(30)}${mass.padStart(11)}  ${layers.padStart(8)}  ${heats}`.trimEnd()
  }

  private detail(text: string): void {
    this.lines.push(this.wrapped(`     ${text}`, 5, this.ink.soft))
  }

  private rule(line: string): string {
    return this.ink.soft(line.repeat(this.width))
  }

  private wrapped(text: string, indent: number, style: (text: string) => string): string {
    const lead = /^\s*\S?\s*/.exec(text)?.[0].slice(0, indent) ?? ''
    const words = text.slice(lead.length).split(BREAK)
    const rows: string[] = []
    let row = lead
    for (const word of words) {
      if (row.length + word.length + 1 > this.width && row.trim() !== '') {
        rows.push(row)
        row = ' '.repeat(indent)
      }
      row += (row.length > indent ? ' ' : '') + word
    }
    rows.push(row)
    return rows.map(style).join('\n')
  }
}
