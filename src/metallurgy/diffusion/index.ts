/** Carbon between layers and out of the skin; the other elements, which hardly move. */
export { type NickelSet, carbonActivity, settleCarbon } from './activity.ts'
export { type Decarburisation, decarburise, fadeWeldLine } from './decarburisation.ts'
export { type Substitutional, diffuseCarbon, diffuseSubstitutional } from './diffusivity.ts'
export {
  type CarbonHistory,
  type CarbonOptions,
  type CarbonOutcome,
  type LayerCarbon,
  type SteelLayer,
  evolveCarbon,
} from './evolve-carbon.ts'
export { acrossWeld, creepOf, swingLeft } from './interface-width.ts'
