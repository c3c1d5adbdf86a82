import { describe, expect, it } from 'vitest'
import { compile, type Points } from './evaluate.ts'
import { warpKinds } from './kinds.ts'
import type { HeadStage, TailStage } from './program.ts'
import {
  affine,
  draw,
  pushPoints,
  restack,
  shear,
  sideBySide,
  turn,
  twist,
  type Warp,
} from './index.ts'

const even = (from: number, to: number, count: number) =>
  Float64Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1))
const points: Points = {
  x: even(0.003, 0.197, 1500),
  y: even(-0.0121, 0.0117, 1500).map((y, i) => (i % 2 ? y : -y)),
  z: even(-0.0061, 0.0049, 1500).map((z, i) => (i % 3 ? z : -z)),
}
const route: Warp[] = [
  draw({ length: 1.44, width: 1 / 1.2, height: 1 / 1.2 }),
  restack({ pieces: 3, length: 0.1, height: 0.01, kerf: 0.002, turn: 'folded' }),
  draw({ length: 3, width: 1, height: 1 / 3 }),
  twist({ pitch: 0.03, hand: 'left' }),
  turn('quarter'),
  sideBySide({ widths: [0.012, 0.012] }),
  shear({ drag: 0.004, reach: 0.005 }),
]
const sampled = (from: number, to: number) => even(from, to, 4001)

describe('written-out functions', () => {
  const evaluate = (
    inputs: Points,
    precision: 'f32' | 'f64',
    pull: HeadStage['pull'],
  ): ArrayLike<number> => compile([], { precision, head: { pull } }).evaluate(inputs).x
  const rows = [
    ['f64', 4e-16, 1],
    ['f32', 3e-7, 1],
  ] as const
  it.each(rows)(
    '%s sine and cosine of turns, as the standard library has them',
    (precision, most) => {
      const x = sampled(-2, 2)
      for (const which of ['sin', 'cos'] as const) {
        const ours = evaluate({ x, y: x, z: x }, precision, (g, p) => ({ ...p, x: g[which](p.x) }))
        x.forEach((t, i) => {
          const exact = Math[which](2 * Math.PI * (precision === 'f32' ? Math.fround(t) : t))
          expect(Math.abs(ours[i]! - exact)).toBeLessThan(most * (1 + 6 * Math.abs(t)))
        })
      }
    },
  )
  it('quarter turns have no remainder of sine or cosine', () => {
    const x = Float64Array.of(0, 0.25, 0.5, 0.75, 1)
    const cos = evaluate({ x, y: x, z: x }, 'f64', (g, p) => ({ ...p, x: g.cos(p.x) }))
    expect([cos[1], cos[3]].map(Math.abs)).toEqual([0, 0])
  })
  it.each(rows)('%s exponential, to the last digits over its whole range', (precision, most) => {
    const x = sampled(-80, 80)
    const ours = evaluate({ x, y: x, z: x }, precision, (g, p) => ({ ...p, x: g.exp(p.x) }))
    x.forEach((t, i) => {
      const exact = Math.exp(precision === 'f32' ? Math.fround(t) : t)
      expect(Math.abs(ours[i]! / exact - 1)).toBeLessThan(most * (2 + Math.abs(t)))
    })
  })
  it.each(rows)('%s angle all the way round', (precision, most) => {
    const angles = sampled(-0.4999, 0.4999)
    const [s, c] = [Math.sin, Math.cos].map((f) => angles.map((a) => 0.37 * f(2 * Math.PI * a)))
    const ours = evaluate({ x: s!, y: c!, z: c! }, precision, (g, p) => ({
      ...p,
      x: g.turn(p.x, p.y),
    }))
    angles.forEach((a, i) => expect(Math.abs(ours[i]! - a)).toBeLessThan(most))
  })
})

