import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { isSourceKey } from '#sources'

const standings = ['read', 'read secondary', 'computed', 'from memory', 'common practice']

interface Entry {
  readonly source?: string
  readonly standing?: string
}

/** Every object in a file of reference figures that names a source. */
function entries(value: unknown): Entry[] {
  if (value === null || typeof value !== 'object') return []
  const own = 'source' in value ? [value as Entry] : []
  return [...own, ...Object.values(value).flatMap(entries)]
}

test('every published figure names a source of the bibliography, and its standing', () => {
  const here = new URL('./', import.meta.url)
  const files = readdirSync(here, { recursive: true }).filter(
    (f) => String(f).endsWith('.json') && !String(f).endsWith('independent.json'),
  )
  expect(files.length).toBeGreaterThanOrEqual(11)
  for (const file of files) {
    const found = entries(JSON.parse(readFileSync(new URL(String(file), here), 'utf8')))
    expect(found.length, String(file)).toBeGreaterThan(0)
    for (const { source, standing } of found) {
      expect(isSourceKey(source ?? ''), `${String(file)}: ${source}`).toBe(true)
      expect(standings, String(file)).toContain(standing)
    }
  }
})
