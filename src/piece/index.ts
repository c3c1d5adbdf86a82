/** The finished piece as a solid. One folder a kind of piece. */
export {
  type Blank,
  type Edges,
  type Feature,
  type Groove,
  type Hole,
  type Imprint,
  type PieceKind,
  type PieceSolid,
  type StampBox,
  type Station,
} from './piece-kind.ts'
export { findPieceKind, pieceKinds } from './piece-kinds.ts'
export { imprintAt } from './imprint.ts'
export { contradictions, thicknessForMass, weigh } from './weigh.ts'
