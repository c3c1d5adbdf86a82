import { describe, expect, it } from 'vitest'
import { splineAt } from '#geometry'
import { compile } from '#warp'
import { buildPiece, plaqueWithStamp, shapedPlaque } from '../sample-pieces.ts'
import { stamp } from './index.ts'
import { faceOf } from './emblem.ts'
import { pressedShape } from './pressed-shape.ts'

const piece = buildPiece(plaqueWithStamp)
const box = piece.edges.stamp!
const at = (dx: number, dy: number) => [box.at.x + dx, box.at.y + dy] as const
const shapeOf = (asked: Parameters<typeof faceOf>[0], stock = 2e-4) =>
  pressedShape(asked, faceOf(asked, box).ok!, box, { stock, share: 1 })
/** The splines of a table share out each place among them: what it holds is the sum of its cells. */
const volumeOf = ({ depths: { values, cellX, cellY } }: ReturnType<typeof shapeOf>) =>
  values.reduce((a, b) => a + b, 0) * cellX * cellY

describe('what a stamp presses in', () => {
  it('is the emblem’s area times the depth: a disc, a frame, and the box at its mean depth', () => {
    const r = box.width / 2
    const disc = shapeOf({ emblem: 'M-5 0A5 5 0 1 0 5 0A5 5 0 1 0-5 0Z' })
    expect(volumeOf(disc) / (Math.PI * r * r * disc.floor)).toBeCloseTo(1, 3)
    const frame = shapeOf({ emblem: 'M0 0H10V10H0Z M3 3V7H7V3Z' })
    expect(volumeOf(frame) / (0.84 * box.width ** 2 * frame.floor)).toBeCloseTo(1, 9)
    const plain = shapeOf({}, 0)
    const weighed = piece.features.find((f) => f.kind === 'stamp')!.volume
    expect(volumeOf(plain) / weighed).toBeCloseTo(1, 9)
  })

  it('never rises out of the face, however little a box is pressed in', () => {
    // The piece asks for 1.5 mm: as told, half of it, and less than what comes off with the face.
    const floorOf = (depth: number) => shapeOf({ depth } as object).floor
    const told = floorOf(box.depth + 2e-4)
    expect(told).toBeCloseTo(box.depth * box.share + 2e-4, 9)
    expect(floorOf(box.depth / 2)).toBeLessThan(told)
    expect(floorOf(1e-5)).toBeGreaterThan(0)
    expect(floorOf(1e-5)).toBeLessThanOrEqual(1e-5)
  })

  it('is whole inside the outline, half on it, nothing outside, and stands upright', () => {
    // An L: its upright at the left, its foot at the right and below.
    const { depths, floor } = shapeOf({ emblem: 'M0 0H4V12H16V16H0Z' })
    const share = (dx: number, dy: number) => splineAt(depths, ...at(dx, dy))[0] / floor
    const [left, low] = [-box.width / 2, -box.width / 2]
    expect(share(left + 2e-3, 8e-3)).toBeCloseTo(1, 9)
    expect(share(8e-3, low + 2e-3)).toBeCloseTo(1, 9)
    expect(share(8e-3, 8e-3)).toBe(0)
    expect(share(left, 0)).toBeCloseTo(0.5, 1)
    expect(share(left - 2e-3, 0)).toBe(0)
  })

  it('has walls as wide as the stamp’s edge is round', () => {
    const steepest = (edgeRadius: number) => {
      const { depths, floor } = shapeOf({ emblem: 'M0 0H16V10H0Z', edgeRadius } as object)
      return floor / Math.abs(splineAt(depths, ...at(-box.length / 2, 0))[1])
    }
    // Twice the rounding and 7° of draft, of which the steepest place shows about half.
    const run = (edgeRadius: number) => 2 * edgeRadius + 1.7e-3 * Math.tan((7 * Math.PI) / 180)
    for (const r of [2e-4, 5e-4]) {
      expect(steepest(r)).toBeGreaterThan(0.4 * run(r))
      expect(steepest(r)).toBeLessThan(run(r))
    }
  })
})

describe('metal under a stamp', () => {
  const before = shapedPlaque(2e-4, [], plaqueWithStamp)
  const values = { emblem: 'M0 0H4V12H16V16H0Z', rim: 'left' } as never
  const smithy = { shop: {}, densities: {}, compositions: {}, piece } as never
  const { warps, imprint } = stamp.movement([before], values, before, smithy)
  const face = before.size.height / 2
  const pulled = (x: number, y: number, z: number) => {
    const points = { x: [x], y: [y], z: [z] }
    return compile(warps).evaluate(points).z[0]
  }

  it('comes to the floor from the face that was struck', () => {
    const { depths } = imprint!
    const start = (before.size.length - piece.size.length) / 2
    for (const [dx, dy] of [
      [-0.0115, 0.008],
      [-0.0124, 0.004],
      [0.006, -0.0105],
    ] as const) {
      const [x, y] = at(dx, dy)
      const depth = splineAt(depths, x, y)[0]
      expect(depth).toBeGreaterThan(5e-4)
      expect(pulled(x + start, y, face - depth)).toBeCloseTo(face, 9)
    }
  })

  it('stays beside the emblem, and is moved ever less below it', () => {
    const [x, y] = at(0.008, 0.008)
    expect(pulled(x, y, face - 1e-3)).toBeCloseTo(face - 1e-3, 12)
    const [u, v] = at(-0.0105, 0.004)
    const moved = [0.002, 0.004, 0.008].map((d) => pulled(u, v, face - d) - (face - d))
    expect(moved[0]).toBeGreaterThan(moved[1])
    expect(moved[1]).toBeGreaterThan(moved[2])
    expect(moved[2]).toBeLessThan(1e-4)
  })
})
