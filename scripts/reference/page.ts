import { type ParameterRow, type Parameters, rowsOf } from '#parameters'

const printed = '<!-- Printed by `npm run reference` from the declarations; change those. -->'

/** A page: heading, what it is, a line of contents, then its sections. */
export function page(title: string, about: string, sections: readonly Section[]): string {
  const contents = sections.map(({ title }) => `[${title}](#${anchor(title)})`).join(' · ')
  return [
    `# ${title}`,
    printed,
    about,
    ...(sections.length > 1 ? [contents] : []),
    ...sections.flatMap(({ title, parts }) => [`## ${title}`, ...parts]),
  ]
    .join('\n\n')
    .concat('\n')
}

export interface Section {
  readonly title: string
  readonly parts: readonly string[]
}

function anchor(title: string): string {
  return title
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, '')
    .replace(/\s/g, '-')
}

/** A table; cells may hold anything but a line end. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n')
}

/** One row for each parameter of a group: name, what it is, what may be written, what is usual. */
export function parameterTable(parameters: Parameters): string {
  const rows = rowsOf(parameters)
  if (rows.length === 0) return 'Nothing is asked for.'
  return table(
    ['name', 'what it is', 'may be', 'usual'],
    rows.map((row) => [`\`${row.name}\``, meaning(row), row.range, usual(row)]),
  )
}

function meaning({ help, parameter }: ParameterRow): string {
  if (parameter.form !== 'choice') return help
  const choices = Object.entries(parameter.options).map(([name, said]) => `\`${name}\`: ${said}`)
  return [help, ...choices].join('<br>')
}

function usual({ usual, parameter }: ParameterRow): string {
  if (usual !== undefined) return `\`${usual}\``
  return parameter.optional ? 'may be left out' : 'must be given'
}

/** A value as a job file holds it. */
export function json(value: unknown): string {
  return ['```json', pretty(value, ''), '```'].join('\n')
}

/** Like JSON.stringify with indents, but what fits on a line stays on it. */
function pretty(value: unknown, indent: string): string {
  const flat = spaced(value)
  if (typeof value !== 'object' || value === null || flat.length + indent.length <= 88) return flat
  const deeper = `${indent}  `
  const [open, close] = Array.isArray(value) ? '[]' : '{}'
  const items = Array.isArray(value)
    ? value.map((item) => deeper + pretty(item, deeper))
    : Object.entries(value).map(([k, v]) => `${deeper}${JSON.stringify(k)}: ${pretty(v, deeper)}`)
  return `${open}\n${items.join(',\n')}\n${indent}${close}`
}

function spaced(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(spaced).join(', ')}]`
  if (typeof value !== 'object' || value === null) return JSON.stringify(value)
  const entries = Object.entries(value).map(([k, v]) => `${JSON.stringify(k)}: ${spaced(v)}`)
  return entries.length > 0 ? `{ ${entries.join(', ')} }` : '{}'
}
