import { useEffect, useState } from 'react'
import { type Way, type Written, secondEngine } from '#desk'

/** HRC of a piece as tempered: of its softest and its hardest steel that hardens. */
export interface Hardness {
  readonly least: number
  readonly most: number
}

/** Known once, for as long as the ways are kept. */
const known = new WeakMap<Written, Hardness | 'soft'>()

/** How hard each way leaves the piece: its heats are followed one after another, and told as they come. */
export function useHardness(ways: readonly Way[]): readonly (Hardness | 'soft' | undefined)[] {
  const [, setDone] = useState(0)
  const names = ways.map((way) => way.name).join('\n')
  useEffect(() => {
    let wanted = true
    const follow = async () => {
      for (const { job } of ways) {
        if (!wanted) return
        if (known.has(job)) continue
        const treated = await secondEngine().ask({ ask: 'heats', job })
        const found = treated?.steels.flatMap(({ tempered }) => (tempered ? [tempered.value] : []))
        if (!found) continue
        known.set(
          job,
          found.length > 0 ? { least: Math.min(...found), most: Math.max(...found) } : 'soft',
        )
        if (wanted) setDone((n) => n + 1)
      }
    }
    // A way whose heats cannot be followed has no figure there.
    void follow().catch(() => undefined)
    return () => {
      wanted = false
    }
    // The ways are the same as long as their names and the card are.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [names, ways[0]?.job])
  return ways.map(({ job }) => known.get(job))
}
