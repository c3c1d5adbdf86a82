import { describe, expect, it } from 'vitest'
import { massOf } from '#billet'
import { pieceKinds } from '#piece'
import { computeJob } from './compute-job.ts'
import { readJobObject } from './read-job.ts'
import { starterJob } from './starter-job.ts'

const units = { metric: /^[\d.]+ mm$/, inch: /^[\d/ ]+ in$/ }

describe('a starter job of every kind', () => {
  it.each(
    pieceKinds.flatMap(({ name }) => (['metric', 'inch'] as const).map((s) => [name, s] as const)),
  )('%s works out from stack to etch without a warning, in %s sizes', (name, system) => {
    const written = starterJob(name, system).ok ?? {}
    const { kind: _, ...sizes } = written.piece as Record<string, string>
    expect(Object.keys(sizes).length).toBeGreaterThan(1)
    for (const size of Object.values(sizes)) expect(size).toMatch(units[system])
    expect(JSON.stringify(written.bars)).not.toMatch(system === 'inch' ? / mm"/ : / in"/)

    const job = readJobObject(written)
    expect(job.problems).toBeUndefined()
    const computed = job.ok && computeJob(job.ok)
    expect(computed?.problems).toBeUndefined()
    const { plan, solid, finishedMass, stackMass, densities, warnings } = computed!.ok!
    expect(warnings.map(({ at, what }) => `${at}: ${what}`)).toEqual([])
    expect(plan.steps.at(-1)?.operation.name).toBe('etch')
    expect(plan.finished.size.length).toBeCloseTo(solid?.size.length ?? 0, 5)
    expect(finishedMass / (stackMass ?? 1)).toBeGreaterThan(0.005)

    const done = plan.steps.find((s) => s.operation.name === 'grind to shape')!
    const ground = done.step.losses.flatMap((l) => Object.values(l.masses)).reduce((a, b) => a + b)
    const share = ground / massOf(done.before[0], densities)
    // A ring out of a slice is three quarters chips (worked: 5309 mm³ for 1351); nothing else is.
    expect(share).toBeLessThan(solid?.blank.bent ? 0.85 : 0.55)
  })
  it('begins a plaque in sizes one would name, in millimetres and in inches', () => {
    const sizes = (system: 'metric' | 'inch') => starterJob('plaque', system).ok?.piece
    expect(sizes('metric')).toMatchObject({ length: '125 mm', width: '65 mm', thickness: '6 mm' })
    expect(sizes('inch')).toMatchObject({ length: '5 in', width: '2 1/2 in', thickness: '1/4 in' })
  })
  it('an unknown kind names the nearest', () => {
    expect(starterJob('plack').problems?.[0].try.join()).toContain('plaque')
  })
})
