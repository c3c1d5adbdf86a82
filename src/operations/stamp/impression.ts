import { printCount, printQuantity } from '#units'
import type { Problem } from '#problem'
import type { Billet } from '#billet'
import { type StampAdvice, type Tool, adviseStamp } from '#forming'
import type { StampBox } from '#piece'
import { asTold } from '../as-told.ts'
import { bracket, kilonewtons, rounded } from '../judge.ts'
import { type Pressed, judgePressed } from '../judge-pressed.ts'
import { metalOf } from '../metal-worked.ts'
import type { Smithy, Step } from '../operation.ts'
import { fourPounds } from '../shop-tools.ts'
import type { Impression, Judged } from '../working.ts'
import type { StampFace } from './emblem.ts'

export interface Stamping {
  readonly before: Billet
  readonly step: Step
  readonly face: StampFace
  readonly box: StampBox
  readonly temperature: number
  readonly depth: number
  readonly edgeRadius?: number
}

/** Half the span of heats told of, K. */
const APART = 100
/** Further than this from what the piece says of the box, the outline is told of. */
const SHARE_OFF = 0.05

/** What the stamp asks at its heat and either side of it, and what is left of the mark. */
export function judgeStamping(given: Stamping, smithy: Smithy): Judged | undefined {
  const { before, step, face, box, temperature, depth, edgeRadius } = given
  const { shop, piece } = smithy
  const [heat] = step.heats
  if (!heat || !piece) return undefined
  const { emblem } = face
  const takenOff = Math.max(0, (step.after.size.height - piece.size.height) / 2)
  const plan: Pressed['plan'] = {
    emblem,
    depth,
    thickness: before.size.height,
    takenOff,
    depthWanted: box.depth,
    ...(edgeRadius !== undefined && { edgeRadius }),
  }
  const found = judgePressed({ before, step, heat, temperature, plan }, smithy)
  if (!found) return undefined
  const { judged, advice } = found
  const press: Tool = { kind: 'press', force: shop.pressForce ?? Infinity, speed: shop.pressSpeed }
  const at = [temperature - APART, temperature, temperature + APART].map((T) => {
    const with_ = { ...plan, metal: metalOf(before, smithy, T) }
    return {
      temperature: T,
      handBlows: bracket(adviseStamp(with_, fourPounds.tool).blows),
      pressForce: bracket(adviseStamp(with_, press).force),
    }
  })
  const impression: Impression = {
    area: emblem.area,
    perimeter: emblem.perimeter,
    stroke: emblem.stroke,
    size: emblem.size,
    drawn: face.from === 'outline',
    depth,
    takenOff,
    depthLeft: advice.depthLeft,
    smallestStroke: advice.smallestStroke,
    crack: advice.crack.risk,
    sinking: advice.bending,
    at,
  }
  return {
    force: { ...judged.force, impression },
    warnings: [...judged.warnings, ...cautionsOf(advice), ...shareOff(face, box)],
    notes: [...notesOf(impression, box, face), ...judged.notes],
  }
}

/** The step itself tells of a stamp too deep for the bar. */
function cautionsOf({ cautions }: StampAdvice): Problem[] {
  const own: Readonly<Record<string, string>> = {
    depth: 'depth',
    stroke: 'emblem',
    corner: 'emblem',
  }
  return cautions.flatMap((c) => (own[c.at] ? [asTold({ ...c, at: own[c.at]! })] : []))
}

function shareOff({ emblem, from }: StampFace, box: StampBox): Problem[] {
  const share = emblem.area / (box.length * box.width)
  if (from === 'box' || Math.abs(share - box.share) <= SHARE_OFF) return []
  const percent = (x: number) => `${Math.round(100 * x)} %`
  return [
    {
      at: 'emblem',
      what: `the emblem covers ${percent(share)} of its box; the piece says ${percent(box.share)}`,
      why: 'the piece is weighed by the share that is pressed in',
      try: [
        `write "stampShare": "${percent(share)}" in the piece`,
        'draw the emblem larger or smaller',
      ],
    },
  ]
}

function notesOf(i: Impression, box: StampBox, { from }: StampFace): string[] {
  const at = (each: (row: Impression['at'][number]) => string) =>
    i.at.map((row) => `${each(row)} at ${printQuantity(row.temperature, 'temperature')}`).join(', ')
  const enough =
    i.depthLeft >= box.depth - 1e-9
      ? `enough, ${show(box.depth)} is wanted`
      : `too little, ${show(box.depth)} is wanted`
  return [
    `Its raised face is ${printQuantity(i.area, 'area')}, its edge ${show(i.perimeter)} long${
      from === 'box' ? ' (guessed from its box: give the step the outline as `emblem`)' : ''
    }.`,
    `With a 4 lb hand hammer (common practice): ${at((r) => printCount(rounded(r.handBlows), 'blow'))}; by a press: ${at((r) => kilonewtons(r.pressForce))}.`,
    `Pressed ${show(i.depth)}, ${show(i.depthLeft)} stays when ${show(i.takenOff)} has come off the face: ${enough}.`,
    `Strokes under ${show(i.smallestStroke)} do not last; a crack from the foot of the mark: ${i.crack === 'some' ? 'some risk' : `${i.crack} risk`}.`,
    `Layers under it sink with it; a tenth of that is left ${show(i.sinking.reach)} below the face.`,
  ]
}

const show = (m: number) => printQuantity(m, 'length')
