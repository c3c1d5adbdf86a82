import { type Painted, type PaintedSide, paintFace } from './paint-face.ts'
import type { Written } from './messages.ts'

/** What the painter is asked, and in how many pixels to a millimetre. */
export interface PaintOrder {
  readonly number: number
  readonly job: Written
  readonly side: PaintedSide
  readonly ppmm: number
}

/** The picture, or nothing where there is none to draw. */
export interface PaintReply {
  readonly number: number
  readonly painted?: Painted
}

/** Draws a face in a worker and posts the picture. */
export function fill({ number, job, side, ppmm }: PaintOrder): void {
  let painted: Painted | undefined
  try {
    painted = paintFace(job, side, ppmm)
  } catch {
    // The picture that stands stays; what is wrong with the job is told with its card.
  }
  const transfer = painted ? [painted.rgba.buffer] : []
  postMessage({ number, painted } satisfies PaintReply, { transfer })
}
