import { type Result, failed, nearest, ok } from '#problem'
import type { Parameters } from '#parameters'
import type { PieceKind } from './piece-kind.ts'
import { bar } from './bar/index.ts'
import { hiddenTangKnife } from './hidden-tang-knife/index.ts'
import { fullTangKnife } from './full-tang-knife/index.ts'
import { dagger } from './dagger/index.ts'
import { sword } from './sword/index.ts'
import { guard } from './guard/index.ts'
import { ingot } from './ingot/index.ts'
import { plaque } from './plaque/index.ts'
import { ringBlank } from './ring-blank/index.ts'
import { roundBar } from './round-bar/index.ts'

/** Every kind of piece; a new kind is one folder and one line here. */
export const pieceKinds: readonly PieceKind[] = [
  anyKind(bar),
  anyKind(roundBar),
  anyKind(ingot),
  anyKind(plaque),
  anyKind(hiddenTangKnife),
  anyKind(fullTangKnife),
  anyKind(dagger),
  anyKind(sword),
  anyKind(ringBlank),
  anyKind(guard),
]

/** A kind among others: its values are checked against its own declaration before it builds. */
function anyKind<P extends Parameters>(kind: PieceKind<P>): PieceKind {
  return kind as unknown as PieceKind
}

/** The kind of this name, or the names nearest to it. */
export function findPieceKind(name: string): Result<PieceKind> {
  const found = pieceKinds.find((kind) => kind.name === name)
  if (found) return ok(found)
  const names = pieceKinds.map((kind) => kind.name)
  return failed({
    at: 'kind',
    what: `"${name.slice(0, 60)}" is not a kind of piece`,
    why: 'a kind says which sizes are asked for',
    try: [
      ...nearest(name, names).map((n) => `did you mean "${n}"?`),
      `one of: ${names.join(', ')}`,
    ],
  })
}
