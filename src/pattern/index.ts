/** Which steel, at any point; faces and sections traced back to it. Knows warps, not operations. */
export { type Moved, type Origin, type Seam, type Stack, moved, stack } from './origin.ts'
export { stacksOf, steelsOf } from './origin.ts'
export { type Found, findSteel } from './find-steel.ts'
export { NOTHING } from './tracer.ts'
export { type Crew, openCrew } from './crew.ts'
export { type DrawOptions, type PatternMap, drawFace, drawFaceNow } from './draw-face.ts'
export { HAMMERED, PRESSED, unevenness } from './unevenness.ts'
export { scatter } from './random.ts'
