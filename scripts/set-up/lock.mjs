// One set-up at a time: two at once would pull the packages from under each other.
import { mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { at, say } from './place.mjs'

const LONGEST_WAIT = 15 * 60_000
const lock = at('.setup/lock')

/** Runs `work` while no other set-up of this checkout runs. */
export async function holdingLock(work) {
  const since = Date.now()
  let told = false
  while (!take()) {
    if (isAbandoned()) {
      rmSync(lock, { recursive: true, force: true })
      continue
    }
    if (Date.now() - since > LONGEST_WAIT) {
      say(`set-up: another set-up has run for long; if none does, delete ${lock}`)
      return false
    }
    if (!told) say('Waiting for another set-up of this checkout …')
    told = true
    await new Promise((resolve) => setTimeout(resolve, 200))
  }
  const release = () => rmSync(lock, { recursive: true, force: true })
  process.on('exit', release)
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => process.exit(1))
  return work()
}

function take() {
  try {
    mkdirSync(lock)
  } catch (fault) {
    if (fault.code === 'EEXIST') return false
    throw fault
  }
  writeFileSync(`${lock}/pid`, String(process.pid))
  return true
}

/** Whether the process that took the lock is gone. */
function isAbandoned() {
  try {
    const pid = Number(readFileSync(`${lock}/pid`, 'utf8'))
    // Between making the folder and writing the number there is a moment without a number.
    if (!pid) return Date.now() - statSync(lock).mtimeMs > 5000
    process.kill(pid, 0)
    return false
  } catch (fault) {
    if (fault.code === 'ESRCH') return true
    if (fault.code !== 'ENOENT') return false
    try {
      return Date.now() - statSync(lock).mtimeMs > 5000
    } catch {
      return false
    }
  }
}
