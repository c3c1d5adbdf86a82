import { bibliography } from '#sources'
import type { Form } from './check-form.ts'
import { elements } from './composition.ts'
import { etchClasses, families } from './grade.ts'

const standings = ['read', 'read secondary', 'computed', 'from memory', 'common practice'] as const

const text: Form = { type: 'string', minLength: 1 }
const name: Form = { type: 'string', minLength: 1, maxLength: 40 }
const names: Form = { type: 'array', items: name }

const sourced = {
  source: {
    enum: Object.keys(bibliography),
    description: 'a key of the bibliography',
    examples: ['certificate', 'memory', 'practice'],
  },
  standing: { enum: standings },
  note: text,
}

/** Fields that must all be there but for those named. */
function group(properties: Readonly<Record<string, Form>>, ...optional: readonly string[]): Form {
  const required = Object.keys(properties).filter((key) => !optional.includes(key))
  return { type: 'object', properties, required, additionalProperties: false }
}

function figure(unit: string, minimum: number, maximum: number): Form {
  const value: Form = { type: 'number', minimum, maximum }
  const range: Form = { type: 'array', items: value, minItems: 2, maxItems: 2 }
  return {
    ...group({ value, range, unit: { enum: [unit] }, ...sourced }, 'range', 'note'),
    examples: [{ value: minimum, unit, source: 'certificate', standing: 'read' }],
  }
}

const percent = figure('wt%', 0, 100)
const celsius = figure('°C', 400, 1600)

/**
 * The form of a grade in a file, as JSON Schema (2020-12): what is published is what files are checked
 * by. Limits on temperature and hardness only catch slips of the pen: °F for °C, HV for HRC.
 */
export const gradeForm: Form = group(
  {
    name,
    aliases: names,
    near: names,
    standard: text,
    family: { enum: families },
    composition: group(Object.fromEntries(elements.map((e) => [e, percent])), ...elements),
    slag: percent,
    forging: group({ start: celsius, max: celsius, stop: celsius }, 'start', 'max', 'stop'),
    austenitise: celsius,
    quench: group({ text, ...sourced }, 'note'),
    asQuenched: figure('HRC', 10, 70),
    nonmagnetic: celsius,
    density: figure('g/cm³', 7, 9.5),
    etch: group({ class: { enum: etchClasses }, ...sourced }, 'note'),
    notes: { type: 'array', items: text },
  },
  'near',
  'slag',
  'forging',
  'austenitise',
  'quench',
  'asQuenched',
  'nonmagnetic',
  'density',
  'notes',
)
