/** How far the grain has grown. */
export { type GrainGrowth, grainNumber, growGrains } from './grow-grains.ts'
