import { patternOf } from '#job'
import { drawEtched } from '#look'
import { drawFaceNow } from '#pattern'
import { faceOfBar, faceOfSolid } from '#view'
import type { Written } from './messages.ts'
import { workedJob } from './worked-job.ts'

export type PaintedSide = 'front' | 'back'

/** A picture of an etched face, transparent where there is no metal. */
export interface Painted {
  readonly width: number
  readonly height: number
  readonly rgba: Uint8ClampedArray<ArrayBuffer>
  /** Pixels to a metre. */
  readonly perMetre: number
}

/** The etched face of the finished piece, or of the bar there is; undefined while the job is unsound. */
export function paintFace(job: Written, side: PaintedSide, ppmm: number): Painted | undefined {
  const { computed } = workedJob(job)
  const pattern = computed && patternOf(computed)
  if (!pattern) return undefined
  const { solid, billet, origin, light } = pattern
  const view = solid ? faceOfSolid(solid, side, { ppmm }) : faceOfBar(billet.size, side, { ppmm })
  const map = drawFaceNow(view, origin, { weights: [light] })
  const image = drawEtched(map, { scaleBar: false })
  const { width, height } = map
  const rgba = new Uint8ClampedArray(width * height * 4)
  for (let i = 0; i < width * height; i++) {
    for (let k = 0; k < 3; k++) rgba[i * 4 + k] = image.data[i * image.channels + k]
    rgba[i * 4 + 3] = map.alpha[i]
  }
  return { width, height, rgba, perMetre: ppmm * 1000 }
}
