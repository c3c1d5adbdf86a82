import { accordionKind } from './accordion/index.ts'
import { affineKind } from './affine/index.ts'
import { barrelKind } from './barrel/index.ts'
import { bendKind } from './bend/index.ts'
import { canKind } from './can/index.ts'
import { columnKind } from './column/index.ts'
import { drawKind } from './draw/index.ts'
import { driftKind } from './drift/index.ts'
import { edgeBarKind } from './edge-bar/index.ts'
import { gridKind } from './grid/index.ts'
import { reliefKind } from './relief/index.ts'
import { restackKind } from './restack/index.ts'
import { rollKind } from './roll/index.ts'
import { shearKind } from './shear/index.ts'
import { fieldKind } from './field/index.ts'
import { shiftKind } from './shift/index.ts'
import { sideBySideKind } from './side-by-side/index.ts'
import { slicesKind } from './slices/index.ts'
import { taperKind } from './taper/index.ts'
import { tileKind } from './tile/index.ts'
import { turnKind } from './turn/index.ts'
import { twistKind } from './twist/index.ts'
import type { WarpKind, WarpKindName } from './warp.ts'

/** Every kind of warp. */
export const warpKinds: readonly WarpKind[] = [
  affineKind,
  drawKind,
  turnKind,
  shiftKind,
  restackKind,
  slicesKind,
  accordionKind,
  twistKind,
  columnKind,
  fieldKind,
  barrelKind,
  shearKind,
  taperKind,
  bendKind,
  rollKind,
  tileKind,
  sideBySideKind,
  edgeBarKind,
  canKind,
  reliefKind,
  gridKind,
  driftKind,
]

const byName = new Map(warpKinds.map((kind) => [kind.name, kind]))

export function warpKind(name: WarpKindName): WarpKind {
  const kind = byName.get(name)
  if (!kind) throw new Error(`no kind of warp is called ${name}`)
  return kind
}
