import type { Billet } from '#billet'
import type { Imprint } from '#piece'
import { type Warp, draw } from '#warp'
import type { Branch, Movement } from '#movement'
import type { Smithy } from '#operations'
import type { DoneStep } from '#planner'
import { type Origin, moved, stack, unevenness } from '#pattern'

export interface HistoryOptions {
  /** The job's seed: the same seed gives the same bar, mark for mark. */
  readonly seed: number
  /** Forged perfectly even: for what is counted, and to tell the pattern from the hand. */
  readonly even?: boolean
}

/** Where the metal of a bar came from, and what its front face has been pressed in by. */
export interface History {
  readonly origin: Origin
  readonly imprint?: Imprint
  /** What went into its last step: of it, the same step done only in part is followed. */
  readonly given: Given
}

/** Where the metal of the bars that go into a step came from, the one in hand first. */
export interface Given {
  readonly origins: readonly Origin[]
  readonly imprint?: Imprint
}

/**
 * Where the metal of each bar came from after each of its steps, as the pattern room follows it: one
 * tree a step, made of those of the steps before it. `place`: bar and index as the steps have them.
 */
export function historiesOf(
  steps: readonly DoneStep[],
  smithy: Smithy,
  options: HistoryOptions,
): ReadonlyMap<string, History> {
  const histories = new Map<string, History>()
  const last = new Map<string, History & { readonly billet: Billet }>()
  for (const done of steps) {
    const { operation, values, before, step, bar, index } = done
    const names = operation.bars?.(values as never) ?? []
    const inHand = before.length > names.length ? [bar] : []
    const inputs = [...inHand, ...names].map((name, i) => {
      const made = last.get(name)
      return made && measured(made.origin, made.billet, before[i])
    })
    const origins = inputs.filter((origin) => origin !== undefined)
    const history = followStep(done, { origins, imprint: last.get(bar)?.imprint }, smithy, options)
    histories.set(placeOf(bar, index), history)
    last.set(bar, { ...history, billet: step.after })
  }
  return histories
}

/** One step on top of what went into it. */
export function followStep(
  { operation, values, before, step, bar, index, at }: DoneStep,
  given: Given,
  smithy: Smithy,
  options: HistoryOptions,
): History {
  const movement = operation.movement(before, values as never, step.after, smithy)
  const seed = seedAt(options.seed, at)
  const uneven = unevenAfter(movement, step.after, seed, options)
  const origin = originOf(movement, given.origins, { bar, index }, uneven)
  const imprint = movement.imprint ?? given.imprint
  return { origin, ...(imprint && { imprint }), given }
}

export function placeOf(bar: string, index: number): string {
  return `${bar} ${index}`
}

/** A bar that was measured after a step is the planned one, stretched to what was found. */
function measured(origin: Origin, planned: Billet, found: Billet): Origin {
  const by = {
    length: found.size.length / planned.size.length,
    width: found.size.width / planned.size.width,
    height: found.size.height / planned.size.height,
  }
  return Object.values(by).every((f) => f === 1) ? origin : moved(origin, [draw(by)])
}

function unevenAfter(
  { uneven }: Movement,
  after: Billet,
  seed: number,
  { even }: HistoryOptions,
): readonly Warp[] {
  return uneven && !even ? [unevenness(after.size, uneven, seed)] : []
}

/** Each step has chance of its own, told by its place in the job (FNV-1a, from memory). */
function seedAt(seed: number, at: string): number {
  let hash = 0x811c9dc5 ^ seed
  for (const letter of at) hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193)
  return hash >>> 0
}

/** One step's movement on top of what went in. A branch met twice is one piece of the tree. */
function originOf(
  movement: Movement,
  inputs: readonly Origin[],
  { bar, index }: Pick<DoneStep, 'bar' | 'index'>,
  first: readonly Warp[],
): Origin {
  const known = new Map<Branch, Origin>()
  const of = (branch: Branch): Origin => {
    const seen = known.get(branch)
    if (seen) return seen
    const origin = build(branch)
    known.set(branch, origin)
    return origin
  }
  const build = (branch: Branch): Origin => {
    if ('warps' in branch) return from(branch, [])
    if ('layers' in branch) return stack(bar, branch.layers, 0, index)
    return inputs[branch.input]
  }
  const from = ({ warps, branches, below }: Movement, more: readonly Warp[]): Origin => {
    const ways = (branches ?? [{ input: 0 }]).map(of)
    const all = [...more, ...warps]
    const [only] = ways
    if (all.length === 0 && ways.length === 1) return only
    const distinct = [...new Set(ways)]
    const under = below && of(below)
    const list = under && !distinct.includes(under) ? [...distinct, under] : distinct
    return moved(list, all, {
      ...(distinct.length > 1 ? { branches: ways.map((way) => distinct.indexOf(way)) } : {}),
      ...(under ? { below: list.indexOf(under) } : {}),
    })
  }
  return from(movement, first)
}
