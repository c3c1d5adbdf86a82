// Where things are, and how set-up speaks: plain lines, nothing while all is well.
import { accessSync, constants } from 'node:fs'
import { delimiter, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../../', import.meta.url))

/** A path in the checkout. */
export function at(path) {
  return join(root, path)
}

export function say(text) {
  process.stderr.write(`${text}\n`)
}

/** What failed, why, and what to try; in that order, one a line. */
export function sayFailed(what, why, cures) {
  say(`set-up: ${what}`)
  const lines = why.split('\n').filter((line) => line.trim() !== '')
  for (const line of lines.slice(0, 12)) say(`  ${line}`)
  if (lines.length > 12) say('  …')
  for (const cure of cures) say(`  try: ${cure}`)
}

/** The program's path, if it is on PATH. */
export function onPath(name) {
  for (const folder of (process.env.PATH ?? '').split(delimiter)) {
    const path = join(folder, name)
    if (folder !== '' && isProgram(path)) return path
  }
  return undefined
}

export function isProgram(path) {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}
