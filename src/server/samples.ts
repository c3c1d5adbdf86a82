import { existsSync, readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Sample } from '#store'

const folder = fileURLToPath(new URL('../../jobs/', import.meta.url))

/** The sample every first visit opens on. */
export const FIRST_SAMPLE = 'builders-plate'

/** The sample jobs that came with the program; the one to open on last, so that it is the newest. */
export function readSamples(from = folder): Sample[] {
  if (!existsSync(from)) return []
  return readdirSync(from)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => ({
      id: name.replace(/\.json$/, ''),
      job: JSON.parse(readFileSync(join(from, name), 'utf8')) as Record<string, unknown>,
    }))
    .sort((a, b) => Number(a.id === FIRST_SAMPLE) - Number(b.id === FIRST_SAMPLE))
}
