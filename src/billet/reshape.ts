import { type Axis, type Size, axisLength } from '#geometry'
import {
  type Build,
  type Joined,
  type Layer,
  type Layered,
  type Part,
  layered,
  sharesOf,
  thicknessOf,
  wholeCount,
} from './build.ts'

/** Factors by which each side of a bar grows. */
export type Stretch = Readonly<Record<Axis, number>>

/** The build after the bar is stretched: layers thin or thicken with the side they are square to. */
export function stretch(build: Build, by: Stretch): Build {
  if (build.form === 'layered') {
    const f = by[build.axis]
    return { ...build, layers: build.layers.map((l) => ({ ...l, thickness: l.thickness * f })) }
  }
  if (build.form === 'joined') {
    return {
      ...build,
      parts: build.parts.map((part) => ({ ...part, build: stretch(part.build, by) })),
    }
  }
  // Worked layers run every way in the section: they thin as its mean width does.
  const section = Math.sqrt(by.y * by.z)
  return { ...build, of: stretch(build.of, { x: by.x, y: section, z: section }) }
}

/** Which old axis each new axis was, and whether it now runs the other way. */
export type Turn = Readonly<Record<Axis, { readonly was: Axis; readonly reversed?: boolean }>>

/** The build after the bar is laid on another side. Turning alters nothing but names and order. */
export function turnBuild(build: Build, turn: Turn): Build {
  const now = (was: Axis) =>
    (Object.keys(turn) as Axis[]).find((axis) => turn[axis].was === was) as Axis
  if (build.form === 'worked') return { ...build, of: turnBuild(build.of, turn) }
  if (build.form === 'layered') {
    const axis = now(build.axis)
    return {
      ...build,
      axis,
      layers: turn[axis].reversed ? build.layers.toReversed().map(turnOver) : build.layers,
    }
  }
  const parts = build.parts.map((part) => ({ ...part, build: turnBuild(part.build, turn) }))
  if (build.axis === 'section') return { ...build, parts }
  const axis = now(build.axis)
  return { ...build, axis, parts: turn[axis].reversed ? parts.toReversed() : parts }
}

function turnOver(layer: Layer): Layer {
  if (!layer.strands) return layer
  const strands = layer.strands.toReversed().map((s) => ({ ...s, turned: !s.turned }))
  return { ...layer, strands }
}

export function turnSize(size: Size, turn: Turn): Size {
  const side = (axis: Axis) => size[axisLength[turn[axis].was]]
  return { length: side('x'), width: side('y'), height: side('z') }
}

/** What a peel left, or why nothing is left. */
export interface Peeled {
  readonly build: Build
  /** Layers that went altogether, by side. */
  readonly lost: { readonly low: number; readonly high: number }
}

/**
 * Takes thickness off the low and the high side across an axis (scale, grinding, cropping).
 * Flat layers on that axis go one by one; parts that follow one another likewise; anything else
 * loses all its steels alike. `side` is the bar's side on that axis before.
 */
export function peel(build: Build, axis: Axis, low: number, high: number, side: number): Peeled {
  if (build.form === 'layered' && build.axis === axis) {
    const scale = thicknessOf(build) / side
    return peelLayers(build, low * scale, high * scale)
  }
  if (build.form === 'joined' && build.axis === axis && build.parts.length > 1) {
    return peelParts(build, axis, low, high, side)
  }
  if (build.form === 'joined' && build.axis !== axis && build.axis !== 'section') {
    // The parts lie beside one another under the peeled face: each loses the same thickness.
    const peeled = build.parts.map((part) => peel(part.build, axis, low, high, side))
    return {
      build: {
        ...build,
        parts: build.parts.map((part, i) => ({ ...part, build: peeled[i].build })),
      },
      lost: {
        low: Math.max(...peeled.map((p) => p.lost.low)),
        high: Math.max(...peeled.map((p) => p.lost.high)),
      },
    }
  }
  return { build, lost: { low: 0, high: 0 } }
}

