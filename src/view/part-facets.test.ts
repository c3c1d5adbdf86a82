import { describe, expect, it } from 'vitest'
import { faceOfMesh } from './face.ts'
import { facetsOfParts } from './raster.ts'

describe('the surface under parts of a pixel', () => {
  it('is both sides of a ridge that runs through its middle', () => {
    // A roof 3 mm long and wide, ridge 1 mm high at y = 1.5 mm: in the middle of the second row of three.
    const mm = [0, 0, 0, 3, 0, 0, 0, 1.5, 1, 3, 1.5, 1, 0, 3, 0, 3, 3, 0]
    const mesh = {
      positions: Float64Array.from(mm, (v) => v / 1000),
      triangles: Uint32Array.of(0, 1, 2, 1, 3, 2, 2, 3, 4, 3, 5, 4),
    }
    const view = faceOfMesh(mesh, 'front', { ppmm: 1 })
    const parts = facetsOfParts(view, 0, [4], 4)!
    const down = 1 / 1.5
    parts.out.forEach((out, at) => {
      const row = Math.floor(at / 4)
      const away = Math.abs(row - 1.5) / 4
      expect(out).toBeCloseTo((1 - away * down) / 1000, 9)
      expect(parts.slopeUp[at]).toBeCloseTo(row < 2 ? -down : down, 6)
    })
  })
})
