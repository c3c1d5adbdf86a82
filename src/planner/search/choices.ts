import type { RackItem, Shop } from '#shop'
import type { Result } from '#problem'
import type { PlannedStep } from '../route.ts'
import type { Head } from './head.ts'
import { readSteps } from './head.ts'
import { type BarSection, type Passage, type Works, following, passageOf } from './passages.ts'
import { type Sheets, type Style, drawStep, restackStep, weldSteps } from './recipe.ts'
import type { Choices, Ending, Limits } from './states.ts'
import { stackHeight } from './candidates.ts'

/** Heights a bar is commonly drawn to before it is cut, m (common practice: 3/8 in to 1 in). */
const HEIGHTS = [0.01, 0.011, 0.012, 0.014, 0.016, 0.018, 0.02, 0.025]
/** Pieces a bar is commonly cut into. */
export const PIECES: readonly number[] = [2, 3, 4, 5, 6, 7, 8, 9]
const MOST_RESTACKS = 4
/** A bar is drawn from both ends: twice what the fire heats (common practice). */
const FROM_BOTH_ENDS = 2

export function limitsOf(shop: Shop): Limits {
  return { opening: shop.greatestOpening, bar: FROM_BOTH_ENDS * shop.longestHeat }
}

/** Sections worth trying: the usual heights at the width of this job, and those the route has. */
export function sectionsFor({ own }: Head, width: number): BarSection[] {
  const written = own?.restacks.map(({ height, width }) => ({ height, width })) ?? []
  const usual = written[0]?.width ?? width
  const all = [...written, ...HEIGHTS.map((height) => ({ height, width: usual }))]
  const seen = new Set<string>()
  return all.filter(({ height, width }) => {
    const key = `${height} ${width}`
    return !seen.has(key) && seen.add(key)
  })
}

/** Pairs of sheets there are: as written, from the rack, and with thicker outsides. */
export function stacksFor(own: Sheets, rack: readonly RackItem[]): Sheets[] {
  const sheetsOf = (steel: string) =>
    rack.filter((item) => item.steel === steel && item.thickness <= 0.012)
  const pairs: Sheets[] = [own]
  for (const dark of sheetsOf(own.dark.steel)) {
    for (const bright of sheetsOf(own.bright.steel)) {
      const width = Math.min(dark.width, bright.width)
      pairs.push({
        dark: { steel: own.dark.steel, thickness: dark.thickness },
        bright: { steel: own.bright.steel, thickness: bright.thickness },
        width: width < own.width * 1.5 ? width : own.width,
      })
    }
  }
  const outers = new Set([
    own.outer,
    undefined,
    ...sheetsOf(own.dark.steel).map((s) => s.thickness),
  ])
  const seen = new Set<string>()
  return pairs
    .flatMap((pair) =>
      [...outers]
        .filter((outer) => outer === undefined || outer >= pair.dark.thickness)
        .map((outer): Sheets => ({ ...pair, outer })),
    )
    .filter((stack) => {
      const key = JSON.stringify(stack)
      return !seen.has(key) && seen.add(key)
    })
}

/** The passages of a style between sections, each worked out once by the operations themselves. */
export class Shelf {
  private readonly piles = new Map<string, Passage | undefined>()
  private readonly draws = new Map<string, Passage | undefined>()
  private readonly style: Style
  private readonly works: Works
  private readonly twins: number

  constructor(style: Style, works: Works, twins: number) {
    this.style = style
    this.works = works
    this.twins = twins
  }

  /** From a drawn bar, cut and welded, before it is drawn again. */
  pile(section: BarSection, pieces: number, last: boolean): Passage | undefined {
    const weld = last ? this.style.last : this.style.middle
    return this.known(this.piles, `${keyOf(section)} ${pieces} ${last}`, () =>
      this.through(
        section,
        [restackStep({ pieces }, weld), ...weldSteps(this.style, weld)],
        pieces,
      ),
    )
  }

  draw(from: BarSection, to: BarSection): Passage | undefined {
    return this.known(this.draws, `${keyOf(from)} ${keyOf(to)}`, () =>
      this.through(from, [drawStep(to)]),
    )
  }

  /** A loose stack welded for the first time. */
  first(stack: Sheets, sheets: number): Passage | undefined {
    const section = { width: stack.width, height: stackHeight(sheets, stack) }
    return this.known(this.piles, `${keyOf(section)} first`, () =>
      this.through(section, weldSteps(this.style, this.style.first)),
    )
  }

  private through(
    section: BarSection,
    raw: Parameters<typeof readSteps>[0],
    pieces = 1,
  ): Passage | undefined {
    const steps: Result<PlannedStep[]> = readSteps(raw, '')
    const passage = steps.ok && passageOf(section, steps.ok, this.works, pieces)
    if (!passage || this.twins === 1) return passage
    return { ...passage, heats: passage.heats * this.twins, hands: passage.hands * this.twins }
  }

  private known(
    shelf: Map<string, Passage | undefined>,
    key: string,
    make: () => Passage | undefined,
  ): Passage | undefined {
    if (!shelf.has(key)) shelf.set(key, make())
    return shelf.get(key)
  }
}

const keyOf = ({ width, height }: BarSection) => `${width.toFixed(7)} ${height.toFixed(7)}`

/** Everything to choose from as tables of passages. */
export function choicesOf(
  sections: readonly BarSection[],
  shelf: Shelf,
  ending: (passage: Passage) => Ending | undefined,
  layers: number,
  limits: Limits,
): Choices {
  const middle = sections.map((from) =>
    PIECES.map((pieces) => {
      const pile = shelf.pile(from, pieces, false)
      return sections.map((to) => {
        if (!pile || pile.tallest > limits.opening) return undefined
        const drawn = shelf.draw(pile.to, to)
        return drawn && following(pile, drawn)
      })
    }),
  )
  const last = sections.map((from) =>
    PIECES.map((pieces) => {
      const pile = shelf.pile(from, pieces, true)
      return pile && ending(pile)
    }),
  )
  return {
    sections: sections.length,
    pieces: PIECES,
    middle,
    last,
    restacks: MOST_RESTACKS,
    layers,
    limits,
  }
}
