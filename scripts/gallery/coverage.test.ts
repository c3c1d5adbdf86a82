import { expect, it } from 'vitest'
import { crop } from '#view'
import { viewOf } from '#job'
import { patternOfPreset } from './draw-preset.ts'
import { coverageErrors } from './measure-coverage.ts'
import { presets } from './presets.ts'

/** A few pixels each; `node bench/gallery-coverage.ts` looks at every face, at every count of layers. */
it.each([
  { name: 'ladder', ppmm: 4, place: 0.5, what: 'bends and ground joints' },
  { name: 'basket-weave', ppmm: 4, place: 0.46, what: 'four bars about a point' },
])(
  '$name at $ppmm pixels to the mm is nearer than 8 × 8 points: $what',
  ({ name, ppmm, place }) => {
    const preset = presets.find((p) => p.name === name)!
    const pattern = patternOfPreset(preset)
    const view = viewOf(pattern, preset.looks[0]!.look, { ppmm })
    const part = {
      left: Math.floor(view.width * place),
      top: Math.floor(view.height * place),
      width: 8,
      height: 7,
    }
    const errors = coverageErrors([crop(view, part)], pattern.origin, pattern.light)
    expect(errors.pixels).toBeGreaterThan(15)
    expect(errors.eight).toBeGreaterThan(0.005)
    expect(errors.ours).toBeLessThan(errors.eight)
    // So few pixels have a mean of their own: as near as they themselves allow.
    expect(Math.abs(errors.bias)).toBeLessThan(1e-3 + (2 * errors.ours) / Math.sqrt(errors.pixels))
  },
)
