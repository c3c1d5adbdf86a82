import { parseArgs } from 'node:util'
import { nearest } from '#problem'
import { plainInk, terminalInk } from '#report'
import { BadUsage, type Command, type ExitCode, type Given, type Terminal } from './command.ts'
import { commands } from './commands.ts'

/** Runs one command line; the exit code comes back. Nothing a user writes reaches them as a stack trace. */
export async function main(argv: readonly string[]): Promise<ExitCode> {
  const terminal = openTerminal()
  const [name = 'help', ...rest] = argv
  if (['help', '--help', '-h'].includes(name)) return help(rest[0], terminal)
  if (['--version', '-v', 'version'].includes(name)) {
    const { default: own } = (await import('../../package.json', { with: { type: 'json' } })) as {
      default: { version: string }
    }
    terminal.out(`billetwright ${own.version}\n`)
    return 0
  }
  const command = commands.find((c) => c.name === name)
  if (!command) {
    const close = nearest(
      name,
      commands.map((c) => c.name),
      1,
    )
    terminal.error(
      `There is no command "${name.slice(0, 60)}".${close.map((c) => ` Did you mean "${c}"?`).join('')}\nSee: billetwright help\n`,
    )
    return 2
  }
  if (rest.includes('--help') || rest.includes('-h')) return help(name, terminal)
  try {
    return await command.run(parse(command, rest), terminal)
  } catch (error) {
    if (error instanceof BadUsage) {
      terminal.error(
        `${error.message}.\n${error.cures.map((cure) => `  try: ${cure}\n`).join('')}Usage: billetwright ${command.name} ${command.usage}\n`,
      )
      return 2
    }
    if (terminal.signal.aborted) {
      terminal.error('Stopped.\n')
      return 1
    }
    const unwritten = whyUnwritten(error as NodeJS.ErrnoException)
    if (unwritten !== undefined) {
      terminal.error(`${unwritten}\n`)
      return 1
    }
    terminal.error(
      `This is a fault of the program, not of your job: ${(error as Error).message}\nNothing was changed. Please keep the job file and report it.\n`,
    )
    if (process.env.BILLETWRIGHT_TRACE) terminal.error(`${(error as Error).stack}\n`)
    return 1
  }
}

/** What the machine answers when a picture or a file is to be put down where it cannot be. */
const REFUSALS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such folder',
  ENOTDIR: 'a part of that name is a file, not a folder',
  EEXIST: 'a file of that name is in the way',
  EISDIR: 'that is a folder',
  EACCES: 'nothing may be written there',
  EPERM: 'nothing may be written there',
  EROFS: 'nothing may be written there',
  ENOSPC: 'there is no room left there',
}

/** Where the disk refused, not the program: which file, and why. */
function whyUnwritten({ code, path }: NodeJS.ErrnoException): string | undefined {
  const why = REFUSALS[code ?? '']
  return why && path ? `"${path}" cannot be written: ${why}.` : undefined
}

function parse(command: Command, words: readonly string[]): Given {
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      options: command.options,
      allowPositionals: true,
      strict: true,
    })
    return { words: positionals, options: values }
  } catch (error) {
    throw new BadUsage((error as Error).message.split('. ')[0].replace(/\.$/, ''))
  }
}

function help(name: string | undefined, { out, error, ink }: Terminal): ExitCode {
  if (name !== undefined) {
    const command = commands.find((c) => c.name === name)
    if (!command) {
      error(`There is no command "${name.slice(0, 60)}".\n`)
      return 2
    }
    out(
      `${ink.bold(`billetwright ${command.name} ${command.usage}`)}\n${command.summary}\n\n${command.help.map((l) => `  ${l}`).join('\n')}\n`,
    )
    return 0
  }
  const rows = commands.map((c) => `  ${ink.bold(c.name.padEnd(10))} ${c.summary}`)
  out(
    `Billetwright plans pattern-welded steel, backwards from the finished piece.\n\n${rows.join('\n')}\n\n  billetwright help COMMAND tells more. Exit codes: 0 fine, 1 problems in the job, 2 the command was not understood.\n`,
  )
  return 0
}

function openTerminal(): Terminal {
  const stop = new AbortController()
  process.once('SIGINT', () => stop.abort())
  const inked = process.stdout.isTTY && !process.env.NO_COLOR && process.env.TERM !== 'dumb'
  const watched = process.stderr.isTTY
  // A reader that closes the pipe early (`| head`) is no fault.
  process.stdout.on('error', () => process.exit(0))
  return {
    out: (text) => void process.stdout.write(text),
    error: (text) => void process.stderr.write(text),
    ink: inked ? terminalInk : plainInk,
    width: process.stdout.columns ?? 96,
    signal: stop.signal,
    progress(share, doing) {
      if (watched)
        process.stderr.write(
          share >= 1 ? '\r\u001b[K' : `\r\u001b[K${Math.round(share * 100)} %  ${doing}`,
        )
    },
  }
}
