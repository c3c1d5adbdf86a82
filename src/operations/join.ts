import { type Problem, type Result, failed, ok } from '#problem'
import { type Axis, CONSERVED, axisLength } from '#geometry'
import { printQuantity } from '#units'
import { type Billet, type Build, type Densities, type Laid, stackAlong } from '#billet'
import { takeOff } from './fire.ts'
import { takeFlats } from './flats.ts'
import { layersLost } from './forge-in-heats.ts'
import type { Loss } from './operation.ts'

/** Pieces laid face to face, and what it took to make the faces meet. */
export interface Together {
  readonly after: Billet
  readonly ground: Loss
  readonly warnings: readonly Problem[]
}

/** How pieces are laid together. */
export interface Laying {
  readonly axis: Axis
  /** Ground off each face that meets another, m. */
  readonly cleanUp: number
  /** In the words of the account: `3 bars side by side`. */
  readonly how: string
  readonly spare: Axis
  /** Pieces that are bright already, off the rack: laid as they are. */
  readonly bright?: ReadonlySet<Billet>
}

/**
 * Lays pieces one after another along an axis, low to high, each face that meets another ground
 * clean. Their other two sides are as the first piece has them: make them alike before.
 */
export function layTogether(
  pieces: readonly Billet[],
  { axis, cleanUp, how, spare, bright }: Laying,
  densities: Densities,
): Result<Together> {
  const side = axisLength[axis]
  const masses: Record<string, number> = {}
  const laid: Laid[] = []
  const warnings: Problem[] = []
  let lost = 0
  for (const [i, piece] of pieces.entries()) {
    const each = bright?.has(piece) ? 0 : cleanUp
    const off = { low: i === 0 ? 0 : each, high: i === pieces.length - 1 ? 0 : each }
    const clean =
      axis === 'x'
        ? takeOff(piece, { x: off }, 'ground', densities)
        : takeFlats(piece, { [axis]: off }, 'ground', densities)
    if (!clean) return failed(groundThrough(piece.size[side], cleanUp))
    lost += clean.lost
    for (const [steel, mass] of Object.entries(clean.loss.masses))
      masses[steel] = (masses[steel] ?? 0) + mass
    const { build, size, volume } = clean.after
    laid.push({ build, thickness: size[side], volume })
  }
  if (lost > 0) warnings.push({ ...layersLost(lost, 'grinding'), at: 'cleanUp' })
  const [first] = pieces
  const after: Billet = {
    ...first,
    size: { ...first.size, [side]: laid.reduce((sum, p) => sum + p.thickness, 0) },
    shape: pieces.every((p) => p.shape === 'rectangle') ? 'rectangle' : 'cut',
    volume: laid.reduce((sum, p) => sum + p.volume, 0),
    build: joinBuilds(axis, laid, how),
    bond: 'loose',
    temper: 'as forged',
    worked: 1,
    spare,
    hollow: undefined,
  }
  return ok({ after, ground: { cause: 'ground', masses }, warnings })
}

/**
 * The build of pieces laid along an axis. Pieces with the same flat layers square to another axis
 * lie layer to layer: the joint cuts no line, and they are one pack.
 */
export function joinBuilds(axis: Axis, laid: readonly Laid[], how: string): Build {
  const alike = sharingBuilds(laid)
  const [{ build }] = alike
  const across = build.form === 'layered' && build.axis !== axis && build.layers.length > 1
  if (across && alike.every((piece) => piece.build === build)) return build
  return sameSection(alike) ? stackAlong(axis, alike, how) : asParts(axis, alike, how)
}

/** Whether each piece holds as much metal for its thickness: else layers' thickness is not their share. */
function sameSection(laid: readonly Laid[]): boolean {
  const fills = laid.map((piece) => piece.volume / piece.thickness)
  return Math.max(...fills) - Math.min(...fills) <= CONSERVED * Math.max(...fills)
}

function asParts(axis: Axis, laid: readonly Laid[], how: string): Build {
  const whole = laid.reduce((sum, piece) => sum + piece.volume, 0)
  const parts = laid.map(({ build, volume }) => ({ build, share: volume / whole, times: 1 }))
  return { form: 'joined', axis, how, parts }
}

/** Pieces whose builds are the same in every number share one, so that an account stays small. */
function sharingBuilds(laid: readonly Laid[]): Laid[] {
  const seen: Build[] = []
  const byPlace = new Map<Build, Build>()
  return laid.map((piece) => {
    let build = byPlace.get(piece.build)
    if (!build) {
      build = seen.find((other) => sameBuild(other, piece.build))
      if (!build) seen.push((build = piece.build))
      byPlace.set(piece.build, build)
    }
    return { ...piece, build }
  })
}

function sameBuild(a: Build, b: Build): boolean {
  if (a.form !== 'layered' || b.form !== 'layered')
    return a.form === b.form && JSON.stringify(a) === JSON.stringify(b)
  return (
    a.axis === b.axis &&
    a.laid === b.laid &&
    a.layers.length === b.layers.length &&
    a.layers.every(
      ({ steel, thickness }, i) =>
        thickness === b.layers[i].thickness && steel === b.layers[i].steel,
    )
  )
}

/** Pieces brought to the least height among them by grinding top and bottom, and told so. */
export function toOneSide(
  pieces: readonly Billet[],
  axis: 'y' | 'z',
  densities: Densities,
): {
  readonly pieces: readonly Billet[]
  readonly losses: readonly Loss[]
  readonly warnings: readonly Problem[]
} {
  const side = axisLength[axis]
  const sides = pieces.map((piece) => piece.size[side])
  const [least, most] = [Math.min(...sides), Math.max(...sides)]
  const losses: Loss[] = []
  const even = pieces.map((piece) => {
    const over = piece.size[side] - least
    const flat =
      over > 0
        ? takeFlats(piece, { [axis]: { low: over / 2, high: over / 2 } }, 'ground', densities)
        : undefined
    if (!flat) return piece
    losses.push(flat.loss)
    // Its side is the least one to the last digit, whatever the halves round to.
    return { ...flat.after, size: { ...flat.after.size, [side]: least } }
  })
  const warnings = most - least > 1e-4 ? [unlike(side, least, most)] : []
  return { pieces: even, losses, warnings }
}

function unlike(side: string, least: number, most: number): Problem {
  return {
    at: '',
    what: `the pieces are from ${show(least)} to ${show(most)} in ${side}; all are ground to ${show(least)}`,
    why: 'faces that do not lie flush do not weld',
    try: [`draw all of them to one ${side} before they are joined`],
  }
}

function groundThrough(thickness: number, each: number): Problem {
  return {
    at: 'cleanUp',
    what: `grinding ${show(each)} off each face leaves nothing of a piece ${show(thickness)} thick`,
    why: 'a piece between two others is ground clean on both faces',
    try: [`grind less than ${show(thickness / 4)} a face`, 'use thicker pieces'],
  }
}

const show = (m: number) => printQuantity(m, 'length')
