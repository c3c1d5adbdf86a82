import { type Result, ok, within } from '#problem'
import { type Emblem, emblemFromMeasures, measureEmblem } from '#forming'
import type { StampBox } from '#piece'

/** What the step says of the stamp's raised face; what is left out is guessed from the box. */
export interface EmblemAsked {
  readonly emblem?: string
  readonly area?: number
  readonly perimeter?: number
  readonly stroke?: number
}

export interface StampFace {
  readonly emblem: Emblem
  /** Measured on an outline, told by its measures, or guessed from its box. */
  readonly from: 'outline' | 'measures' | 'box'
}

/** Outlines measured lately: the way back and forth asks for the same one again and again. */
const known = new Map<string, Result<Emblem>>()
const KEPT = 8

function measured(path: string, across: number): Result<Emblem> {
  const key = `${across} ${path}`
  const before = known.get(key)
  if (before) return before
  const emblem = measureEmblem(path, across)
  known.set(key, emblem)
  if (known.size > KEPT) known.delete(known.keys().next().value as string)
  return emblem
}

/** The stamp's face: the outline as large as its box holds it, or measures, or a plain field in the box. */
export function faceOf(asked: EmblemAsked, box: StampBox): Result<StampFace> {
  if (asked.emblem !== undefined) {
    const wide = measured(asked.emblem, box.length)
    if (wide.problems) return { problems: within('emblem', wide.problems) }
    const [across, up] = wide.ok.size
    const fits = up <= box.width ? wide : measured(asked.emblem, (across * box.width) / up)
    return fits.problems ? fits : ok({ emblem: fits.ok, from: 'outline' })
  }
  const area = asked.area ?? box.length * box.width * box.share
  const stroke = asked.stroke
  const perimeter =
    asked.perimeter ?? (stroke ? (2 * area) / stroke : (2 * area) / (Math.sqrt(area) / 4))
  const told = asked.area !== undefined || asked.perimeter !== undefined || stroke !== undefined
  const emblem = emblemFromMeasures({ area, perimeter, ...(stroke !== undefined && { stroke }) })
  return ok({ emblem, from: told ? 'measures' : 'box' })
}
