import { type Warp, shift, turn } from '#warp'
import { type Billet, type Densities, sharesOf, volumesOf, worked } from '#billet'
import { along } from '#movement'
import type { Loss, LossCause } from '../operation.ts'

/** Two square bars made of the triangles of two pieces of one square bar. */
export interface Triangles {
  /** All four triangles with their layers running to the middle. */
  readonly radial: Billet
  /** All four triangles with their layers running round the middle, square in square. */
  readonly nested: Billet
  readonly kerf: Loss
  readonly ground: Loss
}

/**
 * Two like pieces of a square bar of flat layers, each sawn lengthwise along both diagonals. Of
 * every piece two triangles have their layers along the outside and two across it; like goes to
 * like. A right-angled triangle that loses a strip `t` along both short sides is a like triangle
 * with its long side 2√2 t shorter, so the new bars are square: W − 2√2 (kerf/2 + clean-up).
 * Undefined where nothing would be left.
 */
export function cutDiagonally(
  piece: Billet,
  kerf: number,
  cleanUp: number,
  densities: Densities,
): Triangles | undefined {
  const sawn = Math.SQRT2 * (kerf / 2)
  const s = apexOf(kerf, cleanUp)
  const side = piece.size.width - 2 * s
  if (!(side > 0)) return undefined
  const bar = (kind: Kind): Billet => ({
    ...piece,
    size: { ...piece.size, width: side, height: side },
    shape: 'rectangle',
    volume: piece.size.length * side * side,
    build: {
      ...worked(`cut on the diagonals, layers ${words[kind]}`, piece.build),
      shares: sharesIn(piece, kind, s),
    },
  })
  const [radial, nested] = [bar('radial'), bar('nested')]
  const whole = volumesOf(piece)
  const gone = (cause: LossCause, from: Amounts, to: Amounts): Loss => ({
    cause,
    masses: Object.fromEntries(
      Object.keys(whole).map((steel) => [
        steel,
        ((from[steel] ?? 0) - (to[steel] ?? 0)) * densities[steel],
      ]),
    ),
  })
  const both = Object.fromEntries(Object.entries(whole).map(([steel, v]) => [steel, 2 * v]))
  const afterSaw = amounts(piece, sawn)
  const afterGrind = amounts(piece, s)
  return {
    radial,
    nested,
    kerf: gone('kerf', both, afterSaw),
    ground: gone('ground', afterSaw, afterGrind),
  }
}

type Kind = 'radial' | 'nested'
type Amounts = Readonly<Record<string, number>>

const words = { radial: 'to the middle', nested: 'round the middle' }

/** Volumes of both new bars by steel, when each triangle's apex is `s` from the middle. */
function amounts(piece: Billet, s: number): Amounts {
  const side = piece.size.width - 2 * s
  const volume = piece.size.length * side * side
  const sum: Record<string, number> = {}
  for (const kind of ['radial', 'nested'] as const)
    for (const [steel, share] of Object.entries(sharesIn(piece, kind, s)))
      sum[steel] = (sum[steel] ?? 0) + share * volume
  return sum
}

/**
 * Steel fractions of the triangles of one kind. At a height z above the middle a triangle that has
 * its layers along the outside is 2(|z| − s) wide; the pair that has them across is W/2 − s − |z|
 * wide each. Both are summed over every layer exactly.
 */
function sharesIn(
  { build, size }: Billet,
  kind: Kind,
  s: number,
): Readonly<Record<string, number>> {
  if (build.form !== 'layered' || build.axis === 'x') return sharesOf(build)
  const half = size.width / 2
  const reach = half - s
  // Area from the middle out to a distance a.
  const within = (a: number) =>
    kind === 'nested' ? Math.max(0, a - s) ** 2 : reach ** 2 - Math.max(0, reach - a) ** 2
  const upTo = (z: number) => Math.sign(z) * within(Math.abs(z))
  const sum: Record<string, number> = {}
  let z = -half
  for (const { steel, thickness } of build.layers) {
    sum[steel] = (sum[steel] ?? 0) + upTo(z + thickness) - upTo(z)
    z += thickness
  }
  const whole = Object.values(sum).reduce((a, b) => a + b, 0)
  return Object.fromEntries(Object.entries(sum).map(([steel, area]) => [steel, area / whole]))
}

/** How far a triangle's apex has come from the middle of the bar it was cut from. */
export function apexOf(kerf: number, cleanUp: number): number {
  return Math.SQRT2 * (kerf / 2 + cleanUp)
}

/**
 * The four triangles of the new bar, from +y round: back into the two pieces they were sawn from. A
 * triangle to the right or left has its layers running to the middle, one above or below has them
 * across.
 */
export function trianglesFrom(given: {
  readonly lay: Kind
  readonly side: number
  /** From the start of one piece to that of the next, m. */
  readonly apart: number
  readonly apex: number
}): readonly (Warp | undefined)[][] {
  const out = shift({ y: given.side / 4 + given.apex })
  const opposite =
    given.lay === 'radial' ? [undefined, turn('over')] : [turn('quarter'), turn('quarter-back')]
  return [0, 1, 2, 3].map((k) => [out, opposite[k >> 1], along((k % 2) * given.apart)])
}
