/** Carbon between the layers of a stack, through every heat. */
export {
  type CarbonHistory,
  type CarbonOptions,
  type CarbonOutcome,
  type LayerCarbon,
  type SteelLayer,
  evolveCarbon,
} from './evolve-carbon.ts'
