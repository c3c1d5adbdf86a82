import { type HeightField } from '#geometry'
import { moveAcross, sideLimits } from './breaks.ts'
import { holeOutline, cutAway, roundHole } from './cut.ts'
import type { Part } from './blade-parts.ts'
import { joinParts } from './blade-parts.ts'
import { fullerProblems } from './blade-checks.ts'
import { type FullerSizes, crossingFuller, fullerCut } from './fuller.ts'
import type { Hole, PieceSolid } from './piece-kind.ts'
import { type Result, ok } from '#problem'
import { solidOf } from './solid.ts'

/** A fuller as set out on the blade: `start` from the shoulder, `middle` y by s. */
export interface BladeFuller extends Omit<FullerSizes, 'middle'> {
  readonly middle: (s: number) => number
}

/** A blade and what carries it, before it is set square in its bounding box. */
export interface BladeMaking {
  readonly kind: string
  readonly handle: Part
  readonly blade: Part
  readonly fullers: readonly BladeFuller[]
  /** In the piece's x, and y of the blade. */
  readonly holes: readonly Hole[]
  /** Lines on the front face: y of the blade by s from shoulder to point. */
  readonly lines: readonly { readonly name: string; readonly from: number; y(s: number): number }[]
  readonly thickest: number
  /** The blade without its curve, where it has one: the bar is drawn straight. */
  readonly straight?: Part
}

/** Joins handle and blade, cuts fullers and holes, and sets y zero in the middle of the box. */
export function bladeSolid(making: BladeMaking): Result<PieceSolid> {
  const { handle, blade } = making
  const shoulder = handle.length
  const raw = joinParts([handle, blade])
  const [low, high] = sideLimits(raw)
  const dy = -(low + high) / 2
  const field = moveAcross(raw, dy)
  const fullers = making.fullers.map((f) => ({
    ...f,
    start: shoulder + f.start,
    middle: (x: number) => f.middle(x - shoulder) + dy,
  }))
  const cuts = fullers.map((f) => crossingFuller(fullerCut(f), field))
  const problems = fullerProblems(fullers, field, cutAway(field, cuts), shoulder)
  if (problems.length > 0) return { problems }
  const holes = making.holes.map((hole) => ({ ...hole, at: { x: hole.at.x, y: hole.at.y + dy } }))
  const size = { length: shoulder + blade.length, width: high - low, height: making.thickest }
  const sample = (from: number, y: (s: number) => number) =>
    Array.from({ length: 49 }, (_, i) => {
      const s = from + ((blade.length - from) * i) / 48
      return { x: shoulder + s, y: y(s) + dy }
    })
  return ok(
    solidOf({
      kind: making.kind,
      origin: 'the butt',
      size,
      field,
      features: [
        { kind: 'fuller', cuts },
        { kind: 'hole', cuts: holes.map((hole) => roundHole(hole.at, hole.diameter)) },
      ],
      edges: {
        holes,
        openings: holes.map((hole) => holeOutline(hole.at, hole.diameter)),
        grooves: fullers.map((f) => ({
          name: 'fuller',
          path: Array.from({ length: 25 }, (_, i) => {
            const x = f.start + (f.length * i) / 24
            return { x, y: f.middle(x) }
          }),
          width: f.width,
          depth: f.depth,
          face: f.faces,
        })),
        lines: making.lines.map(({ name, from, y }) => ({ name, points: sample(from, y) })),
      },
      blank: blankOf(making, raw, size.length),
    }),
  )
}

function blankOf(making: BladeMaking, raw: HeightField, length: number) {
  const straight = making.straight ? joinParts([making.handle, making.straight]) : raw
  const [low, high] = sideLimits(straight)
  return {
    size: { length, width: high - low, height: making.thickest },
    note: making.straight
      ? 'a straight bar as wide as the blade without its curve; tang and point forged or cut from it'
      : 'a straight bar as wide and thick as the piece at its widest and thickest; tang and point forged or cut from it',
  }
}
