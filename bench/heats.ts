/**
 * Carbon through every heat of a plan: 169 layers and 12 heats and more, 24 cells a pair of layers;
 * and the cost by number of repeats, which should stay flat. Targets stand beside the figures. Run on
 * a quiet machine: `node bench/heats.ts`.
 */
import { readFileSync } from 'node:fs'
import { cpus } from 'node:os'
import { type Computed, computeJob, readJob, readJobObject, treatJob } from '#job'
import { compositionsFor } from '../src/job/compute-job.ts'
import { moveCarbon } from '../src/heats/metal/carbon-in-pack.ts'
import { followPlan } from '../src/heats/follow-plan.ts'
import { CELLS, type Ply } from '../src/heats/metal/metal.ts'
import { smithyOf } from '../src/job/smithy.ts'

function best(runs: number, once: () => void): number {
  let least = Infinity
  for (let i = 0; i < runs; i++) {
    const start = performance.now()
    once()
    least = Math.min(least, performance.now() - start)
  }
  return least
}

function compute(name: string): Computed {
  const text = readFileSync(new URL(`../jobs/${name}.json`, import.meta.url), 'utf8')
  const job = readJob(text)
  const computed = job.problems ? job : computeJob(job.ok)
  if (computed.problems) throw new Error(`${name}: ${computed.problems[0]?.what}`)
  return computed.ok
}

console.log(`Node ${process.version}, ${cpus()[0]?.model}, ${cpus().length} threads\n`)
console.log('job                  sheets  heats   follow   whole (ms)')
for (const name of ['builders-plate', 'galley-knife', 'presentation-sword', 'rigging-knife']) {
  const computed = compute(name)
  const { job, plan, densities, solid } = computed
  const compositions = compositionsFor(job.steels)
  const smithy = smithyOf(job, densities, compositions, solid)
  const follow = () => followPlan(plan, smithy, (steel) => compositions[steel] ?? {})
  const followed = follow()
  const heats = followed.steps.reduce((n, s) => n + s.heats.reduce((m, h) => m + h.times, 0), 0)
  const sheets = Math.max(...followed.steps.flatMap((s) => s.metal.map((pack) => pack.length)))
  const ms = best(12, follow)
  const whole = best(6, () => treatJob(computed))
  console.log(
    `${name.padEnd(20)} ${String(sheets).padStart(6)} ${String(heats).padStart(6)} ${ms.toFixed(1).padStart(8)} ${whole.toFixed(1).padStart(8)}   target 100`,
  )
}

// 13 sheets restacked thirteen times over: 169 layers laid; the same with a third restack.
const steels = { plain: { C: 0.95, Mn: 0.4, Si: 0.2 }, nickel: { C: 0.75, Mn: 0.35, Ni: 2 } }
const compositionOf = (steel: string) => steels[steel as keyof typeof steels]
const ply = (i: number): Ply => {
  const steel = i % 2 === 0 ? 'plain' : 'nickel'
  const carbon = new Array<number>(CELLS).fill(steels[steel].C)
  return { steel, bar: 'bar', thickness: 2e-4, carbon }
}
const heating = {
  points: Array.from({ length: 12 }, (_, i) =>
    [300, 600, 700, 720].map((s, k) => ({
      time: i * 720 + s,
      temperature: [1423.15, 1423.15, 1123.15, 900][k]!,
    })),
  ).flat(),
  thinning: Array.from({ length: 12 }, (_, i) => ({ time: i * 720 + 650, factor: 0.85 })),
}
console.log('\n12 heats of one pack, 24 cells a pair; target 100 ms at 169 layers, flat beyond')
for (const n of [15, 169, 1521]) {
  const pack = Array.from({ length: n }, (_, i) => ply(i))
  const ms = best(12, () => moveCarbon(pack, heating, compositionOf))
  console.log(`${String(n).padStart(6)} layers  ${ms.toFixed(1).padStart(6)} ms`)
}

/** A route of twelve heats that ends with so many layers: restacked by thirteen and by nine. */
function route(pieces: readonly number[]) {
  const restack = (n: number) => [
    { do: 'restack', pieces: n, crop: '2 mm', cleanUp: '0.05 mm' },
    { do: 'weld', close: '60 %', heats: 3 },
    { do: 'draw out', height: '16 mm', width: '40 mm', heats: 3 },
  ]
  const stack = {
    do: 'stack',
    sheets: [
      { steel: '1095', thickness: '2 mm' },
      { steel: '15N20', thickness: '1 mm' },
    ],
    repeat: 7,
    closeWith: '1095',
    width: '40 mm',
    length: '400 mm',
  }
  const first = [stack, { do: 'weld', close: '70 %', heats: 3 }]
  const drawn = { do: 'draw out', height: '16 mm', width: '40 mm', heats: 3 }
  return {
    billetwright: 1,
    name: 'bench',
    bars: { bar: [...first, drawn, ...pieces.flatMap(restack)] },
    finish: 'bar',
  }
}

console.log('\nwhole routes, 6 heats a stack')
for (const pieces of [[], [12], [12, 9]]) {
  const job = readJobObject(route(pieces))
  const computed = job.problems ? job : computeJob(job.ok)
  if (computed.problems) {
    console.log(
      `  ${pieces.join(' × ')}: ${computed.problems[0]?.what}: ${computed.problems[0]?.why}`,
    )
    continue
  }
  const treated = treatJob(computed.ok)
  const layers = treated.layers.reduce((sum, l) => sum + l.count, 0)
  const ms = best(6, () => treatJob(computed.ok))
  const heats = treated.heats.reduce((sum, h) => sum + h.times, 0)
  console.log(
    `${String(layers).padStart(6)} layers, ${heats} heats  ${ms.toFixed(1).padStart(6)} ms`,
  )
}
