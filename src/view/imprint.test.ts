import { describe, expect, it } from 'vitest'
import { meshVolume, openSides } from '#geometry'
import { type Imprint, findPieceKind, imprintAt } from '#piece'
import { faceOfMesh, faceOfSolid, faceted } from './face.ts'
import { rasterise } from './raster.ts'

const solid = findPieceKind('plaque').ok!.build({
  ...{ length: 0.04, width: 0.02, thickness: 0.006, cornerRadius: 0, edge: 'square', edgeSize: 0 },
  ...{ holes: 'none', grooves: [] },
  ...{
    stampLength: 0.012,
    stampWidth: 0.008,
    stampDepth: 1e-3,
    stampShare: 0.5,
    stampX: 0,
    stampY: 0,
  },
}).ok!

/** A trough across the middle of the face: a slope of a quarter from 15 to 20 mm, level, and up again. */
const columns = 14
const imprint: Imprint = {
  depths: {
    ...{ x: 0.014, y: -0.004, cellX: 1e-3, cellY: 4e-3, columns },
    values: Array.from({ length: columns * 4 }, (_, k) => {
      const i = k % columns
      return 2.5e-4 * Math.max(0, Math.min(i - 1, 4, columns - 2 - i))
    }),
  },
  lost: 1e-4,
  told: 'a trough',
}

/** Height and normal at a place of the front. */
function seen(x: number, y: number, depth = 0) {
  const view = faceOfSolid(solid.stamped(imprint), 'front', { ppmm: 5, depth, facet: 2e-3 })
  const [column, row] = [x, 0.01 - y].map((v) => Math.floor(v / view.pixel)) as [number, number]
  const { facets } = rasterise(view, row, row + 1)
  const { out, normalRight, slopeRight } = facets!
  return { out: out[column]!, normal: normalRight[column]!, slope: slopeRight[column]! }
}

describe('an imprint in a face', () => {
  it('lowers the face where it is deeper than what was ground off, and leans it', () => {
    expect(seen(0.0055, 0).out).toBeCloseTo(0.003, 9)
    expect(seen(0.0199, 0).out).toBeCloseTo(0.003 - 9e-4, 5)
    // Falling to the right by a quarter: the normal leans right.
    const wall = seen(0.0171, 0)
    expect(wall.slope).toBeCloseTo(-0.25, 3)
    expect(wall.normal).toBeCloseTo(0.25 / Math.hypot(0.25, 1), 3)
  })

  it('is ground away from above: the floor is met last', () => {
    expect(seen(0.0055, 0, 5e-4).out).toBeCloseTo(0.0025, 9)
    expect(seen(0.0199, 0, 5e-4).out).toBeCloseTo(0.003 - 9e-4, 5)
    expect(seen(0.0199, 0, 1e-3).out).toBeCloseTo(0.002, 9)
  })

  it('spares its floor the polish, as far as it lies below the ground face, and nothing else', () => {
    const spared = (x: number, depth = 0) => {
      const view = faceOfSolid(solid.stamped(imprint), 'front', { ppmm: 5, depth, facet: 2e-3 })
      const row = Math.floor(view.height / 2)
      return rasterise(view, row, row + 1).facets!.spared![Math.floor(x / view.pixel)]! / 255
    }
    expect(spared(0.0055)).toBe(0)
    expect(spared(0.0199)).toBe(1)
    // On the slope, 0.15 mm deep there, of which 0.1 mm were ground off: half of what is still rubbed.
    expect(spared(0.0151)).toBeCloseTo(0.5, 1)
    expect(spared(0.0199, 8.5e-4)).toBeCloseTo(0.5, 1)
    expect(spared(0.0199, 1e-3)).toBe(0)
  })

  it.each([25, 80])(
    'seen aslant by %d° is met where the line of sight first meets metal',
    (degrees) => {
      const stamped = solid.stamped(imprint)
      const [s, c] = [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)]
      const out = [s, 0, c] as const
      // Facets of 2 mm: were the wall theirs, it would be met a tenth of a millimetre off.
      const view = faceOfMesh(faceted(stamped, 2e-3), { out, up: [0, 1, 0] }, { ppmm: 5 })
      const row = Math.floor(view.height / 2)
      const { facets } = rasterise(view, row, row + 1)
      let [pressed, clear] = [0, Infinity]
      for (let column = 0; column < view.width; column++) {
        const seen = (column + 0.5) * view.pixel
        const place = (away: number) =>
          [0, 2].map(
            (k) =>
              view.frame.origin[k]! +
              seen * view.frame.right[k]! +
              (facets!.out[column]! + away) * out[k]!,
          ) as [number, number]
        const [x, z] = place(0)
        if (x < 0.0131 || x > 0.0269) continue
        expect(z).toBeCloseTo(stamped.top(x, 0), 5)
        if (z < 0.003 - 1e-4) pressed++
        for (let away = 2e-5; away < 4e-3; away += 5e-5) {
          const [px, pz] = place(away)
          clear = Math.min(clear, pz - stamped.top(px, 0))
        }
      }
      expect(pressed).toBeGreaterThan(5)
      expect(clear).toBeGreaterThan(-1e-9)
    },
  )

  it('is where the solid says, whose account stays', () => {
    const stamped = solid.stamped(imprint)
    expect(stamped.top(0.0199, 0)).toBeCloseTo(0.003 - 9e-4, 5)
    expect(stamped.volume).toBe(solid.volume)
    expect(solid.stamped(undefined).top(0.02, 0)).toBe(0.003)
    expect(solid.top(0.02, 0)).toBeCloseTo(0.003 - 5e-4, 12)
  })

  it('leaves a closed surface, short of what was pressed in below the ground face', () => {
    const [flat, stamped] = [undefined, imprint].map((by) => solid.stamped(by).mesh(1e-3))
    expect(openSides(stamped!)).toBe(0)
    // The section along, in strips of 10 µm, 8 mm across.
    let section = 0
    for (let x = 0.014005; x < 0.026; x += 1e-5) section += 1e-5 * imprintAt(imprint, x, 0)[0]
    const taken = meshVolume(flat!) - meshVolume(stamped!)
    expect(taken / (section * 8e-3)).toBeCloseTo(1, 2)
  })
})
