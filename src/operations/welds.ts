import type { Problem } from '#problem'
import { type Billet, flatAxis } from '#billet'
import { type WeldTest, weldBefore } from '#forming'
import { asTold } from './as-told.ts'

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
 * The warning before work that tries the welds: by what the work does to them and by how far the
 * bar has been worked down since they were closed.
 */
export function youngWelds(bar: Billet, test: WeldTest, doing: string): Problem[] {
  if (bar.bond !== 'welded') return []
  return weldBefore(test, 1 - bar.worked).map((p) => ({
    ...asTold(p),
    at: '',
    what: `${doing} pulls young welds open`,
  }))
}

/** The same before a bar is forged on its flats, where that presses along its layers instead of across. */
export function youngOnEdge(bar: Billet): Problem[] {
  const axis = flatAxis(bar.build)
  return axis === undefined || axis === 'z' ? [] : youngWelds(bar, 'on edge', 'forging on edge')
}
