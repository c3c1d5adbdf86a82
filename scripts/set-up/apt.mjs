// Debian's packages, where there is apt-get and the right to use it.
import { spawnSync } from 'node:child_process'
import { onPath, say } from './place.mjs'

/** Whether Debian packages can be installed here without asking anyone. */
export function canInstall() {
  return process.getuid?.() === 0 && onPath('apt-get') !== undefined
}

let updated = false

/** Installs Debian packages; returns undefined when that worked, else why it did not. */
export function install(names) {
  say(`Installing ${names.join(', ')} from Debian (about half a minute) …`)
  const update = updated ? undefined : aptGet(['update'])
  updated = true
  const failed = aptGet(['install', '-y', '--no-install-recommends', ...names])
  return failed && update ? `${update}\n${failed}` : failed
}

function aptGet(args) {
  // Another installation may hold the lock for a while.
  const run = spawnSync('apt-get', ['-q', '-o', 'DPkg::Lock::Timeout=500', ...args], {
    encoding: 'utf8',
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    maxBuffer: 1 << 26,
  })
  if (run.status === 0) return undefined
  return run.error?.message ?? (run.stderr.trim() || `apt-get ended with ${run.status}`)
}
