import type { Size } from '#geometry'
import type { filled } from '#billet'
import { type Billet, type GrooveRow, type Hollow } from '#billet'
import {
  type Warp,
  can,
  closeColumns,
  column,
  draw,
  drift,
  field,
  flattenDimples,
  shift,
  turn,
  twistZones,
} from '#warp'
import { depthsOf } from './groove-row.ts'
import { acrossOf, sectionMap } from './section-map.ts'

/** A bar that has been cut into, made level: the plain bar its metal makes, and the way back from it. */
export interface Levelled {
  /** In pull-back order: from the plain bar to the bar as it lies. */
  readonly warps: readonly Warp[]
  readonly size: Size
  /** Solid share of the box where it is only squeezed shut. */
  readonly fill?: number
  readonly beyond?: number
}

/** What is left open in the box is closed, the metal keeping the length and width it has as far as it can. */
export function levelled(bar: Billet): Levelled {
  const { hollow, size } = bar
  if (bar.shape !== 'cut') return { warps: [], size }
  if (!hollow) return squeezed(bar)
  switch (hollow.form) {
    case 'grooved':
      return groovesClosed(bar, hollow)
    case 'dimpled':
      return dimplesClosed(bar, hollow)
    case 'waved':
      return unwaved(bar, hollow)
    case 'rods':
      return rodsClosed(bar, hollow)
    case 'eye':
      return eyeClosed(bar, hollow)
    case 'twisted':
      return untwistedSection(bar, hollow)
  }
}

function areaOf({ volume, size }: Billet): number {
  return volume / size.length
}

/** Nothing is known of where it is open: squeezed evenly from above. */
function squeezed(bar: Billet): Levelled {
  const { length, width, height } = bar.size
  const fill = bar.volume / (length * width * height)
  if (Math.abs(fill - 1) < 1e-12) return { warps: [], size: bar.size }
  const size = { length, width, height: height * fill }
  return { warps: [can({ fill, squeeze: 'one-way' })], size, fill }
}

const SAMPLES_PER_GROOVE = 120

/** Places along a bar at which its grooves are looked at. */
export function groovePlaces({ top, bottom }: Extract<Hollow, { form: 'grooved' }>): number {
  const finest = Math.min(...[top, bottom].map((row) => (row ? Math.min(row.width, row.pitch) : 1)))
  return Math.min(20_000, Math.max(401, Math.ceil(SAMPLES_PER_GROOVE / finest)))
}

function groovesClosed(
  { size, volume }: Billet,
  hollow: Extract<Hollow, { form: 'grooved' }>,
): Levelled {
  const { length, width, height } = size
  const count = groovePlaces(hollow)
  const depths = (row: GrooveRow | undefined) =>
    row ? depthsOf(row, count, length / height) : new Float64Array(count)
  const [top, bottom] = [depths(hollow.top), depths(hollow.bottom)]
  const upper = Array.from(top, (depth) => (0.5 - depth) * height)
  const lower = Array.from(bottom, (depth) => (depth - 0.5) * height)
  const web = Math.min(...upper.map((t, i) => t - lower[i]))
  const { warp } = closeColumns({
    axis: 'x',
    before: [0, length],
    from: 0,
    top: upper,
    bottom: lower,
    gap: web,
    cells: Math.min(8192, Math.max(512, count >> 1)),
  })
  return { warps: [warp], size: { length: volume / (web * width), width, height: web } }
}

/**
 * A grooved bar on the way to a plate `height` thick and `wide` times as wide: each column of it has come a share of the
 * way by like ratios, and what is left of the grooves keeps its place in its face. Undefined of a bar without grooves.
 */
export function closedInPart(
  { size, hollow, shape }: Billet,
  to: { readonly height: number; readonly wide: number; readonly share: number },
): Levelled | undefined {
  if (shape !== 'cut' || hollow?.form !== 'grooved') return undefined
  const { length, width, height } = size
  const count = groovePlaces(hollow)
  const depths = (row: GrooveRow | undefined) =>
    row ? depthsOf(row, count, length / height) : new Float64Array(count)
  const [top, bottom] = [depths(hollow.top), depths(hollow.bottom)]
  const now = (was: number) => was ** (1 - to.share) * to.height ** to.share
  const stands = now(height)
  const columns = Array.from(top, (share, i) => {
    const [above, below] = [share * height, bottom[i] * height]
    const was = height - above - below
    const is = now(was)
    const left = above + below > 0 ? (stands - is) / (above + below) : 0
    const shortening = was / is
    return { shortening, middle: ((below - above) / 2) * (1 - left * shortening) }
  })
  const cells = Math.min(8192, Math.max(512, count >> 1))
  const { warp, after } = column({ axis: 'x', before: [0, length], from: 0, columns, cells })
  return {
    warps: [draw({ length: 1 / to.wide, width: to.wide, height: 1 }), warp],
    size: { length: after[1] / to.wide, width: width * to.wide, height: stands },
  }
}

/** Cells of the evened plate to a dimple's radius. */
const FINENESS = 12

