import type { Layer } from '#billet'
import type { Warp } from '#warp'

/**
 * Where metal came from, as a tree. A leaf is metal as it was laid; a step leads from the metal after it back to what
 * it was made of. Frames are those of the warps: x along the bar from its start, y and z centred, metres.
 */
export type Origin = Stack | Moved

/** Sheets as laid, listed from the bottom (z least) up, the pile centred on z = 0. One sheet: a bar of one steel. */
export interface Stack {
  readonly kind: 'stack'
  /** Name of the bar, as the job has it. */
  readonly bar: string
  /** Step of that bar in which it was laid, 0 first, if told. */
  readonly step?: number
  readonly layers: readonly Layer[]
  /**
   * How wide the edge between two steels is, as thick as it would be in this stack, m: what diffusion moved before the
   * layers were thinned. 0 or left out: sharp (nickel hardly moves).
   */
  readonly soft?: number
}

/** A step, or several in a row. */
export interface Moved {
  readonly kind: 'moved'
  /** Pull-back maps in the order they are applied to a point of the metal after the step. */
  readonly warps: readonly Warp[]
  /** What the metal was before: different bars, an added sheet. */
  readonly from: readonly Origin[]
  /**
   * Which of `from` each branch of the last warp that branches leads to; left out, all lead to the first. Branches
   * beyond the list lead where its last entry does; −1 in the list and negative branches lead nowhere: no metal.
   */
  readonly branches?: readonly number[]
  /** What a negative branch leads to instead (the core of a roll), as a place in `from`. */
  readonly below?: number
  /** Faces of `from`'s first that were welded here, where carbon was burnt out before: drawn as fine lines. */
  readonly seams?: readonly Seam[]
}

/** A skin of changed metal on one face of a bar before it was joined: within `depth` of `axis` = `at`. */
export interface Seam {
  readonly axis: 'y' | 'z'
  readonly at: number
  readonly depth: number
}

export function stack(bar: string, layers: readonly Layer[], soft = 0, step?: number): Stack {
  return { kind: 'stack', bar, layers, soft, ...(step !== undefined && { step }) }
}

/** One bar worked by these maps, in pull-back order. */
export function moved(
  from: Origin | readonly Origin[],
  warps: readonly Warp[],
  more: Omit<Moved, 'kind' | 'warps' | 'from'> = {},
): Moved {
  return { kind: 'moved', warps, from: isList(from) ? from : [from], ...more }
}

function isList(from: Origin | readonly Origin[]): from is readonly Origin[] {
  return Array.isArray(from)
}

/** Every leaf of the tree once, in the order first met: its place in the list is its number in a picture. */
export function stacksOf(origin: Origin): Stack[] {
  const found = new Set<Stack>()
  const visit = (node: Origin) => {
    if (node.kind === 'stack') found.add(node)
    else node.from.forEach(visit)
  }
  visit(origin)
  return [...found]
}

/** Names of all steels, in order of first meeting. */
export function steelsOf(origin: Origin): string[] {
  return [...new Set(stacksOf(origin).flatMap((s) => s.layers.map((layer) => layer.steel)))]
}

/** A run of steps through which one bar goes, ready to be compiled as one chain. */
export interface Run {
  /** In pull-back order. */
  readonly warps: readonly Warp[]
  /** What lies before the run: a stack, or a step where ways part or a seam is looked for. */
  readonly end: Stack | Split
}

export interface Split {
  readonly kind: 'split'
  /** Place in the run's warps of the warp whose branch decides; −1: there is but one way. */
  readonly warp: number
  readonly branches?: readonly number[]
  readonly below?: number
  readonly seams: readonly Seam[]
  readonly ways: readonly Run[]
}

/** Kinds that give a branch (joins, cuts and folds). */
const BRANCHING: ReadonlySet<Warp['kind']> = new Set<Warp['kind']>([
  'restack',
  'slices',
  'accordion',
  'tile',
  'side-by-side',
  'edge-bar',
  'roll',
  'drift',
])

/** The tree with consecutive steps through which one bar goes drawn together. The same metal is the same run. */
export function fuse(origin: Origin): Run {
  const known = new Map<Origin, Run>()
  const from = (node: Origin): Run => {
    const seen = known.get(node)
    if (seen) return seen
    const run = build(node)
    known.set(node, run)
    return run
  }
  const build = (node: Origin): Run => {
    const warps: Warp[] = []
    for (let at = node; ;) {
      if (at.kind === 'stack') return { warps, end: at }
      warps.push(...at.warps)
      const plain = at.from.length === 1 && !at.branches && !at.seams?.length && !hasHoles(at)
      if (plain) {
        at = at.from[0]!
        continue
      }
      const warp = warps.findLastIndex((w) => BRANCHING.has(w.kind))
      const { branches, below, seams = [] } = at
      return {
        warps,
        end: { kind: 'split', warp, branches, below, seams, ways: at.from.map(from) },
      }
    }
  }
  return from(origin)
}

/** Whether negative branches, where there is no metal, can occur. */
function hasHoles(node: Moved): boolean {
  return node.warps.some((w) => w.kind === 'drift' || w.kind === 'roll')
}
