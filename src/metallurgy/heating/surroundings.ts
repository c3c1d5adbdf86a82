import type { SourceKey, Standing } from '#sources'

/** What a bar's skin meets: hot walls it sees, gas that flows past, tools it lies on, a coil. */
export interface Surroundings {
  /** What the skin exchanges radiation with, K. */
  readonly wall: number
  /** K */
  readonly gas: number
  /** Emissivity between bar and wall, 0 to 1. */
  readonly emissivity: number
  /** W/(m² K) to the gas. */
  readonly convection: number
  /** Dies or anvil: their temperature (K), W/(m² K) where they touch, share of skin and time touched. */
  readonly contact?: {
    readonly temperature: number
    readonly conductance: number
    readonly share: number
  }
  /** Induction: heat put under the skin, W/m², held back as the skin comes to `until` (K). */
  readonly coil?: { readonly flux: number; readonly until: number }
}

export interface Preset {
  readonly surroundings: Surroundings
  /** Lowest and highest wall (or skin) temperature met in such a fire, K. */
  readonly range: readonly [number, number]
  readonly source: SourceKey
  readonly standing: Standing
  readonly note: string
}

const zero = 273.15
const practice = { source: 'practice', standing: 'common practice' } as const

/** Fires. Walls and films are common practice and vary with the maker: measure your own. */
export const fires = {
  gas: {
    surroundings: { wall: 1260 + zero, gas: 1300 + zero, emissivity: 0.8, convection: 25 },
    range: [1150 + zero, 1350 + zero],
    note: 'Lined gas forge at welding heat: glowing walls do nearly all of it.',
    ...practice,
  },
  coal: {
    surroundings: { wall: 1350 + zero, gas: 1350 + zero, emissivity: 0.9, convection: 60 },
    range: [1150 + zero, 1600 + zero],
    note: 'Bar bedded in burning coke; the fire can burn steel.',
    ...practice,
  },
  induction: {
    surroundings: {
      wall: 300,
      gas: 300,
      emissivity: 0.8,
      convection: 8,
      coil: { flux: 4e5, until: 1200 + zero },
    },
    range: [800 + zero, 1250 + zero],
    note: 'Heat is made under the skin; 40 W/cm² taken for a bench heater, cold surroundings.',
    ...practice,
  },
  kiln: {
    surroundings: { wall: 820 + zero, gas: 820 + zero, emissivity: 0.8, convection: 8 },
    range: [200 + zero, 1280 + zero],
    note: 'Electric kiln: set the wall to the controller’s temperature.',
    ...practice,
  },
} as const satisfies Record<string, Preset>

export type Fire = keyof typeof fires

/** The fire with its walls, gas or coil at another temperature (K). */
export function fireAt(fire: Fire, temperature?: number): Surroundings {
  const s: Surroundings = fires[fire].surroundings
  if (temperature === undefined || !Number.isFinite(temperature)) return s
  const t = Math.min(Math.max(temperature, 300), 2000)
  if (s.coil !== undefined) return { ...s, coil: { ...s.coil, until: t } }
  return { ...s, wall: t, gas: t }
}

/** Still air, or air and the tools it is worked between. Film and contact from memory. */
export function inAir(worked = false, air = 293.15): Surroundings {
  const still = { wall: air, gas: air, emissivity: 0.8, convection: 10 }
  // Dies touch two faces for a small part of each stroke; 2 kW/(m² K) under pressure, from memory.
  return worked
    ? { ...still, contact: { temperature: 450, conductance: 2000, share: 0.02 } }
    : still
}

/**
 * A quench as a film: h = 2 k H (TOTTEN, read), with H the Grossmann severity in 1/m and the
 * steel's conductivity at 705 °C, where the severity is defined (HB, read).
 */
export function quenchFilm(severity: number, bath = 313.15): Surroundings {
  const k = 54 - 3.33e-2 * 705
  return { wall: bath, gas: bath, emissivity: 0, convection: 2 * k * Math.max(severity || 0, 0) }
}
