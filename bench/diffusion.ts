/**
 * Carbon diffusion: against SciPy's fastest stiff solver at equal error on a case with a live
 * gradient (performance target P9), and the cost of a whole route by number of layers. Targets
 * stand beside the figures. Run on a quiet machine: `node bench/diffusion.ts`.
 */
import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { cpus } from 'node:os'
import { fileURLToPath } from 'node:url'
import { type SteelLayer, evolveCarbon } from '#metallurgy'
import { type FluxLaw, type Spell, march } from '../src/metallurgy/march/march.ts'

const cells = 200
const width = 8e-3
const zero = 273.15

// D = .47 exp(-1.6 C) exp(-(37000 - 6600 C)/1.987 T) cm²/s (from memory): a law quick to write twice.
const law: FluxLaw = {
  fill(c, t, p, dp, k, dk) {
    const steep = -1.6 + 6600 / (1.987 * t)
    const front = 0.47e-4 * Math.exp(-37000 / (1.987 * t))
    for (let i = 0; i < c.length; i++) {
      const d = front * Math.exp(steep * c[i]!)
      p[i] = c[i]!
      dp[i] = 1
      k[i] = d
      dk[i] = steep * d
    }
  },
}

const spells: Spell[] = Array.from({ length: 10 }, (_, heat) => {
  const stretch = 0.8 ** heat
  return [
    { seconds: 120, from: 800 + zero, to: 1150 + zero, stretch },
    { seconds: 300, from: 1150 + zero, to: 1150 + zero, stretch },
    { seconds: 180, from: 1150 + zero, to: 850 + zero, stretch },
  ]
}).flat()

function solve(tolerance: number) {
  const value = Float64Array.from({ length: cells }, (_, i) => (i < cells / 2 ? 1 : 0.1))
  const row = {
    width: new Float64Array(cells).fill(width / cells),
    value,
    law,
    ends: 'sealed' as const,
  }
  const report = march(row, spells, tolerance)
  return { value, steps: report.steps }
}

function best(runs: number, once: () => void): number {
  let least = Infinity
  for (let i = 0; i < runs; i++) {
    const start = performance.now()
    once()
    least = Math.min(least, performance.now() - start)
  }
  return least
}

const exact = solve(1e-10).value
const total = exact.reduce((a, b) => a + b, 0)
const ours = [
  1e-2, 6e-3, 4e-3, 3e-3, 2e-3, 1.5e-3, 1e-3, 5e-4, 3e-4, 1e-4, 5e-5, 3e-5, 1e-5, 1e-6,
].map((tolerance) => {
  const { value, steps } = solve(tolerance)
  const error = Math.max(...value.map((c, i) => Math.abs(c - exact[i]!)))
  for (let i = 0; i < 20; i++) solve(tolerance)
  const ms = best(40, () => solve(tolerance))
  const drift = Math.abs(value.reduce((a, b) => a + b, 0) / (cells * 0.55) - 1)
  return { tolerance, steps, ms, error, drift }
})

console.log(`Node ${process.version}, ${cpus()[0]?.model}, ${cpus().length} threads\n`)
console.log('ours      tolerance  steps     ms     error   drift')
for (const o of ours)
  console.log(
    `          ${o.tolerance.toExponential(1)}  ${String(o.steps).padStart(6)} ${o.ms.toFixed(2).padStart(7)}  ${o.error.toExponential(1)}  ${o.drift.toExponential(0)}`,
  )
console.log(
  `mass of the exact run off by ${Math.abs(total / (cells * 0.55) - 1).toExponential(1)}; target 1e-13`,
)

interface Theirs {
  readonly method: string
  readonly rtol: number
  readonly ms: number
  readonly error: number
}

function scipy(): Theirs[] | undefined {
  const python = '/usr/bin/python3'
  if (!existsSync(python)) return undefined
  const script = fileURLToPath(new URL('./diffusion-scipy.py', import.meta.url))
  const input = JSON.stringify({ cells, width, spells, reference: [...exact] })
  const ran = spawnSync(python, [script], { input, encoding: 'utf8', maxBuffer: 1e8 })
  return ran.status === 0 ? (JSON.parse(ran.stdout) as Theirs[]) : undefined
}

/** Fastest choice whose error is no worse. */
const fastest = <T extends { ms: number; error: number }>(all: readonly T[], error: number) =>
  all.filter((a) => a.error <= error).toSorted((a, b) => a.ms - b.ms)[0]

const theirs = scipy()
if (theirs === undefined) console.log('SciPy                not available')
else {
  for (const t of theirs)
    console.log(
      `SciPy ${t.method.padEnd(6)} rtol ${t.rtol.toExponential(0)} ${t.ms.toFixed(1).padStart(7)} ms  ${t.error.toExponential(1)}`,
    )
  for (const [error, target] of [
    [2.5e-4, 20],
    [4e-6, 5],
  ] as const) {
    // SciPy gets the benefit of half as much error again, so that no near miss is held against it.
    const a = fastest(theirs, error * 1.5)
    const b = fastest(ours, error)
    if (a && b)
      console.log(
        `P9 at error ${error.toExponential(1)}: ${(a.ms / b.ms).toFixed(1)} times faster; target ${target}`,
      )
  }
}

const plain: SteelLayer = { composition: { C: 0.95, Mn: 0.4, Si: 0.2 }, thickness: 2e-4 }
const nickel: SteelLayer = { composition: { C: 0.75, Mn: 0.35, Si: 0.25, Ni: 2 }, thickness: 2e-4 }
const points = Array.from({ length: 12 }, (_, i) => [
  { time: i * 720, temperature: 900 },
  { time: i * 720 + 300, temperature: 1150 + zero },
  { time: i * 720 + 600, temperature: 1150 + zero },
  { time: i * 720 + 700, temperature: 850 + zero },
]).flat()
const thinning = Array.from({ length: 12 }, (_, i) => ({ time: i * 720 + 650, factor: 0.85 }))
console.log(
  '\n12 heats, 24 cells a pair, carbon by activity; target 100 ms at 169 layers, flat beyond',
)
for (const n of [15, 169, 1521]) {
  const stack = Array.from({ length: n }, (_, i) => (i % 2 === 0 ? plain : nickel))
  const run = () => evolveCarbon(stack, { points, thinning })
  const first = best(1, run)
  const ms = best(10, run)
  const { reduction, drift } = run()
  console.log(
    `${String(n).padStart(6)} layers  ${ms.toFixed(1).padStart(6)} ms (first ${first.toFixed(0)})  ${reduction.kind}, ${reduction.nodes} cells, drift ${drift.toExponential(0)}`,
  )
}
const piece = Array.from({ length: 13 }, (_, i) => (i % 2 === 0 ? plain : nickel))
for (const pieces of [1, 13, 117]) {
  const stack = Array.from({ length: pieces }, (_, k) =>
    k % 2 === 0 ? piece : piece.toReversed(),
  ).flat()
  const run = () => evolveCarbon(stack, { points, thinning })
  const ms = best(10, run)
  console.log(
    `${String(stack.length).padStart(6)} layers in ${pieces} restacked pieces  ${ms.toFixed(1)} ms  ${run().reduction.nodes} cells`,
  )
}
