import { readValues } from '#parameters'
import { drawFaceNow, stack } from '#pattern'
import { faceOfSolid, sectionOfSolid } from '#view'
import { findPieceKind } from '#piece'
import { describe, expect, it } from 'vitest'

function solid(kind: string) {
  const found = findPieceKind(kind).ok!
  return found.build(readValues(found.parameters, {}).ok!.values as never).ok!
}
function loopArea(loop: readonly { readonly x: number; readonly y: number }[]) {
  return loop.reduce((sum, a, i) => {
    const b = loop[(i + 1) % loop.length]!
    return sum + (a.x * b.y - b.x * a.y) / 2
  }, 0)
}
const weights = [{ dark: 0, bright: 1 }]
const layers = Array.from({ length: 31 }, (_, i) => ({
  steel: i % 2 ? 'bright' : 'dark',
  thickness: 0.001,
}))
const bar = stack('main', layers)
const area = (map: { alpha: Uint8Array; view: { pixel: number } }) =>
  (map.alpha.reduce((sum, a) => sum + a, 0) / 255) * map.view.pixel ** 2

describe('faces of pieces', () => {
  it.each(['hidden-tang-knife', 'plaque', 'dagger', 'guard', 'ring-blank', 'round-bar'])(
    'of a %s cover its outline, and sections its section area',
    (kind) => {
      const piece = solid(kind)
      const ppmm = Math.min(9, 700 / (piece.size.length * 1e3))
      const map = drawFaceNow(faceOfSolid(piece, 'front', { ppmm, margin: 0.001 }), bar, {
        weights,
      })
      const outline = piece.edges.outline.reduce((sum, loop) => sum + loopArea(loop), 0)
      expect(area(map) / outline).toBeCloseTo(1, 2)
      const x = piece.size.length * 0.4137
      const cut = drawFaceNow(
        sectionOfSolid(piece, { axis: 'x', at: x }, { ppmm: 15, facet: 2e-4 }),
        bar,
        { weights },
      )
      expect(area(cut) / piece.area(x)).toBeCloseTo(1, 2)
    },
    30_000,
  )

  it('show what the surface meets: the steel at the height of the solid, on bevels too', () => {
    const knife = solid('hidden-tang-knife')
    const fine = stack(
      'main',
      Array.from({ length: 9 }, (_, i) => ({
        steel: i % 2 ? 'bright' : 'dark',
        thickness: 0.0005,
      })),
    )
    const view = faceOfSolid(knife, 'front', { ppmm: 8 })
    const map = drawFaceNow(view, fine, { weights })
    let [same, seen] = [0, 0]
    for (let j = 0; j < map.height; j += 3)
      for (let i = 0; i < map.width; i += 3) {
        const at = j * map.width + i
        const share = map.means[0]![at]! / 65535
        if (map.alpha[at] !== 255 || (share > 0.02 && share < 0.98)) continue
        const [x, y] = [
          (i + 0.5) * view.pixel,
          (map.height - j - 0.5) * view.pixel + view.frame.origin[1],
        ]
        const sheet = Math.min(8, Math.max(0, Math.floor((knife.top(x, y) + 0.00225) / 0.0005)))
        seen++
        if (share > 0.5 === (sheet % 2 === 1)) same++
      }
    expect(seen).toBeGreaterThan(3000)
    expect(same / seen).toBeGreaterThan(0.995)
  })
})
