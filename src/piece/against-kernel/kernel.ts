import Module from 'manifold-3d'
import { readValues } from '#parameters'
import type { Mesh } from '#geometry'
import { findPieceKind } from '../piece-kinds.ts'
import type { PieceSolid } from '../piece-kind.ts'

/** An independent geometry kernel (WebAssembly); millimetres inside. */
export const kernel = await Module()
kernel.setup()

type Solid = ReturnType<typeof kernel.Manifold.cube>

/** Builds a piece from values as a job file has them; any problem fails the test with its text. */
export function make(kind: string, raw: Record<string, unknown>): PieceSolid {
  const found = findPieceKind(kind)
  if (!found.ok) throw new Error(JSON.stringify(found.problems))
  const read = readValues(found.ok.parameters, raw)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  const built = found.ok.build(read.ok.values)
  if (!built.ok) throw new Error(JSON.stringify(built.problems))
  return built.ok
}

/** Our mesh as the kernel reads it: throws unless closed and oriented. */
export function imported(mesh: Mesh): Solid {
  return new kernel.Manifold(
    new kernel.Mesh({
      numProp: 3,
      vertProperties: Float32Array.from(mesh.positions, (m) => m * 1000),
      triVerts: mesh.triangles,
    }),
  )
}

/** One convex section: corners y, z in mm. */
export type Section = readonly (readonly [number, number])[]

/** Stations closer at the ends, as a point needs. */
function stations(from: number, to: number, n: number): number[] {
  return Array.from(
    { length: n + 1 },
    (_, i) => (from + to) / 2 - ((to - from) / 2) * Math.cos((Math.PI * i) / n),
  )
}

/** Volume of n slices by the kernel's polygon areas and the midpoint rule (error falls as 1/n²), mm³. */
export function sliced(
  from: number,
  to: number,
  n: number,
  section: (x: number) => Section,
): number {
  const xs = stations(from, to, n)
  return xs.slice(1).reduce((volume, b, i) => {
    const a = xs[i]
    return volume + outlineOf(section((a + b) / 2)).area() * (b - a)
  }, 0)
}

function outlineOf(section: Section) {
  return new kernel.CrossSection([section.map(([y, z]): [number, number] => [y, z])], 'EvenOdd')
}

/** The same slices as solids, y across and z up, less tools such as drills, mm³. */
export function slicedLess(
  from: number,
  to: number,
  n: number,
  section: (x: number) => Section,
  tools: readonly Solid[],
): number {
  const xs = stations(from, to, n)
  return xs.slice(1).reduce((volume, b, i) => {
    const slab = outlineOf(section((xs[i] + b) / 2))
      .extrude(b - xs[i])
      .transform([0, 1, 0, 0, 0, 0, 1, 0, 1, 0, 0, 0, xs[i], 0, 0, 1])
    return volume + tools.reduce((left, tool) => left.subtract(tool), slab).volume()
  }, 0)
}

/** A hole through the plate at x, y (mm). */
export function drill(x: number, y: number, diameter: number, sides = ROUND): Solid {
  return kernel.Manifold.cylinder(100, diameter / 2, diameter / 2, sides, true).translate([x, y, 0])
}

/** Sides of the kernel's circles; a polygon in a circle is (2π/n)²/6 too small: 1.6e-6. */
export const ROUND = 2048
