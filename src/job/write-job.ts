import { operations } from '#operations'
import { jobNames } from './read-job.ts'

/**
 * The text of a job file. Parts stand in one fixed order, a step's parameters in the order they are
 * declared, so that the same job is always the same bytes; quantities stay as they were typed.
 */
export function writeJob(written: Readonly<Record<string, unknown>>): string {
  const ordered: Record<string, unknown> = {}
  for (const name of Object.keys(jobNames))
    if (written[name] !== undefined) ordered[name] = inOrder(written[name])
  for (const name of Object.keys(written).sort())
    if (!Object.hasOwn(ordered, name)) ordered[name] = inOrder(written[name])
  return `${layOut(ordered, '')}\n`
}

const stepOrder = new Map(operations.map((o) => [o.name, Object.keys(o.parameters)]))

function inOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOrder)
  if (typeof value !== 'object' || value === null) return value
  const group = value as Readonly<Record<string, unknown>>
  const known =
    typeof group.do === 'string'
      ? ['do', ...(stepOrder.get(group.do) ?? [])]
      : 'kind' in group
        ? ['kind']
        : []
  const names = [
    ...known.filter((k) => Object.hasOwn(group, k)),
    ...Object.keys(group).filter((k) => !known.includes(k)),
  ]
  return Object.fromEntries(names.map((name) => [name, inOrder(group[name])]))
}

/** A group that fits on a line stands on one: a step reads as a line of the card. */
function layOut(value: unknown, indent: string): string {
  const flat = JSON.stringify(value, null, 1)?.replace(/\n\s*/g, ' ')
  if (typeof value !== 'object' || value === null) return JSON.stringify(value)
  if (indent !== '' && flat.length + indent.length <= 96) return flat
  const inner = `${indent}  `
  if (Array.isArray(value)) {
    return value.length === 0
      ? '[]'
      : `[\n${value.map((v) => inner + layOut(v, inner)).join(',\n')}\n${indent}]`
  }
  const entries = Object.entries(value)
  return entries.length === 0
    ? '{}'
    : `{\n${entries.map(([k, v]) => `${inner}${JSON.stringify(k)}: ${layOut(v, inner)}`).join(',\n')}\n${indent}}`
}
