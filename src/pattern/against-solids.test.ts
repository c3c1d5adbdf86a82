import Module from 'manifold-3d'
import type { Manifold } from 'manifold-3d'
import { barrel, column, twist } from '#warp'
import { beforeAll, describe, expect, it } from 'vitest'
import { drawFaceNow } from './draw-face.ts'
import { faceOfBar, sectionOfBar } from '#view'
import { type Origin, moved, stack } from './origin.ts'
import type { FaceView } from '#view'

/**
 * The bright layers as solids in a general-purpose geometry kernel, refined and pushed forwards corner by corner with
 * the map as the trade writes it, then cut by a plane: nothing of the pull-back or the graphs is in it.
 */
let kernel: Awaited<ReturnType<typeof Module>>
beforeAll(async () => {
  kernel = await Module()
  kernel.setup()
})

interface Bar {
  readonly length: number
  readonly width: number
  readonly layers: readonly number[]
}

type Push = (x: number, y: number, z: number) => readonly [number, number, number]

/** In millimetres, for the kernel works in single precision. */
function pushed({ length, width, layers }: Bar, edge: number, push: Push): Manifold[] {
  const whole = layers.reduce((a, b) => a + b, 0)
  let at = -whole / 2
  return layers.flatMap((thickness, i) => {
    const from = at
    at += thickness
    if (i % 2 === 0) return []
    const box = kernel.Manifold.cube([length, width, thickness]).translate([0, -width / 2, from])
    const solid = box.refineToLength(edge).warp((v) => {
      const [x, y, z] = push(v[0], v[1], v[2])
      v[0] = x
      v[1] = y
      v[2] = z
    })
    return [solid]
  })
}

/** Whether each pixel centre of a plane lies in bright metal, by crossing counts. */
function raster(
  solids: readonly Manifold[],
  view: FaceView,
  turn: readonly [number, number, number],
  height: number,
  place: (i: number, j: number) => readonly [number, number],
) {
  const inside = new Uint8Array(view.width * view.height)
  for (const solid of solids) {
    const polygons = solid
      .rotate([...turn])
      .slice(height)
      .toPolygons()
    for (let j = 0; j < view.height; j++)
      for (let i = 0; i < view.width; i++) {
        const [px, py] = place(i, j)
        let odd = 0
        for (const loop of polygons)
          for (let k = 0; k < loop.length; k++) {
            const [a, b] = [loop[k]!, loop[(k + 1) % loop.length]!]
            if (
              a[1] > py !== b[1] > py &&
              px < a[0] + ((b[0] - a[0]) * (py - a[1])) / (b[1] - a[1])
            )
              odd ^= 1
          }
        if (odd) inside[j * view.width + i] = 1
      }
  }
  return inside
}

/** Share of pixels of like steel, and how many unlike ones lie further than a pixel from a boundary. */
function compare(view: FaceView, origin: Origin, inside: Uint8Array) {
  const map = drawFaceNow(view, origin, { weights: [{ dark: 0, bright: 1 }], precision: 'f64' })
  const bright = (i: number) => map.means[0]![i]! > 32767
  const { width, height } = view
  let [same, astray, metal] = [0, 0, 0]
  for (let j = 0; j < height; j++)
    for (let i = 0; i < width; i++) {
      const at = j * width + i
      if (map.alpha[at]! < 255) continue
      metal++
      if (bright(at) === (inside[at] === 1)) same++
      else {
        let near = false
        for (let dj = -1; dj <= 1; dj++)
          for (let di = -1; di <= 1; di++) {
            const [r, c] = [j + dj, i + di]
            if (r < 0 || c < 0 || r >= height || c >= width) continue
            if (bright(r * width + c) !== bright(at)) near = true
          }
        if (!near) astray++
      }
    }
  return { share: same / metal, astray, metal }
}

const stackOf = (layers: readonly number[]) =>
  stack(
    'main',
    layers.map((t, i) => ({ steel: i % 2 ? 'bright' : 'dark', thickness: t * 1e-3 })),
  )

