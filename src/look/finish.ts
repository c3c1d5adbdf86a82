import type { Colour } from './image.ts'

/** How a metal's skin throws light back: mirror share head on, roughness along and across the polish, dull colour. */
export interface Skin {
  readonly mirror: Colour
  readonly alongPolish: number
  readonly acrossPolish: number
  readonly dull: Colour
}

export type FinishName = 'bright' | 'dark' | 'deep'

/** What the etch and the rubbing afterwards leave. */
export interface Finish {
  readonly name: FinishName
  readonly summary: string
  /** How far the darkest steel lies below the brightest, m. */
  readonly relief: number
  readonly bright: Skin
  readonly dark: Skin
  /** Darkening where the surface is hollow. */
  readonly hollow: number
  /** Scratches of the last polish: how far they tilt bright metal (slope). */
  readonly scratches: number
}

/**
 * Mirror share of bright steel from n ≈ 2.9, k ≈ 3.0, nickel a little higher; roughness 0.18–0.30, and 0.45–0.7 of the
 * black oxide; dull share of the oxide 0.03–0.06, slightly warm. Dense oxide (magnetite, n 2.35, k 0.4) mirrors 0.17;
 * the etched skin is porous and hides most of that in its own pits: an eighth is drawn. Relief 1–5, 5–20 and 30–80 µm. All
 * from memory, no source read.
 */
const BRIGHT: Skin = {
  mirror: [0.56, 0.57, 0.58],
  alongPolish: 0.13,
  acrossPolish: 0.25,
  dull: [0.02, 0.02, 0.02],
}

export const finishes: Readonly<Record<FinishName, Finish>> = {
  bright: {
    name: 'bright',
    summary: 'a light etch, rubbed back: all steel bright, lines told by gloss',
    relief: 3e-6,
    bright: BRIGHT,
    dark: {
      mirror: [0.2, 0.197, 0.192],
      alongPolish: 0.33,
      acrossPolish: 0.42,
      dull: [0.05, 0.049, 0.047],
    },
    hollow: 0,
    scratches: 0.03,
  },
  dark: {
    name: 'dark',
    summary: 'etched and oiled: dark steel charcoal, bright steel silver',
    relief: 12e-6,
    bright: BRIGHT,
    dark: {
      mirror: [0.02, 0.019, 0.018],
      alongPolish: 0.55,
      acrossPolish: 0.58,
      dull: [0.042, 0.04, 0.037],
    },
    hollow: 0.1,
    scratches: 0.025,
  },
  deep: {
    name: 'deep',
    summary: 'etched deep, the high steel rubbed bright: felt with the finger',
    relief: 50e-6,
    bright: { ...BRIGHT, alongPolish: 0.11, acrossPolish: 0.21 },
    dark: {
      mirror: [0.012, 0.0115, 0.011],
      alongPolish: 0.65,
      acrossPolish: 0.68,
      dull: [0.034, 0.032, 0.03],
    },
    hollow: 0.3,
    scratches: 0.02,
  },
}

/**
 * The floor of a mark, which neither the polish nor the rubbing after the etch reaches: bright steel keeps so much of the
 * etch's skin, and all is so much darker. That it is darker is common practice; how much has no source.
 */
export const SPARED = { skin: 0.5, darker: 0.25 } as const

/** What lights the piece, all as seen in a mirror tilted by a slope towards the upper edge of the picture. */
export interface Lighting {
  /** Where the long strip light stands: slope at which polished metal would mirror its middle. */
  readonly strip: number
  /** Half its width, slope. */
  readonly stripHalf: number
  /** Its radiance, the sky's, the wall's. */
  readonly stripLight: number
  readonly sky: number
  readonly wall: number
}

/** A strip 20–40° from the line of sight shows relief best (common practice, no source); 24° is a slope of 0.21. */
export const stripLight: Lighting = {
  strip: 0.21,
  stripHalf: 0.1,
  stripLight: 5,
  sky: 0.32,
  wall: 0.2,
}
