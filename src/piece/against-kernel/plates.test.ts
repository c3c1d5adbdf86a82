import { describe, expect, it } from 'vitest'
import { ROUND, drill, kernel, make } from './kernel.ts'

const { Manifold, CrossSection } = kernel

/** Relative difference of our volume from the kernel's (mm³). */
function off(kind: string, raw: Record<string, unknown>, volume: number): number {
  return Math.abs((make(kind, raw).volume * 1e9) / volume - 1)
}

/** A plate whose corners and edges are rounded: the hull of four turned corner pieces. */
function roundedPlate(
  length: number,
  width: number,
  height: number,
  corner: number,
  edge: number,
  n: number,
) {
  const profile = CrossSection.hull([
    ...[-1, 1].map((up) =>
      CrossSection.circle(edge, n).translate([corner - edge, up * (height / 2 - edge)]),
    ),
    CrossSection.square([corner / 2, height]).translate([0, -height / 2]),
  ]).intersect(CrossSection.square([2 * corner, 2 * height]).translate([0, -height]))
  const post = Manifold.revolve(profile, n)
  return Manifold.hull(
    [corner, length - corner].flatMap((x) =>
      [-1, 1].map((side) => post.translate([x, side * (width / 2 - corner), 0])),
    ),
  )
}

/** Fewer sides where spheres and turned profiles would grow large: 7e-4 too small in each circle. */
const COARSE = 96

