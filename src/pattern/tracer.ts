import {
  type Cut,
  type MeanReader,
  type Weighing,
  aloneTo,
  layerStage,
  meanReader,
  slabShare,
  type Weights,
  weighPile,
} from '#share'
import { type Evaluator, compile } from '#warp'
import { type Origin, type Run, type Split, type Stack, fuse, stacksOf } from './origin.ts'

/** No metal: a hole, or a branch that leads nowhere. */
export const NOTHING = 0xffff

export interface TracerOptions {
  /** 'f32' for the screen, 'f64' for what is counted. */
  readonly precision: 'f32' | 'f64'
  /** What is averaged over each pixel; with none, places alone are traced. */
  readonly weights: readonly Weights[]
  /** What joints leave of the stacks (see `cutsOf`). */
  readonly cuts?: ReadonlyMap<Stack, Cut>
  readonly engine?: 'kernels' | 'reference'
  readonly tile?: number
}

/** What the last run found, point by point; the arrays are used again by the next run. */
export interface Traced {
  /** Number of the stack (see `stacksOf`), or NOTHING. */
  readonly stack: Uint16Array
  /** Place in the stack's frame, m: only where places alone are traced. */
  readonly x: Float64Array
  readonly y: Float64Array
  readonly z: Float64Array
  /** Layer coordinate, in cells of the stack's weighing, and its run along the pixel's two sides. */
  readonly layer: Float32Array
  readonly alongU: Float32Array
  readonly alongV: Float32Array
  /** Mean of each weight over the pixel. */
  readonly means: readonly Float32Array[]
  /** Share of the pixel that is a welded skin. */
  readonly seam: Float32Array
}

/** How coarse a stack's sheets are, in cells: how far a mean may sway (see Weighing), and what a joint leaves of it. */
export interface Grain {
  readonly once: number
  readonly twice: number
  /** Ends of what repeats after a joint. */
  readonly from: number
  readonly to: number
  /** What joints take off in the mean, and up to what run the pile is read alone (see `aloneTo`). */
  readonly taken: number
  readonly alone: number
}

/** A tree of origins compiled: fill the inputs of up to `tile` points, run, read `found`. */
export interface Tracer {
  readonly tile: number
  readonly stacks: readonly Stack[]
  /** Of each stack; where places alone are traced there are none. */
  readonly grains: readonly Grain[]
  /** Whether there are ways that lead to no metal. */
  readonly holes: boolean
  /** Whether welded skins are looked for anywhere. */
  readonly seams: boolean
  /** x, y, z; then, where means are asked for, how each runs along the pixel's first side, then the second. */
  input(channel: number): Float64Array | Float32Array
  run(count: number): void
  readonly found: Traced
}

interface Knot {
  readonly evaluator: Evaluator
  readonly stack: number
  readonly split?: Split
  readonly ways: readonly Knot[]
  readonly outputs: readonly number[]
  readonly means?: MeanReader
  readonly branch: number
}

const TILE = 1024

export function traceOrigin(origin: Origin, options: TracerOptions): Tracer {
  const { precision, weights, cuts, engine, tile = TILE } = options
  const stacks = stacksOf(origin)
  const covering = weights.length > 0
  const directions = covering ? 2 : 0
  const grains: Grain[] = []
  const known = new Map<Run, Knot>()
  const knotOf = (run: Run): Knot => {
    const seen = known.get(run)
    if (seen) return seen
    const { end } = run
    const stack = end.kind === 'stack' ? stacks.indexOf(end) : NOTHING
    const weighings =
      end.kind === 'stack' && covering ? weighPile(end, weights, stack, cuts?.get(end)) : undefined
    const evaluator = compile(run.warps.toReversed(), {
      precision,
      directions,
      engine,
      tile,
      tail: weighings && layerStage(weighings[0]!),
    })
    const { program } = evaluator
    const split = end.kind === 'split' ? end : undefined
    const step = split ? run.warps.length - 1 - split.warp : -1
    const knot: Knot = {
      evaluator,
      stack,
      split,
      ways: split ? split.ways.map(knotOf) : [],
      outputs: program.outputs.map((o) => o.channel),
      means: weighings && meanReader(weighings, { precision, engine, tile }),
      branch:
        split && split.warp >= 0
          ? (program.branches.find((b) => b.step === step)?.channel ?? -1)
          : -1,
    }
    if (weighings) grains[knot.stack] = grainOf(weighings)
    known.set(run, knot)
    return knot
  }
  const root = knotOf(fuse(origin))
  const found = emptyTraced(tile, weights.length)
  const depth = new Lists(tile)
  return {
    tile,
    stacks,
    grains,
    seams: covering && [...known.values()].some((k) => (k.split?.seams.length ?? 0) > 0),
    holes: [...known.values()].some((k) => k.split !== undefined),
    found,
    input: (channel) => root.evaluator.channel(channel),
    run(count) {
      found.seam.fill(0, 0, count)
      settle(root, count, undefined, found, depth, 0, covering)
    },
  }
}

