/** The job that lies open: what it is, was and will be, worked out as it is changed, and kept. */
export { go, useAddress } from './address.ts'
export { amissAt } from './amiss.ts'
export {
  type Theme,
  choose,
  closeOpen,
  edit,
  followAddress,
  leaveList,
  loadList,
  newJob,
  openBars,
  redoEdit,
  takeVersion,
  undoEdit,
  useDesk,
} from './desk.ts'
export { type Asking, engine, secondEngine } from './engine/engine.ts'
export type {
  Build,
  Declarations,
  DeclaredKind,
  DeclaredOperation,
  DeclaredSteel,
  DrawnBar,
  Foreseen,
  PieceDrawing,
  Row,
  Tried,
  Way,
  Ways,
  Weighed,
  Weight,
  Worked,
  Written,
} from './engine/messages.ts'
export type { LaidSteel, SteelPlace, SteelStep } from './engine/laid-steel.ts'
export { type Path, barNames, pathOf, placeOf, valueAt, withValue } from './engine/places.ts'
export {
  IN_HAND,
  type StepPlace,
  type WrittenStep,
  duplicateStep,
  freshName,
  insertStep,
  moveStep,
  newStep,
  removeBar,
  removeStep,
  renameBar,
  stepsOf,
} from './route-edits.ts'
export { measurementAt, withMeasured, withoutMeasured } from './measurements.ts'
export { type JobLine, type VersionLine, server } from './server.ts'
export { useSaid, useTradeWord, useWords } from './use-words.ts'
export { listenToWindows } from './windows.ts'
export type { Painted, PaintedSide } from './engine/paint-face.ts'
export { paint, painted } from './engine/painter.ts'
