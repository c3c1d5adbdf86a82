import { affine, column, draw, shear, shift, twist } from '#warp'
import { drawFaceNow, moved, stack } from '#pattern'
import { type FaceView, faceOfBar, faceOfMesh } from '#view'
import FFT from 'fft.js'
import { describe, expect, it } from 'vitest'
import { angleOf, brightShare, fieldOfMap, linesAlong, repeatAlong, spectrumAlong } from '#look'

const weights = [{ dark: 0, bright: 1 }]
function alternate(count: number, thickness: number) {
  return Array.from({ length: count }, (_, i) => ({ steel: i % 2 ? 'bright' : 'dark', thickness }))
}
function fieldOf(view: FaceView, origin: Parameters<typeof drawFaceNow>[1]) {
  return fieldOfMap(drawFaceNow(view, origin, { weights }))
}

describe('a twist', () => {
  const bar = { length: 0.2032, width: 0.01, height: 0.011 }
  const twisted = moved(stack('main', alternate(11, 0.001)), [twist({ pitch: 0.0254 })])
  const face = (z0: number) =>
    fieldOf(faceOfBar(bar, 'front', { ppmm: 20, depth: bar.height / 2 - z0 }), twisted)

  it.each([0.0007, 0.0015, 0.003])(
    'shows a star every half pitch, ground to %s m of the middle',
    (z0) => {
      const field = face(z0)
      const middle = bar.width / 2
      const row = { from: { x: 0, y: middle - 1e-4 }, to: { x: bar.length, y: middle + 1e-4 } }
      expect(repeatAlong(field, row) / 0.0127).toBeCloseTo(1, 3)
      // The same of another library's transform: of the middle row every strong line is a multiple of 2/P.
      const n = 4096
      const at = Math.round(middle * field.perMetre) * field.width
      const wave = Array.from(field.values.subarray(at, at + 4064), (v) => v - 0.5)
      const fft = new FFT(n)
      const out = fft.createComplexArray()
      // 16 half pitches in 4064 pixels, repeated to fill the transform without a seam's leakage.
      const even = Array.from({ length: n }, (_, k) => {
        const t = (k * 4064) / n
        const i = Math.floor(t)
        return wave[i]! + (t - i) * (wave[(i + 1) % 4064]! - wave[i]!)
      })
      fft.realTransform(out, even)
      const power = Array.from({ length: n / 2 }, (_, k) => out[2 * k] ** 2 + out[2 * k + 1] ** 2)
      const whole = power.slice(1).reduce((a, b) => a + b, 0)
      const stars = power.reduce((sum, p, k) => (k > 0 && k % 16 === 0 ? sum + p : sum), 0)
      expect(stars / whole).toBeGreaterThan(0.995)
    },
  )

  it('has legs tilted by atan(πz₀/P), the other leg straight across', () => {
    const z0 = 0.0015
    // Layers of 1 mm with boundaries at ±0.5, ±1.5 mm: z₀ is one, so its lines cross in the saddle.
    const field = face(z0)
    const star = { x: 0.0254 * 2, y: bar.width / 2 }
    const tilts = [-2e-4, 2e-4].flatMap((off) => {
      const line = {
        from: { x: star.x - 0.003, y: star.y + off },
        to: { x: star.x + 0.003, y: star.y + off },
      }
      const met = linesAlong(field, line.from, line.to).boundaries.map((b) => b - 0.003)
      const across = met.reduce((a, b) => (Math.abs(b) < Math.abs(a) ? b : a))
      expect(Math.abs(across)).toBeLessThan(3e-5)
      return met
        .filter((b) => Math.abs(b) > 5e-4 && Math.abs(b) < 2e-3)
        .map((b) => Math.abs(off / b))
    })
    expect(tilts).toHaveLength(2)
    const mean = (tilts[0]! + tilts[1]!) / 2
    expect(Math.atan(mean) / Math.atan((Math.PI * z0) / 0.0254)).toBeCloseTo(1, 1.7)
  })

  it('crowds lines at a quarter pitch to t·P/2πz₀', () => {
    const z0 = 0.0035
    const field = face(z0)
    const from = { x: 0.0254 / 4 - 0.0024, y: bar.width / 2 }
    const { boundaries } = linesAlong(field, from, { x: from.x + 0.0048, y: from.y })
    // Of v = z₀·cos(2πx/P) the layer from +½ to −½ mm: asin(½/z₀) either side of the quarter.
    const middle = boundaries.findIndex((b) => b > 0.0024)
    const gap = boundaries[middle]! - boundaries[middle - 1]!
    expect(gap / ((0.0254 / Math.PI) * Math.asin(0.0005 / z0))).toBeCloseTo(1, 2)
    expect(gap / ((0.001 * 0.0254) / (2 * Math.PI * z0))).toBeCloseTo(1, 2)
  })

  it('drawn after twisting moves its stars apart by the drawing', () => {
    // 12 mm bars at P 16 from 12 to 6 mm, spread 0.4: λ 1.516, stars 12.1 apart.
    const bar12 = moved(stack('main', alternate(11, 0.012 / 11)), [twist({ pitch: 0.016 })])
    const [high, share] = [0.5, 0.4]
    const long = high ** -(1 - share)
    const drawn = moved(bar12, [draw({ length: long, width: high ** -share, height: high })])
    const view = faceOfBar({ length: 0.2, width: 0.016, height: 0.006 }, 'front', {
      ppmm: 15,
      depth: 0.0023,
    })
    const row = { from: { x: 0, y: 0.008 - 2e-4 }, to: { x: 0.2, y: 0.008 + 2e-4 } }
    expect(repeatAlong(fieldOf(view, drawn), row) * 1e3).toBeCloseTo(12.1, 1)
  })
})

