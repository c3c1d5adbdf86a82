/**
 * Prints what the docs take from the code: `docs/reference/` from the declarations and the table of
 * rooms from `rooms.json`. With `--check` it changes nothing and fails if a page is out of date.
 */
import { existsSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { fileURLToPath } from 'node:url'
import { referencePages } from './reference/pages.ts'
import { withRoomsTable } from './reference/rooms-table.ts'

const at = (path: string) => fileURLToPath(new URL(`../${path}`, import.meta.url))
const folder = 'docs/reference'

function read(path: string): string | undefined {
  try {
    return readFileSync(at(path), 'utf8')
  } catch {
    return undefined
  }
}

const { rooms } = JSON.parse(readFileSync(at('rooms.json'), 'utf8'))
const architecture = readFileSync(at('docs/architecture.md'), 'utf8')
const pages = new Map([['docs/architecture.md', withRoomsTable(architecture, rooms)]])
for (const [name, text] of referencePages()) pages.set(`${folder}/${name}`, text)

const lying = existsSync(at(folder)) ? readdirSync(at(folder)) : []
const gone = lying.filter((name) => !pages.has(`${folder}/${name}`))
const stale = [...pages].filter(([path, text]) => read(path) !== text)

if (process.argv.includes('--check')) {
  for (const [path] of stale) console.error(`${path}\n  differs from what the code says`)
  for (const name of gone) console.error(`${folder}/${name}\n  is no longer printed`)
  if (stale.length + gone.length > 0) {
    console.error('  try: npm run reference, and look at the difference')
    process.exitCode = 1
  }
} else {
  for (const [path, text] of stale) {
    mkdirSync(dirname(at(path)), { recursive: true })
    writeFileSync(at(path), text)
  }
  for (const name of gone) rmSync(at(`${folder}/${name}`))
}
