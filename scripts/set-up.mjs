// All set-up of a fresh machine, in plain JavaScript for the system's own Node: packages from the lock
// file, and on request the built app, a browser and the reference programs that some tests compare with.
// Does nothing, quickly, when nothing is stale. Uses npm and apt, nothing else.
import { mkdirSync } from 'node:fs'
import { at, say } from './set-up/place.mjs'
import { holdingLock } from './set-up/lock.mjs'
import { installPackages } from './set-up/packages.mjs'
import { findOrInstallBrowser } from './set-up/browser.mjs'
import { installOracles } from './set-up/oracles.mjs'
import { buildApp } from './set-up/app.mjs'

const flags = new Set(process.argv.slice(2))
const known = ['--app', '--browser', '--oracles']
const unknown = [...flags].filter((flag) => !known.includes(flag))
if (unknown.length > 0) {
  say(`set-up: ${unknown.join(', ')} is not known; there are: ${known.join(', ')}`)
  process.exit(2)
}

mkdirSync(at('.setup'), { recursive: true })
const done = await holdingLock(async () => {
  if (!installPackages()) return false
  // Tests without a browser or a reference program still say so themselves: neither stops the set-up.
  if (flags.has('--browser')) await findOrInstallBrowser()
  if (flags.has('--oracles')) installOracles()
  if (flags.has('--app')) return buildApp()
  return true
})
process.exit(done ? 0 : 1)