describe('plates and bars against the kernel’s own primitives', () => {
  it('bars: square, rounded edges, octagon, round', () => {
    expect(off('bar', { length: '105 mm' }, Manifold.cube([105, 30, 30]).volume())).toBeLessThan(
      1e-9,
    )
    const rounded = CrossSection.square([36, 4], true).offset(2, 'Round', 2, ROUND).extrude(300)
    expect(
      off(
        'bar',
        { width: '40 mm', thickness: '8 mm', edge: 'radius', edgeSize: '2 mm' },
        rounded.volume(),
      ),
    ).toBeLessThan(1e-6)
    const octagon = CrossSection.circle(10 / Math.cos(Math.PI / 8), 8).extrude(300)
    const eight = { width: '20 mm', thickness: '20 mm', section: 'octagon' }
    expect(off('bar', eight, octagon.volume())).toBeLessThan(1e-9)
    expect(
      off('round-bar', { diameter: '26 mm' }, Manifold.cylinder(300, 13, 13, ROUND).volume()),
    ).toBeLessThan(2e-6)
  })

  it('ingot, as the hull of its corners', () => {
    const corners = [0, 150].flatMap((x) =>
      [
        [-20, 12.5],
        [20, 12.5],
        [-25, -12.5],
        [25, -12.5],
      ].map(([y, z]): [number, number, number] => [x, y, z]),
    )
    expect(off('ingot', {}, Manifold.hull(corners).volume())).toBeLessThan(1e-9)
  })

  it('plaque with rounded edges, screw holes, ball grooves and a stamped box', () => {
    const raw = {
      length: '140 mm',
      width: '60 mm',
      thickness: '8 mm',
      cornerRadius: '6 mm',
      edge: 'radius',
      edgeSize: '1.5 mm',
      holes: 'corners',
      holeInset: '8 mm',
      grooves: [
        { path: 'around', inset: '15 mm', cutter: '4 mm', depth: '1.5 mm', corner: '7 mm' },
        { path: 'along', inset: '50 mm', cutter: '6 mm', depth: '2 mm', offset: '1 mm' },
      ],
      stampLength: '30 mm',
      stampWidth: '18 mm',
      stampDepth: '1.2 mm',
      stampShare: '100 %',
    }
    const plate = roundedPlate(140, 60, 8, 6, 1.5, COARSE)
    const ball = Manifold.sphere(3, 64)
    const along = Manifold.hull([50, 90].map((x) => ball.translate([x, 1, -5])))
    const rod = (length: number) => Manifold.cylinder(length, 2, 2, COARSE, true)
    const [hx, hy] = [70 - 15 - 7, 30 - 15 - 7]
    const turn = CrossSection.circle(2, COARSE).translate([7, 0])
    const track = [
      ...[-1, 1].map((s) =>
        rod(2 * hx)
          .rotate([0, 90, 0])
          .translate([70, 15 * s, -4.5]),
      ),
      ...[-1, 1].map((s) =>
        rod(2 * hy)
          .rotate([90, 0, 0])
          .translate([70 + s * (hx + 7), 0, -4.5]),
      ),
      ...[0, 1, 2, 3].map((q) =>
        Manifold.revolve(turn, COARSE, 90)
          .rotate([0, 0, 90 * q])
          .translate([70 + [1, -1, -1, 1][q] * hx, [1, 1, -1, -1][q] * hy, -4 - 0.5]),
      ),
    ]
    const cut = [
      ...[8, 132].flatMap((x) => [-22, 22].map((y) => drill(x, y, 4.5, 512))),
      ...track,
      along,
      Manifold.cube([30, 18, 2]).translate([55, -9, 4 - 1.2]),
    ].reduce((left, tool) => left.subtract(tool), plate)
    expect(off('plaque', raw, cut.volume())).toBeLessThan(3e-5)
    expect(cut.genus()).toBe(4)
  })

  it('ring blanks, straight (two cylinders) and crowned (a turned profile)', () => {
    const tube = Manifold.cylinder(8, 12, 12, ROUND).subtract(Manifold.cylinder(8, 9.5, 9.5, ROUND))
    expect(off('ring-blank', {}, tube.volume())).toBeLessThan(3e-6)
    const wall = CrossSection.square([2.5, 6]).translate([9, -3])
    const crown = CrossSection.circle(8, ROUND).translate([9 + 8, 0])
    const ring = Manifold.revolve(wall.intersect(crown), 768)
    const raw = {
      insideDiameter: '18 mm',
      outsideDiameter: '23 mm',
      width: '6 mm',
      comfortRadius: '8 mm',
    }
    expect(off('ring-blank', raw, ring.volume())).toBeLessThan(2e-5)
  })

  it('guards: rounded ends and edges with a slot; crowned front with a round-ended slot', () => {
    const slot = Manifold.cube([22, 5, 20], true).translate([35, 0, 0])
    const plain = roundedPlate(70, 18, 8, 9, 1, 136).subtract(slot)
    expect(off('guard', {}, plain.volume())).toBeLessThan(1e-4)
    const crown = Array.from({ length: 1201 }, (_, i): [number, number] => {
      const x = (30 * i) / 1200
      return [x, 5 - 2 * (2 * (x / 30) - 1) ** 2]
    })
    const side = new CrossSection([[[0, -5], [30, -5], ...crown.reverse()]])
    const block = side.extrude(12).rotate([90, 0, 0]).translate([0, 6, 0])
    const plan = CrossSection.square([24, 6], true)
      .offset(3, 'Round', 2, ROUND)
      .extrude(20, 0, 0, [1, 1], true)
      .translate([15, 0, 0])
    const mouth = CrossSection.hull(
      [-5.5, 5.5].map((x) => CrossSection.circle(2, ROUND).translate([x, 0])),
    )
    const bolster = block
      .intersect(plan)
      .subtract(mouth.extrude(20, 0, 0, [1, 1], true).translate([15, 0, 0]))
    const raw = {
      length: '30 mm',
      width: '12 mm',
      thickness: '10 mm',
      cornerRadius: '3 mm',
      edgeRadius: '0 mm',
      slotLength: '15 mm',
      slotWidth: '4 mm',
      slotEndRadius: '2 mm',
      dome: '2 mm',
    }
    expect(off('guard', raw, bolster.volume())).toBeLessThan(5e-6)
  })
})