/** At least one layer is left, be it of no thickness. */
function peelLayers(build: Layered, low: number, high: number): Peeled {
  const { layers } = build
  let [first, last] = [0, layers.length - 1]
  let [bottom, top] = [low, high]
  while (first < last && layers[first].thickness <= bottom) bottom -= layers[first++].thickness
  // What is left of the bottom layer may be all there is for the top to take.
  const thick = (i: number) => layers[i].thickness - (i === first ? bottom : 0)
  while (last > first && thick(last) <= top) top -= thick(last--)
  const kept = layers.slice(first, last + 1)
  // Spread, so that marks ride along.
  kept[0] = { ...kept[0], thickness: Math.max(0, kept[0].thickness - bottom) }
  const end = kept[kept.length - 1]
  kept[kept.length - 1] = { ...end, thickness: Math.max(0, end.thickness - top) }
  return {
    build: { ...build, layers: kept },
    lost: { low: first, high: layers.length - 1 - last },
  }
}

/** Outermost parts give way first; a part's share shrinks by what it loses. */
function peelParts(build: Joined, axis: Axis, low: number, high: number, side: number): Peeled {
  const lost = { low: 0, high: 0 }
  const parts = [...build.parts]
  for (const end of ['low', 'high'] as const) {
    let off = end === 'low' ? low : high
    while (off > 0 && parts.length > 0) {
      const at = end === 'low' ? 0 : parts.length - 1
      const part = parts[at]
      const thick = part.share * side
      if (thick <= off && parts.length > 1) {
        lost[end] += wholeCount(part.build).merged * part.times
        parts.splice(at, 1)
        off -= thick
        continue
      }
      const inner =
        part.times === 1
          ? peel(part.build, axis, end === 'low' ? off : 0, end === 'high' ? off : 0, thick)
          : undefined
      if (inner) lost[end] += inner.lost[end]
      parts[at] = {
        ...part,
        build: inner?.build ?? part.build,
        share: Math.max(0, thick - off) / side,
      }
      off = 0
    }
  }
  return { build: { ...build, parts: normalised(parts) }, lost }
}

function normalised(parts: readonly Part[]): Part[] {
  const whole = parts.reduce((sum, part) => sum + part.share, 0)
  return parts.map((part) => ({ ...part, share: part.share / whole }))
}

/** One piece of a stack: its build, its thickness on the stacking axis, its share of the whole. */
export interface Laid {
  readonly build: Build
  readonly thickness: number
  /** Volume of this piece in the new bar, m³. */
  readonly volume: number
}

/**
 * Pieces laid one on another along an axis, low to high. Flat layers on that axis become one pack
 * and like merges with like; anything else is kept as parts.
 */
export function stackAlong(axis: Axis, pieces: readonly Laid[], how: string): Build {
  const flat = pieces.map((p) => alongAxis(p, axis))
  if (flat.every((b) => b !== undefined)) {
    const packs = flat as Layered[]
    return layered(
      axis,
      packs.flatMap((b) => b.layers),
      packs.reduce((sum, b) => sum + b.laid, 0),
    )
  }
  const whole = pieces.reduce((sum, p) => sum + p.volume, 0)
  const parts: Part[] = []
  for (const { build, volume } of pieces) {
    const last = parts.at(-1)
    if (last && last.build === build) {
      parts[parts.length - 1] = {
        ...last,
        times: last.times + 1,
        share: last.share + volume / whole,
      }
    } else parts.push({ build, share: volume / whole, times: 1 })
  }
  return { form: 'joined', axis, how, parts }
}

/** A piece as flat layers on the axis, if it is that: one steel counts as a layer on any axis. */
function alongAxis({ build, thickness }: Laid, axis: Axis): Layered | undefined {
  if (build.form !== 'layered') return undefined
  if (build.axis === axis) return build
  const [only] = build.layers
  return build.layers.length === 1 ? layered(axis, [{ ...only, thickness }], build.laid) : undefined
}

/** The outermost steel and its thickness on one side of an axis, if it is one flat layer there. */
export function outermost(build: Build, axis: Axis, side: 'low' | 'high'): Layer | undefined {
  if (build.form === 'layered' && build.axis === axis)
    return side === 'low' ? build.layers[0] : build.layers.at(-1)
  if (build.form === 'joined' && build.axis === axis) {
    const part = side === 'low' ? build.parts[0] : build.parts.at(-1)
    return part && outermost(part.build, axis, side)
  }
  return undefined
}

/** The same build with other shares of its steels (grinding that takes one more than another). */
export function withShares(
  build: Build,
  shares: Readonly<Record<string, number>>,
  by: string,
): Build {
  const before = sharesOf(build)
  const same = Object.keys(before).every(
    (steel) => Math.abs((shares[steel] ?? 0) - before[steel]) < 1e-12,
  )
  return same ? build : { form: 'worked', by, of: build, shares }
}
