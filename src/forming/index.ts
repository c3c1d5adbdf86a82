/** Flow stress, spread, pressing, hammer blows, welding, indentation: forces and the sizes they give. */
export { type Estimate } from './estimate.ts'
export { flowStress } from './flow-stress/choose.ts'
export { driftOfLayers, stackStress } from './flow-stress/stack.ts'
