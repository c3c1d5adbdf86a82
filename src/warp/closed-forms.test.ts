import { describe, expect, it } from 'vitest'
import { flattenDimples } from './field/dimples.ts'
import { boxOutline, closeDies, discOutline, outlineSize, squaringClosings } from './column/dies.ts'
import { flattenGrooves, type Grooves } from './column/grooves.ts'
import {
  accordion,
  barrel,
  bend,
  compile,
  drift,
  edgeBarLength,
  jacobian,
  pushPoints,
  restack,
  roll,
  rollLength,
  shear,
  taper,
  tile,
  twist,
  twistZones,
  type Points,
  type Warp,
} from './index.ts'

const mm = 1e-3
const pull = (warps: Warp | readonly Warp[], points: Points) =>
  compile([warps].flat(), { engine: 'reference' }).evaluate(points)
const pullOne = (warps: Warp | readonly Warp[], x: number, y: number, z: number) => {
  const to = pull(warps, { x: [x], y: [y], z: [z] })
  return { x: to.x[0]!, y: to.y[0]!, z: to.z[0]!, branch: to.branches.map((b) => b.of[0]!) }
}
const even = (from: number, to: number, count: number) =>
  Float64Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1))

describe('twist', () => {
  it('has the worked points of a 25.4 mm pitch', () => {
    // Worked by hand from y = y'cos φ + z'sin φ, φ = 2π·3/25.4.
    const warp = twist({ pitch: 25.4 * mm })
    const to = pullOne(warp, 3 * mm, 2 * mm, 1.5 * mm)
    expect(to.y).toBeCloseTo(2.48786 * mm, 8)
    expect(to.z).toBeCloseTo(-0.24612 * mm, 8)
    expect(pullOne(warp, 12.7 * mm, 0, 1.5 * mm).z).toBeCloseTo(-1.5 * mm, 15)
  })

  it('has its saddles exactly every half pitch, legs leaning atan(πz₀/P)', () => {
    const [P, z0] = [25.4 * mm, 1.2 * mm]
    const x = Float64Array.from({ length: 7 }, (_, k) => (k * P) / 2)
    const flat = new Float64Array(7)
    const points = { x, y: flat, z: flat.map(() => z0) }
    const slopes = jacobian([twist({ pitch: P })], points)
    slopes.forEach((m) => {
      expect(Math.abs(m[6]!)).toBeLessThan(1e-12)
      expect(Math.abs(m[7]!)).toBeLessThan(1e-12)
    })
    // v is again z₀ along the leaning leg near the star: x = s, y = −s·πz₀/P to third order.
    const s = 1e-5
    const on = pullOne(twist({ pitch: P }), s, -(s * Math.PI * z0) / P, z0).z
    const off = pullOne(twist({ pitch: P }), s, (s * Math.PI * z0) / P, z0).z
    expect(Math.abs(on - z0)).toBeLessThan(1e-12)
    expect(Math.abs(off - z0)).toBeGreaterThan(1e-10)
  })

  it('adds up the turns of each zone, and does not turn between them', () => {
    const warp = twistZones({
      length: 0.3,
      zones: [
        { from: 0.0501, to: 0.1203, turns: 2.25 },
        { from: 0.1707, to: 0.2402, turns: -1 },
      ],
    })
    const end = pullOne(warp, 0.3, 5 * mm, 0)
    expect(end.y).toBeCloseTo(0, 12)
    expect(end.z).toBeCloseTo(-5 * mm, 12)
    const between = pull(warp, { x: [0.13, 0.16], y: [5 * mm, 5 * mm], z: [0, 0] })
    expect(between.z[0]).toBeCloseTo(between.z[1]!, 14)
  })
})

