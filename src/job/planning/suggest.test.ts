import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { readJob } from '../read-job.ts'
import { suggestForJob } from './suggest.ts'

const text = readFileSync(new URL('../../../jobs/rigging-knife.json', import.meta.url), 'utf8')
const knife = readJob(text)

it.each(['ladder', 'twist', 'feather'])(
  'the rigging knife can be planned in another pattern: %s',
  (pattern) => {
    if (!knife.ok) throw new Error(JSON.stringify(knife.problems))
    const set = suggestForJob(knife.ok, { pattern })
    expect(set.problems).toBeUndefined()
    expect(set.ok?.routes.length).toBeGreaterThan(0)
    for (const { figures } of set.ok?.routes ?? []) expect(figures.heats).toBeGreaterThan(0)
  },
)
