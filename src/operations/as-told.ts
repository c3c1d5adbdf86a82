import type { Problem } from '#problem'

/** A sentence as a warning carries it: no capital, no full stop. */
export function said(sentence: string): string {
  const bare = sentence.replace(/\.$/, '')
  return /^[A-Z][a-z’' ]/.test(bare) ? bare[0]!.toLowerCase() + bare.slice(1) : bare
}

/** A problem told in sentences, as the steps tell theirs. */
export function asTold({ at, what, why, try: cures }: Problem): Problem {
  return { at, what: said(what), why: said(why), try: cures.map(said) }
}
