import { type Billet, type Densities, type Section, filled } from '#billet'
import { type Off, type Taken, lossBetween, takeOff } from './fire.ts'
import type { LossCause } from './operation.ts'

/** Thickness off the sides of a bar, m; a pair left out is left alone. */
export interface Sides {
  readonly y?: Off
  readonly z?: Off
}

const none: Off = { low: 0, high: 0 }

/**
 * Takes thickness off the sides of a bar of any section. Of a round or eight-sided bar flats that
 * deep are ground: their area is exact, and its steels go alike. Undefined where nothing would be
 * left.
 */
export function takeFlats(
  bar: Billet,
  sides: Sides,
  cause: LossCause,
  densities: Densities,
): Taken | undefined {
  const { y = none, z = none } = sides
  if (bar.shape === 'rectangle' || bar.shape === 'cut')
    return takeOff(bar, { y, z }, cause, densities)
  const { width, height, length } = bar.size
  const [w, h] = [width - y.low - y.high, height - z.low - z.high]
  if (!(w > 0 && h > 0)) return undefined
  if (w === width && h === height) return { after: bar, loss: { cause, masses: {} }, lost: 0 }
  const across = { low: y.low / width, high: y.high / width }
  const up = { low: z.low / height, high: z.high / height }
  const after: Billet = {
    ...bar,
    shape: 'cut',
    size: { length, width: w, height: h },
    volume: length * width * height * areaBetween(bar.shape, across, up),
  }
  return { after, loss: lossBetween(bar, after, cause, densities), lost: 0 }
}

/** Area left of a section one wide and one high between flats on all four sides. */
export function areaBetween(section: Section, across: Off, up: Off): number {
  const apart = [across.low, across.high].every((y) =>
    [up.low, up.high].every((z) => y === 0 || z === 0 || outside(section, y, z)),
  )
  if (apart) {
    const flats = [across.low, across.high, up.low, up.high]
    return filled[section] - flats.reduce((sum, depth) => sum + flatArea(section, depth), 0)
  }
  // Flats that meet at a corner: the chord between the upper and the lower flat, summed across.
  const [from, to] = [across.low, 1 - across.high]
  let area = 0
  for (let i = 0; i < STRIPS; i++) {
    const half = chord(section, from + ((i + 0.5) / STRIPS) * (to - from)) / 2
    area += Math.min(half, 0.5 - up.low) + Math.min(half, 0.5 - up.high)
  }
  return (Math.max(0, area) * (to - from)) / STRIPS
}

/** Strips a section is cut into where flats meet; the area is then good to about 1e-6. */
const STRIPS = 4000

/** Whether the corner of two flats lies outside the section, so that they do not meet. */
function outside(section: Section, y: number, z: number): boolean {
  return chord(section, Math.min(y, 1)) / 2 <= Math.abs(0.5 - z)
}

/** Height of a section one wide and one high, at a place across it. */
function chord(section: Section, y: number): number {
  const near = Math.min(y, 1 - y)
  if (section === 'round') return 2 * Math.sqrt(Math.max(0, y - y * y))
  return section === 'octagon' ? Math.min(1, Math.SQRT2 - 1 + 2 * near) : 1
}

/** Area cut off a section one wide and one high by a flat this deep (exact geometry). */
export function flatArea(section: Section, depth: number): number {
  if (section === 'rectangle') return depth
  if (section === 'round')
    return Math.acos(1 - 2 * depth) / 4 - (0.5 - depth) * Math.sqrt(depth - depth * depth)
  const corner = 1 - Math.SQRT1_2
  const flat = Math.SQRT2 - 1
  const near = (d: number) => d * (flat + d)
  if (depth <= corner) return near(depth)
  if (depth <= 1 - corner) return near(corner) + depth - corner
  return 2 * (Math.SQRT2 - 1) - near(1 - depth)
}
