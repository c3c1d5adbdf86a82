import { type Billet, UNWEIGHED, layered } from '#billet'
import type { Smithy } from '#operations'
import type { Rates } from '#shop'
import { hoursOf } from '../cost/hours.ts'
import type { DoneStep } from '../plan.ts'
import type { PlannedStep } from '../route.ts'
import { carbonCreep } from './creep.ts'

/** A rectangular section, m. */
export interface BarSection {
  readonly width: number
  readonly height: number
}

/** `after = grows × before − loses`. */
export interface Line {
  readonly grows: number
  readonly loses: number
}

/**
 * What some steps do to any bar of one section. Every loss of a plain bar is a slice off its ends or
 * a skin off its sides, so its length and its outer layer after the steps are straight lines in what
 * they were before: two bars sent through the operations themselves give them exactly.
 */
export interface Passage {
  readonly to: BarSection
  readonly length: Line
  /** Thickness of the outermost layer. */
  readonly outer: Line
  readonly heats: number
  /** Hands on the work, s. */
  readonly hands: number
  /** Carbon creep over height, Σ D·t ÷ H²: times layers² it is creep over layer thickness². */
  readonly creep: number
  /** Tallest it stands between the dies, m. */
  readonly tallest: number
}

export interface Works {
  readonly smithy: Smithy
  readonly rates: Rates
}

/** Sends two bars of this section through the steps; undefined where they cannot be done. */
export function passageOf(
  section: BarSection,
  steps: readonly PlannedStep[],
  { smithy, rates }: Works,
  pieces = 1,
): Passage | undefined {
  const unweighed: Smithy = { ...smithy, densities: UNWEIGHED, piece: undefined }
  const short = barOf(section, 0.15 + 0.06 * pieces, section.height / 3)
  const long = barOf(section, 0.3 + 0.12 * pieces, section.height / 4)
  const [a, b] = [short, long].map((bar) => through(bar, steps, unweighed))
  if (!a || !b) return undefined
  const [doneA, doneB] = [a.at(-1), b.at(-1)].map((d) => (d as DoneStep).step.after) as Billet[]
  const length = lineThrough(
    [short.size.length, doneA.size.length],
    [long.size.length, doneB.size.length],
  )
  const outer = lineThrough([outerOf(short), outerOf(doneA)], [outerOf(long), outerOf(doneB)])
  return {
    to: { width: doneA.size.width, height: doneA.size.height },
    length,
    outer,
    heats: a.reduce((sum, { step }) => sum + step.heats.reduce((n, h) => n + h.count, 0), 0),
    hands: hoursOf(a, rates).reduce((sum, h) => sum + h.hands, 0),
    creep: a.reduce(
      (sum, { step }) => sum + carbonCreep(step.heats) / step.after.size.height ** 2,
      0,
    ),
    tallest: Math.max(...a.map(({ step }) => step.after.size.height)),
  }
}

/** One passage after another. */
export function following(first: Passage, second: Passage): Passage {
  return {
    to: second.to,
    length: chained(first.length, second.length),
    outer: chained(first.outer, second.outer),
    heats: first.heats + second.heats,
    hands: first.hands + second.hands,
    creep: first.creep + second.creep,
    tallest: Math.max(first.tallest, second.tallest),
  }
}

function chained(a: Line, b: Line): Line {
  return { grows: a.grows * b.grows, loses: b.grows * a.loses + b.loses }
}

/** A welded bar with a thick outer layer on both faces. */
export function barOf(
  { width, height }: BarSection,
  length: number,
  outer: number,
  bond: Billet['bond'] = 'welded',
): Billet {
  return {
    size: { length, width, height },
    shape: 'rectangle',
    volume: length * width * height,
    build: layered('z', [
      { steel: 'outside', thickness: outer },
      { steel: 'inside', thickness: height - 2 * outer },
      { steel: 'outside', thickness: outer },
    ]),
    bond,
    temper: 'as forged',
    worked: 0.5,
    spare: 'x',
  }
}

function outerOf({ build }: Billet): number {
  return build.form === 'layered' ? build.layers[0].thickness : 0
}

function through(
  bar: Billet,
  steps: readonly PlannedStep[],
  smithy: Smithy,
): readonly DoneStep[] | undefined {
  const done: DoneStep[] = []
  let before = bar
  for (const [index, { operation, values, at }] of steps.entries()) {
    const result = operation.forward([before], values as never, smithy)
    if (result.problems) return undefined
    done.push({ bar: '', index, at, operation, values, before: [before], step: result.ok })
    before = result.ok.after
  }
  return done
}

type Point = readonly [before: number, after: number]

function lineThrough([x0, y0]: Point, [x1, y1]: Point): Line {
  const grows = (y1 - y0) / (x1 - x0)
  return { grows, loses: grows * x0 - y0 }
}
