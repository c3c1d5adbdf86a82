import { describe, expect, it } from 'vitest'
import { pieceKinds } from '#piece'
import { computeJob } from './compute-job.ts'
import { readJobObject } from './read-job.ts'
import { starterJob } from './starter-job.ts'

describe('a starter job of every kind', () => {
  it.each(pieceKinds.map((kind) => kind.name))('%s works out from stack to etch', (name) => {
    const starter = starterJob(name)
    expect(starter.problems).toBeUndefined()
    const job = readJobObject(starter.ok ?? {})
    expect(job.problems).toBeUndefined()
    const computed = job.ok && computeJob(job.ok)
    expect(computed?.problems).toBeUndefined()
    const { plan, solid, finishedMass, stackMass } = computed?.ok ?? {}
    expect(plan?.steps.at(-1)?.operation.name).toBe('etch')
    expect(plan?.finished.size.length).toBeCloseTo(solid?.size.length ?? 0, 5)
    expect((finishedMass ?? 0) / (stackMass ?? 1)).toBeGreaterThan(0.005)
  })
  it('an unknown kind names the nearest', () => {
    expect(starterJob('plack').problems?.[0].try.join()).toContain('plaque')
  })
})
