// Runs upset.edp and ring.edp with FreeFem++ and writes what a reader needs as JSON.
//   node run-upset.mjs cases OUT.json    the cases the test compares with the pressing laws
//   node run-upset.mjs quick OUT.json    two of them, on a coarser mesh
//   node run-upset.mjs grid OUT.json     the table of side bulge that barrel.ts reads between
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const here = dirname(fileURLToPath(import.meta.url))

/** Runs a script with the options given and reads the JSON it writes. */
function solve(script, options) {
  const folder = mkdtempSync(join(tmpdir(), 'upset-'))
  const out = join(folder, 'out.json')
  const words = Object.entries({ ...options, out }).flatMap(([key, value]) => [
    `-${key}`,
    String(value),
  ])
  const run = spawnSync('FreeFem++', ['-nw', '-v', '0', join(here, script), ...words], {
    encoding: 'utf8',
    // Its matrices are small: more threads only wait for one another.
    env: { ...process.env, OMP_NUM_THREADS: '1', OPENBLAS_NUM_THREADS: '1' },
  })
  if (run.error || run.status !== 0) throw new Error(run.error?.message ?? run.stdout)
  const result = JSON.parse(readFileSync(out, 'utf8'))
  rmSync(folder, { recursive: true })
  return result
}

/** Half-width = mean (1 + b (1 - 3 z²)/2), least squares; the misfit as a share of the bulge. */
function fitBarrel(side) {
  const shape = side.map(([z]) => (1 - 3 * z * z) / 2)
  const width = side.map(([, w]) => w)
  const n = side.length
  const sum = (values) => values.reduce((a, b) => a + b, 0)
  const [s1, s2] = [sum(shape), sum(shape.map((x) => x * x))]
  const [w1, w2] = [sum(width), sum(width.map((w, i) => w * shape[i]))]
  const slope = (n * w2 - s1 * w1) / (n * s2 - s1 * s1)
  const mean = (w1 - slope * s1) / n
  const misfit = Math.sqrt(sum(width.map((w, i) => (w - mean - slope * shape[i]) ** 2)) / n)
  const bulge = Math.max(...width) - Math.min(...width)
  return { mean, b: slope / mean, misfit: bulge > 1e-9 ? misfit / bulge : 0 }
}

function upset({ ratio, friction, cells, steps = 5, reduction = 0.2, rate = 0.1 }) {
  const result = solve('upset.edp', { ratio, friction, rate, reduction, steps, cells })
  const round = (x) => Number(x.toPrecision(5))
  return {
    ratio,
    friction,
    rateExponent: rate,
    cells,
    states: result.steps.map((step) => {
      const { mean, b, misfit } = fitBarrel(step.side)
      return {
        height: round(step.height),
        contact: round(step.contact),
        pressure: round(step.pressure),
        meanHalfWidth: round(mean),
        b: round(Math.abs(b) < 1e-9 ? 0 : b),
        misfit: round(misfit),
        middle: round(step.side[0][1]),
      }
    }),
  }
}

const [what, out] = process.argv.slice(2)
if (what === 'cases' || what === 'quick') {
  const all = [
    { ratio: 1, friction: 1, cells: 16 },
    { ratio: 3, friction: 1, cells: 16 },
    { ratio: 2, friction: 0.1, cells: 16 },
    { ratio: 1.5, friction: 0.8, cells: 16 },
    { ratio: 0.6, friction: 0.45, cells: 16 },
  ]
  const cases = (
    what === 'cases' ? all : [all[0], all[2]].map((c) => ({ ...c, cells: 12, steps: 3 }))
  ).map(upset)
  const frictions = what === 'cases' ? [0.05, 0.1, 0.2, 0.27, 0.4] : [0.27]
  const rings = frictions.map((friction) => solve('ring.edp', { friction }))
  writeFileSync(out, JSON.stringify({ program: 'FreeFem++', cases, rings }, null, 2) + '\n')
} else if (what === 'grid') {
  const ratios = [0.35, 0.5, 0.7, 1, 1.4, 2, 3, 4]
  const frictions = [0.1, 0.3, 0.6, 1]
  const bulgePerStrain = ratios.map((ratio) =>
    frictions.map((friction) => {
      const { states } = upset({ ratio, friction, cells: 14 })
      const last = states.at(-1)
      return Number((last.b / Math.log(2 / last.height)).toFixed(4))
    }),
  )
  writeFileSync(
    out,
    JSON.stringify({ program: 'FreeFem++', ratios, frictions, bulgePerStrain }, null, 2) + '\n',
  )
} else {
  throw new Error('say: cases or grid, then the file to write')
}
