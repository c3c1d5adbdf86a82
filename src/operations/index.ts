/** One folder for each thing done to the metal. */
export {
  type Example,
  type Heat,
  type HeatPurpose,
  type Loss,
  type LossCause,
  type Operation,
  type Smithy,
  type Step,
  type Stock,
} from './operation.ts'
export { type Caution, type CautionName, CAUTIONS_DEFER, cautions } from './cautions.ts'
export { judgeStep } from './judge-step.ts'
export { type Held, withSpare, workBack } from './lengthen.ts'
export { operations } from './list.ts'
export { partOf } from './part.ts'
export { type Bracket, type Impression, type Working } from './working.ts'