function grainOf(weighings: readonly Weighing[]): Grain {
  const left = weighings.map((w) => w.joined ?? w)
  const { cell, cells, bottom } = weighings[0]!
  const scale = left[0]!.cell / cell
  const from = (left[0]!.bottom - bottom) / cell
  const most = (of: (sway: Weighing['sway']) => number) => Math.max(...left.map((w) => of(w.sway)))
  return {
    once: scale * most((s) => s.once),
    twice: scale ** 2 * most((s) => s.twice),
    from,
    to: from + scale * left[0]!.cells,
    taken: cells - scale * left[0]!.cells,
    alone: aloneTo(weighings[0]!),
  }
}

function emptyTraced(tile: number, means: number): Traced {
  const double = () => new Float64Array(tile)
  const single = () => new Float32Array(tile)
  return {
    stack: new Uint16Array(tile),
    x: double(),
    y: double(),
    z: double(),
    layer: single(),
    alongU: single(),
    alongV: single(),
    means: Array.from({ length: means }, single),
    seam: single(),
  }
}

/** Index lists, a set for each level of the tree, so that no tile makes new ones. */
class Lists {
  private readonly kept: Int32Array[] = []
  private readonly tile: number
  constructor(tile: number) {
    this.tile = tile
  }
  at(level: number): Int32Array {
    return (this.kept[level] ??= new Int32Array(this.tile))
  }
}

/** Runs a knot whose inputs are filled, then what its points lead to; `places`: where the points belong. */
function settle(
  knot: Knot,
  count: number,
  places: Int32Array | undefined,
  found: Traced,
  lists: Lists,
  level: number,
  covering: boolean,
): void {
  const { evaluator, split } = knot
  evaluator.run(count)
  if (!split) return readStack(knot, count, places, found)
  if (covering && split.seams.length > 0) readSeams(knot, split, count, places, found)
  const branch = knot.branch >= 0 ? evaluator.channel(knot.branch) : undefined
  const channels = covering ? 9 : 3
  const source = lists.at(2 * level)
  const target = lists.at(2 * level + 1)
  for (let way = -1; way < knot.ways.length; way++) {
    let n = 0
    for (let i = 0; i < count; i++) {
      if (wayOf(split, branch ? branch[i]! : 0) !== way) continue
      source[n] = i
      target[n++] = places ? places[i]! : i
    }
    if (n === 0) continue
    if (way < 0) {
      for (let i = 0; i < n; i++) clear(found, target[i]!)
      continue
    }
    const next = knot.ways[way]!
    for (let c = 0; c < channels; c++) {
      const [to, from] = [next.evaluator.channel(c), evaluator.channel(c)]
      for (let i = 0; i < n; i++) to[i] = from[source[i]!]!
    }
    settle(next, n, target, found, lists, level + 1, covering)
  }
}

function wayOf(split: Split, branch: number): number {
  if (branch < -0.5) return split.below ?? -1
  const list = split.branches
  if (!list || list.length === 0) return 0
  return list[Math.min(Math.round(branch), list.length - 1)]!
}

function clear(found: Traced, i: number): void {
  found.stack[i] = NOTHING
  found.layer[i] = found.alongU[i] = found.alongV[i] = 0
  for (const mean of found.means) mean[i] = 0
}

function readStack(knot: Knot, count: number, places: Int32Array | undefined, found: Traced): void {
  const put = (row: Float32Array | Float64Array, from: Float32Array | Float64Array) => {
    if (!places) row.set(from.subarray(0, count))
    else for (let i = 0; i < count; i++) row[places[i]!] = from[i]!
  }
  if (knot.means) {
    const [layer, alongU, alongV] = knot.outputs.map((c) => knot.evaluator.channel(c))
    put(found.layer, layer!)
    put(found.alongU, alongU!)
    put(found.alongV, alongV!)
    const means = knot.means.read(layer!, alongU!, alongV!, count)
    found.means.forEach((mean, k) => put(mean, means[k]!))
  } else [found.x, found.y, found.z].forEach((row, k) => put(row, knot.evaluator.channel(k)))
  if (!places) found.stack.fill(knot.stack, 0, count)
  else for (let i = 0; i < count; i++) found.stack[places[i]!] = knot.stack
}

function readSeams(
  knot: Knot,
  split: Split,
  count: number,
  places: Int32Array | undefined,
  found: Traced,
): void {
  for (const { axis, at, depth } of split.seams) {
    const side = axis === 'y' ? 1 : 2
    const [value, du, dv] = [side, 3 + side, 6 + side].map((c) => knot.evaluator.channel(c))
    for (let i = 0; i < count; i++) {
      const share = slabShare(value![i]! - at, du![i]!, dv![i]!, depth)
      const place = places ? places[i]! : i
      if (share > 0) found.seam[place] = 1 - (1 - found.seam[place]!) * (1 - share)
    }
  }
}
