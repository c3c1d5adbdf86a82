/** Flow stress, spread, pressing, hammer blows, welding, indentation: forces and the sizes they give. */
export { type Estimate } from './estimate.ts'
export { emblemFromMeasures, measureEmblem, type Emblem } from './emblem/emblem.ts'
export { flowStress } from './flow-stress/choose.ts'
export {
  judgeLoad,
  judgeTool,
  stressOf,
  type Judgement,
  type Metal,
  type Task,
  type Verdict,
} from './machines/judge.ts'
export { blowEnergy, isPress, type Tool } from './machines/tools.ts'
export { barrel } from './pressing/barrel.ts'
export { bendLoad, bendStrain } from './pressing/bend.ts'
export { chill } from './pressing/chill.ts'
export { closedDieForce } from './pressing/closed-die.ts'
export { holeLoad } from './pressing/open-hole.ts'
export { platenPressure } from './pressing/platen.ts'
export { ringTest } from './pressing/ring.ts'
export { drawOut, drawPass, type Bar, type Drawing } from './spread/draw.ts'
export { squeezeLimits } from './spread/limits.ts'
export { cornerLoad, movedShare, reshape, taperFrom } from './spread/sections.ts'
export { driftOfLayers, stackStress } from './stack/stack.ts'
export { adviseStamp, sinkingOf, type StampAdvice, type StampPlan } from './stamp/press-in.ts'
export { adviseWeld, weldBefore, weldingRules, type WeldTest } from './welding/weld.ts'
