import type { Parameter, Parameters } from '#parameters'
import { LEFT_FREE, isParameter } from '#parameters'
import type { WrittenStep } from '#desk'
import type { Express } from '../../form/express.ts'

interface Saying {
  readonly size: Express
  readonly steel: (name: string) => string
  readonly word: (word: string) => string
  readonly solved: (name: string) => number | undefined
}

/** A longer text is named on the card, not read out. */
const LONGEST_SAID = 60

/** What was written for a step, on one line: sizes as typed, in the units chosen. */
export function stepWords(step: WrittenStep, parameters: Parameters, saying: Saying): string {
  if (typeof step.note === 'string' && step.note.trim() !== '') return step.note
  return Object.entries(parameters)
    .flatMap(([name, p]) => {
      const value = step[name]
      if (value === undefined) return []
      const said = valueWords(p, value, saying, name)
      if (said === '') return []
      const word = saying.word(name)
      // A choice and a list say by themselves what they are, and so does "18 mm pitch".
      if (p.form === 'choice' || p.form === 'list' || p.form === 'steel') return [said]
      if (said.endsWith(` ${word}`)) return [said]
      // An outline is for the machine to read.
      return p.form === 'text' && said.length > LONGEST_SAID ? [word] : [`${word} ${said}`]
    })
    .join(', ')
}

function valueWords(p: Parameter, value: unknown, saying: Saying, name: string): string {
  if (p.form === 'quantity') {
    if (value !== LEFT_FREE) return saying.size.typed(String(value), p.of)
    const solved = saying.solved(name)
    return solved === undefined ? '?' : saying.size.solved(solved, p.of)
  }
  if (p.form === 'steel') return saying.steel(String(value))
  if (p.form === 'choice') return saying.word(String(value))
  if (p.form === 'flag') return value === true ? saying.word(name) : ''
  if (p.form !== 'list') return String(value)
  if (!Array.isArray(value)) return ''
  const { item } = p
  const items = value.map((one: unknown) =>
    isParameter(item)
      ? valueWords(item, one, saying, name)
      : Object.entries(item)
          .flatMap(([key, q]) => {
            const inner = (one as WrittenStep | null)?.[key]
            return inner === undefined ? [] : [valueWords(q, inner, saying, key)]
          })
          .join(' '),
  )
  return items.length > 4 ? `${items.slice(0, 3).join(' + ')} + …` : items.join(' + ')
}
