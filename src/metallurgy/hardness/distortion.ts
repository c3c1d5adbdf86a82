import { type Estimate, hold } from '../estimate.ts'

/** A layer on its way through the quench, in order through the thickness. */
export interface QuenchedLayer {
  /** m */
  readonly thickness: number
  readonly carbon: number
  /** Shares of the volume. */
  readonly martensite: number
  readonly retained: number
}

/**
 * Growth in length, m/m, from annealed to hardened. Volume in per cent: +1.68 C for martensite
 * from spheroidite, and -4.64 + 2.21 C for austenite that stays (Thelning, from memory).
 */
export function hardeningGrowth(layer: Omit<QuenchedLayer, 'thickness'>): number {
  const c = hold(layer.carbon, [0, 1.5])
  const kept = hold(layer.retained, [0, 1])
  const hard = Math.min(hold(layer.martensite, [0, 1]), 1 - kept)
  return (hard * 1.68 * c + kept * (-4.64 + 2.21 * c)) / 100 / 3
}

export interface Distortion {
  /** m/m along the piece. */
  readonly growth: Estimate
  /** Bow over one metre of length, m, if nothing is done: towards the shorter side. */
  readonly bow: Estimate
  readonly risk: 'even' | 'slight' | 'marked'
}

/**
 * Length growth and the bow of a section whose two sides grow unlike: each layer's growth acts on
 * an elastic beam of one stiffness, curvature 12 ∫ (e - mean) z dz / t³.
 */
export function distort(layers: readonly QuenchedLayer[]): Distortion {
  const sound = layers.filter((l) => l.thickness > 0 && Number.isFinite(l.thickness))
  const total = sound.reduce((s, l) => s + l.thickness, 0)
  const growths = sound.map(hardeningGrowth)
  const mean = total > 0 ? sound.reduce((s, l, i) => s + l.thickness * growths[i]!, 0) / total : 0
  let moment = 0
  let z = -total / 2
  sound.forEach((l, i) => {
    moment += (growths[i]! - mean) * l.thickness * (z + l.thickness / 2)
    z += l.thickness
  })
  const curvature = total > 0 ? (12 * moment) / total ** 3 : 0
  // One metre, curvature × L²/8; a curve past a quarter circle has bent, not bowed.
  const bow = Math.min(Math.abs(curvature) / 8, 0.5)
  const notes = [
    'Volume changes from memory; stress relief by plastic flow in the quench lessens the bow.',
  ]
  const shared = {
    unit: 'm',
    source: 'memory',
    standing: 'from memory',
    notes,
    outOfRange: [],
  } as const
  return {
    growth: {
      ...shared,
      value: mean,
      range: [Math.min(mean * 0.5, mean * 1.5), Math.max(mean * 0.5, mean * 1.5)],
      unit: 'm/m',
    },
    bow: { ...shared, value: bow, range: [0, bow * 1.5] },
    risk: bow < 0.002 ? 'even' : bow < 0.01 ? 'slight' : 'marked',
  }
}
