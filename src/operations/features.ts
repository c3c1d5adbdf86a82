import { type Problem, type Result, failed, ok } from '#problem'
import { printQuantity } from '#units'
import type { Feature, PieceSolid } from '#piece'
import {
  type Billet,
  type Build,
  type Densities,
  UNWEIGHED,
  sharesOf,
  volumesOf,
  worked,
} from '#billet'
import { contentOf } from './content.ts'
import { lossBetween } from './fire.ts'
import type { Loss, LossCause } from './operation.ts'
import { isShaped, withMade } from './shaped.ts'

export interface FeaturesTaken {
  readonly after: Billet
  readonly losses: readonly Loss[]
  readonly warnings: readonly Problem[]
}

/**
 * Takes the piece's features of these kinds out of the bar. What goes right through takes every
 * layer; what is cut in a face takes the layers it goes through. In a bar still thicker than the
 * piece, holes and slots are as much longer.
 */
export function takeFeatures(
  bar: Billet,
  piece: PieceSolid,
  kinds: readonly Feature['kind'][],
  cause: LossCause,
  densities: Densities,
): Result<FeaturesTaken> {
  const wanted = piece.features.filter((f) => kinds.includes(f.kind) && f.volume > 0)
  const toCome = wanted.filter((f) => !bar.made?.includes(f.kind))
  if (toCome.length === 0) return failed(nothingToMake(kinds, wanted.length > 0))
  const of = groundFrom(bar.build)
  const left: Record<string, number> = { ...volumesOf(bar) }
  for (const feature of toCome) {
    const through = feature.kind === 'hole' || feature.kind === 'slot'
    const longer = through && !isShaped(bar) ? Math.max(1, bar.size.height / piece.size.height) : 1
    // Of a bar that is not weighed a feature takes its steels alike.
    const whole = through || densities === UNWEIGHED
    const shares = whole ? sharesOf(of) : contentOf(of, { z: slab(feature.kind, piece, bar) })
    for (const [steel, share] of Object.entries(shares))
      left[steel] -= share * feature.volume * longer
  }
  const volume = Object.values(left).reduce((sum, v) => sum + v, 0)
  if (!(volume > 0) || Object.values(left).some((v) => v < 0)) return failed(notEnough(bar))
  const shares = Object.fromEntries(Object.entries(left).map(([steel, v]) => [steel, v / volume]))
  const build: Build =
    bar.build.form === 'worked' ? { ...bar.build, shares } : { ...worked(cause, bar.build), shares }
  const after = withMade(
    { ...bar, shape: 'cut', volume, build },
    ...new Set(toCome.map((f) => f.kind)),
  )
  return ok({
    after,
    losses: [lossBetween(bar, after, cause, densities)],
    warnings: [...hard(bar), ...lostInGrinding(bar, piece, toCome)],
  })
}

/** The build a shaped piece was ground from: its layers still lie as they lay. */
function groundFrom(build: Build): Build {
  return build.form === 'worked' && build.by === 'ground to shape' ? build.of : build
}

/** Share of the height that a cut in the face goes through: front is the top. */
function slab(kind: Feature['kind'], piece: PieceSolid, bar: Billet): readonly [number, number] {
  const grooves = piece.edges.grooves
  const depth =
    kind === 'stamp' ? (piece.edges.stamp?.depth ?? 0) : Math.max(0, ...grooves.map((g) => g.depth))
  const deep = Math.min(1, Math.max(depth / bar.size.height, 1e-6))
  const back = kind !== 'stamp' && grooves.length > 0 && grooves.every((g) => g.face === 'back')
  return back ? [0, deep] : [1 - deep, 1]
}

function nothingToMake(kinds: readonly string[], made: boolean): Problem {
  const names = kinds.map((kind) => `${kind}s`).join(' or ')
  return {
    at: '',
    what: made ? `the ${names} of the piece have been made already` : `the piece has no ${names}`,
    why: 'where they are and how large they are comes from the piece',
    try: made ? ['leave this step out'] : ['describe them in the piece', 'leave this step out'],
  }
}

function notEnough(bar: Billet): Problem {
  return {
    at: '',
    what: `there is not that much metal in ${printQuantity(bar.volume, 'volume')}`,
    why: 'the cuts take more of one steel than the bar holds there',
    try: ['make them smaller', 'start from a larger bar'],
  }
}

function hard(bar: Billet): Problem[] {
  if (bar.temper !== 'hardened' && bar.temper !== 'tempered') return []
  return [
    {
      at: '',
      what: `the steel is ${bar.temper}`,
      why: 'drills and cutters blunt on hardened steel, and heat from forcing them draws the temper',
      try: ['make this step before hardening', 'use carbide, with coolant'],
    },
  ]
}

function lostInGrinding(bar: Billet, piece: PieceSolid, features: readonly Feature[]): Problem[] {
  const stock = (bar.size.height - piece.size.height) / 2
  const inFace = features.some((f) => f.kind === 'groove' || f.kind === 'fuller')
  if (isShaped(bar) || !inFace || stock < 1e-4) return []
  return [
    {
      at: '',
      what: `grooves cut now lose ${printQuantity(stock, 'length')} of their depth when the faces are ground`,
      why: 'the bar is not ground to the piece yet',
      try: ['grind to shape first', `cut them ${printQuantity(stock, 'length')} deeper`],
    },
  ]
}
