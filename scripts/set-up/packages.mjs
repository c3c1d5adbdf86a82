// Packages, exactly as the lock file has them.
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { basename } from 'node:path'
import { at, say, sayFailed } from './place.mjs'

const stampPath = at('.setup/packages')
const installedPath = at('node_modules/.package-lock.json')

/** Installs what is stale. Says why and returns false when that cannot be done. */
export function installPackages() {
  const lockText = readFileSync(at('package-lock.json'))
  const hash = createHash('sha256').update(lockText).digest('hex')
  const stamp = `${hash} ${process.platform}-${process.arch}\n`
  if (existsSync(installedPath) && existsSync(stampPath)) {
    if (readFileSync(stampPath, 'utf8') === stamp) return true
  }
  if (!isInstalled(JSON.parse(lockText))) {
    rmSync(stampPath, { force: true })
    say('Installing the packages of package-lock.json (about a minute) …')
    if (!runNpmCi()) return false
  }
  writeFileSync(stampPath, stamp)
  return true
}

/** Whether what is installed is what the lock file asks for, package by package. */
function isInstalled(wanted) {
  if (!existsSync(installedPath)) return false
  const have = JSON.parse(readFileSync(installedPath, 'utf8')).packages
  return Object.entries(wanted.packages).every(([path, entry]) => {
    if (path === '' || entry.optional || entry.peer) return true
    return have[path]?.version === entry.version && have[path]?.integrity === entry.integrity
  })
}

function runNpmCi() {
  const asked = process.env.npm_execpath
  const [command, ...before] =
    asked && basename(asked) === 'npm-cli.js'
      ? [process.env.npm_node_execpath ?? process.execPath, asked]
      : [process.platform === 'win32' ? 'npm.cmd' : 'npm']
  const args = ['ci', '--include=dev', '--include=optional', '--no-audit', '--no-fund']
  const run = spawnSync(command, [...before, ...args, '--loglevel=error'], {
    cwd: at('.'),
    encoding: 'utf8',
    shell: command.endsWith('.cmd'),
    maxBuffer: 1 << 26,
  })
  if (run.status === 0) return true
  const output = `${run.stderr ?? ''}${run.stdout ?? ''}`.replace(/^npm error ?/gm, '')
  const why = run.error
    ? run.error.message
    : output.trim() || `npm ended with ${run.signal ?? run.status}`
  sayFailed('the packages could not be installed by "npm ci"', why, curesFor(why))
  return false
}

function curesFor(why) {
  if (/ENOENT.*npm|spawn npm/.test(why)) return ['install npm, or put it on PATH']
  if (/ENOSPC/.test(why)) return ['free about 1 GB of disk']
  if (/EACCES|EPERM/.test(why)) return ['make this folder writable for you']
  if (/in sync|EUSAGE/.test(why)) return ['npm install, and commit the new package-lock.json']
  if (/ENOTFOUND|EAI_AGAIN|ECONN|ETIMEDOUT|network/.test(why))
    return ['check the connection and the registry: npm config get registry', 'run it again']
  return ['run it again', 'npm ci --loglevel=verbose shows every step']
}
