import {
  type Billet,
  type Build,
  type Layer,
  type Layered,
  UNWEIGHED,
  layeredWithin,
} from '#billet'
import type { Smithy } from '#operations'
import type { DoneStep } from '#planner'

/** Metal that has stayed together since it was laid: a sheet, or what is left of one. */
export interface Ply {
  readonly steel: string
  /** The bar in whose stack it was laid. */
  readonly bar: string
  /** Which sheet it was laid as; left out where that was lost sight of. */
  readonly sheet?: Sheet
  /** m, cold. */
  readonly thickness: number
  /** wt% across it, low side to high, evenly spaced. */
  readonly carbon: readonly number[]
}

/** Sheets laid together in one step. A sheet added to a bar is a pile of its own. */
export interface Pile {
  /** Step of its bar in which it was laid, 0 first. */
  readonly step: number
  /** Low to high as laid, like on like as one. */
  readonly steels: readonly string[]
}

export interface Sheet {
  readonly pile: Pile
  /** Its place in the pile, 0 lowest. */
  readonly place: number
}

/** The plies of each flat pack of a bar, low to high, in the order `layeredWithin` lists the packs. */
export type Metal = readonly (readonly Ply[])[]

/** Cells a ply is followed in: twenty-four for a pair of layers. */
export const CELLS = 12

/** The metal after a step. */
export interface Followed {
  readonly metal: Metal
  /** Thickness after over thickness before of each pack, apart from what was taken off it. */
  readonly stretch: readonly number[]
  /** Faces of like on like that met in the step. */
  readonly likeJoints: number
  /** Layers were lost sight of. */
  readonly lost: boolean
}

interface Marked {
  readonly ply: Ply
  readonly pack: number
  readonly first: boolean
  readonly last: boolean
}

/**
 * Follows the metal through one step: its layers are marked, the step is done once more, and the
 * marks say what became of each. So an operation need not know that anything is followed.
 * `before` is the metal of each bar that goes in, in the order of `done.before`.
 */
export function followStep(
  done: DoneStep,
  before: readonly Metal[],
  bought: (steel: string) => number,
  smithy: Smithy,
): Followed {
  const same = asItWas(done, before)
  if (same) return same
  const marks: Marked[] = []
  const packs: (readonly Ply[])[] = []
  const tagged = done.before.map((bar, i) => tagBar(bar, before[i] ?? [], marks, packs))
  const result = done.operation.forward(tagged, done.values as never, {
    ...smithy,
    densities: UNWEIGHED,
  })
  const real = layeredWithin(done.step.after.build)
  const after = result.ok ? layeredWithin(result.ok.after.build) : []
  const fits =
    after.length === real.length &&
    after.every((leaf, i) => leaf.layers.length === real[i]!.layers.length)
  if (!fits) {
    const metal = real.map((leaf) => freshPack(leaf, done.bar, meansOf(packs, bought)))
    return { metal, stretch: metal.map(() => 1), likeJoints: 0, lost: packs.length > 0 }
  }
  const stretch = packs.map(() => 0)
  for (const { layer, strand } of strandsOf(after)) {
    const mark = strand.mark === undefined ? undefined : marks[strand.mark]
    if (!mark) continue
    const ratio = (strand.share * layer.thickness) / mark.ply.thickness
    // What is taken off makes a ply thinner, never thicker: the thickest tells the stretch.
    stretch[mark.pack] = Math.max(stretch[mark.pack]!, ratio)
  }
  const metal = after.map((leaf, i) => {
    const sheetAt = sheetsOf(leaf, done.index)
    return leaf.layers.flatMap((layer, k) => {
      const thickness = real[i]!.layers[k]!.thickness
      return (layer.strands ?? [{ share: 1 }]).map((strand): Ply => {
        const mark = strand.mark === undefined ? undefined : marks[strand.mark]
        const own = strand.share * thickness
        if (!mark)
          return { ...freshPly(layer.steel, done.bar, own, bought(layer.steel)), sheet: sheetAt(k) }
        const whole = mark.ply.thickness * stretch[mark.pack]!
        const kept = cutCarbon(mark, own / whole)
        const carbon = strand.turned ? kept.toReversed() : kept
        return { ...mark.ply, thickness: own, carbon }
      })
    })
  })
  const ofPack = after.map(({ layers }) => {
    const marked = layers.flatMap((l) => l.strands ?? []).find((s) => s.mark !== undefined)
    return marked ? stretch[marks[marked.mark!]!.pack]! : 1
  })
  return { metal, stretch: ofPack, likeJoints: newJoints(after, marks), lost: false }
}

