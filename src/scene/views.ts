import type { Size } from '#geometry'

export type Vector = readonly [number, number, number]

/** How the metal lies to the eye: unit vectors in its frame, right × up = out, out towards the eye. */
export interface Pose {
  readonly right: Vector
  readonly up: Vector
  readonly out: Vector
}

/** Pose, the point in the middle of the picture, and the side of a pixel, m. */
export interface Camera extends Pose {
  readonly middle: Vector
  readonly pixel: number
}

/** The views with a name; the back is the piece rolled over about its length, as a smith turns it. */
export const VIEWS = {
  face: { right: [1, 0, 0], up: [0, 1, 0], out: [0, 0, 1] },
  back: { right: [1, 0, 0], up: [0, -1, 0], out: [0, 0, -1] },
  edge: { right: [1, 0, 0], up: [0, 0, 1], out: [0, -1, 0] },
  spine: { right: [1, 0, 0], up: [0, 0, -1], out: [0, 1, 0] },
  butt: { right: [0, -1, 0], up: [0, 0, 1], out: [-1, 0, 0] },
  point: { right: [0, 1, 0], up: [0, 0, 1], out: [1, 0, 0] },
} as const satisfies Record<string, Pose>
export type ViewName = keyof typeof VIEWS

export function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}
export function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}
export function plus(a: Vector, b: Vector, times = 1): Vector {
  return [a[0] + times * b[0], a[1] + times * b[1], a[2] + times * b[2]]
}
export function unit(v: Vector): Vector {
  const n = Math.hypot(...v) || 1
  return [v[0] / n, v[1] / n, v[2] / n]
}

/** Turned about an axis of the picture by so many radians; set square again, so that no error gathers. */
export function turnAbout(pose: Pose, axis: Vector, angle: number): Pose {
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  const turn = (v: Vector) => {
    const along = dot(axis, v) * (1 - c)
    const side = cross(axis, v)
    return [0, 1, 2].map((k) => v[k]! * c + side[k]! * s + axis[k]! * along) as unknown as Vector
  }
  const out = unit(turn(pose.out))
  const right = unit(cross(turn(pose.up), out))
  return { right, up: cross(out, right), out }
}

/** Part of the way from one pose to another, by the shortest turn. */
export function between(from: Pose, to: Pose, share: number): Pose {
  const rows = [0, 1, 2].map((i) =>
    [0, 1, 2].map(
      (j) => to.right[i]! * from.right[j]! + to.up[i]! * from.up[j]! + to.out[i]! * from.out[j]!,
    ),
  )
  const trace = rows[0]![0]! + rows[1]![1]! + rows[2]![2]!
  const angle = Math.acos(Math.min(1, Math.max(-1, (trace - 1) / 2)))
  if (angle < 1e-6) return to
  let axis: Vector = [
    rows[2]![1]! - rows[1]![2]!,
    rows[0]![2]! - rows[2]![0]!,
    rows[1]![0]! - rows[0]![1]!,
  ]
  // Half a turn: any axis it leaves in place will do; the picture's own if it is one.
  if (Math.hypot(...axis) < 1e-6) {
    const kept = [from.right, from.up, from.out].find((v) =>
      rows.every(
        (row, i) => Math.abs(row[0]! * v[0] + row[1]! * v[1] + row[2]! * v[2] - v[i]!) < 1e-6,
      ),
    )
    axis = kept ?? unit(plus(from.right, to.right))
  }
  return share >= 1 ? to : turnAbout(from, unit(axis), angle * share)
}

export interface Box {
  readonly low: Vector
  readonly high: Vector
}

export function boxOf({ length, width, height }: Size): Box {
  return { low: [0, -width / 2, -height / 2], high: [length, width / 2, height / 2] }
}

/** Width and height a box takes in a picture, m. */
export function extentOf({ low, high }: Box, pose: Pose): readonly [number, number] {
  const span = [0, 1, 2].map((k) => high[k]! - low[k]!)
  const along = (v: Vector) => v.reduce((sum, c, k) => sum + Math.abs(c) * span[k]!, 0)
  return [along(pose.right), along(pose.up)]
}

export function middleOf({ low, high }: Box): Vector {
  return [0, 1, 2].map((k) => (low[k]! + high[k]!) / 2) as unknown as Vector
}

/** A part of a picture, px from its left and its foot. */
export interface Window {
  readonly left: number
  readonly bottom: number
  readonly width: number
  readonly height: number
}

/** Pixels about the metal in which its rims and its neighbours are looked for. */
const ABOUT = 4

/** The part of a picture in which a box drawn so many times its size is seen. */
export function windowOf(
  camera: Camera,
  box: Box,
  stretch: Vector,
  width: number,
  height: number,
): Window {
  const [low, high] = [box.low, box.high].map(
    (end) => end.map((v, k) => v * stretch[k]!) as unknown as Vector,
  ) as [Vector, Vector]
  const middle = plus(middleOf({ low, high }), camera.middle, -1)
  const [wide, tall] = extentOf({ low, high }, camera)
  const span = (at: number, long: number, most: number) => {
    const clamp = (v: number) => Math.min(most, Math.max(0, v))
    const from = clamp(Math.floor(most / 2 + (at - long / 2) / camera.pixel) - ABOUT)
    return [from, clamp(Math.ceil(most / 2 + (at + long / 2) / camera.pixel) + ABOUT) - from]
  }
  const [left, across] = span(dot(camera.right, middle), wide, width)
  const [bottom, up] = span(dot(camera.up, middle), tall, height)
  return { left: left!, bottom: bottom!, width: across!, height: up! }
}

/** Columns of the matrix that takes metres to the card's cube (x, y, z in −1 … 1, the nearest least). */
export function toClip(camera: Camera, box: Box, width: number, height: number): number[] {
  const { right, up, out, middle, pixel } = camera
  // Room for metal drawn stretched, too.
  const reach = 4 * Math.hypot(...plus(box.high, box.low, -1), ...plus(middle, middleOf(box), -1))
  const rows = [
    [right, 2 / (width * pixel)],
    [up, 2 / (height * pixel)],
    [out, -1 / reach],
  ] as const
  const columns: number[] = []
  for (let k = 0; k < 3; k++) columns.push(...rows.map(([v, by]) => v[k]! * by), 0)
  columns.push(...rows.map(([v, by]) => -dot(v, middle) * by), 1)
  return columns
}
