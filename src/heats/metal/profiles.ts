import type { Metal, Ply } from './metal.ts'

/** Carbon across a pack of layers, from one face inward. */
export interface Profile {
  readonly bars: readonly string[]
  /** Layers of the pack, like on like as one, as the card counts them. */
  readonly layers: number
  /** The layers the profile reaches over, in order: enough to see, of a pack of hundreds. `to` in m from the face. */
  readonly shown: readonly { readonly steel: string; readonly to: number }[]
  readonly across: readonly (readonly [place: number, carbon: number])[]
}

/** As many layers as a plot can show. */
const MOST = 24

export function profilesOf(metal: Metal): Profile[] {
  const seen = new Set<string>()
  return metal.flatMap((pack): Profile[] => {
    // The same bar laid twice is one profile; a bar of one steel is none.
    const key = pack.map((p) => `${p.bar} ${p.steel}`).join()
    const layers = layersOf(pack)
    if (layers.length < 2 || seen.has(key)) return []
    seen.add(key)
    const plies = layers.slice(0, MOST).flat()
    let place = 0
    const shown: { steel: string; to: number }[] = []
    const across = plies.flatMap((ply) => {
      const from = place
      place += ply.thickness
      if (shown.at(-1)?.steel === ply.steel) shown.pop()
      shown.push({ steel: ply.steel, to: place })
      return ply.carbon.map((c, i): [number, number] => [
        from + (ply.thickness * (i + 0.5)) / ply.carbon.length,
        c,
      ])
    })
    const bars = [...new Set(plies.map((p) => p.bar))]
    return [{ bars, layers: layers.length, shown, across }]
  })
}

/** Sheets in their layers: like on like is welded into one, and each keeps its own carbon till then. */
function layersOf(pack: readonly Ply[]): Ply[][] {
  const layers: Ply[][] = []
  for (const ply of pack) {
    const last = layers.at(-1)
    if (last?.[0]?.steel === ply.steel) last.push(ply)
    else layers.push([ply])
  }
  return layers
}
