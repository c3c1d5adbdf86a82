import type { Facets } from './facets.ts'
import type { Origin, Weights } from '#pattern'
import type { Box } from './views.ts'

/** The metal of one moment, as the scene draws it. */
export interface Metal {
  readonly facets: Facets
  readonly box: Box
  readonly origin: Origin
  /** 0 to 1: brightness, height; then carbon and hardness, if known. */
  readonly weights: readonly Weights[]
}
