import type { Outline } from '#geometry'
import type { Imprint } from '#piece'

export type Vector = readonly [number, number, number]

/** Where a picture's plane lies in the metal's frame: unit vectors, right × up = out, out towards the eye. */
export interface Frame {
  /** The picture's lower left corner. */
  readonly origin: Vector
  readonly right: Vector
  readonly up: Vector
  readonly out: Vector
}

/** A plane cut, bounded by loops (even-odd) in the picture's plane, m from its lower left corner. */
export interface FlatSurface {
  readonly kind: 'flat'
  readonly outlines: readonly Outline[]
}

/** Triangles in the picture's frame: right, up, out of each corner, m. Those that face away are the back. */
export interface FacetSurface {
  readonly kind: 'facets'
  readonly positions: Float64Array
  readonly triangles: Uint32Array
  /** Unit normals of the three corners of each triangle, smooth across all but real edges. */
  readonly normals: Float32Array
  /** What is pressed into the facets from above, in the metal's frame: finer than any facet. */
  readonly imprint?: Imprint
}

export type Surface = FlatSurface | FacetSurface

/** A face to be drawn: plain data, so that any worker can draw a part of it. */
export interface FaceView {
  readonly title: string
  readonly frame: Frame
  /** Pixels. */
  readonly width: number
  readonly height: number
  /** Side of a pixel, m. */
  readonly pixel: number
  readonly surface: Surface
  /** How far the surface is ground away, square to itself, m. */
  readonly depth: number
}

/** The same face in pixels `times` as large. */
export function coarsen(view: FaceView, times: number): FaceView {
  const pixel = view.pixel * times
  const [width, height] = [Math.ceil(view.width / times), Math.ceil(view.height / times)]
  // Rows are counted from the top: the corner below moves down by what the last row overhangs.
  const drop = height * pixel - view.height * view.pixel
  const { origin, up } = view.frame
  const lower: Vector = [0, 1, 2].map((k) => origin[k]! - drop * up[k]!) as unknown as Vector
  return {
    ...view,
    width,
    height,
    pixel,
    frame: { ...view.frame, origin: lower },
    surface: lift(view.surface, drop),
  }
}

function lift(surface: Surface, by: number): Surface {
  if (by === 0) return surface
  if (surface.kind === 'flat')
    return {
      kind: 'flat',
      outlines: surface.outlines.map((loop) => loop.map(({ x, y }) => ({ x, y: y + by }))),
    }
  const positions = Float64Array.from(surface.positions)
  for (let i = 1; i < positions.length; i += 3) positions[i] = positions[i]! + by
  return { ...surface, positions }
}

/** A part of the same face, in pixels from its upper left corner. */
export function crop(
  view: FaceView,
  part: { left: number; top: number; width: number; height: number },
): FaceView {
  const right = part.left * view.pixel
  const up = (view.height - part.top - part.height) * view.pixel
  const { frame, surface } = view
  const origin = [0, 1, 2].map(
    (k) => frame.origin[k]! + right * frame.right[k]! + up * frame.up[k]!,
  ) as unknown as Vector
  let moved: Surface
  if (surface.kind === 'flat')
    moved = {
      kind: 'flat',
      outlines: surface.outlines.map((loop) =>
        loop.map(({ x, y }) => ({ x: x - right, y: y - up })),
      ),
    }
  else {
    const positions = Float64Array.from(surface.positions, (v, i) =>
      i % 3 === 0 ? v - right : i % 3 === 1 ? v - up : v,
    )
    moved = { ...surface, positions }
  }
  const { width, height } = part
  return { ...view, frame: { ...frame, origin }, surface: moved, width, height }
}