describe('the same metal as solids in a geometry kernel', () => {
  it('twisted, shows the same steel on a face', () => {
    const bar = { length: 40, width: 9, layers: [1.2, 0.9, 1.2, 0.9, 1.2, 0.9, 1.2, 0.9, 1.2] }
    const [pitch, z0] = [22, 2.3]
    const solids = pushed(bar, 0.26, (x, y, z) => {
      const turn = (2 * Math.PI * x) / pitch
      const [c, s] = [Math.cos(turn), Math.sin(turn)]
      return [x, y * c - z * s, y * s + z * c]
    })
    const origin = moved(stackOf(bar.layers), [twist({ pitch: pitch * 1e-3 })])
    // Within the circle that every section fills whatever its turn.
    const view = faceOfBar({ length: 0.04, width: 0.0064, height: 0.0094 }, 'front', {
      ppmm: 9,
      depth: (4.7 - z0) * 1e-3,
    })
    const mm = view.pixel * 1e3
    const inside = raster(solids, view, [0, 0, 0], z0, (i, j) => [
      (i + 0.5) * mm,
      (view.height - j - 0.5) * mm - 3.2,
    ])
    const { share, astray, metal } = compare(view, origin, inside)
    expect(metal).toBeGreaterThan(15_000)
    expect(share).toBeGreaterThan(0.99)
    expect(astray).toBe(0)
  }, 60_000)

  it('grooved and flattened, shows the same steel along its length', () => {
    const bar = { length: 50, width: 2, layers: Array.from({ length: 11 }, () => 1) }
    const [H, flat, p, g] = [11, 7, 16, 3]
    const groove = (x: number) => g * Math.cos((Math.PI * x) / p) ** 2
    const height = (x: number) => H - groove(x)
    // x' = ∫ (T − B)/H_f dx in closed form; z' from the column’s middle.
    const after = (x: number) =>
      ((H - g / 2) * x - (g * p * Math.sin((2 * Math.PI * x) / p)) / (4 * Math.PI)) / flat
    const solids = pushed(bar, 0.3, (x, y, z) => [
      after(x),
      y,
      ((z + groove(x) / 2) * flat) / height(x),
    ])
    const columns = Array.from({ length: 4001 }, (_, i) => {
      const x = (i / 4000) * bar.length
      return { shortening: height(x) / flat, middle: -groove(x) / 2 }
    })
    const pressed = column({
      axis: 'x',
      before: [0, 0.05],
      from: 0,
      columns: columns.map((c) => ({ ...c, middle: c.middle * 1e-3 })),
      cells: 4096,
    })
    expect(pressed.after[1] * 1e3).toBeCloseTo(after(bar.length), 3)
    const origin = moved(stackOf(bar.layers), [pressed.warp])
    const size = { length: pressed.after[1], width: 0.002, height: 0.007 }
    const view = sectionOfBar(size, { axis: 'y', at: 0 }, { ppmm: 8 })
    const mm = view.pixel * 1e3
    // Turned about x so that y looks along the kernel's z.
    const inside = raster(solids, view, [-90, 0, 0], 0, (i, j) => [
      (i + 0.5) * mm,
      (view.height - j - 0.5) * mm - flat / 2,
    ])
    const result = compare(view, origin, inside)
    expect(result.share).toBeGreaterThan(0.99)
    expect(result.astray).toBe(0)
  }, 60_000)

  it('barrelled, shows the same steel on the end', () => {
    const bar = { length: 2, width: 18, layers: [2, 2, 2, 2, 2, 2, 2] }
    const [after, beta, b] = [11, 1.2, 0.25]
    const whole = (z: number) => beta * (z + (b / 2) * (z - (4 * z ** 3) / after ** 2))
    const f = (z: number) => beta * (1 + (b * (1 - 3 * ((2 * z) / after) ** 2)) / 2)
    const back = (z: number) => {
      let [low, high] = [-after, after]
      for (let k = 0; k < 60; k++) {
        const middle = (low + high) / 2
        if (whole(middle) < z) low = middle
        else high = middle
      }
      return (low + high) / 2
    }
    const solids = pushed(bar, 0.2, (x, y, z) => {
      const to = back(z)
      return [x, y * f(to), to]
    })
    const origin = moved(stackOf(bar.layers), [
      barrel({ height: after * 1e-3, spread: beta, bulge: b }),
    ])
    const view = sectionOfBar(
      { length: 0.002, width: 0.018, height: 0.0104 },
      { axis: 'x', at: 0.001 },
      { ppmm: 12 },
    )
    const mm = view.pixel * 1e3
    // Turned about y so that x looks along the kernel’s z: its x is then z, its z is −x.
    const inside = raster(solids, view, [0, 90, 0], -1, (i, j) => [
      (view.height - j - 0.5) * mm - 5.2,
      (i + 0.5) * mm - 9,
    ])
    const result = compare(view, origin, inside)
    expect(result.share).toBeGreaterThan(0.99)
    expect(result.astray).toBe(0)
  }, 60_000)
})