function dimplesClosed(bar: Billet, hollow: Extract<Hollow, { form: 'dimpled' }>): Levelled {
  const { length, width, height } = bar.size
  const { shape, depth, radius, dimples } = hollow
  const level = bar.volume / (length * width)
  const { warps } = flattenDimples({
    length,
    width,
    height,
    flat: level,
    // Fine enough that what is left uneven is less than a layer's tenth.
    cell: (radius * width) / FINENESS,
    dimples: dimples.map(({ face, x, y }) => ({
      face,
      x: x * length,
      y: (y - 0.5) * width,
      depth: depth * height,
      radius: radius * width,
      shape: shape === 'cone' ? 'cone' : 'ball',
    })),
  })
  // Of its two maps only the first moves metal: it is asked to keep the height the metal has.
  const [flattened] = warps
  return { warps: [flattened], size: { length, width, height: level }, beyond: 0.02 * height }
}

function unwaved(bar: Billet, hollow: Extract<Hollow, { form: 'waved' }>): Levelled {
  const { length, width } = bar.size
  const wave = waveOf(bar.size, hollow, 1)
  return { warps: [wave], size: { length, width, height: areaOf(bar) / width } }
}

/** Layers carried up and down along the bar by a wave, nothing else: `sign` 1 takes it out, −1 puts it in. */
export function waveOf(
  { length, width, height }: Size,
  { pitch, rise }: Extract<Hollow, { form: 'waved' }>,
  sign: 1 | -1,
): Warp {
  const waves = 1 / pitch
  const columns = Math.min(6000, Math.ceil(waves * 32)) + 2
  const cell = length / (columns - 2)
  const still = new Array<number>(columns * 3).fill(0)
  return field({
    x: 0,
    y: -width / 2,
    cellX: cell,
    cellY: width,
    columns,
    along: still,
    across: still,
    middle: still.map((_, k) => {
      const x = ((k % columns) - 0.5) / (columns - 2)
      return ((sign * rise * height) / 2) * Math.cos((2 * Math.PI * x) / pitch)
    }),
  })
}

/** Round and eight-sided rods side by side, each pressed to the square of its own area. */
function rodsClosed(bar: Billet, { rods }: Extract<Hollow, { form: 'rods' }>): Levelled {
  const { length, width, height } = bar.size
  const count = 4001
  const at = (i: number) => i / (count - 1)
  const high = (u: number) => {
    const rod = rods.find((r) => u >= r.from && u <= r.to) ?? rods[rods.length - 1]
    return chordOf(rod.section, (u - rod.from) / (rod.to - rod.from))
  }
  const gap = areaOf(bar) / width
  const { warp, after } = column({
    axis: 'y',
    before: [-width / 2, width / 2],
    from: -width / 2,
    columns: Array.from({ length: count }, (_, i) => ({
      shortening: Math.max(0.02, (high(at(i)) * height) / gap),
      middle: 0,
    })),
    cells: 1024,
  })
  // The least height a column is given where two rods touch adds a hair of width.
  const wide = after[1] - after[0]
  const centred = shift({ y: (after[1] + after[0]) / 2 })
  const even = draw({ length: 1, width: width / wide, height: wide / width })
  return {
    warps: [even, centred, warp],
    size: { length, width, height: gap },
    beyond: 0.03 * height,
  }
}

/** Height of a section one wide and one high, at a place across it. */
function chordOf(section: keyof typeof filled, u: number): number {
  const near = Math.min(u, 1 - u)
  if (section === 'round') return 2 * Math.sqrt(Math.max(0, u - u * u))
  return section === 'octagon' ? Math.min(1, Math.SQRT2 - 1 + 2 * near) : 1
}

/** A hollow roll: its eye closed, then squared. */
function eyeClosed(bar: Billet, { radius }: Extract<Hollow, { form: 'eye' }>): Levelled {
  const { length, width } = bar.size
  const outer = width / 2
  const side = Math.sqrt(areaOf(bar))
  const { warps, beyond } = sectionMap('round', 'rectangle')
  const unit = draw({ length: 1, width: 1 / side, height: 1 / side })
  // The hole runs along the bar: it is closed in the plane of the section, so that is laid flat.
  const down = turn('upright', { length: 0, height: 0 })
  const up = turn('upright', { length: 0, height: 0 })
  return {
    warps: [
      draw({ length: 1, width: side, height: side }),
      ...warps,
      unit,
      down,
      drift({ x: 0, y: 0, radius: radius * outer, form: 'closed' }),
      up,
      up,
      up,
    ],
    size: { length, width: side, height: side },
    beyond: (beyond + 0.1) * side,
  }
}

/**
 * A bar with corners, twisted: its section, turned back at each place, is pressed round, and the
 * round bar squared. What the hammer does to a ridge at once, told in two maps.
 */
function untwistedSection(bar: Billet, hollow: Extract<Hollow, { form: 'twisted' }>): Levelled {
  const { length } = bar.size
  const side = Math.sqrt(areaOf(bar))
  const [wide, high] = [hollow.width * bar.size.width, hollow.height * bar.size.height]
  const zones = hollow.zones.map(({ from, to, turns }) => ({
    from: from * length,
    to: to * length,
    turns,
  }))
  const back = zones.map((zone) => ({ ...zone, turns: -zone.turns }))
  const square = sectionMap('round', 'rectangle')
  const round = sectionMap('rectangle', 'round')
  return {
    warps: [
      draw({ length: 1, width: side, height: side }),
      ...square.warps,
      twistZones({ length, zones, phase: hollow.phase }),
      ...round.warps,
      draw({ length: 1, width: 1 / wide, height: 1 / high }),
      twistZones({ length, zones: back, phase: -hollow.phase }),
    ],
    size: { length, width: side, height: side },
    beyond: (square.beyond + round.beyond) * Math.max(wide, high) * acrossOf('round'),
  }
}
