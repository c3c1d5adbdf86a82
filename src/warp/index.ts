/** The few invertible volume-true maps, each written once as an expression graph. */
export type { Domain, Place, Settings, Warp, WarpKindName } from './warp.ts'
export type { Graph, Node } from './graph.ts'
export type { HeadStage, TailStage } from './program.ts'
export { type Evaluator, type Places, type Points, compile } from './evaluate.ts'
export { type ShaderText, shaderText } from './shader.ts'
export { determinant, jacobian } from './jacobian.ts'
export { pushPoints } from './push.ts'
export { affine } from './affine/index.ts'
export { draw } from './draw/index.ts'
export { turn } from './turn/index.ts'
export { shift } from './shift/index.ts'
export { restack } from './restack/index.ts'
export { slices } from './slices/index.ts'
export { accordion } from './accordion/index.ts'
export { twist, twistZones } from './twist/index.ts'
export { column } from './column/index.ts'
export { field } from './field/index.ts'
export { barrel } from './barrel/index.ts'
export { shear } from './shear/index.ts'
export { taper } from './taper/index.ts'
export { bend } from './bend/index.ts'
export { roll, rollLength } from './roll/index.ts'
export { tile } from './tile/index.ts'
export { sideBySide } from './side-by-side/index.ts'
export { edgeBar, edgeBarLength } from './edge-bar/index.ts'
export { can } from './can/index.ts'
export { relief } from './relief/index.ts'
export { grid } from './grid/index.ts'
export { drift } from './drift/index.ts'
export {
  boxOutline,
  closeColumns,
  closeDies,
  discOutline,
  squaringClosings,
} from './column/dies.ts'
export { type Grooves, flattenGrooves } from './column/grooves.ts'
export { type Dimple, flattenDimples } from './field/dimples.ts'