/** A wedge: edge thickness e at y = 0, back T at y = h, flat sides, mid-plane at z = 0. */
function wedge(length: number, h: number, T: number, e: number) {
  const section = [
    [0, -e / 2],
    [h, -T / 2],
    [h, T / 2],
    [0, e / 2],
  ]
  const positions = [0, length].flatMap((x) => section.flatMap(([y, z]) => [x, y!, z!]))
  const sides = [0, 1, 2, 3].flatMap((i) => {
    const j = (i + 1) % 4
    return [i, i + 4, j, j, i + 4, j + 4]
  })
  const caps = [0, 2, 1, 0, 3, 2, 4, 5, 6, 4, 6, 7]
  const triangles = Uint32Array.from(
    [...sides, ...caps].flatMap((_, k, all) =>
      k % 3 === 0 ? [all[k]!, all[k + 2]!, all[k + 1]!] : [],
    ),
  )
  return { positions: Float64Array.from(positions), triangles }
}

describe('a flat grind', () => {
  it.each([
    { off: 0, line: 11.28 },
    { off: 1e-4, line: 11.28 + 2.46 },
    { off: -1e-4, line: 11.28 - 2.46 },
  ])(
    'through a clad core $off m off centre shows its line $line mm above the edge',
    ({ off, line }) => {
      const c = 3.5e-3 / 3
      const clad = stack(
        'main',
        ['dark', 'bright', 'dark'].map((steel) => ({ steel, thickness: c })),
      )
      const blade = moved(clad, [shift({ z: -off })])
      const view = faceOfMesh(wedge(0.01, 0.04, 3.5e-3, 0.25e-3), 'front', { ppmm: 20 })
      const met = linesAlong(fieldOf(view, blade), { x: 0.005, y: 0.04 }, { x: 0.005, y: 0 })
      expect(met.boundaries).toHaveLength(1)
      expect(met.boundaries[0]! * 1e3).toBeCloseTo(line, 1)
    },
  )

  it.each([
    { layers: 300, mm: 0.22 },
    { layers: 120, mm: 0.56 },
  ])('of 30 mm through $layers layers in 3 mm shows them $mm mm apart', ({ layers, mm }) => {
    const t = 3e-3 / layers
    const flat = stack('main', alternate(layers, t))
    const view = faceOfMesh(wedge(0.004, 0.03, 3e-3, 0.3e-3), 'front', { ppmm: 40 })
    const met = linesAlong(fieldOf(view, flat), { x: 0.002, y: 0.029 }, { x: 0.002, y: 0.001 })
    expect(met.spacing * 1e3).toBeCloseTo(mm, 2)
    // On the plan t/tan α; t/sin α on the face itself differs by the cosine, 1 in 1000 here.
    expect(met.spacing / (t / (2.7 / 60))).toBeCloseTo(1, 2)
    expect(
      spectrumAlong(fieldOf(view, flat), { axis: 'y' }).spacing / (2 * met.spacing),
    ).toBeCloseTo(1, 2)
  })
})

