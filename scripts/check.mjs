// Everything that can be said about the code without running it. All of it is reported, then the verdict.
import { spawn } from 'node:child_process'
import { pathToFileURL } from 'node:url'
import { explainNoNode, findNode } from '../bin/node-24.mjs'
import { at } from './set-up/place.mjs'

const checks = [
  { name: 'types', args: ['scripts/check-types.mjs'] },
  { name: 'lint', args: ['node_modules/eslint/bin/eslint.js', '.'] },
  {
    name: 'format',
    args: ['node_modules/prettier/bin/prettier.cjs', '--check', '.', '--log-level=warn'],
  },
  { name: 'rooms', args: ['scripts/check-rooms.ts'] },
  { name: 'German', args: ['scripts/check-german.ts'] },
  { name: 'reference', args: ['scripts/print-reference.ts', '--check'] },
]

/** Runs every check, two at a time, and tells them in order; returns the names of those that failed. */
export async function runChecks(node) {
  const waiting = checks.map((check) => {
    let tell
    return { ...check, outcome: new Promise((resolve) => (tell = resolve)), tell: (o) => tell(o) }
  })
  const queue = [...waiting]
  const work = async () => {
    for (let check = queue.shift(); check; check = queue.shift()) {
      check.tell(await capture(node, check.args))
    }
  }
  void work()
  void work()
  const failed = []
  for (const { name, outcome } of waiting) {
    const { status, output } = await outcome
    console.log(`== ${name}: ${status === 0 ? 'fine' : 'wrong'}`)
    if (output !== '') console.log(output)
    if (status !== 0) failed.push(name)
  }
  return failed
}

function capture(node, args) {
  return new Promise((resolve) => {
    const child = spawn(node, args, { cwd: at('.'), stdio: ['ignore', 'pipe', 'pipe'] })
    let output = ''
    for (const stream of [child.stdout, child.stderr]) {
      stream.setEncoding('utf8').on('data', (text) => (output += text))
    }
    child.on('error', (fault) => resolve({ status: 1, output: fault.message }))
    child.on('close', (code) => resolve({ status: code ?? 1, output: output.trim() }))
  })
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const node = findNode()
  if (!node) console.error(explainNoNode())
  process.exit(node && (await runChecks(node)).length === 0 ? 0 : 1)
}
