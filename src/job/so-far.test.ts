import { describe, expect, it } from 'vitest'
import { readJobObject } from './read-job.ts'
import { computeJob } from './compute-job.ts'
import { routeSoFar } from './so-far.ts'

const stack = {
  do: 'stack',
  sheets: [
    { steel: '1095', thickness: '3 mm' },
    { steel: '15N20', thickness: '1.5 mm' },
  ],
  repeat: 3,
  width: '40 mm',
  length: '?',
}

function jobWith(steps: readonly unknown[], more: object = {}) {
  const read = readJobObject({ billetwright: 1, name: 'x', bars: { main: steps }, ...more })
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.ok
}

describe('a job that is being written', () => {
  it('has no plan, and yet shows the steps that stand', () => {
    const job = jobWith([stack, { do: 'weld' }])
    expect(computeJob(job).problems).toBeDefined()
    const { steps, problems } = routeSoFar(job, { 'bars.main[0].length': 0.12 })
    expect(problems).toEqual([])
    expect(steps.map((s) => s.operation.name)).toEqual(['stack', 'weld'])
    expect(steps[0].step.after.size).toEqual({ length: 0.12, width: 0.04, height: 0.0135 })
  })

  it('tells of no size that was only tried: what the piece asks for, once, and nothing while there is no piece', () => {
    const steps = [{ ...stack, repeat: 1 }, { do: 'tack' }, { do: 'weld' }]
    const begun = [...steps, { do: 'draw out', height: '?' }]
    // 3 + 1.5 mm closed by 15 % is 3.825 mm: less than a spine of 4 mm.
    const job = jobWith(begun, { piece: { kind: 'full-tang-knife' } })
    const problems = computeJob(job).problems ?? []
    expect(problems).toMatchObject([
      {
        at: 'bars.main[3].height',
        what: 'the bar is 3.825 mm thick already; it cannot be drawn to 4 mm',
      },
    ])
    expect(problems[0].try.join()).toContain('larger stack')
    const soFar = routeSoFar(job)
    expect(soFar.steps).toHaveLength(3)
    expect(soFar.problems).toEqual([])
    expect(computeJob(jobWith(begun)).problems?.map(({ at }) => at)).toEqual([
      'bars.main[0].length',
    ])
  })

  it('stops where a step cannot be done, and says why at its place', () => {
    const job = jobWith([
      stack,
      { do: 'weld' },
      { do: 'draw out', width: '500 mm', height: '2 mm' },
    ])
    const { steps, problems } = routeSoFar(job, { 'bars.main[0].length': 0.1 })
    if (steps.length < 3) expect(problems[0].at).toMatch(/^bars\.main\[2\]/)
    expect(steps.length + (problems.length > 0 ? 1 : 0)).toBe(3)
  })

  it('gives the very steps of the plan where there is one', () => {
    const job = jobWith([stack, { do: 'weld' }], {
      piece: { kind: 'bar', length: '100 mm', width: '30 mm', thickness: '8 mm' },
    })
    const planned = computeJob(job)
    if (!planned.ok) throw new Error(JSON.stringify(planned.problems))
    const solved = Object.fromEntries(
      planned.ok.plan.solved.map((s) => [`${s.at}.${s.name}`, s.value]),
    )
    expect(routeSoFar(job, solved).steps.map((s) => s.step)).toEqual(
      planned.ok.plan.steps.map((s) => s.step),
    )
  })
})
