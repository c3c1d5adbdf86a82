import type { Problem } from '#problem'
import { type Ink, plainInk } from './ink.ts'

/** Problems in words, one paragraph each: where, what, why, what to try. */
export function problemsText(problems: readonly Problem[], ink: Ink = plainInk): string {
  return problems.map((p) => problemText(p, ink)).join('\n\n')
}

export function problemText({ at, what, why, try: cures }: Problem, ink: Ink = plainInk): string {
  const head = at === '' ? ink.bold(sentence(what)) : `${ink.bold(sentence(what))}\n  where: ${at}`
  const tries = cures.map((cure, i) => `${i === 0 ? '  try:   ' : '         '}${cure}`)
  return [head, `  why:   ${why}`, ...tries].join('\n')
}

function sentence(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`
}
