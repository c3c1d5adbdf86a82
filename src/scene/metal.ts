import type { Facets } from './facets.ts'
import type { Origin } from '#pattern'
import type { Box } from './views.ts'

/** A property of each steel by name, 0 to 1: how bright it etches, how high it stands, its carbon, its hardness. */
export type SteelWeights = Readonly<Record<string, number>>

/** The metal of one moment, as the scene draws it. */
export interface Metal {
  readonly facets: Facets
  readonly box: Box
  readonly origin: Origin
  /** Brightness, height; then carbon and hardness, if known. */
  readonly weights: readonly SteelWeights[]
}
