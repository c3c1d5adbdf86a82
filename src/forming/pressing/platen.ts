import type { Basis, Estimate } from '../estimate.ts'
import { discBarrelled, discSticking } from './disc.ts'
import { hotDryFactor } from './friction.ts'
import { narrowDies } from './narrow-dies.ts'
import { pressedBlock, slabSticking } from './plane-strain.ts'

export interface Platen {
  /** Die contact along the bar, m: the bite. */
  readonly length: number
  /** Contact across the bar, m. */
  readonly width: number
  /** Height between the dies, m. */
  readonly height: number
  /** Friction factor m, 0 to 1; hot dry scaled steel 0.7 to 1. */
  readonly friction?: number
  /** Whether the bar reaches beyond the dies along its length (drawing out) or not (upsetting). */
  readonly overhang?: boolean
}

const planeStrain = 2 / Math.sqrt(3)

// prettier-ignore
const slipLines: Basis = { law: 'slip-line field of opposed narrow dies', sources: ['project'], standing: 'computed' }
const slab: Basis = { law: 'slab method, sticking', sources: ['HC', 'SLAB'], standing: 'read' }
const disc: Basis = {
  law: 'disc with barrelling, upper bound',
  sources: ['project'],
  standing: 'computed',
}

/** Pressure over Y for a long strip of contact length L in the direction of flow. */
function strip(length: number, height: number, m: number, overhang: boolean): number {
  const pressed = pressedBlock(m, length / height)
  return planeStrain * (overhang ? Math.max(pressed, narrowDies(height / length)) : pressed)
}

/**
 * Mean die pressure over the flow stress Y for flat dies on a rectangular face. Between a strip in
 * plane strain along the shorter side and a disc of the same area, by how square the face is. `low`
 * is Y itself, the least any pressing can need; `high` the slab method or the narrow-die field.
 */
export function platenPressure({
  length,
  width,
  height,
  friction,
  overhang = true,
}: Platen): Estimate {
  const m = friction ?? hotDryFactor.value
  const [short, long] = [Math.min(length, width), Math.max(length, width)]
  const square = long > 0 ? short / long : 1
  const radius = Math.sqrt((length * width) / Math.PI)
  const round = discBarrelled(m, radius / height).pressure
  // Beyond the bite the bar is stiff; across it the sides are free.
  const held = overhang && length <= width
  const along = strip(short, height, m, held)
  const narrow = overhang ? narrowDies(height / length) : 1
  const value = Math.max(1, (1 - square) * along + square * Math.max(round, narrow))
  const high = Math.max(
    value,
    planeStrain * Math.max(slabSticking(m, short / height), narrow),
    discSticking(m, radius / height),
  )
  return { value, low: 1, high, basis: narrow > 1 ? [slipLines, slab] : [slab, disc], cautions: [] }
}
