import type { Billet, Hollow } from '#billet'

type DimpleAt = Extract<Hollow, { form: 'dimpled' }>['dimples'][number]

/** How far a hand lets a dimple stray from its place, as a share of the spacing. */
const STRAY = 0.12

/**
 * Where the dimples lie: rows across the bar, every other one set half a space on, each a little
 * astray as a hand drills; those below lie between those above. They are whole ones; their
 * diameter takes up what the number `expected` on each face has left over, so that just as much is
 * drilled out as the account says (`each`: the volume of one, m³).
 */
export function dimplesIn(
  { size: { length, width, height } }: Billet,
  given: {
    readonly depth: number
    readonly diameter: number
    readonly spacing: number
    readonly form: 'ball' | 'cone' | 'flat'
    readonly sides: 'both' | 'top'
  },
  expected: number,
  each: number,
): Hollow {
  const rows = Math.max(1, Math.round(width / (given.spacing * Math.sqrt(0.75))))
  const inRow = Math.max(1, Math.round(expected / rows))
  const faces = given.sides === 'both' ? (['top', 'bottom'] as const) : (['top'] as const)
  const radius = radiusFor(given.form, (each * expected) / (rows * inRow), given.depth)
  const [rx, ry] = [Math.min(radius / length, 0.5), Math.min(radius / width, 0.5)]
  const dimples = faces.flatMap((face, f) =>
    Array.from({ length: rows * inRow }, (_, i): DimpleAt => {
      const [row, k] = [Math.floor(i / inRow), i % inRow]
      const on = row % 2 === 1 ? 0.25 : -0.25
      const below = face === 'bottom' ? 0.5 : 0
      const along = (k + 0.5 + on + below + STRAY * astray(i, 2 * f)) / inRow
      const across = (row + 0.5 + STRAY * astray(i, 2 * f + 1)) / rows
      // Set over the end of the bar it comes round at its start.
      return { face, x: within(along - Math.floor(along), rx), y: within(across, ry) }
    }),
  )
  return {
    form: 'dimpled',
    shape: given.form,
    depth: given.depth / height,
    radius: radius / width,
    dimples,
  }
}

function within(place: number, rim: number): number {
  return Math.min(1 - rim, Math.max(rim, place))
}

/** From −1 to 1, the same for the same place every time (a hash of two whole numbers). */
function astray(i: number, k: number): number {
  let h = Math.imul(i + 1, 0x9e3779b1) ^ Math.imul(k + 7, 0x85ebca6b)
  h = Math.imul(h ^ (h >>> 15), 0x2c1b3c6d)
  h = Math.imul(h ^ (h >>> 12), 0x297a2d39)
  return ((h ^ (h >>> 15)) >>> 0) / 2147483648 - 1
}

/** Radius at the face of one dimple of this volume; a flat-bottomed one is drawn as the bowl of that volume. */
function radiusFor(form: 'ball' | 'cone' | 'flat', volume: number, depth: number): number {
  if (form === 'cone') return Math.sqrt((3 * volume) / (Math.PI * depth))
  const bowl = Math.sqrt(Math.max(0, (6 * volume) / (Math.PI * depth) - depth * depth) / 3)
  if (bowl >= depth) return bowl
  // Straight walls above a half round: π r² (depth − r/3), rising in r.
  let [low, high] = [0, depth]
  for (let i = 0; i < 60; i++) {
    const r = (low + high) / 2
    if (Math.PI * r * r * (depth - r / 3) < volume) low = r
    else high = r
  }
  return (low + high) / 2
}
