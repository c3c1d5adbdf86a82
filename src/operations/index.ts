/** One folder for each thing done to the metal. */
export {
  type Branch,
  type Example,
  type Heat,
  type HeatPurpose,
  type Loss,
  type LossCause,
  type Movement,
  type Operation,
  type Smithy,
  type Step,
  type Stock,
} from './operation.ts'
export { type Caution, type CautionName, CAUTIONS_DEFER, cautions } from './cautions.ts'
export { withSpare, workBack } from './lengthen.ts'
export { operations } from './list.ts'
