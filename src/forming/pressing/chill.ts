/** What the dies take from the metal while they touch it. */
export interface Touch {
  /** K. */
  readonly metal: number
  /** K. */
  readonly die: number
  /** s. */
  readonly time: number
  /** m between the dies. */
  readonly height: number
  /** Heat passed per area and degree, W/m²K; 2 000 light touch to 20 000 under full pressure (from memory). */
  readonly conductance?: number
}

/** Effusivity √(k ρ c) of hot steel near 1100 °C (28 W/mK, 7450 kg/m³, 640 J/kgK) and of a warm die (from memory, medium confidence). */
const hotEffusivity = Math.sqrt(28 * 7450 * 640)
const dieEffusivity = Math.sqrt(35 * 7800 * 500)
const hotVolumeHeat = 7450 * 640

/** e^(x²) erfc(x), by continued fraction for large x and series of erf below. */
export function scaledErfc(x: number): number {
  if (x > 2.5) {
    let fraction = 0
    for (let k = 120; k >= 1; k--) fraction = k / 2 / (x + fraction)
    return 1 / (Math.sqrt(Math.PI) * (x + fraction))
  }
  let [term, sum] = [x, x]
  for (let n = 1; n < 200; n++) {
    term *= (-x * x) / n
    sum += term / (2 * n + 1)
  }
  return Math.exp(x * x) * (1 - (2 / Math.sqrt(Math.PI)) * sum)
}

export interface Chill {
  /** Mean fall over the height, both dies, K. */
  readonly meanFall: number
  /** Fall at the touched face at the end, K. */
  readonly faceFall: number
  /** Heat into one die, J/m². */
  readonly heat: number
  /** Depth the chill has reached, m: √(12 a t). */
  readonly depth: number
}

/**
 * Two half-spaces meeting through a thermal resistance: flux h ΔT e^(β²t) erfc(β√t), with
 * β = h(1/e₁ + 1/e₂) in effusivities (analytic). Holds while the chill has not reached the middle.
 */
export function chill({ metal, die, time, height, conductance = 10000 }: Touch): Chill {
  const gap = metal - die
  const beta = conductance * (1 / hotEffusivity + 1 / dieEffusivity)
  const x = beta * Math.sqrt(Math.max(0, time))
  const left = scaledErfc(x)
  const heat = ((conductance * gap) / (beta * beta)) * (left - 1 + (2 * x) / Math.sqrt(Math.PI))
  const share = dieEffusivity / (hotEffusivity + dieEffusivity)
  const diffusivity = 28 / hotVolumeHeat
  return {
    meanFall: Math.min(gap, (2 * heat) / (hotVolumeHeat * Math.max(1e-6, height))),
    faceFall: gap * share * (1 - left),
    heat,
    depth: Math.min(height / 2, Math.sqrt(12 * diffusivity * Math.max(0, time))),
  }
}
