import { type Crew, type PatternMap, drawFace } from '#pattern'
import {
  type FaceView,
  type Plane,
  type Side,
  faceOfBar,
  faceOfSolid,
  sectionOfBar,
  sectionOfSolid,
} from '#view'
import type { BarPattern } from './pattern-of.ts'

/** What is looked at: a side, ground so far down, or a cut through the metal. */
export type Look = { readonly side: Side; readonly depth?: number } | { readonly cut: Plane }

export interface PictureOptions {
  /** Pixels to a millimetre. */
  readonly ppmm: number
  /** Clear rim round the metal, m. */
  readonly margin?: number
  readonly crew?: Crew
  readonly signal?: AbortSignal
  /** Share done, 0 … 1. */
  readonly onProgress?: (share: number) => void
}

/** Where a look at a bar or a piece lies: the size of its picture is known before it is drawn. */
export function viewOf(pattern: BarPattern, look: Look, options: PictureOptions): FaceView {
  const { solid, billet } = pattern
  const { ppmm, margin } = options
  if ('cut' in look)
    return solid
      ? sectionOfSolid(solid, look.cut, { ppmm, margin })
      : sectionOfBar(billet.size, look.cut, { ppmm, margin })
  const of = { ppmm, margin, depth: look.depth }
  return solid ? faceOfSolid(solid, look.side, of) : faceOfBar(billet.size, look.side, of)
}

/**
 * The face or section of a bar as its steels lie there: the first mean of the map is how light each
 * is drawn. Rejects when aborted.
 */
export function drawPattern(
  pattern: BarPattern,
  look: Look,
  options: PictureOptions,
): Promise<PatternMap> {
  const { crew, signal, onProgress } = options
  return drawFace(viewOf(pattern, look, options), pattern.origin, {
    weights: [pattern.light],
    crew,
    signal,
    onProgress,
  })
}
