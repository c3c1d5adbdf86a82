/** Where metal comes from when a bar is moved, cut, laid or forged: maps back, and what they are put together of. */
export type { Branch, Movement, Seat, Unevenness } from './movement.ts'
export {
  along,
  input,
  laid,
  meeting,
  moving,
  peeled,
  skinned,
  stays,
  through,
  turned,
} from './movement.ts'
export { type InSection, layoutOf, startingFrom } from './layout.ts'
export { acrossOf, sectionMap } from './section-map.ts'
export { type Levelled, closedInPart, levelled, waveOf } from './closing.ts'
export { grooveShape } from './groove-shape.ts'
export { type ForgedSection, forgedSection } from './forged-section.ts'
export { shapedField } from './shaped-field.ts'
export { pressedMark } from './pressed-mark.ts'
export { pressedRidges } from './ridges.ts'
export { unevennessOf } from './uneven.ts'
