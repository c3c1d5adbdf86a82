import type { Metal } from './metal.ts'

/** Carbon across a pack of layers, from one face inward. */
export interface Profile {
  readonly bars: readonly string[]
  readonly layers: number
  /** Layers the profile reaches over: enough to see, of a pack of hundreds. */
  readonly shown: number
  readonly across: readonly (readonly [place: number, carbon: number])[]
}

/** As many plies as a plot can show. */
const MOST = 24

export function profilesOf(metal: Metal): Profile[] {
  const seen = new Set<string>()
  return metal.flatMap((pack): Profile[] => {
    // The same bar laid twice is one profile; a bar of one steel is none.
    const key = pack.map((p) => `${p.bar} ${p.steel}`).join()
    if (pack.length < 2 || seen.has(key)) return []
    seen.add(key)
    const plies = pack.slice(0, MOST)
    let place = 0
    const across = plies.flatMap((ply) => {
      const from = place
      place += ply.thickness
      return ply.carbon.map((c, i): [number, number] => [
        from + (ply.thickness * (i + 0.5)) / ply.carbon.length,
        c,
      ])
    })
    const bars = [...new Set(plies.map((p) => p.bar))]
    return [{ bars, layers: pack.length, shown: plies.length, across }]
  })
}
