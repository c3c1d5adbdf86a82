/** A hammer: what strikes, how fast, and what stands under the work. */
export interface Hammer {
  readonly kind: 'hand' | 'power'
  /** Mass of the head, or of all falling parts of a power hammer, kg (HAM2, read). */
  readonly mass: number
  /** Speed when it strikes, m/s. */
  readonly speed: number
  /** Anvil and sow block, kg; left out, fifteen times the head by hand, ten times under power. */
  readonly anvilMass?: number
  /** Rebound speed over striking speed, 0 soft to 0.5 hard; 0.3 if left out. */
  readonly restitution?: number
  /** 1/min; left out, 60 by hand and 180 under power (common practice). */
  readonly blowsPerMinute?: number
}

export interface Press {
  readonly kind: 'press'
  /** Greatest force, N. */
  readonly force: number
  /** Ram speed on the work, m/s. */
  readonly speed: number
  /** Travel of the ram, m, if it limits. */
  readonly stroke?: number
  /** Greatest opening between the dies, m. */
  readonly opening?: number
  /** Squeezes a minute; 12 if left out (common practice). */
  readonly squeezesPerMinute?: number
}

export type Tool = Hammer | Press

const gravity = 9.80665

/** Energy of one blow, J. */
export function blowEnergy({ mass, speed }: Pick<Hammer, 'mass' | 'speed'>): number {
  return 0.5 * mass * speed * speed
}

/** Speed of a head that falls freely through a height (m), m/s. */
export function dropSpeed(height: number): number {
  return Math.sqrt(2 * gravity * height)
}

/** Energy of a power-assisted drop: (m g + pressure × piston area) × stroke, J (from memory, high confidence). */
export function assistedEnergy(
  mass: number,
  pressure: number,
  area: number,
  stroke: number,
): number {
  return (mass * gravity + pressure * area) * stroke
}

/** Speed a power-assisted head strikes with, m/s. */
export function assistedSpeed(
  mass: number,
  pressure: number,
  area: number,
  stroke: number,
): number {
  return Math.sqrt((2 * assistedEnergy(mass, pressure, area, stroke)) / mass)
}

/**
 * Share of the blow that goes into the work: (1 − e²) M/(M + m), anvil mass M, head mass m, rebound e
 * (from memory, high confidence). 0.8 to 0.9 is usual for soft upsetting, 0.2 to 0.5 die to die.
 */
export function blowEfficiency(anvilOverHead: number, restitution: number): number {
  return ((1 - restitution * restitution) * anvilOverHead) / (anvilOverHead + 1)
}

export function efficiencyOf(hammer: Hammer): number {
  const usual = hammer.kind === 'hand' ? 15 : 10
  const ratio = (hammer.anvilMass ?? usual * hammer.mass) / hammer.mass
  return blowEfficiency(Math.max(0, ratio), Math.min(0.99, Math.max(0, hammer.restitution ?? 0.3)))
}

/** Strain rate under a tool closing at a speed (m/s) on a height (m): v/h, 1/s. */
export function strainRate(speed: number, height: number): number {
  return height > 0 ? speed / height : 0
}

/** The steam-hammer rule: falling mass for steady work on a section, kg: 80 lb per square inch of steel, 60 of iron (from memory, medium confidence). */
export function fallingMassFor(sectionArea: number, iron = false): number {
  const squareInches = sectionArea / 0.0254 ** 2
  return (iron ? 60 : 80) * squareInches * 0.45359237
}

export function isPress(tool: Tool): tool is Press {
  return tool.kind === 'press'
}
