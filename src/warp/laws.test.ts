import { describe, expect, it } from 'vitest'
import { compile, type CompileOptions, type Points } from './evaluate.ts'
import { determinant, jacobian } from './jacobian.ts'
import { warpKind, warpKinds } from './kinds.ts'
import { pushPoints } from './push.ts'
import type { Domain, Example, Warp } from './warp.ts'

/** Mulberry32: small, seeded, good enough to scatter points. */
function scatter(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

const SIDES = ['x', 'y', 'z'] as const
type Scattered = Record<(typeof SIDES)[number], Float64Array>

/** Points within the domain; with `corners`, its corners first. */
function pointsIn(domain: Domain, count: number, corners = true): Scattered {
  const next = scatter(7)
  const side = ([a, b]: readonly [number, number], bit: number) =>
    Float64Array.from({ length: count }, (_, i) =>
      corners && i < 8 ? ((i >> bit) & 1 ? b : a) : a + (b - a) * (0.001 + 0.998 * next()),
    )
  return { x: side(domain.x, 0), y: side(domain.y, 1), z: side(domain.z, 2) }
}

function worst(a: Points, b: Points, scale = 1): number {
  let most = 0
  for (const side of SIDES)
    for (let i = 0; i < a.x.length; i++) {
      const off = Math.abs(a[side][i]! - b[side][i]!) / scale
      if (!(off <= most)) most = off
    }
  return most
}

const span = (domain: Domain) => Math.max(...SIDES.map((s) => domain[s][1] - domain[s][0]))

const pull = (warp: Warp, points: Points, options: CompileOptions = {}) =>
  compile([warp], { engine: 'reference', ...options }).evaluate(points)

/** Volume before for one after that the kind declares, at each point, by its own graph. */
function declaredVolume({ warp }: Example, points: Points): ArrayLike<number> {
  const { det } = warpKind(warp.kind)
  if (typeof det !== 'function') return new Float64Array(points.x.length).fill(1)
  const head = {
    ...warp,
    pull: (...[g, p, at]: Parameters<typeof det>) => ({ ...p, x: det(g, p, at) }),
  }
  return compile([], { engine: 'reference', head }).evaluate(points).x
}

const cases = warpKinds.flatMap((kind) =>
  kind.examples.map((example, i): [string, Example] => [
    `${kind.name} ${example.warp.form ?? ''} ${i}`,
    example,
  ]),
)

describe.each(cases)('%s', (_name, example) => {
  const { warp, domain } = example
  const points = pointsIn(domain, 700)
  const inner = pointsIn(domain, 300, false)
  const kind = warpKind(warp.kind)

  it('is plain data, and gives the same after a round trip through JSON', () => {
    const again = JSON.parse(JSON.stringify(warp)) as Warp
    expect(again).toEqual(warp)
    expect(worst(pull(again, points), pull(warp, points))).toBe(0)
  })

  it('gives numbers everywhere in its range, corners included, and does not alter its input', () => {
    const before = structuredClone(points)
    const to = pull(warp, points)
    for (const side of SIDES) expect(to[side].every(Number.isFinite)).toBe(true)
    for (const { of } of to.branches) expect(of.every(Number.isInteger)).toBe(true)
    expect(to.branches.length).toBe(kind.branches ? 1 : 0)
    expect(points).toEqual(before)
  })

  it('pushes back to where it pulled from, and the other way about', () => {
    const to = pull(warp, inner)
    const back = pushPoints(warp, to, to.branches[0]?.of)
    expect(worst(back, inner, span(domain))).toBeLessThan(1e-9)
    expect(worst(pull(warp, back), to, span(domain))).toBeLessThan(1e-9)
  })

  it('keeps volume, or changes it as it declares: by derivatives', () => {
    const declared = declaredVolume(example, inner)
    jacobian([warp], inner).forEach((m, i) => {
      const volume = determinant(m)
      if (kind.det === 'sampled') expect(volume).toBeGreaterThan(0)
      else expect(Math.abs(volume / declared[i]! - 1)).toBeLessThan(1e-6)
    })
  })

  it('has the derivatives that finite differences give', () => {
    const h = 1e-7
    const slopes = jacobian([warp], inner)
    const branch = pull(warp, inner).branches[0]?.of
    SIDES.forEach((side, column) => {
      const moved = (by: number) => pull(warp, { ...inner, [side]: inner[side].map((v) => v + by) })
      const [up, down] = [moved(h), moved(-h)]
      slopes.forEach((m, i) => {
        const seam = [up, down].some((p) => branch && p.branches[0]!.of[i] !== branch[i])
        if (seam) return
        SIDES.forEach((to, row) => {
          const slope = (up[to][i]! - down[to][i]!) / (2 * h)
          const size = Math.max(1, ...m.map(Math.abs))
          expect(Math.abs(slope - m[3 * row + column]!) / size).toBeLessThan(1e-6)
        })
      })
    })
  })

  it('gives one point the same as a batch', () => {
    const machine = compile([warp], { engine: 'kernels' })
    const all = machine.evaluate(points)
    for (const i of [0, 7, 8, 200, 699]) {
      const one = machine.evaluate({ x: [points.x[i]!], y: [points.y[i]!], z: [points.z[i]!] })
      for (const side of SIDES) expect(one[side][0]).toBe(all[side][i])
    }
  })

  it.each(['f64', 'f32'] as const)('kernels equal the reference bit for bit in %s', (precision) => {
    const count = points.x.length
    const rates = [0, 1].map((d) => ({
      x: new Float64Array(count).fill(d === 0 ? 1e-4 : 0),
      y: new Float64Array(count).fill(d === 1 ? 1e-4 : 0),
      z: new Float64Array(count).fill(2e-5),
    }))
    const run = (engine: 'kernels' | 'reference') =>
      compile([warp], { precision, engine, directions: 2, tile: 512 }).evaluate({
        ...points,
        rates,
      })
    const [a, b] = [run('kernels'), run('reference')]
    expect(worst(a, b)).toBe(0)
    a.rates.forEach((rate, d) => expect(worst(rate, b.rates[d]!)).toBe(0))
    a.branches.forEach(({ of }, k) => expect(of).toEqual(b.branches[k]!.of))
  })

  it('single precision is close to double, save at seams', () => {
    const a = pull(warp, points)
    const b = pull(warp, points, { precision: 'f32', engine: 'kernels' })
    let off = 0
    points.x.forEach((_, i) => {
      const far = SIDES.some(
        (s) => Math.abs(a[s][i]! - b[s][i]!) > 4e-6 * Math.max(0.05, span(domain)),
      )
      if (far) off++
    })
    expect(off / points.x.length).toBeLessThan(kind.branches ? 0.012 : 1e-9)
  })
})
