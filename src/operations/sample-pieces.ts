import { readValues } from '#parameters'
import { type PieceSolid, findPieceKind } from '#piece'
import { type Billet, worked } from '#billet'
import type { Example } from './operation.ts'
import { samplePack } from './samples.ts'
import { featuresToCome, stockVolume } from './shaped.ts'

type RawPiece = NonNullable<Example['piece']>

const plate = { kind: 'plaque', length: '140 mm', width: '60 mm', thickness: '8 mm' } as const

/** The builder's plate with its four screw holes, with a groove in its back, with its stamp. */
export const plaqueWithHoles: RawPiece = { ...plate, holes: 'corners' }
export const plaqueWithGroove: RawPiece = {
  ...plate,
  grooves: [{ path: 'around', inset: '14 mm', cutter: '3 mm', depth: '1.5 mm' }],
}
export const plaqueWithStamp: RawPiece = {
  ...plate,
  stampLength: '40 mm',
  stampWidth: '25 mm',
  stampDepth: '1.5 mm',
}

const built = new Map<string, PieceSolid>()

/** Builds a piece from the values a job file holds, once. A sample that does not build is a fault, and throws. */
export function buildPiece(raw: RawPiece): PieceSolid {
  const key = JSON.stringify(raw)
  const piece = built.get(key) ?? pieceOf(raw)
  built.set(key, piece)
  return piece
}

function pieceOf({ kind: name, ...raw }: RawPiece): PieceSolid {
  const kind = findPieceKind(name)
  const read = kind.ok && readValues(kind.ok.parameters, raw)
  const made = read?.ok && kind.ok?.build(read.ok.values)
  if (!made?.ok) throw new Error(`the sample piece ${name} does not build`)
  return made.ok
}

/** A plaque as it lies after rough grinding, this much left on every face. */
export function shapedPlaque(
  leave: number,
  made: readonly string[] = [],
  raw: RawPiece = plaqueWithHoles,
): Billet {
  return shapedPiece(buildPiece(raw), leave, made)
}

/** Any piece as it lies after rough grinding from 25 flat layers. */
export function shapedPiece(
  piece: PieceSolid,
  leave: number,
  made: readonly string[] = [],
): Billet {
  const size = {
    length: piece.size.length + 2 * leave,
    width: piece.size.width + 2 * leave,
    height: piece.size.height + 2 * leave,
  }
  const mm = (m: number) => m * 1000
  const bar = samplePack(mm(size.length), mm(size.width), mm(size.height), 25)
  const shaped: Billet = { ...bar, size, shape: 'cut', made: ['shape', ...made] }
  return {
    ...shaped,
    volume: piece.volume + featuresToCome(shaped, piece) + stockVolume(piece, leave),
    build: worked('ground to shape', bar.build),
  }
}
