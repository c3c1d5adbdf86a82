import { z } from 'zod'
import { printQuantity } from '#units'
import { type Parameter, type Parameters, isParameter } from './parameter.ts'

/** The file schema of a group of parameters (JSON Schema comes from it by `z.toJSONSchema`). */
export function schemaOf(parameters: Parameters): z.ZodObject {
  return z.strictObject(
    Object.fromEntries(Object.entries(parameters).map(([name, p]) => [name, schemaOfOne(p)])),
  )
}

function schemaOfOne(p: Parameter): z.ZodType {
  const described = bare(p).meta({ description: sentence(p) })
  return p.optional || p.default !== undefined ? described.optional() : described
}

function bare(p: Parameter): z.ZodType {
  switch (p.form) {
    case 'quantity':
      return z.string().max(80)
    case 'count':
      return z.int().min(p.min).max(p.max)
    case 'choice':
      return z.enum(Object.keys(p.options) as [string, ...string[]])
    case 'flag':
      return z.boolean()
    case 'list':
      return z
        .array(isParameter(p.item) ? schemaOfOne(p.item) : schemaOf(p.item))
        .min(p.fewest)
        .max(p.most)
    default:
      return z
        .string()
        .min(1)
        .max(p.longest ?? 80)
  }
}

/** What may be written, in words: `length, 1 mm to 2 m`. */
export function rangeOf(p: Parameter): string {
  switch (p.form) {
    case 'quantity':
      return `${p.of}, ${printQuantity(p.min, p.of)} to ${printQuantity(p.max, p.of)}${p.free ? ', or "?" to have it worked out' : ''}`
    case 'count':
      return `whole number, ${p.min} to ${p.max}`
    case 'choice':
      return `one of: ${Object.keys(p.options).join(', ')}`
    case 'flag':
      return 'true or false'
    case 'list':
      return `list of ${p.fewest} to ${p.most}`
    case 'text':
      return 'words'
    default:
      return `name of a ${p.form}`
  }
}

function sentence(p: Parameter): string {
  const fallback = p.default === undefined ? '' : ` Usual: ${JSON.stringify(p.default)}.`
  return `${p.help} (${rangeOf(p)}).${fallback}`
}

/** One row of a reference page or a form for each parameter, lists unfolded. */
export interface ParameterRow {
  readonly name: string
  readonly help: string
  readonly range: string
  readonly usual?: string
  readonly parameter: Parameter
}

export function rowsOf(parameters: Parameters, before = ''): ParameterRow[] {
  return Object.entries(parameters).flatMap(([key, p]) => {
    const name = before + key
    const row: ParameterRow = {
      name,
      help: p.help,
      range: rangeOf(p),
      usual:
        p.default === undefined
          ? undefined
          : typeof p.default === 'object'
            ? JSON.stringify(p.default)
            : String(p.default),
      parameter: p,
    }
    return p.form === 'list' && !isParameter(p.item)
      ? [row, ...rowsOf(p.item, `${name}[].`)]
      : [row]
  })
}
