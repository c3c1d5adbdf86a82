import type { Passage } from './passages.ts'

/** Everything that can be chosen between the first weld and the end of the build-up, as numbers. */
export interface Choices {
  /** Sections a bar may be drawn to before it is cut. */
  readonly sections: number
  /** Numbers of pieces a bar may be cut into. */
  readonly pieces: readonly number[]
  /** From a bar of section i, cut into pieces[p], welded and drawn to section j: [i][p][j]. */
  readonly middle: readonly (readonly (readonly (Passage | undefined)[])[])[]
  /** From a bar of section i, cut into pieces[p] and welded for the last time: [i][p]. */
  readonly last: readonly (readonly (Ending | undefined)[])[]
  /** Restacks at most. */
  readonly restacks: number
  /** Layers at most. */
  readonly layers: number
  /** Limits of the shop on one bar. */
  readonly limits: Limits
}

/** The last passage of the build-up and the length the rest of the route asks for after it. */
export interface Ending {
  readonly passage: Passage
  /** Length wanted after it, m. */
  readonly length: number
  /** Heats and hands of the rest of the route. */
  readonly heats: number
  readonly hands: number
}

export interface Limits {
  /** Tallest stack between the dies, m. */
  readonly opening: number
  /** Longest bar drawn before it is cut, m. */
  readonly bar: number
}

/**
 * What it still takes from a drawn bar to the end. All but `via` and `slender` are amounts of which less is
 * better, and everything done before only adds to them: a state that is no better than another in
 * any of them can never be part of a better plan.
 */
export interface State {
  /** Length the bar must have, m. */
  readonly length: number
  /** Thickness its outer layer must have to be there at the end, m. */
  readonly outer: number
  readonly heats: number
  readonly hands: number
  /** Creep of carbon over layer thickness², for one layer at the end: times layers². */
  readonly creep: number
  /** How it goes on: pieces cut here, then the state after, to the end. */
  readonly via: Via
  /**
   * Height over length of the slenderest loose stack to come. Told, not weighed: a longer bar leans
   * less, so of two states the worse one may be the steadier.
   */
  readonly slender: number
}

export interface Via {
  readonly section: number
  readonly pieces: number
  readonly then?: State
}

/** Non-dominated states of bars that are still cut into `times` pieces in all, of one section. */
export interface Front {
  readonly restacks: number
  readonly times: number
  readonly section: number
  readonly states: readonly State[]
}

/** Works back from the end, restack by restack, keeping only states that none is better than. */
export function fronts(choices: Choices, prune = true): readonly Front[] {
  const found: Front[] = []
  let level = ends(choices, prune)
  for (let restacks = 1; restacks <= choices.restacks; restacks++) {
    found.push(...level)
    if (restacks < choices.restacks) level = earlier(choices, level, restacks + 1, prune)
  }
  return found
}

class Level {
  private readonly found = new Map<number, { front: Front; states: State[] }>()
  private readonly restacks: number
  private readonly prune: boolean

  constructor(restacks: number, prune: boolean) {
    this.restacks = restacks
    this.prune = prune
  }

  add(times: number, section: number, state: State): void {
    const key = times * 1000 + section
    let at = this.found.get(key)
    if (!at) {
      const front = { restacks: this.restacks, times, section, states: [] }
      this.found.set(key, (at = { front, states: [] }))
    }
    if (this.prune) keep(at.states, state)
    else at.states.push(state)
  }

  fronts(): Front[] {
    return [...this.found.values()].map(({ front, states }) => ({ ...front, states }))
  }
}

/** Adds a state unless one there is as good; drops those it is as good as. */
function keep(states: State[], state: State): void {
  for (const other of states) if (asGood(other, state)) return
  let kept = 0
  for (const other of states) if (!asGood(state, other)) states[kept++] = other
  states.length = kept
  states.push(state)
}

function asGood(a: State, b: State): boolean {
  return (
    a.length <= b.length &&
    a.heats <= b.heats &&
    a.outer <= b.outer &&
    a.hands <= b.hands &&
    a.creep <= b.creep
  )
}

function ends({ last, pieces, limits, layers }: Choices, prune: boolean): Front[] {
  const level = new Level(1, prune)
  last.forEach((row, section) =>
    row.forEach((ending, p) => {
      if (!ending || 2 * pieces[p] > layers) return
      const { passage, length, heats, hands } = ending
      if (passage.tallest > limits.opening) return
      const needs = (length + passage.length.loses) / passage.length.grows
      if (needs > limits.bar) return
      const state: State = {
        length: needs,
        outer: passage.outer.loses / passage.outer.grows,
        heats: heats + passage.heats,
        hands: hands + passage.hands,
        creep: passage.creep,
        via: { section, pieces: pieces[p] },
        slender: (passage.tallest * pieces[p]) / needs,
      }
      level.add(pieces[p], section, state)
    }),
  )
  return level.fronts()
}

function earlier(
  { middle, pieces, limits, layers }: Choices,
  after: readonly Front[],
  restacks: number,
  prune: boolean,
): Front[] {
  const level = new Level(restacks, prune)
  for (const front of after) {
    const layersHere = 1 / front.times ** 2
    for (let section = 0; section < middle.length; section++) {
      for (let p = 0; p < pieces.length; p++) {
        const passage = middle[section][p][front.section]
        const times = front.times * pieces[p]
        if (!passage || passage.tallest > limits.opening || 2 * times > layers) continue
        const { length, outer, heats, hands, creep } = passage
        for (const then of front.states) {
          const needs = (then.length + length.loses) / length.grows
          if (needs > limits.bar) continue
          level.add(times, section, {
            length: needs,
            outer: (then.outer + outer.loses) / outer.grows,
            heats: then.heats + heats,
            hands: then.hands + hands,
            creep: then.creep + creep * layersHere,
            via: { section, pieces: pieces[p], then },
            slender: Math.max(then.slender, (passage.tallest * pieces[p]) / needs),
          })
        }
      }
    }
  }
  return level.fronts()
}

/** Pieces and sections of the restacks a state stands for, in the order they are done. */
export function restacksOf(state: State): { section: number; pieces: number }[] {
  const done: { section: number; pieces: number }[] = []
  for (let at: State | undefined = state; at; at = at.via.then)
    done.push({ section: at.via.section, pieces: at.via.pieces })
  return done
}
