/** What the smith would like, beside the piece itself. */
export interface Wanted {
  readonly lines?: number
  readonly layers?: number
  readonly sheets?: number
  readonly heats?: number
  readonly hours?: number
  readonly steel?: number
}

/** A count this far from the wish is another pattern (common practice: 10 % is within the hand). */
export const NEAR_ENOUGH = 0.12
