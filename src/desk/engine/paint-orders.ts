import { type Cutting, type PaintedSide, paintFace } from './paint-face.ts'
import type { Written } from './messages.ts'

/** What the painter is asked, and in how many pixels to a millimetre, coarse ones first. */
export interface PaintOrder {
  readonly number: number
  readonly job: Written
  readonly side: PaintedSide
  readonly ppmm: readonly number[]
  readonly cutting?: Cutting
}

/** Draws a face in a worker and posts each picture as it is done. */
export function fill({ number, job, side, ppmm, cutting }: PaintOrder): void {
  for (const [i, fineness] of ppmm.entries()) {
    try {
      const painted = paintFace(job, side, fineness, cutting)
      const last = i === ppmm.length - 1 || !painted
      postMessage({ number, painted, last }, { transfer: painted ? [painted.rgba.buffer] : [] })
      if (!painted) return
    } catch (fault) {
      postMessage({ number, fault: (fault as Error).message, last: true })
      return
    }
  }
}
