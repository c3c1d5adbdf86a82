import { type Point } from '#geometry'
import { type Cut } from './cut.ts'

/** A groove left by a ball-ended cutter: its diameter, how deep it runs, and in which face. */
export interface BallCutter {
  readonly diameter: number
  readonly depth: number
  readonly face: 'front' | 'back'
}

/** Half the width of the groove at the face; a cutter sunk past its middle leaves upright sides. */
export function grooveHalfWidth({ diameter, depth }: BallCutter): number {
  const r = diameter / 2
  return depth >= r ? r : Math.sqrt(depth * (2 * r - depth))
}

function depthAt(cutter: BallCutter, squaredDistance: number): number {
  const r = cutter.diameter / 2
  if (squaredDistance >= r * r) return 0
  return Math.max(0, Math.sqrt(r * r - squaredDistance) - (r - cutter.depth))
}

function inFace(face: 'front' | 'back', depth: (x: number, y: number) => number) {
  const none = () => 0
  return face === 'front'
    ? { fromTop: depth, fromBottom: none }
    : { fromTop: none, fromBottom: depth }
}

/** A straight run along x (or along y with `across`), a ball end at either end. */
export function straightGroove(cutter: BallCutter, from: Point, to: Point): Cut {
  const half = grooveHalfWidth(cutter)
  const [x0, x1] = [Math.min(from.x, to.x), Math.max(from.x, to.x)]
  const [y0, y1] = [Math.min(from.y, to.y), Math.max(from.y, to.y)]
  const off = (p: number, a: number, b: number) => Math.max(a - p, 0, p - b)
  return {
    xBreaks: [x0 - half, x0, x1, x1 + half],
    yBreaks: (x) => {
      const dx = off(x, x0, x1)
      const reach = dx < half ? Math.sqrt(half * half - dx * dx) : 0
      return [y0 - reach, y0, y1, y1 + reach]
    },
    ...inFace(cutter.face, (x, y) => depthAt(cutter, off(x, x0, x1) ** 2 + off(y, y0, y1) ** 2)),
  }
}

/** Once round a rectangle with rounded corners; sizes are of the groove's middle line. */
export function trackGroove(
  cutter: BallCutter,
  track: {
    readonly centre: Point
    readonly length: number
    readonly width: number
    readonly corner: number
  },
): Cut {
  const half = grooveHalfWidth(cutter)
  const { centre, corner: k } = track
  const [a, b] = [track.length / 2, track.width / 2]
  /** Half the width of the loop that lies `out` outside the middle line, px from the middle. */
  const loop = (px: number, out: number) => {
    if (px >= a + out) return 0
    const over = px - (a - k)
    return over <= 0 ? b + out : b - k + Math.sqrt(Math.max(0, (k + out) ** 2 - over * over))
  }
  return {
    xBreaks: [a + half, a, a - half, a - k].flatMap((p) => [centre.x - p, centre.x + p]),
    yBreaks: (x) => {
      const px = Math.abs(x - centre.x)
      const ys = [loop(px, half), loop(px, 0), loop(px, -half), b - k]
      return ys.flatMap((y) => [centre.y - y, centre.y + y])
    },
    ...inFace(cutter.face, (x, y) => {
      const qx = Math.abs(x - centre.x) - (a - k)
      const qy = Math.abs(y - centre.y) - (b - k)
      const out = qx > 0 && qy > 0 ? Math.hypot(qx, qy) - k : Math.max(qx, qy) - k
      return depthAt(cutter, out * out)
    }),
  }
}

/** The middle line of a track as a loop, for drawing. */
export function trackPath(
  centre: Point,
  length: number,
  width: number,
  corner: number,
): readonly Point[] {
  const turns = 12
  const quarter = (sx: number, sy: number, from: number) =>
    Array.from({ length: turns + 1 }, (_, i) => {
      const angle = from + ((Math.PI / 2) * i) / turns
      return {
        x: centre.x + sx * (length / 2 - corner) + corner * Math.cos(angle),
        y: centre.y + sy * (width / 2 - corner) + corner * Math.sin(angle),
      }
    })
  return [
    ...quarter(1, 1, 0),
    ...quarter(-1, 1, Math.PI / 2),
    ...quarter(-1, -1, Math.PI),
    ...quarter(1, -1, (3 * Math.PI) / 2),
  ]
}
