/** What the smith has, and the shop's own loss factors, rates and tolerances. */
export { shopParameters } from './declaration.ts'
export { cuttingParameters, rackItemParameters } from './rack.ts'
export { rateParameters } from './rates.ts'
export {
  type Cutting,
  type RackItem,
  type Rates,
  type Shop,
  type Tolerances,
  readShop,
  usualCutting,
  usualRates,
  usualShop,
  usualTolerances,
} from './shop.ts'
export { toleranceParameters } from './tolerances.ts'
