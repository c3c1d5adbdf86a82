/** The job file, its migrations, and the one call that computes it. */
export { FORMAT, type Job, type Wanted, type Wishes } from './job.ts'
export { readJob, readJobObject } from './read-job.ts'
export { writeJob } from './write-job.ts'
export { jobSchema } from './job-schema.ts'
export {
  type ComputeOptions,
  type Computed,
  buildPiece,
  computeJob,
  densitiesFor,
  densityNamed,
} from './compute-job.ts'
export {
  type PlanRecord,
  type StepRecord,
  heatsOf,
  recordPlan,
  recordProblems,
} from './plan-record.ts'
export { type CardStep, type CardTotals, cardStep, cardSteps } from './card-steps.ts'
export { type Declared, type DeclaredOperation, type DeclaredSteel, declared } from './declared.ts'
export {
  type BarPattern,
  type PatternPlace,
  type RoutePatterns,
  patternOf,
  patternOfSteps,
  routePatterns,
} from './pattern/pattern-of.ts'
export { type Look, type PictureOptions, drawPattern, viewOf } from './pattern/draw-pattern.ts'
export { type SoFar, routeSoFar } from './so-far.ts'
export { type SteelSheet, steelSheet, steelSheets } from './steel-sheet.ts'
export { type CutOff, type Weighed, cutOffFor, readSides, weighBlock } from './weigh-bar.ts'
export { type CountedStep, type FaceLines, type Restack, countRestacks, faceLines } from '#planner'
export { DESIGN_DENSITY } from '#steel'
export { type HeatColour, heatColour } from '#metallurgy'
export { CAUTIONS_DEFER, type Bracket, type Working } from '#operations'
export {
  type AskedForce,
  type AskedStamp,
  type ForceAnswer,
  type StampAnswer,
  askForce,
  askStamp,
} from './ask-force.ts'
export { treatJob } from './treat-job.ts'
export {
  type HeatRecord,
  type PileRecord,
  type SteelRecord,
  type Treated,
  recordHeats,
} from '#heats'
export { starterJob } from './starter-job.ts'
export { startingSizes } from './starting-sizes.ts'
export {
  type SuggestOrder,
  type SuggestedRoute,
  type SuggestedRoutes,
  suggestForJob,
} from './planning/suggest.ts'
export {
  type Drawer,
  USUAL_DRAWS,
  allowanceOfJob,
  drawerOfJob,
  rangeOfJob,
} from './planning/range.ts'
export { type WhatIf, outcomeOfJob, whatIfOfJob } from './planning/what-if.ts'
export { type Leverage, type Levers, leversOfJob } from './planning/levers.ts'
export {
  type Priced,
  type RemnantUse,
  cutListsOfJob,
  fromRemnantsOfJob,
  priceJob,
  sensitivitiesOfJob,
} from './planning/stock.ts'
export {
  type Allowance,
  type CutList,
  type Drawn,
  type LikelyRange,
  type Outcome,
  type Sensitivity,
  rangeOf,
} from '#planner'
