// The app's pages, built into dist/web whenever what they are made of has changed.
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { explainNoNode, findNode } from '../../bin/node-24.mjs'
import { at, say, sayFailed } from './place.mjs'

const stampPath = at('.setup/app')

/** Builds the app if it is stale. Says why and returns false when that cannot be done. */
export function buildApp() {
  const stamp = `${fingerprint()}\n`
  const built = existsSync(at('dist/web/index.html')) && existsSync(stampPath)
  if (built && readFileSync(stampPath, 'utf8') === stamp) return true
  const node = findNode()
  if (!node) {
    say(explainNoNode())
    return false
  }
  say('Building the app (a few seconds) …')
  const run = spawnSync(
    node,
    [at('node_modules/vite/bin/vite.js'), 'build', '--logLevel', 'warn'],
    {
      cwd: at('.'),
      encoding: 'utf8',
      maxBuffer: 1 << 26,
    },
  )
  if (run.status !== 0) {
    const why =
      run.error?.message ?? (`${run.stderr}${run.stdout}`.trim() || `status ${run.status}`)
    sayFailed('the app could not be built', why, [
      'npm run check tells what is wrong with the source',
    ])
    return false
  }
  writeFileSync(stampPath, stamp)
  return true
}

/** Everything the pages are made of, tests left out. */
function fingerprint() {
  const hash = createHash('sha256')
  const others = [
    'package.json',
    'package-lock.json',
    'vite.config.ts',
    'scripts/draw-cuttings.ts',
    ...sources('jobs/patterns'),
  ]
  for (const path of [...sources('src'), ...others]) {
    hash.update(`${path}\0`).update(readFileSync(at(path)))
  }
  return hash.digest('hex')
}

function sources(folder) {
  return readdirSync(at(folder), { withFileTypes: true })
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => {
      const path = join(folder, entry.name)
      if (entry.isDirectory()) return sources(path)
      return /\.test\.tsx?$/.test(entry.name) ? [] : [path]
    })
}
