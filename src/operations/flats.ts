import { type Axis, axisLength } from '#geometry'
import type { Billet, Densities, Section } from '#billet'
import { type Off, type Taken, lossBetween, takeOff } from './fire.ts'
import type { LossCause } from './operation.ts'

/**
 * Takes thickness off the sides of a bar of any section. Of a round or eight-sided bar a flat that
 * deep is ground: its area is exact, its steels go alike. Undefined where nothing would be left.
 */
export function takeFlats(
  bar: Billet,
  axis: 'y' | 'z',
  { low, high }: Off,
  cause: LossCause,
  densities: Densities,
): Taken | undefined {
  if (bar.shape === 'rectangle' || bar.shape === 'cut')
    return takeOff(bar, { [axis]: { low, high } }, cause, densities)
  const { width, height, length } = bar.size
  const side = axisLength[axis as Axis]
  const across = bar.size[side]
  if (low + high >= across) return undefined
  const gone =
    (flatArea(bar.shape, low / across) + flatArea(bar.shape, high / across)) * width * height
  if (gone === 0) return { after: bar, loss: { cause, masses: {} }, lost: 0 }
  const after: Billet = {
    ...bar,
    shape: 'cut',
    size: { ...bar.size, [side]: across - low - high },
    volume: bar.volume - gone * length,
  }
  return { after, loss: lossBetween(bar, after, cause, densities), lost: 0 }
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
