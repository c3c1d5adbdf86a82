/** Ideal work to press a volume (m³) from one height to another: V Y ln(h0/h1) × (p/Y), J. */
export function formingWork(
  volume: number,
  flowStress: number,
  from: number,
  to: number,
  pressureFactor: number,
): number {
  return volume * flowStress * Math.log(Math.max(1, from / to)) * pressureFactor
}

/** Blows of an energy (J) at an efficiency that do a work (J): not rounded. */
export function blowsFor(work: number, energy: number, efficiency: number): number {
  const each = energy * efficiency
  return each > 0 ? work / each : Infinity
}

/** Rise of temperature from the work itself: 0.95 σ ε / (ρ c), K; hot steel 7500 kg/m³, 650 J/kgK. */
export function workHeating(stress: number, strain: number, density = 7500, heat = 650): number {
  return (0.95 * stress * strain) / (density * heat)
}

const shortTonPerSquareInch = 13.789514e6

/** Pressure (Pa) as United States tons per square inch of die contact; shop rule 6 to 10 (common practice). */
export function tonsPerSquareInch(pressure: number): number {
  return pressure / shortTonPerSquareInch
}
