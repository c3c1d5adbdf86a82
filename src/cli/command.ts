import type { ParseArgsConfig } from 'node:util'
import type { Ink } from '#report'

/** Where a command writes, and what it may know of the terminal. */
export interface Terminal {
  out(text: string): void
  error(text: string): void
  readonly ink: Ink
  readonly width: number
  readonly signal: AbortSignal
  /** Progress of long work, shown only where a person is watching. */
  progress(share: number, doing: string): void
}

export type Options = NonNullable<ParseArgsConfig['options']>

/** One word of the command line. */
export interface Command {
  readonly name: string
  readonly summary: string
  /** What follows the name: `FILE [--json]`. */
  readonly usage: string
  readonly options: Options
  readonly help: readonly string[]
  run(given: Given, terminal: Terminal): Promise<ExitCode>
}

export interface Given {
  readonly words: readonly string[]
  readonly options: Readonly<Record<string, string | boolean | (string | boolean)[] | undefined>>
}

/** 0 fine, 1 problems in the job, 2 the command line was not understood. */
export type ExitCode = 0 | 1 | 2

/** Thrown by a command whose words are off; `main` turns it into exit code 2. */
export class BadUsage extends Error {
  readonly cures: readonly string[]
  constructor(what: string, cures: readonly string[] = []) {
    super(what)
    this.cures = cures
  }
}

export function text(given: Given, option: string): string | undefined {
  const value = given.options[option]
  return typeof value === 'string' ? value : undefined
}

export function one(
  given: Given,
  of: readonly string[],
  option: string,
  otherwise: string,
): string {
  const value = text(given, option) ?? otherwise
  if (of.includes(value)) return value
  throw new BadUsage(`--${option} ${value} is not known`, [`one of: ${of.join(', ')}`])
}
