import { drawFaceNow, moved, stack } from '#pattern'
import { faceOfBar } from '#view'
import FFT from 'fft.js'
import { describe, expect, it } from 'vitest'
import {
  type Field,
  angleOf,
  brightShare,
  drawContours,
  drawEtched,
  drawLabels,
  drawLayerMap,
  fieldOfMap,
  fieldOfPicture,
  finishes,
  linesAlong,
  repeatAlong,
  spectrumAlong,
} from './index.ts'
import { traceContours } from './contours.ts'
import { transform } from './fourier.ts'

/** Stripes of a wavelength (m) whose crests lean by turns from the right, upwards. */
function stripes(
  turns: number,
  wavelength: number,
  width = 400,
  height = 300,
  perMetre = 10_000,
): Field {
  const values = Float32Array.from({ length: width * height }, (_, k) => {
    const [x, y] = [(k % width) / perMetre, -Math.floor(k / width) / perMetre]
    const across = -x * Math.sin(2 * Math.PI * turns) + y * Math.cos(2 * Math.PI * turns)
    return 0.5 + 0.5 * Math.sin((2 * Math.PI * across) / wavelength)
  })
  return { width, height, values, perMetre }
}

describe('measuring', () => {
  it('transforms as another library does', () => {
    const n = 1024
    const wave = Array.from(
      { length: n },
      (_, i) => Math.sin(0.37 * i) + 0.3 * Math.cos(0.011 * i * i),
    )
    const other = new FFT(n)
    const out = other.createComplexArray()
    other.realTransform(out, wave)
    const [re, im] = [Float64Array.from(wave), new Float64Array(n)]
    transform(re, im)
    for (let k = 0; k <= n / 2; k++) {
      expect(re[k]).toBeCloseTo(out[2 * k], 8)
      expect(im[k]).toBeCloseTo(out[2 * k + 1], 8)
    }
  })

  it.each([0.02, 0.1, 0.125, 0.2, -0.05, -0.2])(
    'tells lines at %s turns from the right',
    (turns) => {
      const found = angleOf(stripes(turns, 2.3e-3))
      expect(found.turns).toBeCloseTo(turns, 3)
      expect(found.clear).toBeGreaterThan(0.98)
    },
  )

  it('tells the spacing of stripes three ways', () => {
    const field = stripes(0.25, 1.7e-3)
    const met = linesAlong(field, { x: 0.001, y: 0.01 }, { x: 0.039, y: 0.01 })
    // Two boundaries a wave.
    expect(2 * met.spacing * 1e3).toBeCloseTo(1.7, 2)
    expect(spectrumAlong(field).spacing * 1e3).toBeCloseTo(1.7, 2)
    expect(repeatAlong(field) * 1e3).toBeCloseTo(1.7, 2)
  })

  it('finds nothing where there is nothing', () => {
    const level: Field = {
      width: 64,
      height: 64,
      values: new Float32Array(64 * 64).fill(0.5),
      perMetre: 1e4,
    }
    expect(repeatAlong(level)).toBe(Infinity)
    expect(spectrumAlong(level).spacing).toBe(Infinity)
    expect(angleOf(level).clear).toBe(0)
    expect(linesAlong(level, { x: 0, y: 0 }, { x: 0.006, y: 0.006 }).boundaries).toEqual([])
  })
})

describe('a picture of an etched face, taken as a photograph', () => {
  const layers = Array.from({ length: 11 }, (_, i) => ({
    steel: i % 2 ? 'bright' : 'dark',
    thickness: 0.001,
  }))
  const turnsPerMetre = 1 / 0.0254
  const twist = { kind: 'twist', form: 'even', numbers: { turnsPerMetre, phase: 0 } } as const
  const twisted = moved(stack('main', layers), [twist])
  const view = faceOfBar({ length: 0.1016, width: 0.01, height: 0.011 }, 'front', {
    ppmm: 20,
    depth: 0.004,
  })
  const map = drawFaceNow(view, twisted, { weights: [{ dark: 0, bright: 1 }] })
  const drawn = fieldOfMap(map)
  const etched = drawEtched(map, { scaleBar: false })
  // A lamp to the left: three times as bright there as on the right.
  const lit = Uint8Array.from(
    etched.data,
    (v, i) => v * (1 - (0.5 * (Math.floor(i / 3) % map.width)) / map.width),
  )
  const photograph = fieldOfPicture({ ...etched, data: lit }, etched.perMetre)

  it('measures as the pattern it was drawn from', () => {
    const row = { from: { x: 0, y: 0.0048 }, to: { x: 0.1016, y: 0.0052 } }
    expect(repeatAlong(photograph, row) / repeatAlong(drawn, row)).toBeCloseTo(1, 2)
    const line = [
      { x: 0.002, y: 0.005 },
      { x: 0.1, y: 0.005 },
    ] as const
    const [a, b] = [linesAlong(drawn, ...line), linesAlong(photograph, ...line)]
    expect(b.boundaries.length).toBe(a.boundaries.length)
    expect(Math.abs(b.spacing / a.spacing - 1)).toBeLessThan(0.01)
    expect(brightShare(photograph, 'photograph')).toBeCloseTo(brightShare(drawn), 1)
  })

  it('shows bright steel far lighter than dark and clips neither, in every finish', () => {
    for (const finish of Object.values(finishes)) {
      const { data } = drawEtched(map, { finish, scaleBar: false, bits: 16 })
      const mean = [0, 0]
      const count = [0, 0]
      map.means[0]!.forEach((c, i) => {
        const side = c > 65000 ? 1 : c < 500 ? 0 : -1
        if (side < 0) return
        mean[side]! += data[3 * i]! / 65535
        count[side]!++
      })
      const [dark, bright] = mean.map((m, k) => m / count[k]!)
      expect(bright! - dark!).toBeGreaterThan(finish.name === 'bright' ? 0.12 : 0.35)
      expect(dark!).toBeGreaterThan(0.05)
      expect(Array.from(data).reduce((most, v) => Math.max(most, v), 0)).toBeLessThan(65535)
    }
  })

  it('is the same picture twice', () => {
    expect(drawEtched(map, { scaleBar: false }).data).toEqual(etched.data)
  })

  it('in outline encloses the bright steel', () => {
    const area = traceContours(map).reduce((sum, loop) => {
      let twice = 0
      for (let i = 0; i < loop.length; i += 2) {
        const j = (i + 2) % loop.length
        twice += loop[i]! * loop[j + 1]! - loop[j]! * loop[i + 1]!
      }
      return sum + twice / 2
    }, 0)
    expect(Math.abs(area) / (101.6 * 10)).toBeCloseTo(brightShare(drawn), 2)
    const svg = drawContours(map)
    expect(svg).toMatch(/width="101\.6mm"/)
    expect(svg).not.toMatch(/NaN|Infinity/)
  })

  it('has a plain map in the steels’ tones, and labels', () => {
    const plain = drawLayerMap(map, { bits: 16, scaleBar: false })
    expect([...plain.data.subarray(0, 50)]).toEqual([...map.means[0]!.subarray(0, 50)])
    expect(new Set(drawLabels(map).data)).toEqual(new Set([1]))
  })
})
