import type { Size } from '#geometry'
import { readValues } from '#parameters'
import { type PieceKind, type PieceSolid, pieceKinds } from '#piece'
import type { Shop } from '#shop'

/** What one kind of piece a remnant gives, as it lies or forged to another section. */
export interface FromRemnant {
  readonly kind: string
  readonly title: string
  readonly how: 'ground' | 'forged'
  /** Times the usual size of the kind, all sides alike. */
  readonly scale: number
  /** Box of the greatest such piece, m. */
  readonly size: Size
  readonly mass: number
  /** Pieces of the usual size it gives, one after another. */
  readonly pieces: number
}

/** Heats it takes to forge a remnant to another section (common practice: four to six). */
const HEATS = 5
/** Nobody makes a piece outside these times its usual size of it. */
const SCALES = [0.25, 4] as const

/**
 * What can be made from a remnant: for every kind of piece the greatest it gives, ground from it as
 * it lies with its faces kept, and forged out with its metal kept. Greatest first.
 */
export function piecesFromRemnant(
  remnant: Size,
  density: number,
  shop: Shop,
  kinds: readonly PieceKind[] = pieceKinds,
): readonly FromRemnant[] {
  return kinds
    .flatMap((kind) => {
      const solid = usualPiece(kind)
      if (!solid) return []
      return [
        ground(kind, solid, remnant, density, shop),
        forged(kind, solid, remnant, density, shop),
      ]
    })
    .filter((one) => one !== undefined)
    .sort((a, b) => b.mass - a.mass || (a.kind < b.kind ? -1 : 1))
}

/** The first example of a kind. */
function usualPiece(kind: PieceKind): PieceSolid | undefined {
  const read = readValues(kind.parameters, kind.examples[0])
  return read.ok && kind.build(read.ok.values as never).ok
}

/** Grown alike in all directions, a piece fills its blank alike: the sides of the remnant settle how far. */
function ground(
  kind: PieceKind,
  solid: PieceSolid,
  remnant: Size,
  density: number,
  shop: Shop,
): FromRemnant | undefined {
  const off = 2 * (shop.polishStock + shop.grindStock)
  const sides = ['length', 'width', 'height'] as const
  // What is bent or opened out of a smaller blank must fit as it will be: nothing is forged here.
  const size = Object.fromEntries(
    sides.map((side) => [side, Math.max(solid.blank.size[side], solid.size[side])]),
  ) as unknown as Size
  const scale = Math.min(...sides.map((side) => (remnant[side] - off) / size[side]))
  const fits = sides.every((side) => remnant[side] >= size[side] + off)
  const each = size.length + off + shop.kerf
  const pieces = fits ? Math.floor((remnant.length + shop.kerf) / each) : 0
  return told(kind, 'ground', solid, scale, density, pieces)
}

/** The metal of the remnant, less crops and scale, as the blank with its grinding stock. */
function forged(
  kind: PieceKind,
  solid: PieceSolid,
  remnant: Size,
  density: number,
  shop: Shop,
): FromRemnant | undefined {
  const skin = 2 * HEATS * shop.forgingScale
  const left = {
    length: remnant.length - skin - 2 * shop.crop,
    width: remnant.width - skin,
    height: remnant.height - skin,
  }
  if (!(left.length > 0 && left.width > 0 && left.height > 0)) return undefined
  const metal = left.length * left.width * left.height
  const off = 2 * (shop.polishStock + shop.grindStock)
  const { size } = solid.blank
  const blank = (s: number) =>
    (s * size.length + off) * (s * size.width + off) * (s * size.height + off)
  let low = 0
  let high: number = SCALES[1]
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2
    if (blank(middle) <= metal) low = middle
    else high = middle
  }
  // Drawing makes a section smaller only.
  const section = (low * size.width + off) * (low * size.height + off)
  if (section > left.width * left.height) return undefined
  return told(kind, 'forged', solid, low, density, Math.floor(metal / blank(1)))
}

function told(
  kind: PieceKind,
  how: FromRemnant['how'],
  solid: PieceSolid,
  scale: number,
  density: number,
  pieces: number,
): FromRemnant | undefined {
  if (!(scale >= SCALES[0])) return undefined
  const s = Math.min(scale, SCALES[1])
  const { length, width, height } = solid.size
  return {
    kind: kind.name,
    title: kind.title,
    how,
    scale: s,
    size: { length: s * length, width: s * width, height: s * height },
    mass: solid.volume * s ** 3 * density,
    pieces,
  }
}
