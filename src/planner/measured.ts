import { type Billet, type Densities, massOf, stretch } from '#billet'
import { CONSERVED, boxVolume } from '#geometry'
import type { Measured } from './route.ts'

/**
 * The bar as it was really found: measured sizes take the place of planned ones, and the layers are
 * carried along. A weight settles the volume, and with it the one side that was not measured; where
 * all were, a bar lighter than its sizes is not full, and one heavier is taken as its sizes say.
 */
export function adopt(planned: Billet, found: Measured, densities: Densities): Billet {
  const wanted = { ...planned.size }
  for (const side of ['length', 'width', 'height'] as const)
    wanted[side] = found[side] ?? wanted[side]
  const fill = planned.volume / boxVolume(planned.size)
  if (found.mass !== undefined) {
    const volume = (found.mass / massOf(planned, densities)) * planned.volume
    const open = (['length', 'width', 'height'] as const).find((side) => found[side] === undefined)
    if (open) wanted[open] *= volume / (boxVolume(wanted) * fill)
  }
  const box = fill * boxVolume(wanted)
  // All sides measured and weighed as well: the scales know more of a bar that is not straight or full.
  const weighed =
    found.mass === undefined ? box : (found.mass / massOf(planned, densities)) * planned.volume
  const scant = weighed < box * (1 - CONSERVED)
  const by = {
    x: wanted.length / planned.size.length,
    y: wanted.width / planned.size.width,
    z: wanted.height / planned.size.height,
  }
  return {
    ...planned,
    size: wanted,
    ...(scant ? { shape: 'cut' as const, volume: weighed } : { volume: box }),
    build: stretch(planned.build, by),
  }
}
