import { type Axis } from '#geometry'

/** One layer of one steel after merging; metres, cold. */
export interface Layer {
  readonly steel: string
  readonly thickness: number
  /**
   * Marks that ride along, low to high, for whoever follows the metal through a step: which of the
   * marked layers this one is made of. No operation reads them.
   */
  readonly strands?: readonly Strand[]
}

/** A marked layer that went into another. */
export interface Strand {
  /** The mark; left out, metal that came off the rack in the step. */
  readonly mark?: number
  /** Share of the layer's thickness. */
  readonly share: number
  /** It lies the other way up. */
  readonly turned?: boolean
}

/**
 * Flat layers square to one axis, listed from the low side to the high side. A bar of one steel is
 * one layer. Neighbours are never of the same steel: like on like is one layer.
 */
export interface Layered {
  readonly form: 'layered'
  readonly axis: Axis
  readonly layers: readonly Layer[]
  /** Sheets as they were ever laid, before like merged with like. */
  readonly laid: number
}

/** Different bars welded into one: side by side along an axis, or in another way named by `how`. */
export interface Joined {
  readonly form: 'joined'
  /** Axis along which the parts follow one another; `section` when they tile the section or wrap it. */
  readonly axis: Axis | 'section'
  readonly how: string
  readonly parts: readonly Part[]
}

export interface Part {
  readonly build: Build
  /** Share of the volume of the whole, 0..1; the shares sum to 1. */
  readonly share: number
  /** How many times this very part is there (a restack of a bar that is not flat-layered). */
  readonly times: number
}

/**
 * Layers that no longer lie flat: twisted, dished, laddered, split. `of` is the build as it lay
 * before, its thicknesses carried along as a mean. `shares` overrides the steel fractions where the
 * work took more of one steel than of another (grinding a bevel through a jacket).
 */
export interface Worked {
  readonly form: 'worked'
  readonly by: string
  readonly of: Build
  readonly shares?: Readonly<Record<string, number>>
}

export type Build = Layered | Joined | Worked

/** A bar of one steel. */
export function solid(steel: string, thickness: number): Layered {
  return { form: 'layered', axis: 'z', layers: [{ steel, thickness }], laid: 1 }
}

/** Sheets laid one on another, low to high; like on like merges, the count as laid is kept. */
export function layered(axis: Axis, sheets: readonly Layer[], laid = sheets.length): Layered {
  const layers: Layer[] = []
  for (const sheet of sheets) {
    const last = layers.at(-1)
    if (last && last.steel === sheet.steel) {
      layers[layers.length - 1] = merge(last, sheet)
    } else if (sheet.thickness > 0) layers.push(sheet)
  }
  return { form: 'layered', axis, layers, laid }
}

function merge(low: Layer, high: Layer): Layer {
  const thickness = low.thickness + high.thickness
  if (!low.strands && !high.strands) return { steel: low.steel, thickness }
  const strands = [low, high].flatMap((layer) =>
    (layer.strands ?? [{ share: 1 }]).map((s) => ({
      ...s,
      share: (s.share * layer.thickness) / thickness,
    })),
  )
  return { steel: low.steel, thickness, strands }
}

export function worked(by: string, of: Build): Worked {
  return { form: 'worked', by, of }
}

/** Thickness of a flat-layered build along its own axis. */
export function thicknessOf(build: Layered): number {
  return build.layers.reduce((sum, layer) => sum + layer.thickness, 0)
}

/** A build is a value: its shares are summed once. */
const sharesKnown = new WeakMap<Build, Readonly<Record<string, number>>>()

/** Share of the volume that each steel has, 0..1, summing to 1. */
export function sharesOf(build: Build): Readonly<Record<string, number>> {
  const known = sharesKnown.get(build)
  if (known) return known
  const shares = sumShares(build)
  sharesKnown.set(build, shares)
  return shares
}

function sumShares(build: Build): Readonly<Record<string, number>> {
  const shares: Record<string, number> = {}
  const add = (steel: string, share: number) => (shares[steel] = (shares[steel] ?? 0) + share)
  if (build.form === 'layered') {
    const whole = thicknessOf(build)
    for (const layer of build.layers) add(layer.steel, layer.thickness / whole)
  } else if (build.form === 'worked') {
    return build.shares ?? sharesOf(build.of)
  } else {
    for (const part of build.parts) {
      for (const [steel, share] of Object.entries(sharesOf(part.build)))
        add(steel, share * part.share)
    }
  }
  return shares
}

/** Layers counted two ways. */
export interface LayerCount {
  /** Every sheet ever laid, restacks multiplied out. */
  readonly laid: number
  /** What can be counted in the steel: like joints are one layer. */
  readonly merged: number
}

/**
 * Layers met going through the bar along an axis. Flat layers square to another axis are met once.
 * Worked layers count as they lay before the work, whatever the axis: their lines now run everywhere.
 */
export function countLayers(build: Build, axis: Axis): LayerCount {
  if (build.form === 'worked') return wholeCount(build.of)
  if (build.form === 'layered') {
    return build.axis === axis || build.layers.length === 1
      ? { laid: build.laid, merged: build.layers.length }
      : { laid: 1, merged: 1 }
  }
  const counts = build.parts.map((part) => times(countLayers(part.build, axis), part.times))
  return build.axis === axis ? total(counts) : greatest(counts)
}

/** Layers of the bar counted across its own layers, wherever they lie now. */
export function wholeCount(build: Build): LayerCount {
  if (build.form === 'worked') return wholeCount(build.of)
  if (build.form === 'layered') return { laid: build.laid, merged: build.layers.length }
  return total(build.parts.map((part) => times(wholeCount(part.build), part.times)))
}

function times(count: LayerCount, n: number): LayerCount {
  return { laid: count.laid * n, merged: count.merged * n }
}

function total(counts: readonly LayerCount[]): LayerCount {
  return counts.reduce((a, b) => ({ laid: a.laid + b.laid, merged: a.merged + b.merged }))
}

function greatest(counts: readonly LayerCount[]): LayerCount {
  return counts.reduce((a, b) => (b.merged > a.merged ? b : a))
}

/** Every flat-layered build inside, deepest first: for certificates and for per-bar counts. */
export function layeredWithin(build: Build): readonly Layered[] {
  if (build.form === 'layered') return [build]
  if (build.form === 'worked') return layeredWithin(build.of)
  return build.parts.flatMap((part) => layeredWithin(part.build))
}

/** Names of the steels inside, in order of first meeting. */
export function steelsIn(build: Build): readonly string[] {
  return [...new Set(layeredWithin(build).flatMap((b) => b.layers.map((layer) => layer.steel)))]
}

/** The axis of the layers if they all lie flat along one axis, else undefined. */
export function flatAxis(build: Build): Axis | undefined {
  return build.form === 'layered' ? build.axis : undefined
}
