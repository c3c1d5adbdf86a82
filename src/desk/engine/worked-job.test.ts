import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { computeJob, patternOf, readJob, recordPlan } from '#job'
import { laySteel } from './lay-steel.ts'
import type { Written } from './messages.ts'
import { withValue } from './places.ts'
import { workOut } from './work-out.ts'
import { workedJob } from './worked-job.ts'

const text = readFileSync(new URL('../../../jobs/builders-plate.json', import.meta.url), 'utf8')
const plate = JSON.parse(text) as Written
const edited = withValue(plate, ['bars', 'plate', 4, 'height'], '16.1 mm')

/** A job as the library works it out, nothing of any other job before it. */
function afresh(written: Written) {
  const read = readJob(JSON.stringify(written))
  const computed = read.ok && computeJob(read.ok)
  if (!computed?.ok) throw new Error('the job does not work out')
  return computed.ok
}

describe('a job worked out once', () => {
  it('is after other jobs what it is afresh, byte for byte, card and metal', () => {
    const told = (written: Written) => {
      const { rows, totals } = workOut(written, {})
      return JSON.stringify({ rows, totals })
    }
    const first = told(plate)
    const other = told(edited)
    expect(other).not.toBe(first)
    // A job asked for again, after another and with its metal laid in between.
    const metal = laySteel(edited, { bar: 'plate', index: 5 }, undefined, 'mesh')
    expect(told(plate)).toBe(first)
    const { computed } = workedJob(edited)
    const own = afresh(edited)
    expect(JSON.stringify(computed && recordPlan(computed))).toBe(JSON.stringify(recordPlan(own)))
    expect(JSON.stringify(metal?.origin)).toBe(
      JSON.stringify(patternOf(own, { bar: 'plate', index: 5 })?.origin),
    )
  })
})
