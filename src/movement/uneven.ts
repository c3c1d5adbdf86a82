import type { Shop } from '#shop'
import type { Unevenness } from './movement.ts'

/** A hand hammer's face, m: the length of the waves it leaves (10 to 40 mm, common practice, no source). */
const HAND_FACE = 0.022

/**
 * How uneven this shop's forging is: the shop's own figure, else by hand 2.5 % of the thickness
 * (1 to 4 %), under a press or a power hammer 1 % (0.5 to 1.5 %); waves as long as the hammer's face
 * or the bite (common practice, no source).
 */
export function unevennessOf(shop: Shop): Unevenness | undefined {
  const byMachine = shop.hammer === 'power' || shop.pressForce !== undefined
  const amplitude = shop.unevenness ?? (byMachine ? 0.01 : 0.025)
  if (amplitude === 0) return undefined
  return { amplitude, wavelength: byMachine ? shop.dieWidth : HAND_FACE }
}
