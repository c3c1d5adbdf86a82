import { type Estimate, hold, rangeChecks } from '../estimate.ts'

// Beyond the polynomial: plateau and slow fall as austenite is kept (RAIIPA: .74 66.5, .89 67.0,
// 1.15 64.5; MEAD .96 66; read), joined to the polynomial's end.
const plateau = [
  [0.69, 65.77],
  [0.74, 66],
  [0.96, 66.2],
  [1.15, 64.5],
  [1.5, 62],
] as const

/** HRC of martensite alone, by carbon: A255-10 polynomial to .69 % (A255-HB, read). */
export function fullMartensite(carbon: number): number {
  const c = hold(carbon, [0.02, 1.5])
  if (c <= 0.69)
    return (
      33.087 + 50.723 * c + 33.662 * c ** 2 - 2.7048 * c ** 3 - 107.02 * c ** 4 + 43.523 * c ** 5
    )
  for (let i = 1; i < plateau.length; i++) {
    const [c0, h0] = plateau[i - 1]!
    const [c1, h1] = plateau[i]!
    if (c <= c1) return h0 + ((h1 - h0) * (c - c0)) / (c1 - c0)
  }
  return plateau[4][1]
}

/** HRC of half martensite, by carbon (A255, from memory), held at .69 %. */
export function halfMartensite(carbon: number): number {
  const c = hold(carbon, [0.02, 0.69])
  return (
    22.974 + 6.214 * c + 356.364 * c ** 2 - 1091.488 * c ** 3 + 1464.88 * c ** 4 - 750.441 * c ** 5
  )
}

/**
 * Hardness as quenched, HRC, from the carbon dissolved and the share of martensite. Hardness
 * of martensite depends on carbon alone (GHP, read in words).
 */
export function asQuenchedHardness(carbon: number, martensite = 1): Estimate {
  const ranges = rangeChecks()
  ranges.check('carbon', carbon, [0.1, 1.2], 'wt%', 'as-quenched hardness')
  const share = hold(martensite, [0, 1])
  const full = fullMartensite(carbon)
  const half = halfMartensite(carbon)
  // No martensite: fine pearlite, fifteen under the half-martensite structure (common practice).
  const none = Math.max(5, half - 15)
  const value =
    share >= 0.5 ? half + (full - half) * (share - 0.5) * 2 : none + (half - none) * share * 2
  const scatter = carbon > 0.69 ? 1.5 : carbon < 0.35 ? 4.6 : 2
  const loose = scatter + 3 * (1 - share)
  return {
    value,
    range: [Math.max(0, value - loose), Math.min(68, value + Math.min(loose, 2))],
    unit: 'HRC',
    source: 'A255-HB',
    standing: 'read secondary',
    notes:
      carbon > 0.69
        ? ['Above .69 % carbon: plateau as measured, falling as austenite is kept.']
        : ['ASTM A255 martensite hardness.'],
    outOfRange: ranges.found,
  }
}
