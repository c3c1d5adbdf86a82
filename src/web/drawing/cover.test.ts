import { describe, expect, it } from 'vitest'
import fc from 'fast-check'
import { coverPixels } from './cover.ts'
import { BENCH, SECTION, layOut } from './lay-out-build.ts'
import type { Tones } from './tones.ts'

const tones: Tones = (steel) => ({ bright: steel === 'bright' ? 1 : 0, hatch: 'none' })

function stack(thicknesses: readonly number[], axis: 'x' | 'y' | 'z' = 'z') {
  return {
    form: 'layered' as const,
    axis,
    laid: thicknesses.length,
    layers: thicknesses.map((thickness, i) => ({
      steel: i % 2 === 1 ? 'bright' : 'dark',
      thickness,
    })),
  }
}

describe('sections by exact coverage', () => {
  it('169 layers in 40 px: every pixel is the mean of its layers, summed by hand', () => {
    const thicknesses = Array.from({ length: 169 }, (_, i) => 1 + ((i * 7) % 5) / 3)
    const whole = thicknesses.reduce((a, b) => a + b)
    const got = coverPixels(layOut(stack(thicknesses), SECTION, tones), 3, 40)
    for (const row of [0, 17, 39]) {
      // Counted in a million thin slices from the top of the row down.
      let bright = 0
      const slices = 20_000
      for (let k = 0; k < slices; k++) {
        let up = (1 - (row + (k + 0.5) / slices) / 40) * whole
        const layer = thicknesses.findIndex((t) => (up -= t) < 0)
        bright += layer % 2
      }
      expect(got[row * 3 + 1]).toBeCloseTo(bright / slices, 3)
    }
  })

  it('keeps the share of each steel whatever the size of the drawing', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.01, max: 3, noNaN: true }), { minLength: 1, maxLength: 40 }),
        fc.integer({ min: 1, max: 90 }),
        fc.integer({ min: 1, max: 90 }),
        fc.constantFrom('y' as const, 'z' as const),
        (thicknesses, columns, rows, axis) => {
          const whole = thicknesses.reduce((a, b) => a + b)
          const share = thicknesses.reduce((s, t, i) => s + (i % 2 ? t : 0), 0) / whole
          const got = coverPixels(layOut(stack(thicknesses, axis), SECTION, tones), columns, rows)
          const mean = got.reduce((a, b) => a + b, 0) / got.length
          expect(mean).toBeCloseTo(share, 4)
        },
      ),
      { seed: 7, numRuns: 100 },
    )
  })

  it('draws layers across the length as upright lines on the bench, and one of them in the section', () => {
    const build = stack([1, 1, 1, 1], 'x')
    expect(Array.from(coverPixels(layOut(build, BENCH, tones), 4, 1))).toEqual([0, 1, 0, 1])
    expect(Array.from(coverPixels(layOut(build, SECTION, tones), 2, 1))).toEqual([1, 1])
  })

  it('lays joined bars by their shares, and wraps a jacket round its core by area', () => {
    const part = (steel: string, share: number) => ({
      build: {
        form: 'layered' as const,
        axis: 'z' as const,
        laid: 1,
        layers: [{ steel, thickness: 1 }],
      },
      share,
      times: 1,
    })
    const parts = [part('bright', 0.25), part('dark', 0.75)]
    const beside = { form: 'joined' as const, axis: 'y' as const, how: 'side by side', parts }
    expect(Array.from(coverPixels(layOut(beside, SECTION, tones), 4, 1))).toEqual([1, 0, 0, 0])
    const wrapped = { ...beside, axis: 'section' as const }
    const got = coverPixels(layOut(wrapped, SECTION, tones), 4, 4)
    expect(got.reduce((a, b) => a + b) / 16).toBeCloseTo(0.25, 6)
    expect(got[5]).toBeCloseTo(1, 6)
    expect(got[0]).toBe(0)
  })
})
