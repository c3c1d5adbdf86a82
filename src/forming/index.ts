/** Flow stress, spread, pressing, hammer blows, welding, indentation: forces and the sizes they give. */
export { type Estimate } from './estimate.ts'
export { coverEmblem, emblemFromMeasures, measureEmblem, type Emblem } from './emblem/emblem.ts'
export { bendLoad, bendStrain } from './loads/bend.ts'
export { holeLoad } from './loads/open-hole.ts'
export {
  judgeLoad,
  judgeTool,
  stressOf,
  type Judgement,
  type Metal,
  type Task,
} from './machines/judge.ts'
export { type Tool } from './machines/tools.ts'
export { barrel } from './pressing/barrel.ts'
export { drawOut, drawPass, type Bar } from './spread/draw.ts'
export { squeezeLimits } from './spread/limits.ts'
export { cornerLoad, movedShare } from './spread/sections.ts'
export { driftOfLayers } from './stack/stack.ts'
export { adviseStamp, type StampAdvice, type StampPlan } from './stamp/press-in.ts'
export { adviseWeld, weldBefore, weldingRules, type WeldTest } from './welding/weld.ts'
