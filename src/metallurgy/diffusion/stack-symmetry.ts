/**
 * The least of a stack that has to be solved. Sealed faces are mirrors, so a stack that reads the
 * same from both sides needs one half; a stack of pieces, each turned over against the last,
 * needs one piece; and a long run of one repeating unit needs its two ends and one unit between
 * mirror planes. The first two are exact. In the third the ends are kept deep enough that what
 * happens at a face does not reach the middle, or the depth kept is stated. Where the unit has no
 * mirror plane the inside is one unit closed on itself.
 */
export interface Segment {
  /** The layer of the stack it stands for, and the share of that layer's thickness it has. */
  readonly layer: number
  readonly share: number
}

export interface Zone {
  readonly segments: readonly Segment[]
  /** Whether the zone's first face is the outside of the stack. */
  readonly surface: boolean
  /** Left out: sealed at both ends. */
  readonly ends?: 'cyclic'
}

export interface Place {
  readonly zone: number
  readonly segment: number
  readonly turned: boolean
}

export interface Reduction {
  readonly kind: 'whole' | 'half' | 'piece' | 'repeat'
  readonly zones: readonly Zone[]
  /** For each layer of the stack, the zone and segment that stand for it, and whether turned over. */
  readonly where: readonly Place[]
  /** Layers in the repeating unit, and how often it occurs. */
  readonly unit: number
  readonly repeats: number
}

const wholeOf = (n: number): Segment[] =>
  Array.from({ length: n }, (_, layer) => ({ layer, share: 1 }))

/** @param keys one letter a layer: equal where steel, thickness and carbon are equal.
 *  @param depth repeating units to keep at each end. @param sealed whether the outside is a mirror. */
export function reduceStack(keys: readonly string[], depth: number, sealed: boolean): Reduction {
  const n = keys.length
  const piece = sealed ? turnedPiece(keys) : n
  if (piece < n) {
    const inner = reduceStack(keys.slice(0, piece), depth, true)
    const zones = inner.zones
    return {
      kind: 'piece',
      zones,
      where: keys.map((_, i) => {
        const back = Math.floor(i / piece) % 2 === 1
        const place = inner.where[back ? piece - 1 - (i % piece) : i % piece]!
        return { ...place, turned: place.turned !== back }
      }),
      unit: piece,
      repeats: n / piece,
    }
  }
  const mirrored = keys.every((k, i) => k === keys[n - 1 - i])
  const repeat = repeatingRun(keys, depth, mirrored)
  if (repeat !== undefined) return repeat
  if (mirrored && n > 1) return halfOf(n)
  return {
    kind: 'whole',
    zones: [{ segments: wholeOf(n), surface: true }],
    where: keys.map((_, segment) => ({ zone: 0, segment, turned: false })),
    unit: n,
    repeats: 1,
  }
}

function halfOf(n: number): Reduction {
  const count = Math.ceil(n / 2)
  const segments = wholeOf(count)
  if (n % 2 === 1) segments[count - 1] = { layer: count - 1, share: 0.5 }
  return {
    kind: 'half',
    zones: [{ segments, surface: true }],
    where: Array.from({ length: n }, (_, i) => ({
      zone: 0,
      segment: Math.min(i, n - 1 - i),
      turned: i > (n - 1) / 2,
    })),
    unit: n,
    repeats: 1,
  }
}

/** Layers in the shortest piece B for which the stack reads B, B turned over, B, ... */
function turnedPiece(keys: readonly string[]): number {
  const n = keys.length
  for (let b = 1; b <= n / 2; b++) {
    if (n % b !== 0) continue
    const fits = keys.every((k, i) => {
      const at = i % b
      return k === keys[Math.floor(i / b) % 2 === 0 ? at : b - 1 - at]
    })
    if (fits) return b
  }
  return n
}

function repeatingRun(
  keys: readonly string[],
  depth: number,
  mirrored: boolean,
): Reduction | undefined {
  const n = keys.length
  let p = 1
  while (p <= n / 2 && !keys.every((k, i) => i + p >= n || k === keys[i + p])) p++
  const kept = depth * p
  if (p < 2 || n <= 2 * kept + 2 * p) return undefined
  // A layer about whose middle the endless run is its own mirror image.
  const letter = (i: number) => keys[((i % p) + p) % p]
  let centre = -1
  for (let j = 0; j < p && centre < 0; j++) {
    let same = true
    for (let k = 1; k < p && same; k++) same = letter(j + k) === letter(j - k)
    if (same) centre = j
  }
  if (centre < 0) return closedRun(n, p, kept)
  const front = endZone(kept, p, centre, (i) => i, n)
  // From the back the run reads in reverse; its mirror layer there is found by counting back.
  const centreBack = (((n - 1 - centre) % p) + p) % p
  const back = endZone(kept, p, centreBack, (i) => n - 1 - i, n)
  const start = centre + p * Math.ceil((kept + p) / p)
  const middle: Segment[] = []
  for (let k = 0; k <= Math.floor(p / 2); k++) {
    const half = k === 0 || (p % 2 === 0 && k === p / 2)
    middle.push({ layer: Math.min(start + k, n - 1), share: half ? 0.5 : 1 })
  }
  const zones: Zone[] = [
    { segments: front, surface: true },
    { segments: middle, surface: false },
  ]
  if (!mirrored) zones.push({ segments: back, surface: true })
  const where = keys.map((_, i): Place => {
    if (i < front.length) return { zone: 0, segment: i, turned: false }
    if (n - 1 - i < (mirrored ? front.length : back.length))
      return { zone: mirrored ? 0 : 2, segment: n - 1 - i, turned: true }
    const off = (((i - centre) % p) + p) % p
    return { zone: 1, segment: Math.min(off, p - off), turned: off > p / 2 }
  })
  return { kind: 'repeat', zones, where, unit: p, repeats: Math.floor(n / p) }
}

/**
 * A run whose unit has no mirror plane. Its ends are cut at no mirror, so each is solved twice as
 * deep as it is read: what the cut does dies away before the layers that count.
 */
function closedRun(n: number, p: number, kept: number): Reduction | undefined {
  if (n <= 4 * kept + 2 * p) return undefined
  const front = Array.from({ length: 2 * kept }, (_, i) => ({ layer: i, share: 1 }))
  const back = Array.from({ length: 2 * kept }, (_, i) => ({ layer: n - 1 - i, share: 1 }))
  const middle = Array.from({ length: p }, (_, i) => ({ layer: i, share: 1 }))
  return {
    kind: 'repeat',
    zones: [
      { segments: front, surface: true },
      { segments: middle, surface: false, ends: 'cyclic' },
      { segments: back, surface: true },
    ],
    where: Array.from({ length: n }, (_, i): Place => {
      if (i < kept) return { zone: 0, segment: i, turned: false }
      if (n - 1 - i < kept) return { zone: 2, segment: n - 1 - i, turned: true }
      return { zone: 1, segment: i % p, turned: false }
    }),
    unit: p,
    repeats: Math.floor(n / p),
  }
}

/** Layers from one face inward, ending in half of a mirror layer at least `kept` layers deep. */
function endZone(
  kept: number,
  p: number,
  centre: number,
  at: (i: number) => number,
  n: number,
): Segment[] {
  const last = Math.min(centre + p * Math.ceil(Math.max(kept - centre, 0) / p), n - 1)
  const segments: Segment[] = []
  for (let i = 0; i <= last; i++) segments.push({ layer: at(i), share: i === last ? 0.5 : 1 })
  return segments
}
