import { openDieFactor } from './disc.ts'

/** Strain-hardening metal, Y = K strain^n (Pa); n = 0 is a metal that does not harden. */
export interface HardeningMetal {
  readonly K: number
  readonly n: number
}

export interface Upset {
  readonly diameter: number
  readonly height: number
}

/** Round bar pressed to a new height at constant volume. */
export function upsetTo({ diameter, height }: Upset, to: number): Upset {
  return { diameter: diameter * Math.sqrt(height / to), height: to }
}

/** Open-die force (N) at a height: F = Kf Y A with Kf = 1 + 0.4 mu D/h (GRO eqs 18.16, 18.17; read). */
export function upsetForce(start: Upset, to: number, metal: HardeningMetal, mu: number): number {
  const now = upsetTo(start, to)
  const strain = Math.log(start.height / to)
  const stress = metal.n === 0 ? metal.K : metal.K * strain ** metal.n
  const area = (Math.PI / 4) * now.diameter ** 2
  return openDieFactor(mu, now.diameter, to) * stress * area
}
