#!/usr/bin/env node
// Starts the command line on a Node that is new enough, then gets out of the way.
import { spawn } from 'node:child_process'
import module from 'node:module'
import { fileURLToPath } from 'node:url'
import { explainNoNode, findNode } from './node-24.mjs'

const INTERNAL_FAULT = 3

const node = findNode()
if (!node) {
  console.error(explainNoNode())
  process.exit(INTERNAL_FAULT)
} else if (node !== process.execPath) {
  handOver(node)
} else {
  await run()
}

/** Runs this same file on another Node; signals go in, the exit status comes out. */
function handOver(other) {
  const child = spawn(other, [fileURLToPath(import.meta.url), ...process.argv.slice(2)], {
    stdio: 'inherit',
  })
  // A terminal sends its own interrupt to both; passing it on as well would make two of one.
  const atTerminal = Boolean(process.stdin.isTTY)
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP', 'SIGQUIT']) {
    const sentByTerminal = signal === 'SIGINT' || signal === 'SIGQUIT'
    process.on(signal, () => {
      if (!(atTerminal && sentByTerminal)) child.kill(signal)
    })
  }
  child.on('error', (fault) => {
    console.error(`Billetwright could not start ${other}: ${fault.message}`)
    process.exit(INTERNAL_FAULT)
  })
  child.on('exit', (code, signal) => {
    if (!signal) process.exit(code ?? INTERNAL_FAULT)
    process.removeAllListeners(signal)
    process.kill(process.pid, signal)
  })
}

async function run() {
  module.enableCompileCache?.()
  dropTypeStrippingWarning()
  // `billetwright … | head` closes the pipe early; that is no fault of the command.
  process.stdout.on('error', (fault) => {
    if (fault.code === 'EPIPE') process.exit(0)
    throw fault
  })
  try {
    // The app is an outlet of its own: the command line knows nothing of it.
    const [word, ...rest] = process.argv.slice(2)
    if (word === 'open') {
      const { openApp } = await import('../src/server/main.ts')
      process.exitCode = await openApp(rest)
    } else {
      const { main } = await import('../src/cli/main.ts')
      process.exitCode = await main(process.argv.slice(2))
    }
  } catch (fault) {
    const traced = process.env.BILLETWRIGHT_TRACE
    console.error(`Something broke inside Billetwright: ${fault?.message ?? fault}`)
    console.error(
      traced ? fault?.stack : 'This is our fault, not yours. BILLETWRIGHT_TRACE=1 shows where.',
    )
    process.exitCode = INTERNAL_FAULT
  }
}

/** Only that one warning: every other is shown. */
function dropTypeStrippingWarning() {
  const emit = process.emitWarning
  process.emitWarning = (warning, ...rest) => {
    const text = String(warning?.message ?? warning)
    if (/type stripping/i.test(text)) return
    emit.call(process, warning, ...rest)
  }
}