/** Which sheet metal that came off the rack in a step was, by the layer of a pack it lies in. */
function sheetsOf({ layers }: Layered, step: number): (layer: number) => Sheet {
  const isNew = layers.every((layer) => layer.strands?.every((s) => s.mark === undefined) ?? true)
  const pile: Pile = { step, steels: layers.map((layer) => layer.steel) }
  if (isNew) return (place) => ({ pile, place })
  const single = new Map(pile.steels.map((steel) => [steel, { step, steels: [steel] }]))
  return (layer) => ({ pile: single.get(pile.steels[layer]!)!, place: 0 })
}

/** Like faces that lie together now and did not before: neighbours in no pack that came in. */
function newJoints(after: readonly Layered[], marks: readonly Marked[]): number {
  let joints = 0
  for (const layer of after.flatMap((leaf) => leaf.layers)) {
    const strands = layer.strands ?? []
    for (let i = 1; i < strands.length; i++) {
      const [a, b] = [strands[i - 1]!.mark, strands[i]!.mark]
      const met =
        a !== undefined &&
        b !== undefined &&
        Math.abs(a - b) === 1 &&
        marks[a]!.pack === marks[b]!.pack
      if (!met) joints++
    }
  }
  return joints
}

/** Rounding of a stretch: layers that thin alike do so to this. */
const ALIKE = 1e-9

/**
 * Most steps leave every layer where it lay: all thin alike, the outermost perhaps by more. Then
 * nothing need be marked. Undefined where the layers are others, or may lie the other way up.
 */
function asItWas({ before: bars, step }: DoneStep, before: readonly Metal[]): Followed | undefined {
  const [bar] = bars
  const [metal] = before
  if (bars.length !== 1 || !bar || !metal) return undefined
  const was = layeredWithin(bar.build)
  const is = layeredWithin(step.after.build)
  if (was.length !== is.length || was.length !== metal.length) return undefined
  const stretch: number[] = []
  for (const [i, pack] of was.entries()) {
    const layers = is[i]!.layers
    const n = layers.length
    if (pack.layers.length !== n || pack.axis !== is[i]!.axis) return undefined
    const ratios = layers.map((l, k) => l.thickness / pack.layers[k]!.thickness)
    const most = Math.max(...ratios)
    const inner = ratios.slice(1, -1).every((r) => Math.abs(r / most - 1) < ALIKE)
    const outer = n > 2 || n === 1 || Math.abs(ratios[0]! / ratios[1]! - 1) < ALIKE
    const steels = layers.every((l, k) => l.steel === pack.layers[k]!.steel)
    if (!(inner && outer && steels)) return undefined
    stretch.push(most)
  }
  const after = metal.map((plies, i) => thinned(plies, was[i]!, is[i]!, stretch[i]!))
  return { metal: after, stretch, likeJoints: 0, lost: false }
}

function thinned(plies: readonly Ply[], was: Layered, is: Layered, stretch: number): Ply[] {
  const n = was.layers.length
  let at = 0
  return was.layers.flatMap((layer, k) => {
    const kept = is.layers[k]!.thickness / layer.thickness
    const own: Ply[] = []
    while (at < plies.length && plies[at]!.steel === layer.steel) own.push(plies[at++]!)
    return own.map((ply, j) => {
      const first = k === 0 && j === 0
      const last = k === n - 1 && j === own.length - 1
      // What is off an outer layer is off its outermost ply as far as it reaches.
      const carbon = cutCarbon({ ply, pack: 0, first, last }, first || last ? kept / stretch : 1)
      return { ...ply, thickness: ply.thickness * kept, carbon }
    })
  })
}

/** The plies as a bar lay measured: sizes found take the place of those planned. */
export function fitTo(billet: Billet, metal: Metal): Metal {
  const leaves = layeredWithin(billet.build)
  return metal.map((pack, i) => {
    const leaf = leaves[i]
    if (!leaf) return pack
    const is = leaf.layers.reduce((sum, l) => sum + l.thickness, 0)
    const was = pack.reduce((sum, p) => sum + p.thickness, 0)
    if (Math.abs(is / was - 1) < 1e-9) return pack
    return pack.map((p) => ({ ...p, thickness: (p.thickness * is) / was }))
  })
}

