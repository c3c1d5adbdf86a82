import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'

const bin = fileURLToPath(new URL('../../bin/billetwright.mjs', import.meta.url))

export interface Answer {
  readonly code: number | null
  readonly out: string
  readonly error: string
}

/** Runs the real command line in a process of its own. */
export function billetwright(args: readonly string[], input?: string): Answer {
  const run = spawnSync(process.execPath, [bin, ...args], {
    input,
    encoding: 'utf8',
    timeout: 30_000,
    maxBuffer: 64e6,
    env: { ...process.env, NO_COLOR: '1' },
  })
  return { code: run.status, out: run.stdout, error: run.stderr }
}
