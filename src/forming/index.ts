/** Flow stress, spread, pressing, hammer blows, welding, indentation: forces and the sizes they give. */
export { type Estimate } from './estimate.ts'
export { flowStress } from './flow-stress/choose.ts'
export { driftOfLayers, stackStress } from './flow-stress/stack.ts'
export { barrel } from './pressing/barrel.ts'
export { type ClosedDie, closedDieForce } from './pressing/closed-die.ts'
export { chill } from './pressing/chill.ts'
export { type Platen, platenPressure } from './pressing/platen.ts'
export { ringTest } from './pressing/ring.ts'
