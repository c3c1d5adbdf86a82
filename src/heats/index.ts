/** The metal of a plan followed through every heat, and what is left in each layer. */
export { type FollowOptions, type PlanFollowed, followPlan } from './follow-plan.ts'
export { scaledShop } from './fire/model-scale.ts'
export { workingTimes } from './fire/working-time.ts'
export { checkHeats } from './heat-problems.ts'
export { type HeatRecord, statesOf } from './heat-records.ts'
export { type HeatsRecord, recordHeats } from './heats-record.ts'
export { type LayerRecord, type SteelRecord } from './layers/steel-records.ts'
export { type Treated, treatPlan } from './treat-plan.ts'
