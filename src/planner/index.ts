/** Works back from the piece to stack and steps, and forward again. */
export { type DoneStep, type Plan, type Solved, type Standing } from './plan.ts'
export { type PlanningOptions, planRoute } from './plan-route.ts'
export { type Measured, type PlannedStep, type Route } from './route.ts'
export { type FaceLines, faceLines } from './face-lines.ts'
export { type CountedStep, type Restack, countRestacks } from './layer-count.ts'
