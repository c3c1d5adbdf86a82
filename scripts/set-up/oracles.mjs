// Programs whose answers some tests compare ours with: SciPy and FreeFEM. Their answers are also kept
// beside the tests, so that a machine without them tests against those.
import { existsSync, writeFileSync } from 'node:fs'
import { canInstall, install } from './apt.mjs'
import { at, isProgram, say } from './place.mjs'

const attempted = at('.setup/oracles-not-installed')

const oracles = [
  { name: 'python3-scipy', here: () => existsSync('/usr/lib/python3/dist-packages/scipy') },
  { name: 'freefem++', here: () => isProgram('/usr/bin/FreeFem++') },
]

/** Installs what is missing where that is possible; never fails. */
export function installOracles() {
  const missing = oracles.filter((oracle) => !oracle.here()).map((oracle) => oracle.name)
  if (missing.length === 0 || !canInstall() || existsSync(attempted)) return
  for (const name of missing) {
    const why = install([name])
    if (!why) continue
    writeFileSync(attempted, `${name}\n${why}\n`)
    say(`  ${name} could not be installed; the tests use its committed answers instead`)
    say(`  (why: ${attempted}; delete that file to try again)`)
  }
}
