import { type Result, failed, nearest, ok } from '#problem'
import type { PieceKind } from './piece-kind.ts'

/** Every kind of piece; a new kind is one folder and one line here. */
export const pieceKinds: readonly PieceKind[] = []

/** The kind of this name, or the names nearest to it. */
export function findPieceKind(name: string): Result<PieceKind> {
  const found = pieceKinds.find((kind) => kind.name === name)
  if (found) return ok(found)
  const names = pieceKinds.map((kind) => kind.name)
  return failed({
    at: '',
    what: `"${name.slice(0, 60)}" is not a kind of piece`,
    why: `the kinds are: ${names.join(', ')}`,
    try: [
      ...nearest(name, names).map((n) => `did you mean "${n}"?`),
      `one of: ${names.join(', ')}`,
    ],
  })
}
