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

/** Amounts of a state that are weighed. */
const AMOUNTS = 5

/** States of one key as they are gathered: plain numbers in rows, so that most are never made objects. */
class Gathering {
  private amounts = new Float64Array(16 * AMOUNTS)
  private readonly kept: { via: Via; slender: number }[] = []

  /** Whether one there is as good; it moves up, since it is likely to be as good as the next one too. */
  outdone(a: Float64Array): boolean {
    const { amounts } = this
    const end = this.kept.length * AMOUNTS
    for (let r = 0; r < end; r += AMOUNTS) {
      if (
        amounts[r] <= a[0] &&
        amounts[r + 4] <= a[4] &&
        amounts[r + 2] <= a[2] &&
        amounts[r + 1] <= a[1] &&
        amounts[r + 3] <= a[3]
      ) {
        if (r > 0) this.swap(r / AMOUNTS, (r / AMOUNTS) >> 1)
        return true
      }
    }
    return false
  }

  /** Adds a state; with `prune` those it is as good as go. */
  add(a: Float64Array, state: { via: Via; slender: number }, prune: boolean): void {
    if (prune) this.drop(a)
    const at = this.kept.length * AMOUNTS
    if (at === this.amounts.length) {
      const wider = new Float64Array(2 * at)
      wider.set(this.amounts)
      this.amounts = wider
    }
    this.amounts.set(a, at)
    this.kept.push(state)
  }

  states(): State[] {
    return this.kept.map(({ via, slender }, k) => {
      const [length, outer, heats, hands, creep] = this.amounts.subarray(k * AMOUNTS)
      return { length, outer, heats, hands, creep, via, slender }
    })
  }

  private drop(a: Float64Array): void {
    const { amounts, kept } = this
    let left = 0
    for (let k = 0; k < kept.length; k++) {
      const r = k * AMOUNTS
      const worse =
        a[0] <= amounts[r] &&
        a[4] <= amounts[r + 4] &&
        a[2] <= amounts[r + 2] &&
        a[1] <= amounts[r + 1] &&
        a[3] <= amounts[r + 3]
      if (worse) continue
      if (left !== k) {
        amounts.copyWithin(left * AMOUNTS, r, r + AMOUNTS)
        kept[left] = kept[k]
      }
      left++
    }
    kept.length = left
  }

  private swap(i: number, j: number): void {
    const { amounts, kept } = this
    for (let k = 0; k < AMOUNTS; k++) {
      const one = amounts[i * AMOUNTS + k]
      amounts[i * AMOUNTS + k] = amounts[j * AMOUNTS + k]
      amounts[j * AMOUNTS + k] = one
    }
    ;[kept[i], kept[j]] = [kept[j], kept[i]]
  }
}

class Level {
  private readonly found = new Map<number, Gathering>()
  private readonly restacks: number

  constructor(restacks: number) {
    this.restacks = restacks
  }

  at(times: number, section: number): Gathering {
    const key = times * 1000 + section
    const known = this.found.get(key)
    if (known) return known
    const made = new Gathering()
    this.found.set(key, made)
    return made
  }

  fronts(): Front[] {
    const { restacks } = this
    return [...this.found].flatMap(([key, gathering]) => {
      const [times, section] = [Math.floor(key / 1000), key % 1000]
      const states = gathering.states()
      return states.length > 0 ? [{ restacks, times, section, states }] : []
    })
  }
}

function ends({ last, pieces, limits, layers }: Choices, prune: boolean): Front[] {
  const level = new Level(1)
  const amounts = new Float64Array(AMOUNTS)
  last.forEach((row, section) =>
    row.forEach((ending, p) => {
      if (!ending || 2 * pieces[p] > layers) return
      const { passage, length, heats, hands } = ending
      if (passage.tallest > limits.opening) return
      const needs = (length + passage.length.loses) / passage.length.grows
      if (needs > limits.bar) return
      amounts[0] = needs
      amounts[1] = passage.outer.loses / passage.outer.grows
      amounts[2] = heats + passage.heats
      amounts[3] = hands + passage.hands
      amounts[4] = passage.creep
      const to = level.at(pieces[p], section)
      if (prune && to.outdone(amounts)) return
      const slender = (passage.tallest * pieces[p]) / needs
      to.add(amounts, { via: { section, pieces: pieces[p] }, slender }, prune)
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
  const level = new Level(restacks)
  const amounts = new Float64Array(AMOUNTS)
  for (const front of after) {
    const layersHere = 1 / front.times ** 2
    for (let section = 0; section < middle.length; section++) {
      for (let p = 0; p < pieces.length; p++) {
        const passage = middle[section][p][front.section]
        const times = front.times * pieces[p]
        if (!passage || passage.tallest > limits.opening || 2 * times > layers) continue
        const { length, outer, heats, hands, creep } = passage
        const to = level.at(times, section)
        for (const then of front.states) {
          const needs = (then.length + length.loses) / length.grows
          if (needs > limits.bar) continue
          amounts[0] = needs
          amounts[1] = (then.outer + outer.loses) / outer.grows
          amounts[2] = then.heats + heats
          amounts[3] = then.hands + hands
          amounts[4] = then.creep + creep * layersHere
          if (prune && to.outdone(amounts)) continue
          const slender = Math.max(then.slender, (passage.tallest * pieces[p]) / needs)
          to.add(amounts, { via: { section, pieces: pieces[p], then }, slender }, prune)
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
