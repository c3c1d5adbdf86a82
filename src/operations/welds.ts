import type { Problem } from '#problem'
import type { Billet } from '#billet'

/** A stack that is not yet one metal cannot be worked: the sheets would slide on one another. */
export function unwelded(bar: Billet, doing: string): Problem | undefined {
  if (bar.bond === 'welded') return undefined
  return {
    at: '',
    what: `the stack is only ${bar.bond}: ${doing} would tear it apart`,
    why: 'the pieces are not one metal until they are welded',
    try: ['weld the stack first'],
  }
}

/**
 * Work that pulls at the welds, done while they are young. A weld is trusted once it has been worked
 * to about half its height; 70 % is where this speaks up (common practice, no source).
 */
export function youngWelds(bar: Billet, doing: string): Problem[] {
  if (bar.bond !== 'welded' || bar.worked <= 0.7) return []
  return [
    {
      at: '',
      what: `${doing} pulls young welds open`,
      why: `the weakest weld has been worked to ${Math.round(bar.worked * 100)} % of its height; about half is trusted (common practice)`,
      try: [
        'draw the billet further at welding heat first',
        'take light squeezes at welding heat for the first two heats',
      ],
    },
  ]
}