describe('columns between dies', () => {
  it('spread a disc by the closed form of its chords', () => {
    // y' = ∫ max(1, h/g) dy with h = 2√(R²−y²): ∫ 2√(R²−y²) dy = y√(R²−y²) + R² asin(y/R).
    const [R, g] = [6 * mm, 11 * mm]
    const { warps } = closeDies(discOutline(R), [{ turns: 0, gap: g }], { cells: 2048 })
    const touched = Math.sqrt(R * R - (g * g) / 4)
    for (const share of [0.2, 0.5, 0.9, 0.99]) {
      const y = touched * share
      const expected = (y * Math.sqrt(R * R - y * y) + R * R * Math.asin(y / R)) / g
      const to = pushPoints(warps[0]!, { x: [0], y: [y], z: [0.001] })
      expect(to.y[0]! / expected).toBeCloseTo(1, 4)
      expect(to.z[0]! / ((0.001 * g) / (2 * Math.sqrt(R * R - y * y)))).toBeCloseTo(1, 4)
    }
  })

  it('make a disc of radius 6 nearly square in sixteen half-steps: 10.63 × 10.95', () => {
    const side = 6 * mm * Math.sqrt(Math.PI)
    const { warps, outline } = closeDies(discOutline(6 * mm), squaringClosings(12 * mm, side, 16))
    const size = outlineSize(outline)
    const [small, large] = [size.width, size.height].sort((a, b) => a - b) as [number, number]
    expect(Math.abs(small / mm - 10.63)).toBeLessThan(0.015)
    expect(Math.abs(large / mm - 10.95)).toBeLessThan(0.015)
    expect(area(outline) / (36 * Math.PI * mm * mm)).toBeCloseTo(1, 3)
    const inside = { x: even(0, 0, 50), y: even(-4 * mm, 4 * mm, 50), z: even(4 * mm, -3 * mm, 50) }
    jacobian(warps, inside).forEach((m) => {
      expect(m[4]! * m[8]! - m[5]! * m[7]!).toBeCloseTo(1, 9)
    })
  })

  it('leave a square set on its corner too wide, less so in more steps: 8 %, then 4.7 %', () => {
    const side = 10 * mm
    const start = boxOutline(side, side)
    const over = (halfSteps: number) => {
      const closings = squaringClosings(side * Math.SQRT2, side, halfSteps, 0.125)
      const { outline } = closeDies(start, closings)
      const turned = outline.map(({ y, z }) => ({
        y: (y - z) / Math.SQRT2,
        z: (y + z) / Math.SQRT2,
      }))
      const { width, height } = outlineSize(turned)
      return Math.max(width, height) / side - 1
    }
    expect(Math.abs(over(8) - 0.08)).toBeLessThan(0.003)
    expect(Math.abs(over(24) - 0.047)).toBeLessThan(0.003)
  })
})

function area(outline: readonly { y: number; z: number }[]): number {
  return Math.abs(
    outline.reduce((sum, p, i) => {
      const q = outline[(i + 1) % outline.length]!
      return sum + (p.y * q.z - q.y * p.z) / 2
    }, 0),
  )
}

describe('ladder', () => {
  // Round-bottomed 6.35 × 6.35 mm in both sides, and the shop's square grooves: worked from p' = p(H − ΣA/p)/flat.
  const rows: [number, number, number, number, Grooves['shape'], number, number][] = [
    [19.05, 12.7, 6.35, 6.35, 'round', 19.05, 22.9],
    [19.05, 12.7, 6.35, 6.35, 'round', 12.7, 13.4],
    [9.53, 6.35, 3.18, 3.18, 'square', 12.7, 15.9],
    [7.94, 6.35, 1.59, 3.18, 'square', 6.35, 6.35],
  ]
  it.each(rows)('H %f to %f, groove %f deep %f wide %s, %f apart: %f', (...row) => {
    const [height, flat, depth, width, shape, pitch, after] = row
    const face = { pitch: pitch * mm, depth: depth * mm, width: width * mm, shape }
    const { length } = flattenGrooves({
      length: 8 * pitch * mm,
      height: height * mm,
      flat: flat * mm,
      top: { ...face, first: 0.25 * pitch * mm },
      bottom: { ...face, first: 0.75 * pitch * mm },
    })
    expect(length / 8 / mm / after).toBeCloseTo(1, 2)
  })

  it('shows the contour lines of the cut on its face', () => {
    const top = {
      pitch: 20 * mm,
      depth: 3 * mm,
      width: 8 * mm,
      shape: 'v',
      first: 10 * mm,
    } as const
    const { warp, length } = flattenGrooves({
      length: 0.1,
      height: 12 * mm,
      flat: 8 * mm,
      top,
      cells: 4096,
    })
    const x = even(0, length, 400)
    const to = pull(warp, { x, y: x.map(() => 0), z: x.map(() => 4 * mm) })
    to.x.forEach((before, i) => {
      const away = Math.abs(((before - 10 * mm + 10 * mm) % (20 * mm)) - 10 * mm)
      const cut = Math.max(0, 3 * mm * (1 - away / (4 * mm)))
      expect(Math.abs(to.z[i]! - (6 * mm - cut))).toBeLessThan(0.02 * mm)
    })
  })
})