describe('a ladder', () => {
  /** Round-bottomed groove as deep as wide: straight walls above half a circle. */
  const w = 6.35e-3
  const depthAt = (u: number) => {
    const r = Math.abs(u)
    return r >= w / 2 ? 0 : w / 2 + Math.sqrt((w / 2) ** 2 - r * r)
  }
  it.each([
    { before: 19.05, after: 22.9 },
    { before: 12.7, after: 13.4 },
  ])(
    'cut every $before mm and flattened 19.05 to 12.7 has rungs every $after mm',
    ({ before, after }) => {
      const [p, H, flat] = [before * 1e-3, 19.05e-3, 12.7e-3]
      const from = (x: number) => x - p * Math.round(x / p)
      const columns = Array.from({ length: 6001 }, (_, i) => {
        const x = (i / 6000) * 10 * p
        const top = H / 2 - depthAt(from(x))
        const bottom = -H / 2 + depthAt(from(x - p / 2))
        return { shortening: Math.max(1e-3, top - bottom) / flat, middle: (top + bottom) / 2 }
      })
      const pressed = column({ axis: 'x', before: [0, 10 * p], from: 0, columns, cells: 8192 })
      const ladder = moved(stack('main', alternate(61, H / 61)), [pressed.warp])
      const size = { length: pressed.after[1], width: 0.004, height: flat }
      const field = fieldOf(faceOfBar(size, 'front', { ppmm: 25, depth: 3e-4 }), ladder)
      expect(repeatAlong(field) * 1e3).toBeCloseTo(after, 1)
    },
  )
})

describe('a dimple ground open', () => {
  it.each([
    { layers: 150, rings: 50 },
    { layers: 20, rings: 7 },
  ])('4 mm deep in $layers layers of a 12 mm bar shows $rings rings', ({ layers, rings }) => {
    const t = 0.012 / layers
    const [n, half, radius, depth] = [240, 0.006, 0.004, 0.004]
    const positions: number[] = []
    const triangles: number[] = []
    // A cone 4 mm wide and deep in the upper face; open below.
    for (let j = 0; j <= n; j++)
      for (let i = 0; i <= n; i++) {
        const [x, y] = [(i / n) * 2 * half, ((2 * j) / n - 1) * half]
        const r = Math.hypot(x - half, y)
        positions.push(x, y, 0.006 - Math.max(0, depth * (1 - r / radius)))
      }
    const at = (i: number, j: number) => j * (n + 1) + i
    for (let j = 0; j < n; j++)
      for (let i = 0; i < n; i++)
        triangles.push(
          at(i, j),
          at(i + 1, j),
          at(i + 1, j + 1),
          at(i, j),
          at(i + 1, j + 1),
          at(i, j + 1),
        )
    const mesh = { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) }
    const view = faceOfMesh(mesh, 'front', { ppmm: 60, depth: 1e-5 })
    const flat = stack('main', alternate(layers, t))
    const met = linesAlong(fieldOf(view, flat), { x: half, y: half }, { x: 2 * half, y: half })
    expect(Math.abs(met.boundaries.length - rings)).toBeLessThanOrEqual(1)
    expect(met.spacing / t).toBeCloseTo(1, 1)
  })
})

describe('a feather', () => {
  it('has barbs that leave the quill at tan = drag/reach', () => {
    const [drag, reach] = [0.02, 0.008]
    const standing = affine({
      rows: [
        [0, 0, -1],
        [0, 1, 0],
        [1, 0, 0],
      ],
      offset: [0.02, 0, -0.03],
    })
    const feather = moved(stack('main', alternate(101, 0.0008)), [shear({ drag, reach }), standing])
    const field = fieldOf(
      faceOfBar({ length: 0.04, width: 0.02, height: 0.004 }, 'front', { ppmm: 40 }),
      feather,
    )
    for (const side of [1, -1]) {
      const y = 0.01 - side * 4e-4
      const box = { from: { x: 0.004, y: y - 2e-4 }, to: { x: 0.024, y: y + 2e-4 } }
      const { turns, clear } = angleOf(field, box)
      const slope = (drag / reach) * Math.exp(-4e-4 / reach)
      expect(clear).toBeGreaterThan(0.98)
      expect(Math.abs(Math.tan(2 * Math.PI * (0.25 - Math.abs(turns)))) / slope).toBeCloseTo(1, 1.5)
      expect(Math.sign(turns)).toBe(side)
    }
  })
})

describe('the bright share', () => {
  it('of a section is the stack’s, whatever was done to it', () => {
    const layers = alternate(13, 0.001).map((l) => ({
      ...l,
      thickness: l.steel === 'bright' ? 0.0015 : 0.003,
    }))
    const worked = moved(stack('main', layers), [
      draw({ length: 2, width: 1, height: 0.5 }),
      twist({ pitch: 0.05 }),
    ])
    const size = { length: 0.1, width: 0.03, height: 0.015 }
    const map = drawFaceNow(faceOfBar(size, 'butt', { ppmm: 30 }), worked, { weights })
    expect(brightShare(fieldOfMap(map))).toBeCloseTo(9 / 30, 2)
  })
})
