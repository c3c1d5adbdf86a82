import type { Build } from '#billet'
import { type Composition, type Grade, findGrade, percent } from '#steel'
import { settleCarbon } from '#metallurgy'
import { ironBased } from '../heat-records.ts'
import { type Metal, type Ply, meanCarbon } from '../metal/metal.ts'

/** A value and the lowest and highest to be expected. */
export interface Ranged {
  readonly value: number
  readonly range: readonly [number, number]
}

/** Layers of the finished piece that are alike: one steel, one thickness, one carbon. */
export interface LayerClass {
  readonly steel: string
  /** The bar in whose stack they were laid. */
  readonly bar: string
  readonly count: number
  /** m, the mean of them, as the piece is finished. */
  readonly thickness: number
  /** Share of the volume of all that was followed. */
  readonly share: number
  /** wt%, as bought and as the heats leave it. */
  readonly carbonBought: Ranged
  readonly carbon: Ranged
  /** The leanest and richest place inside such a layer. */
  readonly within: readonly [number, number]
}

/** Carbon settles between austenites at about this heat, K; it matters little which. */
const FORGED_AT = 1373.15
/** wt%: two published descriptions of nickel differ by this (TDB, MOBK). */
const NICKEL = 0.01
/** How far the time at heat may be off, as a share (common practice: fires differ by a third). */
const TIMES_OFF = 0.3
/** wt% a certificate leaves open (common practice). */
const CERTIFICATE = 0.01

interface Merged {
  readonly steel: string
  readonly bar: string
  readonly thickness: number
  readonly carbon: number
  readonly lowest: number
  readonly highest: number
  readonly times: number
  readonly pack: number
}

/** The finished metal in classes of like layers, the commonest first. */
export function layerClasses(
  metal: Metal,
  build: Build,
  compositionOf: (steel: string) => Composition,
  own: readonly Grade[],
): LayerClass[] {
  const times = timesOf(build)
  const layers = metal.flatMap((pack, i) => mergedOf(pack, times[i] ?? 1, i))
  const open = metal.map((pack) => opennessOf(pack, compositionOf, own))
  const whole = layers.reduce((sum, l) => sum + l.thickness * l.times, 0)
  const classes: Merged[][] = []
  for (const layer of layers) {
    const like = classes.find(([first]) => alike(first!, layer))
    if (like) like.push(layer)
    else classes.push([layer])
  }
  return classes
    .map((members): LayerClass => {
      const { steel, bar, pack } = members[0]!
      const count = members.reduce((n, l) => n + l.times, 0)
      const sum = members.reduce((n, l) => n + l.thickness * l.times, 0)
      const carbon = members.reduce((n, l) => n + l.carbon * l.thickness * l.times, 0) / sum
      const bought = percent(compositionOf(steel), 'C')
      const [was, is] = open[pack]!.get(steel) ?? [CERTIFICATE, CERTIFICATE]
      return {
        steel,
        bar,
        count,
        thickness: sum / count,
        share: sum / whole,
        carbonBought: around(bought, was),
        carbon: around(carbon, is),
        within: [
          Math.min(...members.map((l) => l.lowest)),
          Math.max(...members.map((l) => l.highest)),
        ],
      }
    })
    .toSorted((a, b) => b.share - a.share)
}

function around(value: number, by: number): Ranged {
  return { value, range: [Math.max(0, value - by), value + by] }
}

function alike(a: Merged, b: Merged): boolean {
  return (
    a.steel === b.steel &&
    a.bar === b.bar &&
    Math.abs(Math.log(a.thickness / b.thickness)) < 0.35 &&
    Math.abs(a.carbon - b.carbon) < 0.015
  )
}

/** Plies of one steel that lie on one another are one layer. */
function mergedOf(pack: readonly Ply[], times: number, index: number): Merged[] {
  const layers: Merged[] = []
  for (const ply of pack) {
    const last = layers.at(-1)
    const mean = meanCarbon(ply)
    const lowest = Math.min(...ply.carbon)
    const highest = Math.max(...ply.carbon)
    const { steel, bar, thickness } = ply
    if (last?.steel !== steel || last.bar !== bar) {
      layers.push({ steel, bar, thickness, carbon: mean, lowest, highest, times, pack: index })
      continue
    }
    const both = last.thickness + thickness
    layers[layers.length - 1] = {
      ...last,
      thickness: both,
      carbon: (last.carbon * last.thickness + mean * thickness) / both,
      lowest: Math.min(last.lowest, lowest),
      highest: Math.max(last.highest, highest),
    }
  }
  return layers
}

/** How often each pack is there, in the order the packs are listed. */
export function timesOf(build: Build, times = 1): number[] {
  if (build.form === 'worked') return timesOf(build.of, times)
  if (build.form === 'layered') return [times]
  return build.parts.flatMap((part) => timesOf(part.build, times * part.times))
}

/**
 * How far the carbon of each steel of a pack may be off, wt%, as bought and at the end. Bought: the
 * limits of its grade. Where carbon has levelled the limits of all the steels come in by their
 * shares; where it is half way, so does what is not known of the time at heat.
 */
function opennessOf(
  pack: readonly Ply[],
  compositionOf: (steel: string) => Composition,
  own: readonly Grade[],
): ReadonlyMap<string, readonly [bought: number, end: number]> {
  const steels = [...new Set(pack.map((p) => p.steel))]
  const mass = steels.map((s) =>
    pack.filter((p) => p.steel === s).reduce((sum, p) => sum + p.thickness, 0),
  )
  const whole = mass.reduce((a, b) => a + b, 0)
  const start = steels.map((s) => percent(compositionOf(s), 'C'))
  const end = steels.map(
    (s, i) =>
      pack.filter((p) => p.steel === s).reduce((sum, p) => sum + meanCarbon(p) * p.thickness, 0) /
      mass[i]!,
  )
  const settled = steels.every((s) => ironBased(compositionOf(s)))
    ? settleCarbon(
        steels.map((s, i) => ({ composition: compositionOf(s), mass: mass[i]! })),
        FORGED_AT,
      )
    : start
  const limits = steels.map((s) => limitsOf(s, own))
  const mean = limits.reduce((sum, l, i) => sum + (l * mass[i]!) / whole, 0)
  const nickel = steels.some((s) => percent(compositionOf(s), 'Ni') > 0.2) && steels.length > 1
  const gone = steels.map((_, i) => {
    const way = settled[i]! - start[i]!
    return Math.abs(way) > 0.01 ? Math.min(Math.max((end[i]! - start[i]!) / way, 0), 1) : undefined
  })
  const most = Math.max(0, ...gone.map((g) => g ?? 0))
  return new Map(
    steels.map((steel, i) => {
      const level = gone[i] ?? most
      const way = Math.abs(settled[i]! - start[i]!)
      const parts = [
        (1 - level) * limits[i]!,
        level * mean,
        nickel ? NICKEL * level : 0,
        TIMES_OFF * way * level * (1 - level),
      ]
      return [steel, [limits[i]!, Math.hypot(...parts)]]
    }),
  )
}

/** Half the width of a grade's limits on carbon, wt%. */
function limitsOf(steel: string, own: readonly Grade[]): number {
  const range = findGrade(steel, own).ok?.composition.C?.range
  return range ? (range[1] - range[0]) / 2 : CERTIFICATE
}