export function meanCarbon({ carbon }: Pick<Ply, 'carbon'>): number {
  return carbon.reduce((sum, c) => sum + c, 0) / carbon.length
}

function tagBar(bar: Billet, metal: Metal, marks: Marked[], packs: (readonly Ply[])[]): Billet {
  let next = 0
  const seen = new Map<Layered, Layered>()
  const tag = (build: Build): Build => {
    if (build.form === 'worked') return { ...build, of: tag(build.of) }
    if (build.form === 'joined')
      return { ...build, parts: build.parts.map((p) => ({ ...p, build: tag(p.build) })) }
    const plies = metal[next++]
    const known = seen.get(build)
    if (known || !plies) return known ?? build
    const tagged = { ...build, layers: tagLayers(build.layers, plies, marks, packs.length) }
    packs.push(plies)
    seen.set(build, tagged)
    return tagged
  }
  return { ...bar, build: tag(bar.build) }
}

/** Each layer with the marks of its plies: plies are told off until the layer's thickness is full. */
function tagLayers(
  layers: readonly Layer[],
  plies: readonly Ply[],
  marks: Marked[],
  pack: number,
): Layer[] {
  let at = 0
  return layers.map((layer) => {
    const strands: { mark: number; share: number }[] = []
    while (at < plies.length && plies[at]!.steel === layer.steel) {
      const ply = plies[at]!
      const last = at === plies.length - 1
      strands.push({ mark: marks.length, share: ply.thickness / layer.thickness })
      marks.push({ ply, pack, first: at === 0, last })
      at++
    }
    return strands.length > 0 ? { ...layer, strands } : layer
  })
}

function* strandsOf(leaves: readonly Layered[]) {
  for (const leaf of leaves)
    for (const layer of leaf.layers)
      for (const strand of layer.strands ?? []) yield { layer, strand }
}

/** Carbon of what is left of a ply from which a face was taken: the outer side goes. */
function cutCarbon({ ply, first, last }: Marked, kept: number): readonly number[] {
  const share = Math.min(kept, 1)
  if (share > 1 - 1e-9 || first === last) return ply.carbon
  return first ? sliceCarbon(ply.carbon, 1 - share, 1) : sliceCarbon(ply.carbon, 0, share)
}

/** The part of a profile between two shares of its length, in some cells; its carbon is kept. */
export function sliceCarbon(
  carbon: readonly number[],
  from: number,
  to: number,
  cells = carbon.length,
): number[] {
  const n = carbon.length
  const below = (x: number) => {
    const place = Math.min(Math.max(x * n, 0), n)
    const i = Math.min(Math.floor(place), n - 1)
    let sum = (place - i) * carbon[i]!
    for (let k = 0; k < i; k++) sum += carbon[k]!
    return sum
  }
  const width = (to - from) / cells
  return Array.from(
    { length: cells },
    (_, i) => (below(from + (i + 1) * width) - below(from + i * width)) / (width * n),
  )
}

function freshPly(steel: string, bar: string, thickness: number, carbon: number): Ply {
  return { steel, bar, thickness, carbon: new Array<number>(CELLS).fill(carbon) }
}

function freshPack(leaf: Layered, bar: string, carbon: (steel: string) => number): Ply[] {
  return leaf.layers.map((l) => freshPly(l.steel, bar, l.thickness, carbon(l.steel)))
}

/** Mean carbon of each steel in some packs; a steel not in them is as bought. */
function meansOf(
  packs: readonly (readonly Ply[])[],
  bought: (steel: string) => number,
): (steel: string) => number {
  const sums = new Map<string, [carbon: number, thickness: number]>()
  for (const ply of packs.flat()) {
    const [c, t] = sums.get(ply.steel) ?? [0, 0]
    sums.set(ply.steel, [c + meanCarbon(ply) * ply.thickness, t + ply.thickness])
  }
  return (steel) => {
    const sum = sums.get(steel)
    return sum && sum[1] > 0 ? sum[0] / sum[1] : bought(steel)
  }
}
