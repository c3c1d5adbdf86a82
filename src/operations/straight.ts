import type { Billet } from '#billet'
import type { Movement } from './operation.ts'

/** The movement of a bar drawn evenly from one size to another. */
export function straightTo(_before: Billet, _after: Billet): Movement {
  return { notYet: 'drawn with the pattern' }
}
