import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import fixture from './independent.json' with { type: 'json' }
import { hold } from '../history.ts'
import { type CarbonHistory, type SteelLayer, evolveCarbon } from './evolve-carbon.ts'

const zero = 273.15
const a: SteelLayer = { composition: { C: 0.95, Mn: 0.4, Si: 0.2 }, thickness: 3e-4 }
const b: SteelLayer = { composition: { C: 0.75, Mn: 0.35, Si: 0.25, Ni: 2 }, thickness: 2e-4 }
const alternate = (n: number) => Array.from({ length: n }, (_, i) => (i % 2 === 0 ? a : b))

function route(heats: number, hot = 1150, factor = 0.8): CarbonHistory {
  const points: { time: number; temperature: number }[] = []
  const thinning: { time: number; factor: number }[] = []
  for (let i = 0; i < heats; i++) {
    const t = i * 600
    for (const [s, c] of [
      [0, 850],
      [120, hot],
      [420, hot],
      [600, 850],
    ] as const)
      points.push({ time: t + s, temperature: c + zero })
    thinning.push({ time: t + 600, factor })
  }
  return { points, thinning }
}

type Runs = Record<'route' | 'nickel' | 'silicon', number[][]>

/** The general-purpose solver, run again where it can be, else as committed. */
function independent(): Runs {
  const python = '/usr/bin/python3'
  const script = fileURLToPath(new URL('./independent.py', import.meta.url))
  if (existsSync(python)) {
    const ran = spawnSync(python, [script], { encoding: 'utf8' })
    if (ran.status === 0) return JSON.parse(ran.stdout) as Runs
  }
  return fixture
}

test('agrees with SciPy LSODA on the method of lines within 0.5 %', { timeout: 60_000 }, () => {
  const soak = (celsius: number, seconds: number) => ({ points: hold(celsius + zero, seconds) })
  const pair = (x: SteelLayer['composition'], y: SteelLayer['composition'], thickness: number) => [
    { composition: x, thickness },
    { composition: y, thickness },
  ]
  const ours = {
    route: evolveCarbon(pair({ C: 0.95 }, { C: 0.1 }, 5e-4), route(3, 1150, 0.7), {
      nodesPerLayer: 50,
    }),
    nickel: evolveCarbon(pair({ C: 0.6, Ni: 2 }, { C: 0.6 }, 1e-4), soak(1100, 600), {
      nodesPerLayer: 50,
    }),
    silicon: evolveCarbon(
      pair({ C: 0.45, Si: 3.8 }, { C: 0.45, Si: 0.5 }, 4e-3),
      soak(1050, 36000),
      {
        nodesPerLayer: 200,
      },
    ),
  }
  for (const theirs of [independent(), fixture as Runs])
    for (const name of ['route', 'nickel', 'silicon'] as const)
      theirs[name].forEach(([mean, first, last], i) => {
        const layer = ours[name].layers[i]!
        expect(Math.abs(layer.mean / mean! - 1)).toBeLessThan(0.005)
        expect(Math.abs(layer.across[0]! / first! - 1)).toBeLessThan(0.005)
        expect(Math.abs(layer.across.at(-1)! / last! - 1)).toBeLessThan(0.005)
      })
})

test('half a palindrome stands for the whole of it', () => {
  const whole = alternate(9)
  // One layer a hair thicker: no symmetry left to use.
  const uneven = whole.map((l, i) => (i === 0 ? { ...l, thickness: l.thickness * (1 + 1e-9) } : l))
  const x = evolveCarbon(whole, route(3))
  const y = evolveCarbon(uneven, route(3))
  expect(x.reduction.kind).toBe('half')
  expect(y.reduction.kind).toBe('whole')
  x.layers.forEach((l, i) => {
    expect(l.mean).toBeCloseTo(y.layers[i]!.mean, 3)
    expect(l.across[0]!).toBeCloseTo(y.layers[i]!.across[0]!, 3)
    expect(l.across).toHaveLength(12)
  })
})

test('pieces turned over against each other cost one piece', () => {
  const piece = [a, b, { ...a, thickness: 1e-4 }]
  const many = Array.from({ length: 6 }, (_, k) =>
    k % 2 === 0 ? piece : piece.toReversed(),
  ).flat()
  const one = evolveCarbon(piece, route(2))
  const all = evolveCarbon(many, route(2))
  expect(all.reduction).toMatchObject({ kind: 'piece', repeats: 6, nodes: one.reduction.nodes })
  all.layers.forEach((l, i) => {
    const turn = Math.floor(i / 3) % 2 === 1
    const like = one.layers[turn ? 2 - (i % 3) : i % 3]!
    expect(l.mean).toBeCloseTo(like.mean, 10)
    expect(l.across[0]!).toBeCloseTo(turn ? like.across.at(-1)! : like.across[0]!, 10)
  })
})

test('a long run costs the same at 169 and 1,521 layers, and equals the full solution', () => {
  const short = route(2, 1000)
  const full = evolveCarbon(alternate(61), short)
  const run = evolveCarbon(alternate(169), short)
  const longer = evolveCarbon(alternate(1521), short)
  expect(run.reduction.kind).toBe('repeat')
  expect(longer.reduction.nodes).toBe(run.reduction.nodes)
  expect(longer.steps).toBe(run.steps)
  // face and middle, both steels, against a stack short enough to be solved whole
  for (const [i, j] of [
    [0, 0],
    [1, 1],
    [2, 2],
    [30, 84],
    [29, 83],
    [60, 168],
    [59, 167],
  ] as const) {
    expect(run.layers[j]!.mean).toBeCloseTo(full.layers[i]!.mean, 3)
    expect(run.layers[j]!.highest).toBeCloseTo(full.layers[i]!.highest, 3)
  }
  for (const r of [full, run, longer]) expect(r.drift).toBeLessThan(1e-10)
})

