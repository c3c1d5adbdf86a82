import type { Problem } from '#problem'
import { nearest } from './nearest-name.ts'

/** The few words of JSON Schema that the form of a grade is written in. */
export interface Form {
  readonly type?: 'object' | 'array' | 'string' | 'number'
  readonly enum?: readonly string[]
  readonly minimum?: number
  readonly maximum?: number
  readonly minLength?: number
  readonly maxLength?: number
  readonly items?: Form
  readonly minItems?: number
  readonly maxItems?: number
  readonly properties?: Readonly<Record<string, Form>>
  readonly required?: readonly string[]
  readonly additionalProperties?: false
  /** What is wanted, where its other words do not say it well. */
  readonly description?: string
  readonly examples?: readonly unknown[]
}

type Path = readonly (string | number)[]

/** Everything in a value that is not as the form has it. */
export function checkForm(form: Form, raw: unknown, path: Path = []): Problem[] {
  if (raw === undefined) return [missing(form, path)]
  if (!fits(form, raw)) return [wrong(form, raw, path)]
  if (Array.isArray(raw) && form.items) {
    const { items } = form
    return raw.flatMap((one, i) => checkForm(items, one, [...path, i]))
  }
  const { properties } = form
  if (!properties) return []
  const given = raw as Readonly<Record<string, unknown>>
  const fields = Object.keys(properties)
  const unknown = Object.keys(given).filter((key) => !fields.includes(key))
  const asked = fields.filter((key) => Object.hasOwn(given, key) || form.required?.includes(key))
  return [
    ...unknown.map((key) => unknownField(key, path, fields)),
    ...asked.flatMap((key) => checkForm(properties[key], given[key], [...path, key])),
  ]
}

/** Whether a value is as the form has it, what lies inside it left aside. */
function fits(form: Form, raw: unknown): boolean {
  if (form.enum) return typeof raw === 'string' && form.enum.includes(raw)
  const within = (n: number, least = -Infinity, most = Infinity) => least <= n && n <= most
  switch (form.type) {
    case 'number':
      return typeof raw === 'number' && within(raw, form.minimum, form.maximum)
    case 'string':
      return typeof raw === 'string' && within(raw.length, form.minLength, form.maxLength)
    case 'array':
      return Array.isArray(raw) && within(raw.length, form.minItems, form.maxItems)
    default:
      return typeof raw === 'object' && raw !== null && !Array.isArray(raw)
  }
}

function wanted({ description, enum: words, type, ...form }: Form): string {
  if (description !== undefined) return description
  if (words) return words.length === 1 ? `"${words[0]}"` : `one of: ${words.join(', ')}`
  switch (type) {
    case 'number':
      return `a number from ${form.minimum} to ${form.maximum}`
    case 'string':
      return form.maxLength === undefined ? 'words' : `words, at most ${form.maxLength} letters`
    case 'array':
      return form.minItems === undefined ? 'a list' : `a list of ${form.minItems}`
    default:
      return `a group of values: ${form.required?.join(', ')}`
  }
}

function wrong(form: Form, raw: unknown, path: Path): Problem {
  return {
    at: path.join('.'),
    what: `${placeOf(path)} is not right: ${shown(raw)} is not ${wanted(form)}.`,
    why: 'Grades are read only in the form of the files that come with the program.',
    try: cures(form),
  }
}

function missing(form: Form, path: Path): Problem {
  return {
    at: path.join('.'),
    what: `${placeOf(path)} is missing.`,
    why: 'A grade is read only with every figure it is reckoned with, and where each comes from.',
    try: cures(form),
  }
}

function unknownField(key: string, owner: Path, fields: readonly string[]): Problem {
  const close = nearest(key, fields, 2)
  return {
    at: [...owner, key].join('.'),
    what: `"${key}" is not a field of ${owner.length === 0 ? 'a grade' : owner.join('.')}.`,
    why: 'A field that is not known would be left out of the reckoning without a word.',
    try: close.length > 0 ? close : fields,
  }
}

function cures({ examples, enum: words, ...form }: Form): readonly string[] {
  if (examples) return examples.map((one) => (typeof one === 'string' ? one : JSON.stringify(one)))
  return words ?? [`write ${wanted(form)}`]
}

function placeOf(path: Path): string {
  return path.length === 0 ? 'The grade' : path.join('.')
}

/** NaN and the infinite are no JSON and are said as they are. */
function shown(raw: unknown): string {
  const text = typeof raw === 'number' ? String(raw) : (JSON.stringify(raw) ?? 'what is written')
  return text.length > 60 ? `${text.slice(0, 60)}…` : text
}
