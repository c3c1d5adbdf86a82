/**
 * The planner: a job planned again after an edit (P13), the search (P10, and its growth with restacks
 * and sections), `suggest` of every job, and the likely range of the plate (P14). Targets stand beside
 * the figures. Run on a quiet machine: `node bench/planner.ts`.
 */
import { readFileSync } from 'node:fs'
import { availableParallelism, cpus } from 'node:os'
import { type Job, computeJob, readJob, suggestForJob } from '#job'
import { drawOnAllCores } from '../src/cli/draw-crew.ts'
import { smithyFor } from '../src/job/planning/smithy-for.ts'
import { type PlannedStep, planRoute } from '#planner'
import type { Smithy } from '#operations'
import { Shelf, choicesOf, limitsOf, sectionsFor } from '../src/planner/search/choices.ts'
import { headsOf } from '../src/planner/search/head.ts'
import type { Passage } from '../src/planner/search/passages.ts'
import { type Choices, fronts } from '../src/planner/search/states.ts'

function best(runs: number, once: () => void): number {
  let least = Infinity
  for (let i = 0; i < runs; i++) {
    const start = performance.now()
    once()
    least = Math.min(least, performance.now() - start)
  }
  return least
}

function jobNamed(name: string): Job {
  const job = readJob(readFileSync(new URL(`../jobs/${name}.json`, import.meta.url), 'utf8'))
  if (job.problems) throw new Error(`${name}: ${job.problems[0]?.what}`)
  return job.ok
}

/** The job with the first drawing a hair thinner each time: an edit that no cache has seen. */
function edited(job: Job, by: number): Job {
  const { bars } = job.route
  const changed = Object.fromEntries(
    Object.entries(bars).map(([bar, steps]) => [
      bar,
      steps.map((step): PlannedStep => {
        const { height } = step.values
        if (step.operation.name !== 'draw out' || typeof height !== 'number') return step
        return { ...step, values: { ...step.values, height: height * (1 + by) } }
      }),
    ]),
  )
  return { ...job, route: { ...job.route, bars: changed } }
}

const jobs = ['builders-plate', 'galley-knife', 'rigging-knife', 'presentation-sword']
console.log(
  `Node ${process.version}, ${cpus()[0]?.model}, ${availableParallelism()} threads, best of several runs\n`,
)

console.log(
  'a job planned again after an edit     route only    from the last plan    with force and checks',
)
for (const name of jobs) {
  const job = jobNamed(name)
  const smithy = smithyFor(job)
  if (smithy.problems) throw new Error(name)
  let n = 0
  const route = best(25, () => planRoute(edited(job, 1e-7 * ++n).route, smithy.ok))
  const last = planRoute(job.route, smithy.ok).ok?.solved ?? []
  const start = Object.fromEntries(last.map((s) => [`${s.at}.${s.name}`, s.value]))
  const again = best(25, () => planRoute(edited(job, 1e-7 * ++n).route, smithy.ok, { start }))
  const whole = best(15, () => computeJob(edited(job, 1e-7 * ++n), { start }))
  console.log(
    `  ${name.padEnd(34)}${route.toFixed(1).padStart(8)} ms${again.toFixed(1).padStart(14)} ms${whole.toFixed(1).padStart(18)} ms   target P13: 16`,
  )
}

console.log('\nsuggest, whole                            ms   routes')
for (const name of jobs) {
  const job = jobNamed(name)
  let routes = 0
  const ms = best(5, () => {
    routes = suggestForJob(job).ok?.routes.length ?? 0
  })
  console.log(
    `  ${name.padEnd(34)}${ms.toFixed(0).padStart(8)}${String(routes).padStart(6)}   target 500 ms`,
  )
}

const plate = jobNamed('builders-plate')
const smithy = smithyFor(plate)
const [head] = headsOf(plate.route)
if (smithy.problems || !head) throw new Error('the plate has no plain build-up')

/** The plate's own passages between so many sections. */
function world(sections: number, restacks: number, layers: number): Choices {
  const limits = limitsOf(plate.shop)
  const shelf = new Shelf(head.style, { smithy: smithy.ok as Smithy, rates: plate.rates }, 1)
  const usual = sectionsFor(head, 0.0381).slice(-sections)
  // The metal the plate asks for after its last weld, whatever the section it has then.
  const ending = (passage: Passage) => ({
    passage,
    length: 0.0001 / (passage.to.height * passage.to.width),
    heats: 9,
    hands: 20_000,
  })
  return { ...choicesOf(usual, shelf, ending, layers, limits), restacks }
}

/** Ways the states stand for: choices of pieces and section at every restack within the layers. */
function waysIn({ sections, pieces, restacks, layers }: Choices): number {
  let level = new Map<number, number>([[1, 1]])
  let ways = 0
  for (let r = 0; r < restacks; r++) {
    const next = new Map<number, number>()
    for (const [times, n] of level)
      for (const p of pieces)
        if (2 * times * p <= layers) next.set(times * p, (next.get(times * p) ?? 0) + n * sections)
    ways += [...next.values()].reduce((a, b) => a + b, 0)
    level = next
  }
  return ways
}

const STACKS = 27
console.log(
  '\nsearch: non-dominated states                ways     states       ms   million ways/s',
)
for (const [sections, restacks, layers] of [
  [8, 4, 300],
  [8, 4, 10_000],
  [4, 4, 10_000],
  [2, 4, 10_000],
  [8, 3, 10_000],
  [8, 2, 10_000],
] as const) {
  const choices = world(sections, restacks, layers)
  let states = 0
  const ms = best(3, () => {
    states = fronts(choices).reduce((sum, f) => sum + f.states.length, 0)
  })
  const ways = waysIn(choices) * STACKS
  const note = sections === 8 && restacks === 4 ? '   target P10: 300 ms, 10' : ''
  console.log(
    `  ${`${sections} sections, ${restacks} restacks, ${layers} layers`.padEnd(36)}${String(ways).padStart(12)}${String(states).padStart(10)}${ms.toFixed(0).padStart(9)}${(ways / ms / 1000).toFixed(0).padStart(12)}${note}`,
  )
}

for (const draws of [10_000, 40_000]) {
  const start = performance.now()
  const before = process.cpuUsage()
  const range = await drawOnAllCores(
    jobNamed('builders-plate'),
    draws,
    0,
    new AbortController().signal,
  )
  const seconds = (performance.now() - start) / 1000
  const { user } = process.cpuUsage(before)
  console.log(
    `\nlikely range of the plate: ${draws} makings in ${seconds.toFixed(2)} s with the threads' start, ${((user / draws) | 0).toFixed(0)} µs of processor each; short ${((range.ok?.short ?? NaN) * 100).toFixed(1)} %${draws === 10_000 ? '   target P14: 2 s on two cores' : ''}`,
  )
}
