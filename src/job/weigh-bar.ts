import { type Problem, type Result, failed, ok, within } from '#problem'
import { readQuantity } from '#units'

/** Three sides of a bar or plate, m, in the order they were written. */
export type Sides = readonly [number, number, number]

/** Reads `5 x 2 1/2 x 1/4 in` or `140 × 60 × 8 mm`: a unit written once counts for all. */
export function readSides(text: string, how: 2 | 3 = 3): Result<readonly number[]> {
  const words = text.split(/\s*[x×*]\s*/i)
  const unit = /[a-zµ"']+$/i.exec(words.at(-1)?.trim() ?? '')?.[0] ?? ''
  if (words.length !== how || unit === '') {
    return failed({
      at: '',
      what: `"${text.slice(0, 60)}" is not ${how} sizes with a unit`,
      why:
        how === 3 ? 'a bar has length, width and thickness' : 'a section has width and thickness',
      try: [how === 3 ? '5 x 2 1/2 x 1/4 in' : '25 x 12 mm'],
    })
  }
  const read = words.map((word) =>
    readQuantity(/[a-zµ"']$/i.test(word.trim()) ? word : `${word} ${unit}`, 'length'),
  )
  const problems: Problem[] = read.flatMap((r) => r.problems ?? [])
  if (problems.length > 0) return { problems }
  const sides = read.map((r) => r.ok?.si ?? 0)
  const bad = sides.findIndex((side) => !(side > 0))
  if (bad >= 0)
    return failed({
      at: '',
      what: `${words[bad]} is no size`,
      why: 'every side is more than nothing',
      try: ['5 x 2 1/2 x 1/4 in'],
    })
  return ok(sides)
}

/** What a plain block weighs, and what size would weigh what is asked. */
export interface Weighed {
  readonly volume: number
  readonly mass: number
  /** The least side that gives the mass asked for, other sides kept, m. */
  readonly thicknessFor?: number
}

/** Mass of a block at a density (kg/m³); with a mass asked for, the thickness that gives it. */
export function weighBlock(sides: readonly number[], density: number, asked?: number): Weighed {
  const volume = sides.reduce((a, b) => a * b, 1)
  const least = Math.min(...sides)
  const mass = volume * density
  return { volume, mass, ...(asked !== undefined && { thicknessFor: (least * asked) / mass }) }
}

/** A length to cut off a bar. */
export interface CutOff {
  /** Length that holds the mass itself, m. */
  readonly net: number
  /** With the allowance and the cuts, m. */
  readonly cut: number
}

/** How much to cut off a bar of this section for a piece of this mass. */
export function cutOffFor(
  mass: number,
  section: readonly number[],
  density: number,
  options: { readonly allowance: number; readonly kerf: number; readonly cuts: number },
): Result<CutOff> {
  const read = section.reduce((a, b) => a * b, 1)
  if (!(read > 0 && mass > 0)) {
    return {
      problems: within('', [
        {
          at: '',
          what: 'nothing to cut',
          why: 'mass and section must be more than nothing',
          try: ['--for "10.6 g" --section "25 x 12 mm"'],
        },
      ]),
    }
  }
  const net = mass / density / read
  return ok({ net, cut: net * (1 + options.allowance) + options.cuts * options.kerf })
}
