import { type Problem, type Result, failed, ok } from '#problem'

/** A job is a page of text; a file larger than this is something else. */
const LONGEST_FILE = 2_000_000
const DEEPEST = 40

/**
 * The text of a job file as an object. Too large, too deep, not JSON, not an object: each is a
 * problem with its place; nothing is thrown.
 */
export function readJobText(text: string): Result<Readonly<Record<string, unknown>>> {
  if (text.length > LONGEST_FILE) {
    return failed(
      file(
        `it is ${Math.round(text.length / 1e6)} million characters long`,
        `a job file has fewer than ${LONGEST_FILE / 1e6} million`,
        ['is this the right file?', 'pictures and logs do not belong in a job file'],
      ),
    )
  }
  const deep = deepestNesting(text)
  if (deep > DEEPEST) {
    return failed(
      file(`it is nested ${deep} deep`, `a job file is nested at most ${DEEPEST} deep`, [
        'is this the right file?',
        'check for brackets that do not close',
      ]),
    )
  }
  let raw: unknown
  try {
    raw = JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    return failed(notJson(text, error as Error))
  }
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) {
    return failed(
      file('it holds no job', 'a job file is one group of named values in braces', [
        'start from "billetwright new plaque"',
      ]),
    )
  }
  return ok(raw as Readonly<Record<string, unknown>>)
}

/** Depth of brackets outside strings; stops counting once it is hopeless. */
function deepestNesting(text: string): number {
  let depth = 0
  let deepest = 0
  let inString = false
  for (let i = 0; i < text.length && deepest <= 10_000; i++) {
    const c = text[i]
    if (inString) {
      if (c === '\\') i++
      else if (c === '"') inString = false
    } else if (c === '"') inString = true
    else if (c === '{' || c === '[') deepest = Math.max(deepest, ++depth)
    else if (c === '}' || c === ']') depth--
  }
  return deepest
}

function file(what: string, why: string, cures: readonly string[]): Problem {
  return { at: 'file', what, why, try: cures }
}

function notJson(text: string, error: Error): Problem {
  const number = /(?<![\w".])-?(NaN|Infinity)\b/.exec(text)
  if (number) {
    return {
      at: place(text, number.index),
      what: `${number[0]} is not a number one can forge to`,
      why: 'JSON knows no NaN and no Infinity, and no bar has such a size',
      try: ['write the size with its unit, in quotes: "12 mm"'],
    }
  }
  const position = /position (\d+)/.exec(error.message)
  const at = position ? place(text, Number(position[1])) : place(text, text.length)
  return {
    at,
    what: 'the file cannot be read from here on',
    why:
      position && Number(position[1]) < text.trimEnd().length
        ? 'it is not JSON: a comma, a quote or a bracket is missing there, or one is too many'
        : 'it is not JSON: it breaks off before it is complete',
    try: [
      'look for a comma or a quote missing just before this place',
      'quantities stand in quotes: "12 mm"',
    ],
  }
}

function place(text: string, index: number): string {
  const before = text.slice(0, index).split('\n')
  return `line ${before.length}, column ${(before.at(-1) as string).length + 1}`
}
