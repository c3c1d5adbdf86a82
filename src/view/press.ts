import { type Imprint, imprintAt } from '#piece'
import type { Frame, Vector } from './view.ts'

/** A place of the face as the eye has it: how far along the picture's right and up, and how near. */
export type Seen = readonly [right: number, up: number, out: number]

/** Where the eye meets the floor or a wall of an imprint. */
export interface Pressed {
  /** How much farther off than the face, m. */
  readonly below: number
  /** How fast the imprint grows along x and y there. */
  readonly alongX: number
  readonly alongY: number
}

/** So far into a mark the polish, and the rubbing after the etch, still reach, m: common practice, no source. */
export const RUBBED = 1e-4

/** How much of polish and rubbing a place so far below the face (m) is spared, 0 … 1. */
export function sparedAt(below: number): number {
  return Math.min(1, below / RUBBED)
}

/** How deep the face is pressed in over or under each corner of a stamped solid's mesh, m. */
export function pressedCorners(positions: Float64Array, imprint: Imprint): Float32Array {
  return Float32Array.from(
    { length: positions.length / 3 },
    (_, i) => imprintAt(imprint, positions[3 * i]!, positions[3 * i + 1]!)[0],
  )
}

/** Parts of a cell that the line of sight is followed by. */
const PER_CELL = 3
/** A line of sight along the face meets nothing that could be drawn. */
const LEVEL = 0.02
const HALVINGS = 8

/**
 * Follows the line of sight from a place of the face into an imprint until it meets metal: a wall seen aslant is as
 * sharp as the imprint, however coarse the facets of the face. `normal`: of the face there, in the metal's frame;
 * `ground`: how much has been ground off the face, m. Undefined where nothing is pressed in.
 */
export function pressInto(
  imprint: Imprint,
  { origin, right, up, out }: Frame,
  seen: Seen,
  normal: Vector,
  ground: number,
): Pressed | undefined {
  if (normal[2] < LEVEL) return undefined
  const place = (k: 0 | 1) => origin[k] + seen[0] * right[k] + seen[1] * up[k] + seen[2] * out[k]
  const [x, y] = [place(0), place(1)]
  /** How fast the line of sight sinks under the face. */
  const sinks = (normal[0] * out[0] + normal[1] * out[1] + normal[2] * out[2]) / normal[2]
  if (sinks < LEVEL) return undefined
  const at = (t: number) => imprintAt(imprint, x - t * out[0], y - t * out[1])
  const first = at(0)
  const over = (t: number, [deep]: readonly [number, number, number]) => deep - ground - t * sinks
  if (over(0, first) <= 0) return undefined
  const told = ([, alongX, alongY]: readonly [number, number, number], below: number) => ({
    below,
    alongX,
    alongY,
  })
  const drift = Math.hypot(out[0], out[1])
  if (drift === 0) return told(first, (first[0] - ground) / sinks)
  const { cellX, cellY } = imprint.depths
  const step = Math.min(cellX, cellY) / (PER_CELL * drift)
  let [low, high] = [0, step]
  // At a place that is not pressed in at all it has met the face again: this ends.
  while (over(high, at(high)) > 0) [low, high] = [high, high + step]
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2
    if (over(middle, at(middle)) > 0) low = middle
    else high = middle
  }
  // A hair before it leaves: beyond the imprint's end there is no slope to be told.
  return told(at(low), low)
}
