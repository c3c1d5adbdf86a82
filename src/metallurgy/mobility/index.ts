/** How freely carbon and the metals move, and what drives them. */
export { type NickelSet, carbonActivity, settleCarbon } from './activity.ts'
export { type Substitutional, diffuseCarbon, diffuseSubstitutional } from './diffusivity.ts'
export { acrossWeld, creepOf, swingLeft } from './interface-width.ts'
