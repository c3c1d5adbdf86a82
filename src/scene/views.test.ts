import fc from 'fast-check'
import { expect, it } from 'vitest'
import { type Vector, VIEWS, toClip, turnAbout, windowOf } from './views.ts'

const vector = (min: number, max: number): fc.Arbitrary<Vector> => {
  const number = fc.double({ min, max, noNaN: true })
  return fc.tuple(number, number, number)
}

it('whatever of the metal is in the picture is in its window', () => {
  fc.assert(
    fc.property(
      vector(-0.3, 0),
      vector(0.001, 0.4),
      vector(0.5, 2),
      vector(-0.2, 0.2),
      fc.tuple(
        fc.double({ min: 0, max: 6, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
      ),
      fc.double({ min: 1e-5, max: 3e-3, noNaN: true }),
      (low, high, stretch, middle, [a, b], pixel) => {
        const [width, height] = [400, 250]
        const pose = turnAbout(turnAbout(VIEWS.spine, [1, 0, 0], a), [0, 1, 0], b)
        const camera = { ...pose, middle, pixel }
        const found = windowOf(camera, { low, high }, stretch, width, height)
        expect(found.left).toBeGreaterThanOrEqual(0)
        expect(found.left + found.width).toBeLessThanOrEqual(width)
        // The card's own matrix says where each corner comes to lie.
        const m = toClip(camera, { low, high }, width, height)
        for (let i = 0; i < 8; i++) {
          const at = [0, 1, 2].map((k) => ((i >> k) & 1 ? high : low)[k]! * stretch[k]!)
          const [x, y] = [0, 1].map(
            (r) => m[r]! * at[0]! + m[4 + r]! * at[1]! + m[8 + r]! * at[2]! + m[12 + r]!,
          )
          const [px, py] = [((x! + 1) / 2) * width, ((y! + 1) / 2) * height]
          if (px < 0 || px > width || py < 0 || py > height) continue
          expect(px).toBeGreaterThanOrEqual(found.left)
          expect(px).toBeLessThanOrEqual(found.left + found.width)
          expect(py).toBeGreaterThanOrEqual(found.bottom)
          expect(py).toBeLessThanOrEqual(found.bottom + found.height)
        }
      },
    ),
    { seed: 7, numRuns: 60 },
  )
})