describe('raindrop', () => {
  it('cuts as many rings as layers lie in the depth, and keeps them round', () => {
    const dimple = {
      x: 20 * mm,
      y: 2 * mm,
      depth: 4 * mm,
      radius: 5 * mm,
      shape: 'cone',
      face: 'top',
    } as const
    const size = { length: 40 * mm, width: 30 * mm, height: 12 * mm, flat: 7 * mm }
    const { warps, length, width, residual } = flattenDimples({
      ...size,
      dimples: [dimple],
      cell: dimple.radius / 12,
    })
    expect(residual).toBeLessThan(0.004)
    const meanHeight = 12 * mm - (Math.PI * 25e-6 * 4 * mm) / 3 / 1200e-6
    expect((length * width) / (1200e-6 * (meanHeight / (7 * mm)))).toBeCloseTo(1, 3)
    // 20 layers in 12 mm: 0.6 mm each; boundaries crossed from the land to the dimple's middle.
    const [cx, cy] = [(dimple.x / 40e-3) * length, (dimple.y / 30e-3) * width]
    const crossings = (dx: number, dy: number) => {
      const s = even(0, 9 * mm, 2000)
      const to = pull(warps, {
        x: s.map((v) => cx + v * dx),
        y: s.map((v) => cy + v * dy),
        z: s.map(() => 3.45 * mm),
      })
      const layer = to.z.map((z) => Math.floor((z + 6 * mm) / (0.6 * mm)))
      const at = Array.from(s).filter((_, i) => i > 0 && layer[i] !== layer[i - 1])
      return at
    }
    const [along, across] = [crossings(1, 0), crossings(0, 1)]
    expect(along.length).toBe(6)
    expect(across.length).toBe(6)
    along.forEach((r, i) => expect(Math.abs(r - across[i]!)).toBeLessThan(0.05 * mm))
  })

  it('keeps a ball-nosed dimple round to its rim, and the land beside it still', () => {
    const size = { length: 40 * mm, width: 30 * mm, height: 12 * mm, flat: 7 * mm }
    const dimple = {
      x: 20 * mm,
      y: 0,
      depth: 3.6 * mm,
      radius: 4.5 * mm,
      shape: 'ball',
      face: 'top',
    } as const
    const { warps, length } = flattenDimples({
      ...size,
      dimples: [dimple],
      cell: dimple.radius / 12,
    })
    const turns = Array.from(even(0, 2 * Math.PI, 721))
    const around = (away: number) => {
      const at = turns.map((t) => [length / 2 + away * Math.cos(t), away * Math.sin(t)] as const)
      const z = at.map(() => 3 * mm)
      return pull(warps, { x: at.map(([x]) => x), y: at.map(([, y]) => y), z }).z
    }
    // What is left once what varies as slowly as the plate is oblong has been taken off.
    const ripple = (heights: ArrayLike<number>) => {
      const n = heights.length - 1
      const wave = (k: number, f: (t: number) => number) =>
        (2 / n) *
        Array.from({ length: n }, (_, i) => heights[i]! * f(k * turns[i]!)).reduce((a, b) => a + b)
      let squares = 0
      for (let k = 8; k < 120; k++) squares += (wave(k, Math.cos) ** 2 + wave(k, Math.sin) ** 2) / 2
      return Math.sqrt(squares)
    }
    // A layer is tenths of a millimetre thick: a hundredth of one would be seen where it lies flat.
    for (const away of [4, 5, 5.5, 6, 7])
      expect(ripple(around(away * mm)), `${away} mm`).toBeLessThan(0.006 * mm)
  })
})