describe('a list of warps', () => {
  it('is pulled back last step first', () => {
    const together = compile(route, { engine: 'reference' }).evaluate(points)
    let place: Points = points
    for (const warp of [...route].reverse())
      place = compile([warp], { engine: 'reference' }).evaluate(place)
    for (const side of ['x', 'y', 'z'] as const)
      together[side].forEach((v, i) => expect(Math.abs(v - place[side][i]!)).toBeLessThan(1e-14))
    expect(together.branches.map((b) => b.step).sort()).toEqual([1, 5])
  })

  it('comes out where it started when pushed forward through every step', () => {
    let place: Points = points
    const branches: ArrayLike<number>[] = []
    for (const warp of [...route].reverse()) {
      const to = compile([warp]).evaluate(place)
      branches.unshift(to.branches[0]?.of ?? [])
      place = to
    }
    route.forEach((warp, i) => (place = pushPoints(warp, place, branches[i])))
    for (const side of ['x', 'y', 'z'] as const)
      points[side].forEach((v, i) => expect(Math.abs(v - place[side][i]!)).toBeLessThan(1e-10))
  })

  it('comes out alike however it is cut into kernels', () => {
    const runs = [1, 40, Infinity].map((groupSize) =>
      compile(route, { groupSize, directions: 2 }).evaluate(points),
    )
    for (const side of ['x', 'y', 'z'] as const)
      runs[0]![side].forEach((v, i) =>
        runs.forEach((run) => expect(Math.abs(run[side][i]! - v)).toBeLessThan(1e-13)),
      )
  })

  it('takes new numbers without compiling, and then equals a fresh one', () => {
    const machine = compile(route)
    const other = route.map((w, i) => (i === 3 ? twist({ pitch: 0.021, phase: 0.2 }) : w))
    machine.setWarps(other)
    const [slid, fresh] = [machine.evaluate(points), compile(other).evaluate(points)]
    for (const side of ['x', 'y', 'z'] as const) expect(slid[side]).toEqual(fresh[side])
  })

  it('lets a tail read a layer and its footprint, and a head make the points', () => {
    const tail: TailStage = {
      numbers: { thickness: 0.0005 },
      outputs: ['layer', 'along', 'across'],
      read: (g, place, at, rates) => {
        const layer = g.div(place.z, at.number('thickness'))
        return [layer, ...rates(layer)]
      },
    }
    const lean = affine({
      rows: [
        [1, 0, 0],
        [0, 1, 0],
        [0.1, -0.2, 1],
      ],
    })
    const rates = [
      { x: points.x.map(() => 1e-4), y: points.x.map(() => 0), z: points.x.map(() => 0) },
      { x: points.x.map(() => 0), y: points.x.map(() => 1e-4), z: points.x.map(() => 0) },
    ]
    const { outputs } = compile([lean], { directions: 2, tail }).evaluate({ ...points, rates })
    expect(outputs['along']![7]).toBeCloseTo((0.1 * 1e-4) / 0.0005, 12)
    expect(outputs['across']![7]).toBeCloseTo((-0.2 * 1e-4) / 0.0005, 12)
    const head: HeadStage = {
      numbers: { height: 0.004 },
      pull: (g, p, at) => ({ ...p, z: g.sub(at.number('height'), g.abs(p.y)) }),
    }
    const made = compile([], { head }).evaluate(points)
    expect(made.z[3]).toBe(0.004 - Math.abs(points.y[3]!))
  })
})

describe('kernels', () => {
  it.each(['f32', 'f64'] as const)(
    'look up entries by point, by number and fixed, in %s',
    (precision) => {
      const tail: TailStage = {
        numbers: { which: 3 },
        tables: { squares: Array.from({ length: 40 }, (_, i) => i * i) },
        outputs: ['byPoint', 'byNumber', 'next', 'fixed'],
        read: (g, place, at) => {
          const { table } = at.table('squares')
          const index = g.clamp(g.floor(place.x), 0, 38)
          return [
            g.fetch(table, index),
            g.fetch(table, at.number('which')),
            g.fetch(table, index, 1),
            g.add(g.fetch(table, 6), g.mul(place.y, 0)),
          ]
        },
      }
      const x = Float64Array.from({ length: 45 }, (_, i) => i + 0.25)
      for (const engine of ['kernels', 'reference'] as const) {
        const { outputs } = compile([], { precision, engine, tail }).evaluate({ x, y: x, z: x })
        x.forEach((v, i) => {
          const k = Math.min(Math.floor(v), 38)
          const got = tail.outputs.map((name) => outputs[name]![i])
          expect(got).toEqual([k * k, 9, (k + 1) ** 2, 36])
        })
      }
    },
  )

  it('stay within their memory whatever they are given', () => {
    const wild = [NaN, Infinity, -Infinity, 1e30, -1e30, 0]
    const rows = { x: [...wild], y: [...wild].reverse(), z: [...wild] }
    for (const kind of warpKinds)
      for (const { warp } of kind.examples)
        for (const precision of ['f32', 'f64'] as const)
          expect(() => compile([warp], { precision, directions: 2 }).evaluate(rows)).not.toThrow()
  })
})
