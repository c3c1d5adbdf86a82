import type { Densities } from '#billet'
import type { Front, Limits, State } from './states.ts'
import { restacksOf } from './states.ts'
import { type BarSection, type Passage } from './passages.ts'
import type { Tail } from './tail.ts'
import { type Recipe, type Sheets, layersOf } from './recipe.ts'
import { carbonKept } from './creep.ts'
import { offAim, type Aim } from './figures.ts'

/** A stack taller than this many times its length or width buckles under the hammer (common practice: 2.5 to 3 in upsetting). */
export const LEAN = 3

/** A recipe with what the quick account makes of it. */
export interface Candidate {
  readonly recipe: Recipe
  readonly heats: number
  /** Steel off the rack for the whole job, kg. */
  readonly steel: number
  /** Hands on the work, s. */
  readonly hands: number
  readonly layers: number
  readonly lines?: number
  readonly off: number
  readonly carbonKept: number
  readonly welds: number
  /** How much thicker the outer sheets should be for no layer to be lost, m; 0 where none is. */
  readonly thin: number
  /** Length the first stack is cut to, m. */
  readonly length: number
}

/** What first stacks there may be, and what becomes of them. */
export interface Stacks {
  readonly choices: readonly Sheets[]
  readonly counts: readonly number[]
  /** Through the first weld and down to a section. */
  passage(stack: Sheets, sheets: number, section: number): Passage | undefined
}

export interface Weighing {
  readonly sections: readonly BarSection[]
  readonly stacks: Stacks
  readonly limits: Limits
  readonly tail: Tail
  readonly densities: Densities
  readonly twins: number
  readonly aim: Aim
  /** Layers wanted, at least and at most. */
  readonly layers: readonly [least: number, most: number]
}

/** Every first stack that meets a front with the layers wanted. */
export function candidatesOf(fronts: readonly Front[], weighing: Weighing): Candidate[] {
  const { stacks, layers } = weighing
  const found: Candidate[] = []
  for (const front of fronts) {
    for (const sheets of stacks.counts) {
      const count = layersOf(sheets, [front.times])
      if (count < layers[0] || count > layers[1]) continue
      for (const stack of stacks.choices) {
        const passage = stacks.passage(stack, sheets, front.section)
        if (!passage || passage.tallest > weighing.limits.opening) continue
        for (const state of front.states) {
          const candidate = weigh(state, stack, sheets, count, front, passage, weighing)
          if (candidate) found.push(candidate)
        }
      }
    }
  }
  return found
}

function weigh(
  state: State,
  stack: Sheets,
  sheets: number,
  layers: number,
  front: Front,
  passage: Passage,
  { sections, limits, tail, densities, twins, aim }: Weighing,
): Candidate | undefined {
  const length = (state.length + passage.length.loses) / passage.length.grows
  const { height, section } = loose(sheets, stack, densities)
  const slender = Math.max(state.slender, height / Math.min(length, stack.width))
  if (length > limits.bar || slender > LEAN) return undefined
  const needs = (state.outer + passage.outer.loses) / passage.outer.grows
  const creep = state.creep + passage.creep / front.times ** 2
  const lines = tail.linesPerLayer > 0 ? tail.linesPerLayer * layers : undefined
  return {
    recipe: {
      sheets,
      stack,
      restacks: restacksOf(state).map(({ section: at, pieces }) => ({ pieces, ...sections[at] })),
    },
    heats: state.heats + passage.heats,
    hands: state.hands + passage.hands,
    steel: section * length * tail.bars + tail.steel,
    layers,
    ...(lines !== undefined && { lines }),
    off: offAim(layers, lines, aim),
    carbonKept: carbonKept(creep * layers ** 2),
    welds: (front.restacks + 1) * twins + tail.welds,
    thin: Math.max(0, needs - outermost(sheets, stack)),
    length,
  }
}

/** Height of the loose stack, m, and what a metre of it weighs, kg/m. */
function loose(sheets: number, { dark, bright, outer, width }: Sheets, densities: Densities) {
  const darks = Math.ceil(sheets / 2)
  const brights = sheets - darks
  const more = (outer ?? dark.thickness) - dark.thickness
  const lastIsBright = sheets % 2 === 0
  const atTop = outer === undefined ? 0 : lastIsBright ? outer - bright.thickness : more
  const dark1 = darks * dark.thickness + more + (lastIsBright ? 0 : atTop)
  const bright1 = brights * bright.thickness + (lastIsBright ? atTop : 0)
  return {
    height: dark1 + bright1,
    section: width * (dark1 * densities[dark.steel] + bright1 * densities[bright.steel]),
  }
}

/** The thinner of the two outside sheets, m. */
function outermost(sheets: number, { dark, bright, outer }: Sheets): number {
  return outer ?? (sheets % 2 === 1 ? dark.thickness : Math.min(dark.thickness, bright.thickness))
}

/** Height of a loose stack, m. */
export function stackHeight(sheets: number, stack: Sheets): number {
  return loose(sheets, stack, { [stack.dark.steel]: 1, [stack.bright.steel]: 1 }).height
}
