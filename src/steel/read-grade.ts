import { type Problem, type Result, ok, within } from '#problem'
import { type Figure, type SourceKey, bibliography } from '#sources'
import { z } from 'zod'
import { elements } from './composition.ts'
import { type Grade, etchClasses, families } from './grade.ts'
import { nearest } from './nearest-name.ts'

const standings = ['read', 'read secondary', 'computed', 'from memory', 'common practice'] as const

// Object.keys gives strings; every one is a key of the bibliography.
const source = z.enum(Object.keys(bibliography) as [SourceKey, ...SourceKey[]], {
  error: (issue) => `${JSON.stringify(issue.input)} is not in the bibliography`,
})

const sourced = { source, standing: z.enum(standings), note: z.string().min(1).optional() }

function figure(unit: string, least: number, most: number): z.ZodType<Figure> {
  const number = z.number().min(least).max(most)
  return z
    .strictObject({
      value: number,
      range: z.tuple([number, number]).optional(),
      unit: z.literal(unit),
      ...sourced,
    })
    .refine(({ value, range }) => !range || (range[0] <= value && value <= range[1]), {
      error: 'value lies outside its range',
      path: ['value'],
    }) as z.ZodType<Figure>
}

const percent = figure('wt%', 0, 100)
const celsius = figure('°C', 400, 1600)

/**
 * The form of a grade in a file. Limits on temperature and hardness only catch slips of the pen: °F
 * for °C, HV for HRC.
 */
export const gradeSchema = z.strictObject({
  name: z.string().min(1).max(40),
  aliases: z.array(z.string().min(1).max(40)),
  near: z.array(z.string().min(1).max(40)).optional(),
  standard: z.string().min(1),
  family: z.enum(families),
  composition: z
    .partialRecord(z.enum(elements), percent)
    .refine((c) => Object.values(c).reduce((sum, f) => sum + (f?.value ?? 0), 0) <= 100, {
      error: 'adds up to over 100 wt%',
    }),
  slag: percent.optional(),
  forging: z
    .strictObject({ start: celsius.optional(), max: celsius.optional(), stop: celsius.optional() })
    .optional(),
  austenitise: celsius.optional(),
  quench: z.strictObject({ text: z.string().min(1), ...sourced }).optional(),
  asQuenched: figure('HRC', 10, 70).optional(),
  nonmagnetic: celsius.optional(),
  density: figure('g/cm³', 7, 9.5).optional(),
  etch: z.strictObject({ class: z.enum(etchClasses), ...sourced }),
  notes: z.array(z.string().min(1)).optional(),
})

/** Reads a grade in the form of the grade files; a field the form does not know is refused. */
export function readGrade(raw: unknown, at: string): Result<Grade> {
  const found = gradeSchema.safeParse(raw)
  if (found.success) return ok(found.data as Grade)
  return {
    problems: within(
      at,
      found.error.issues.flatMap((issue) => tell(issue, raw)),
    ),
  }
}

const fieldsOf: Readonly<Record<string, readonly string[]>> = {
  '': Object.keys(gradeSchema.shape),
  composition: elements,
  forging: ['start', 'max', 'stop'],
  quench: ['text', 'source', 'standing', 'note'],
  etch: ['class', 'source', 'standing', 'note'],
}
const figureFields = ['value', 'range', 'unit', 'source', 'standing', 'note']

function tell(issue: z.core.$ZodIssue, raw: unknown): Problem[] {
  const path = issue.path.map(String)
  const at = path.join('.')
  // A record whose key is not an element arrives as that key's own issue.
  if (issue.code === 'unrecognized_keys' || issue.code === 'invalid_key') {
    const unknown = issue.code === 'unrecognized_keys' ? issue.keys : path.slice(-1)
    const owner = issue.code === 'unrecognized_keys' ? path : path.slice(0, -1)
    const fields = fieldsOf[owner.join('.')] ?? figureFields
    return unknown.map((key) => unknownField(key, owner, fields))
  }
  const given = path.reduce<unknown>((value, key) => (value as Record<string, unknown>)?.[key], raw)
  const missing = given === undefined
  return [
    {
      at,
      what: missing
        ? `${at === '' ? 'The grade' : at} is missing.`
        : `${at === '' ? 'The grade' : at} is not right: ${issue.message}.`,
      why: missing
        ? 'A grade is read only with every figure it is reckoned with, and where each comes from.'
        : `What is written is ${JSON.stringify(given)?.slice(0, 60) ?? 'not a value'}.`,
      try: cures(path, issue),
    },
  ]
}

function unknownField(key: string, owner: readonly string[], fields: readonly string[]): Problem {
  const place = owner.length === 0 ? 'a grade' : owner.join('.')
  const close = nearest(key, fields, 2)
  return {
    at: [...owner, key].join('.'),
    what: `"${key}" is not a field of ${place}.`,
    why: 'A field that is not known would be left out of the reckoning without a word.',
    try: close.length > 0 ? close : [...fields],
  }
}

function cures(path: readonly string[], issue: z.core.$ZodIssue): readonly string[] {
  const field = path.at(-1)
  if (field === 'source') return ['certificate', 'memory', 'practice']
  if (issue.code === 'invalid_value') return issue.values.map(String)
  if (path[0] === 'composition')
    return ['{"value": 0.8, "unit": "wt%", "source": "certificate", "standing": "read"}']
  return ['Write it as in the files of the grades that come with the program.']
}
