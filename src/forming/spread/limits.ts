import type { Problem } from '#problem'
import { showMillimetres } from '../estimate.ts'

/** Height over height after, per pass, beyond which the step at the die edge laps (from memory, Wistreich and Shutt). */
export const lapLimit = 1.3
/** Height over width after turning: advice, and the limit where a bar doubles over (common practice). */
export const edgeAdvice = 2
export const edgeLimit = 2.5
/** Bite over height for the work to reach the middle (from memory, high confidence); 0.5 to 0.8 usual. */
export const centreBite = 1 / 3

export interface Squeeze {
  readonly height: number
  readonly width: number
  readonly to: number
  readonly bite: number
}

/** What one squeeze runs into: laps, buckling on edge, a middle left unworked. Lengths m. */
export function squeezeLimits({ height, width, to, bite }: Squeeze): Problem[] {
  const found: Problem[] = []
  const g = to > 0 ? height / to : Infinity
  if (g > lapLimit * (1 + 1e-9))
    found.push({
      at: 'height',
      what: `${showMillimetres(height)} to ${showMillimetres(to)} in one pass may fold a lap at the die edge.`,
      why: `Height over height after is ${g.toFixed(2)}; laps begin above ${lapLimit} (from memory).`,
      try: [
        `Stop at ${showMillimetres(height / lapLimit)} and go over the bar again.`,
        'Round the die edges.',
      ],
    })
  const tall = width > 0 ? height / width : Infinity
  if (tall > edgeAdvice * (1 + 1e-9))
    found.push({
      at: 'width',
      what:
        tall > edgeLimit
          ? `Standing ${showMillimetres(height)} high on ${showMillimetres(width)} the bar will buckle or double over.`
          : `Standing ${showMillimetres(height)} high on ${showMillimetres(width)} the bar may buckle or double over.`,
      why: `Height over width is ${tall.toFixed(2)}; keep under ${edgeAdvice}, never over ${edgeLimit} (common practice).`,
      try: [
        'Turn sooner, before the bar gets so wide.',
        'Take light blows and straighten between them.',
      ],
    })
  if (bite < centreBite * height * (1 - 1e-9))
    found.push({
      at: 'bite',
      what: `A bite of ${showMillimetres(bite)} works only the skin of ${showMillimetres(height)}.`,
      why: 'Below a third of the height the middle is pulled, not pressed: welds there open (from memory).',
      try: [
        `Take a bite of ${showMillimetres(height / 2)} or more.`,
        'Use wider dies or a heavier hammer.',
      ],
    })
  return found
}
