import { drift } from '#warp'
import { describe, expect, it } from 'vitest'
import { openCrew } from './crew.ts'
import { drawFace, drawFaceNow } from './draw-face.ts'
import { SIDES, faceOfBar, sectionOfBar } from '#view'
import { type Origin, moved, stack } from './origin.ts'
import { HAMMERED, unevenness } from './unevenness.ts'
import { crop } from '#view'
import { NOTHING } from './tracer.ts'

const weights = [{ dark: 0, bright: 1 }]
const layers = Array.from({ length: 31 }, (_, i) => ({
  steel: i % 2 ? 'bright' : 'dark',
  thickness: 0.001,
}))
const bar: Origin = stack('main', layers)
const area = (map: { alpha: Uint8Array; view: { pixel: number } }) =>
  (map.alpha.reduce((sum, a) => sum + a, 0) / 255) * map.view.pixel ** 2

describe('faces of a bar', () => {
  const size = { length: 0.05, width: 0.02, height: 0.031 }
  it('show the layers where they lie, the right way up', () => {
    for (const side of SIDES) {
      const map = drawFaceNow(faceOfBar(size, side, { ppmm: 10 }), bar, { weights })
      const mean = map.means[0]!
      const at = (column: number, row: number) => mean[row * map.width + column]! / 65535
      if (side === 'front' || side === 'back') {
        // The outer sheet all over, on the very surface.
        expect(mean.every((m) => m < 10)).toBe(true)
      } else {
        const [column, rows] = [Math.floor(map.width / 2), map.height]
        expect(rows).toBe(310)
        expect(at(column, 5)).toBeCloseTo(0, 4)
        expect(at(column, 15)).toBeCloseTo(1, 4)
        expect(at(column, 25)).toBeCloseTo(0, 4)
      }
    }
  })

  it('ground down show the sheet met there', () => {
    for (const [depth, bright] of [
      [0.0005, 0],
      [0.0015, 1],
      [0.0025, 0],
      [0.0155, 1],
    ] as const) {
      const map = drawFaceNow(faceOfBar(size, 'front', { ppmm: 2, depth }), bar, { weights })
      expect(map.means[0]![500]! / 65535).toBeCloseTo(bright, 4)
    }
  })

  it('cut by planes have the area of the cut', () => {
    const across = drawFaceNow(sectionOfBar(size, { axis: 'x', at: 0.013 }, { ppmm: 12 }), bar, {
      weights,
    })
    expect(area(across)).toBeCloseTo(0.02 * 0.031, 8)
    const slant = sectionOfBar(
      size,
      { through: [0.025, 0, 0], out: [1, 0, 1], up: [0, 1, 0] },
      { ppmm: 12 },
    )
    expect(area(drawFaceNow(slant, bar, { weights }))).toBeCloseTo(0.02 * 0.031 * Math.SQRT2, 8)
  })

  it('have a hole where metal was drifted away', () => {
    const holed = moved(bar, [drift({ x: 0.025, radius: 0.006 })])
    const map = drawFaceNow(faceOfBar(size, 'front', { ppmm: 10, depth: 0.0015 }), holed, {
      weights,
    })
    expect((0.05 * 0.02 - area(map)) / (Math.PI * 0.006 ** 2)).toBeCloseTo(1, 2)
    expect(map.stack[100 * map.width + 250]).toBe(NOTHING)
  })
})

