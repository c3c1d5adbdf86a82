import { type Problem, type Result, failed, ok } from '#problem'
import { type Composition, compositionOf, findGrade } from '#steel'
import {
  type Emblem,
  type Judgement,
  type Metal,
  type StampAdvice,
  type Tool,
  adviseStamp,
  drawOut,
  judgeTool,
  measureEmblem,
} from '#forming'

/** Steels lying on one another in equal shares, or one alone. */
interface AskedMetal {
  readonly steels: readonly string[]
  /** The layers stand in the blow instead of across it. */
  readonly onEdge?: boolean
  /** K, while it is worked. */
  readonly temperature: number
}

/** A bar pressed or hammered from one section to another; m. */
export interface AskedForce extends AskedMetal {
  readonly width: number
  readonly height: number
  readonly length: number
  readonly toHeight: number
  /** Left out, nothing holds the sides. */
  readonly toWidth?: number
  /** Length of bar under the dies at one blow. */
  readonly bite: number
  readonly tools: readonly Tool[]
}

export interface ForceAnswer {
  readonly judged: readonly { readonly tool: Tool; readonly judgement: Judgement }[]
  readonly passes: number
  readonly turns: number
  /** As it comes out, m: least, likely, most. */
  readonly width: readonly [number, number, number]
  readonly length: readonly [number, number, number]
  readonly cautions: readonly Problem[]
}

/** What it takes to bring a bar to a section, with each of some tools. */
export function askForce(asked: AskedForce): Result<ForceAnswer> {
  const metal = metalOf(asked)
  if (metal.problems) return metal
  if (!(asked.toHeight < asked.height)) {
    return failed({
      at: 'to',
      what: 'nothing is taken off its height',
      why: 'the bar is as thin already as it is to become',
      try: ['ask for less than the second number of the section', 'turn the section about'],
    })
  }
  const bite = Math.min(asked.bite, asked.length)
  const drawing = drawOut(
    { height: asked.height, width: asked.width, length: asked.length },
    { height: asked.toHeight, ...(asked.toWidth !== undefined && { width: asked.toWidth }) },
    { bite },
  )
  const { bar, passes, length, cautions } = drawing
  const widthAt = (l: number) => (bar.width * bar.length) / l
  return ok({
    judged: asked.tools.map((tool) => ({
      tool,
      judgement: judgeTool({ passes, metal: metal.ok, bite }, tool),
    })),
    passes: passes.length,
    turns: passes.filter((p) => p.turned).length,
    width: [widthAt(length[1]), bar.width, widthAt(length[0])],
    length: [length[0], bar.length, length[1]],
    cautions,
  })
}

/** A mark pressed in; m. */
export interface AskedStamp extends AskedMetal {
  /** SVG path data of the raised face, made `across` wide. */
  readonly outline: string
  readonly across: number
  readonly depth: number
  readonly thickness: number
  /** Taken off the face afterwards. */
  readonly takenOff: number
  readonly tools: readonly Tool[]
}

export interface StampAnswer {
  readonly emblem: Emblem
  /** At each heat, the advice for each tool. */
  readonly at: readonly {
    readonly temperature: number
    readonly advice: readonly { readonly tool: Tool; readonly advice: StampAdvice }[]
  }[]
}

/** K to either side of the heat asked for. */
const APART = 100

/** What a stamp takes at the heat asked for and 100 K to either side, with each of some tools. */
export function askStamp(asked: AskedStamp): Result<StampAnswer> {
  const metal = metalOf(asked)
  if (metal.problems) return metal
  const emblem = measureEmblem(asked.outline, asked.across)
  if (emblem.problems) return emblem
  const { depth, thickness, takenOff } = asked
  const heats = [-APART, 0, APART].map((more) => asked.temperature + more)
  return ok({
    emblem: emblem.ok,
    at: heats.map((temperature) => ({
      temperature,
      advice: asked.tools.map((tool) => ({
        tool,
        advice: adviseStamp(
          { emblem: emblem.ok, metal: { ...metal.ok, temperature }, depth, thickness, takenOff },
          tool,
        ),
      })),
    })),
  })
}

function metalOf({ steels, onEdge, temperature }: AskedMetal): Result<Metal> {
  const found = steels.map((name) => findGrade(name))
  const problems = found.flatMap((grade) => grade.problems ?? [])
  if (problems.length > 0) return { problems }
  const compositions: Composition[] = found.flatMap((g) => (g.ok ? [compositionOf(g.ok)] : []))
  const [only, ...more] = compositions
  if (only && more.length === 0) return ok({ steel: only, temperature })
  const share = 1 / Math.max(1, compositions.length)
  const layers = compositions.map((composition) => ({ composition, share }))
  return ok({ layers, lie: onEdge ? 'on edge' : 'flat', temperature })
}