test('an even run keeps the order of its steels at both faces', () => {
  const run = evolveCarbon(alternate(200), route(1, 1000))
  const full = evolveCarbon(alternate(40), route(1, 1000))
  expect(run.layers).toHaveLength(200)
  for (const i of [0, 1, 2, 3]) {
    expect(run.layers[i]!.mean).toBeCloseTo(full.layers[i]!.mean, 3)
    expect(run.layers[199 - i]!.mean).toBeCloseTo(full.layers[39 - i]!.mean, 3)
  }
  for (const i of [100, 101])
    expect(run.layers[i]!.mean).toBeCloseTo(full.layers[20 + (i % 2)]!.mean, 3)
})

test('a unit without a mirror plane: three and four steels in turn, against the full solution', () => {
  const c: SteelLayer = { composition: { C: 0.2, Mn: 0.6 }, thickness: 1.5e-4 }
  for (const unit of [
    [a, b, c],
    [a, b, c, b],
  ]) {
    const p = unit.length
    const stack = (n: number) => Array.from({ length: n * p }, (_, i) => unit[i % p]!)
    // A hair on the first layer, so that nothing repeats and all of it is solved.
    const uneven = stack(9).map((l, i) => (i === 0 ? { ...l, thickness: l.thickness + 1e-12 } : l))
    const full = evolveCarbon(uneven, route(1, 950))
    const run = evolveCarbon(stack(120), route(1, 950))
    const longer = evolveCarbon(stack(400), route(1, 950))
    expect(full.reduction.kind).toBe('whole')
    expect(run.reduction).toMatchObject({ kind: 'repeat', unit: p, repeats: 120 })
    expect(longer.reduction.nodes).toBe(run.reduction.nodes)
    const places = Array.from({ length: p }, (_, k) => [
      [k, k],
      [4 * p + k, 60 * p + k],
      [8 * p + k, 119 * p + k],
    ]).flat()
    for (const [i, j] of places) {
      const [x, y] = [full.layers[i!]!, run.layers[j!]!]
      expect(y.mean).toBeCloseTo(x.mean, 3)
      expect(y.across[0]!).toBeCloseTo(x.across[0]!, 2)
      expect(y.across.at(-1)!).toBeCloseTo(x.across.at(-1)!, 2)
    }
  }
})

test('thinning quickens levelling as the square of the thickness', () => {
  const thick = evolveCarbon([a, b], { points: hold(1373, 400) })
  const thin = evolveCarbon([a, b], {
    points: hold(1373, 100),
    thinning: [{ time: 0, factor: 0.5 }],
  })
  thick.layers.forEach((l, i) => expect(thin.layers[i]!.mean).toBeCloseTo(l.mean, 3))
  expect(thin.stretch).toBe(0.5)
})

test('carbon given across a layer is taken up where it left off', () => {
  const first = evolveCarbon([a, b], { points: hold(1373, 60) })
  const again = evolveCarbon(
    [a, b].map((l, i) => ({ ...l, carbon: first.layers[i]!.across })),
    { points: hold(1373, 60) },
  )
  const once = evolveCarbon([a, b], { points: hold(1373, 120) })
  again.layers.forEach((l, i) => expect(l.mean).toBeCloseTo(once.layers[i]!.mean, 3))
})

test('an open face loses carbon, a sealed one none', () => {
  const open = evolveCarbon(alternate(5), route(2), { surface: 'open' })
  expect(open.lost).toBeGreaterThan(0.05)
  expect(open.layers[0]!.mean).toBeLessThan(open.layers[2]!.mean)
  expect(evolveCarbon(alternate(5), route(2)).lost).toBe(0)
})

test('below the austenite nothing moves, and it says so', () => {
  const cold = evolveCarbon([a, b], { points: hold(900, 36000) })
  expect(cold.layers[0]!.mean).toBeCloseTo(0.95, 12)
  expect(cold.outOfRange[0]!.what).toContain('never became austenite')
})

test('nothing is NaN, whatever comes in', () => {
  const number = fc.oneof(fc.double({ min: 0, max: 3 }), fc.constantFrom(NaN, Infinity, -1, 0))
  const layer = fc.record({
    composition: fc.record({
      C: number,
      Ni: number,
      Si: number,
      Mn: number,
      Cr: number,
      V: number,
    }),
    thickness: fc.oneof(fc.double({ min: 1e-6, max: 0.02 }), fc.constantFrom(NaN, 0, -1)),
  })
  const point = fc.record({
    time: fc.oneof(fc.double({ min: 0, max: 5000, noNaN: true }), fc.constant(NaN)),
    temperature: fc.oneof(
      fc.double({ min: 200, max: 1900, noNaN: true }),
      fc.constantFrom(NaN, Infinity),
    ),
  })
  fc.assert(
    fc.property(
      fc.array(layer, { maxLength: 6 }),
      fc.array(point, { maxLength: 5 }),
      fc.array(fc.record({ time: fc.double({ min: 0, max: 5000 }), factor: fc.double() }), {
        maxLength: 3,
      }),
      fc.boolean(),
      (layers, points, thinning, open) => {
        const out = evolveCarbon(
          layers,
          { points, thinning },
          { nodesPerLayer: 4, surface: open ? 'open' : 'sealed' },
        )
        for (const l of out.layers)
          for (const v of [l.mean, l.lowest, l.highest, ...l.across])
            expect(Number.isFinite(v)).toBe(true)
        for (const v of [out.stretch, out.drift, out.lost]) expect(Number.isFinite(v)).toBe(true)
        if (!open) expect(out.drift).toBeLessThan(1e-10)
      },
    ),
    { seed: 4, numRuns: 60 },
  )
})
