// A Chromium for the tests that need a browser: the system's, Debian's, or the one from npm.
import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { canInstall, install } from './apt.mjs'
import { at, isProgram, onPath, sayFailed } from './place.mjs'

const foundPath = at('.setup/browser.json')

const usual = [
  '/usr/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
]

/** The browser set-up found, or undefined: `{ executablePath }`. */
export function knownBrowser() {
  if (!existsSync(foundPath)) return undefined
  const found = JSON.parse(readFileSync(foundPath, 'utf8'))
  return isProgram(found.executablePath) ? found : undefined
}

/** Finds or installs a browser and notes where it is; says why when there is none. */
export async function findOrInstallBrowser() {
  if (knownBrowser()) return
  const failures = []
  for (const way of [fromSystem, fromDebian, fromNpm]) {
    const { executablePath, why } = await way()
    const fault = executablePath ? doesNotRun(executablePath) : why
    if (executablePath && !fault) {
      writeFileSync(foundPath, `${JSON.stringify({ executablePath }, null, 2)}\n`)
      return
    }
    if (fault) failures.push(fault)
  }
  sayFailed('there is no browser for the tests that need one', failures.join('\n'), [
    'install Chromium and put it on PATH as "chromium"',
    'npm run check and npm run unit work without one',
  ])
}

function fromSystem() {
  const executablePath =
    usual.find(isProgram) ??
    ['chromium', 'chromium-browser', 'google-chrome'].map(onPath).find(Boolean)
  return { executablePath }
}

function fromDebian() {
  if (!canInstall()) return {}
  const why = install(['chromium', 'fonts-dejavu-core'])
  return why ? { why } : { executablePath: onPath('chromium') }
}

async function fromNpm() {
  try {
    const { default: chromium } = await import('@sparticuz/chromium')
    return { executablePath: await chromium.executablePath() }
  } catch (fault) {
    return { why: `the browser from npm could not be unpacked: ${fault.message}` }
  }
}

/** A browser that is there but cannot start (missing libraries) is no browser. */
function doesNotRun(executablePath) {
  const run = spawnSync(executablePath, ['--version'], { encoding: 'utf8', timeout: 30_000 })
  if (run.status === 0) return undefined
  const why = run.error?.message ?? (run.stderr.trim().split('\n').at(-1) || `status ${run.status}`)
  return `${executablePath} does not start: ${why}`
}
