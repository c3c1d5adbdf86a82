/** What a picture of the metal shows, and its number on the card. */
export const MODES = {
  etched: 0,
  plain: 1,
  thickness: 2,
  strain: 3,
  carbon: 4,
  hardness: 5,
  bar: 6,
} as const
export type Mode = keyof typeof MODES