describe('barrel', () => {
  it('has the worked point: H′ 20, β 1.2, b 0.2, (6, 5) → (4.878, 6.45)', () => {
    const warp = barrel({ height: 20 * mm, spread: 1.2, bulge: 0.2 })
    const to = pullOne(warp, 0, 6 * mm, 5 * mm)
    expect(to.y / mm).toBeCloseTo(6 / 1.23, 9)
    expect(to.z / mm).toBeCloseTo(6.45, 9)
    expect(pullOne(warp, 0, 0, 10 * mm).z / mm).toBeCloseTo(12, 9)
  })

  it('bows a standing layer by 1.5·b·β·y', () => {
    const [b, β, y] = [0.25, 1.1, 12 * mm]
    const warp = barrel({ height: 20 * mm, spread: β, bulge: b })
    const middle = pushPoints(warp, { x: [0], y: [y], z: [0] }).y[0]!
    const face = pushPoints(warp, { x: [0], y: [y], z: [11 * mm] }).y[0]!
    expect((middle - face) / mm).toBeCloseTo((1.5 * b * β * y) / mm, 9)
  })
})

describe('other closed forms', () => {
  it('feather: barbs leave the quill at atan(A₀/ℓ)', () => {
    const [A0, ell] = [20 * mm, 8 * mm]
    const [m] = jacobian([shear({ drag: A0, reach: ell })], { x: [0.05], y: [1e-9], z: [0] })
    // A layer is x = constant before; its slope after is −(∂x/∂y')/(∂x/∂x').
    expect(-m![1]! / m![0]!).toBeCloseTo(A0 / ell, 6)
  })

  it('jelly roll: the strip is π(R²−r₀²)/T long when its wraps reach R, each T thick', () => {
    const [core, thickness] = [3 * mm, 1 * mm]
    const warp = roll({ core, thickness, width: 0.1 })
    const R = core + 12 * thickness
    const end = pullOne(warp, 0.05, R - thickness + 1e-12, -1e-15)
    // The spiral's inner and outer edges lie, on the mean of a turn, half a thickness from its ends.
    const length = rollLength({ core: core + thickness / 2, thickness, outer: R - thickness / 2 })
    expect(end.x / length).toBeCloseTo(1, 9)
    const faces = pull(warp, { x: [0, 0], y: [5 * mm + 1e-9, 6 * mm - 1e-9], z: [0, 0] })
    expect(faces.z[0]! / mm).toBeCloseTo(-0.5, 4)
    expect(faces.z[1]! / mm).toBeCloseTo(0.5, 4)
    expect(faces.branches[0]!.of).toEqual(Float64Array.of(2, 2))
  })

  it('a drifted hole takes no metal: a ring round it has the area it had', () => {
    const warp = drift({ x: 0, radius: 8 * mm })
    const to = pull(warp, { x: [10 * mm, 15 * mm, 4 * mm], y: [0, 0, 0], z: [0, 0, 0] })
    expect((to.x[1]! ** 2 - to.x[0]! ** 2) / (225e-6 - 100e-6)).toBeCloseTo(1, 12)
    expect(to.branches[0]!.of).toEqual(Float64Array.of(0, 0, -1))
  })

  it('bent edgewise: the outer edge stretches by y/ρ to first order, exact area', () => {
    const ρ = 0.5
    const warp = bend({ radius: ρ })
    const to = pushPoints(warp, { x: [0.1, 0.1], y: [0, 0.02], z: [0, 0] })
    expect(Math.hypot(to.x[0]!, to.y[0]! + ρ)).toBeCloseTo(ρ, 12)
    expect(Math.hypot(to.x[1]!, to.y[1]! + ρ)).toBeCloseTo(Math.sqrt(ρ * ρ + 2 * ρ * 0.02), 12)
    expect(Math.atan2(to.x[1]!, to.y[1]! + ρ)).toBeCloseTo(0.1 / ρ, 12)
  })

  it('accordion of 25 mm bar, 9.5 mm segments: 27 make 675 mm, mirrored at each hinge', () => {
    const warp = accordion({ thickness: 9.5 * mm, kerf: 1.6 * mm, height: 25 * mm, count: 27 })
    const last = pullOne(warp, 0.675 - 1e-9, 0, 0)
    expect(last.branch[0]).toBe(26)
    expect(last.x / mm).toBeCloseTo(26 * 11.1 + 4.75, 6)
    const [a, b] = [pullOne(warp, 24 * mm, 0, 0), pullOne(warp, 26 * mm, 0, 0)]
    expect(a.z).toBeCloseTo(b.z, 12)
  })

  it('restack: piece, place and height of the joint with kerf, grinding and an extra sheet', () => {
    const warp = restack({
      pieces: 3,
      length: 0.1,
      height: 20 * mm,
      kerf: 2 * mm,
      grind: 1 * mm,
      extra: 3 * mm,
    })
    // New height 3·20 − 4·1 + 2·3 = 62; first piece 0…19, sheet 19…22, second 22…40.
    const z = (up: number) => (up - 31) * mm
    expect(pullOne(warp, 0.03, 0, z(18.9)).branch[0]).toBe(0)
    const sheet = pullOne(warp, 0.03, 0, z(20.5))
    expect(sheet.branch[0]).toBe(3)
    expect(sheet.z).toBeCloseTo(0, 12)
    const second = pullOne(warp, 0.03, 0, z(22.5))
    expect(second.branch[0]).toBe(1)
    expect(second.z / mm).toBeCloseTo(-10 + 1.5, 9)
    expect(second.x).toBeCloseTo(0.132, 12)
    expect(pullOne(warp, 0.03, 0, z(61.9)).z / mm).toBeCloseTo(9.9, 9)
  })

  it('bookmatched bars mirror one another on the face, though none is mirrored', () => {
    const warp = tile({ form: 'bookmatched', length: 0.2, width: 12 * mm, height: 12 * mm })
    const [a, b] = [pullOne(warp, 0.05, 3 * mm, 2 * mm), pullOne(warp, 0.05, -3 * mm, 2 * mm)]
    expect(b.y).toBeCloseTo(a.y, 12)
    expect(a.z).toBeCloseTo(b.z, 12)
    expect(a.x + b.x).toBeCloseTo(0.2, 12)
  })

  it('triangles: the layers seen are min(|y|, |z|), running in to the centre', () => {
    const warp = tile({ form: 'triangles', length: 0.2, width: 10 * mm, height: 20 * mm })
    for (const [y, z] of [
      [5, 2],
      [-7, 3],
      [1, 8],
      [-2, -9],
    ] as const) {
      const to = pullOne(warp, 0, y * mm, z * mm)
      expect(Math.abs(to.z) / mm).toBeCloseTo(Math.min(Math.abs(y), Math.abs(z)), 9)
      expect(to.y / mm).toBeCloseTo(Math.max(Math.abs(y), Math.abs(z)) - 5, 9)
    }
  })

  it('taper: a pitch stretches by A₀/A', () => {
    const warp = taper({
      width: 20 * mm,
      height: 10 * mm,
      length: 0.2,
      widths: [20 * mm, 10 * mm],
      heights: [10 * mm, 5 * mm],
    })
    const [m] = jacobian([warp], { x: [0.1], y: [0], z: [0] })
    expect(1 / m![0]!).toBeCloseTo(200 / (15 * 7.5), 9)
    // Volume of the frustum: h/3 (A + B + √AB).
    const whole = ((0.2 / 3) * (200 + 50 + 100)) / 200
    expect(pullOne(warp, 0.2, 0, 0).x).toBeCloseTo(whole, 12)
  })

  it('wrapped edge bar is as long as the outline it goes round', () => {
    expect(edgeBarLength({ half: 12 * mm, straight: 0.6 })).toBeCloseTo(1.2 + Math.PI * 0.012, 12)
  })
})
