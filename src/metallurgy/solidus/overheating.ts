import { type Estimate, hold, rangeChecks } from '../estimate.ts'

/** Where melting begins in Fe-C austenite, K: 1524.88 - 179.29 C + 1.68 C² °C (OC-TDB, computed). */
export function solidus(carbon: number): Estimate {
  const ranges = rangeChecks()
  const c = ranges.check('carbon', carbon, [0.2, 2], 'wt%', 'the Fe-C solidus')
  const value = 1524.88 - 179.29 * c + 1.68 * c * c + 273.15
  return {
    value,
    range: [value - 60, value + 5],
    unit: 'K',
    source: 'OC-TDB',
    standing: 'computed',
    notes: [
      'Pure Fe-C. Phosphorus, sulphur and segregation start it earlier at the grain boundaries.',
    ],
    outOfRange: ranges.found,
  }
}

// wt% carbon, highest forging heat °C, burning °C (Metals Handbook 1948, from memory).
export const burningTable = [
  [0.1, 1350, 1490],
  [0.2, 1320, 1470],
  [0.5, 1250, 1350],
  [0.7, 1170, 1280],
  [0.9, 1120, 1220],
  [1.1, 1080, 1170],
  [1.5, 1050, 1140],
] as const

function fromTable(carbon: number, column: 1 | 2): number {
  const c = hold(carbon, [0.1, 1.5])
  for (let i = 1; i < burningTable.length; i++) {
    const a = burningTable[i - 1]!
    const b = burningTable[i]!
    if (c <= b[0])
      return a[column] + ((b[column] - a[column]) * (c - a[0])) / (b[0] - a[0]) + 273.15
  }
  return burningTable[6][column] + 273.15
}

export interface Overheating {
  /** K left to the solidus; negative once melting has begun. */
  readonly margin: Estimate
  /** Highest forging heat and burning temperature by the table, K. */
  readonly forgeAtMost: number
  readonly burnsAt: number
  readonly verdict: 'safe' | 'hot' | 'burning' | 'melting'
  readonly caution: string
}

/**
 * How near a steel comes to burning, at the carbon it has *now*. Warn on the table, forbid on the
 * solidus: the table lies 100 to 160 K under it for blade steels.
 */
export function checkOverheating(carbon: number, temperature: number): Overheating {
  const s = solidus(carbon)
  const t = Number.isFinite(temperature) ? temperature : 293.15
  const forgeAtMost = fromTable(carbon, 1)
  const burnsAt = fromTable(carbon, 2)
  const verdict =
    t >= s.value ? 'melting' : t >= burnsAt ? 'burning' : t > forgeAtMost ? 'hot' : 'safe'
  const words = {
    safe: '',
    hot: 'Above the table’s highest forging heat for this carbon: keep it short.',
    burning: 'In the burning range for this carbon: grain boundaries may be lost for good.',
    melting: 'Above the solidus: the steel is melting.',
  }
  return {
    margin: { ...s, value: s.value - t, range: [s.range[0] - t, s.range[1] - t] },
    forgeAtMost,
    burnsAt,
    verdict,
    caution: words[verdict],
  }
}