describe('drawing a large face', () => {
  const rough = moved(bar, [unevenness({ length: 0.05, width: 0.02, height: 0.031 }, HAMMERED, 4)])
  const view = faceOfBar({ length: 0.05, width: 0.02, height: 0.031 }, 'front', {
    ppmm: 20,
    depth: 0.0012,
  })
  const options = { weights }

  it('gives the same by several workers, in bands, and at once', async () => {
    const now = drawFaceNow(view, rough, options)
    const bands = await drawFace(view, rough, options)
    const crew = openCrew(2)
    try {
      const shared = await drawFace(view, rough, { ...options, crew })
      expect(bands.means).toEqual(now.means)
      expect(shared.means).toEqual(now.means)
      expect(shared.alpha).toEqual(now.alpha)
      // A second picture by the same crew, while a first is given up.
      const stop = new AbortController()
      const first = drawFace(view, rough, { ...options, crew, signal: stop.signal })
      stop.abort(new Error('enough'))
      await expect(first).rejects.toThrow('enough')
      expect((await drawFace(view, rough, { ...options, crew })).means).toEqual(now.means)
    } finally {
      crew.close()
    }
  })

  it('shows a coarse picture first and says how far it is', async () => {
    const told: string[] = []
    let coarse = 0
    await drawFace(view, rough, {
      ...options,
      onCoarse: (map) => {
        coarse = map.means[0]!.reduce((a, b) => a + b, 0) / map.means[0]!.length
        told.push(`coarse ${map.width}`)
      },
      onProgress: (share) => told.push(share.toFixed(2)),
    })
    // 1000 × 400 pixels of which about 60 000 are enough; a quarter as fine at most.
    expect(told[0]).toBe('coarse 250')
    expect(told.at(-1)).toBe('1.00')
    const fine = drawFaceNow(view, rough, options).means[0]!
    expect(coarse / (fine.reduce((a, b) => a + b, 0) / fine.length)).toBeCloseTo(1, 2)
  })

  it('in double precision differs from single by less than a thousandth', () => {
    const single = drawFaceNow(view, rough, options).means[0]!
    const double = drawFaceNow(view, rough, { ...options, precision: 'f64' }).means[0]!
    const off = single.reduce((sum, v, i) => sum + Math.abs(v - double[i]!), 0)
    expect(off / single.length / 65535).toBeLessThan(1e-3)
  })

  it('of a part is that part of the whole', () => {
    const whole = drawFaceNow(view, rough, { ...options, precision: 'f64' })
    const part = { left: 300, top: 100, width: 200, height: 150 }
    const cut = drawFaceNow(crop(view, part), rough, { ...options, precision: 'f64' })
    let most = 0
    for (let j = 1; j + 1 < part.height; j++)
      for (let i = 1; i + 1 < part.width; i++)
        most = Math.max(
          most,
          Math.abs(
            cut.means[0]![j * part.width + i]! -
              whole.means[0]![(j + part.top) * whole.width + i + part.left]!,
          ),
        )
    expect(most).toBeLessThan(70)
  })
})

describe('unevenness', () => {
  it('is as large and as long as asked for, and the same from the same seed', () => {
    const size = { length: 0.4, width: 0.2, height: 0.01 }
    const warp = unevenness(size, HAMMERED, 9)
    expect(unevenness(size, HAMMERED, 9)).toEqual(warp)
    // Lines of the middle plane: its own error, the mean of two faces', is amplitude/√2.
    const middle = Array.from(warp.tables!.middle!)
    const mean = middle.reduce((a, b) => a + b, 0) / middle.length
    const deviation = Math.sqrt(middle.reduce((sum, v) => sum + (v - mean) ** 2, 0) / middle.length)
    expect(deviation / (HAMMERED.amplitude * size.height * Math.SQRT1_2)).toBeGreaterThan(0.7)
    expect(deviation / (HAMMERED.amplitude * size.height * Math.SQRT1_2)).toBeLessThan(1.3)
    // Mean slope over mean height of waves of one length: 2π/λ/√2 along a line (by sampling neighbours).
    const columns = warp.numbers.columns!
    const cell = warp.numbers.cellX!
    let [slope, n] = [0, 0]
    for (let k = 0; k + 1 < middle.length; k++) {
      if ((k + 1) % columns === 0) continue
      slope += ((middle[k + 1]! - middle[k]!) / cell) ** 2
      n++
    }
    const wave = (2 * Math.PI * deviation) / Math.sqrt(2) / Math.sqrt(slope / n)
    expect(wave / HAMMERED.wavelength).toBeGreaterThan(0.75)
    expect(wave / HAMMERED.wavelength).toBeLessThan(1.25)
  })
})
