import { type Composition, percent } from '#steel'

/**
 * Carbon activity in alloyed austenite: the two-sublattice model (metals)(C, vacancies).
 * mu(C) - G(graphite) = sum y_i dG_i + sum y_Fe y_X (L_FeX:C - L_FeX:Va)
 *                     + (1 - 2 y_C) sum y_i L_i:C,Va + R T ln(y_C / (1 - y_C))
 * with y_C carbon atoms for each metal atom and y_i the metals' shares among themselves.
 * Fe, Cr, Mn, Si parameters: OC-TDB (read). Nickel: dG and L(Fe,Ni:Va) TDB and MOBK (read), the
 * other two terms from memory (Gabriel, Gustafson, Ansara 1987); the second nickel set is the
 * reassessment in TDB (read).
 */
export const alloyed = ['Cr', 'Mn', 'Ni', 'Si'] as const
export type AlloyMetal = (typeof alloyed)[number]

/** Gas constant the parameters were fitted with. */
const R = 8.31451
const weight = { C: 12.011, Fe: 55.847, Cr: 51.996, Mn: 54.938, Ni: 58.69, Si: 28.0855 } as const

type Line = (t: number) => number
interface Terms {
  readonly dG: Line
  readonly ofCarbon: readonly Line[]
  readonly ofVacancy: readonly Line[]
  readonly carbonVacancy: Line
  /** +1 where the Redlich-Kister difference is y_Fe - y_X, -1 where it is y_X - y_Fe. */
  readonly sign: 1 | -1
}

const manganese = (t: number) =>
  -8115.28 +
  3439.3 +
  (130.059 - 131.884) * t -
  (23.4582 - 24.5177) * t * Math.log(t) -
  (0.00734768 - 0.006) * t * t +
  (69827 - 69600) / t

/** Two published descriptions of nickel: their difference is the honest uncertainty. */
export type NickelSet = '1987' | '2023'

const nickel: Record<NickelSet, Terms> = {
  '1987': {
    dG: (t) => 62000 - 7.6 * t,
    ofCarbon: [(t) => 49074 - 7.32 * t, () => -25800],
    ofVacancy: [(t) => -12054.355 + 3.27413 * t, (t) => 11082.1315 - 4.45077 * t, () => -725.805],
    carbonVacancy: (t) => -14902 + 7.5 * t,
    sign: 1,
  },
  '2023': {
    dG: (t) => 62000 - 7.6 * t,
    ofCarbon: [(t) => 50035.5 - 15.89 * t, () => -32969.9],
    ofVacancy: [(t) => -15690.3 + 2.36733 * t, () => 7781.85, () => -1649.56],
    carbonVacancy: (t) => -17661 + 10.27 * t,
    sign: 1,
  },
}

const terms: Record<Exclude<AlloyMetal, 'Ni'>, Terms> = {
  Cr: {
    dG: (t) => -6084 - 2.103 * t,
    ofCarbon: [(t) => -74319 + 3.2353 * t],
    ofVacancy: [(t) => 10833 - 7.477 * t, () => 1410],
    carbonVacancy: (t) => -11977 + 6.8194 * t,
    sign: -1,
  },
  Mn: {
    dG: (t) => 502 + 15.261 * t + manganese(t),
    ofCarbon: [(t) => 34052 - 23.467 * t],
    ofVacancy: [(t) => -7762 + 3.865 * t, () => -259],
    carbonVacancy: () => -43433,
    sign: 1,
  },
  Si: {
    dG: (t) => -71510 + 60.5 * t,
    ofCarbon: [(t) => 143220 + 39.31 * t, () => -216321],
    ofVacancy: [(t) => -125248 + 41.116 * t, () => -142708, () => 89907],
    carbonVacancy: () => 0,
    sign: 1,
  },
}
const ironCarbonVacancy = -34671
const ironStep: Line = (t) => 77207 - 15.877 * t

/** Ln of activity over y/(1-y), without the part in carbon: `base + (1 - 2y) slope`. */
export interface ActivityLine {
  readonly base: number
  readonly slope: number
  /** Slope of the Fe-C binary, needed to turn a binary diffusivity into a mobility. */
  readonly ironSlope: number
}

/** The metals of a steel, ready for the activity sum at any temperature. */
export interface Matrix {
  /** Moles of metal in a gram of metal. */
  readonly molesPerGram: number
  readonly share: Readonly<Record<AlloyMetal | 'Fe', number>>
  readonly nickelSet: NickelSet
}

/** The metal part of a composition; elements outside the model count as iron. */
export function matrixOf(composition: Composition, nickelSet: NickelSet = '1987'): Matrix {
  const part = (e: AlloyMetal) => Math.min(Math.max(percent(composition, e) || 0, 0), 20)
  const w = { Cr: part('Cr'), Mn: part('Mn'), Ni: part('Ni'), Si: part('Si') }
  const carbon = Math.min(Math.max(percent(composition, 'C') || 0, 0), 7)
  const iron = 100 - carbon - w.Cr - w.Mn - w.Ni - w.Si
  const moles = {
    Cr: w.Cr / weight.Cr,
    Mn: w.Mn / weight.Mn,
    Ni: w.Ni / weight.Ni,
    Si: w.Si / weight.Si,
    Fe: iron / weight.Fe,
  }
  const all = moles.Cr + moles.Mn + moles.Ni + moles.Si + moles.Fe
  return {
    molesPerGram: all / (100 - carbon),
    share: {
      Cr: moles.Cr / all,
      Mn: moles.Mn / all,
      Ni: moles.Ni / all,
      Si: moles.Si / all,
      Fe: moles.Fe / all,
    },
    nickelSet,
  }
}

/** Carbon atoms for each metal atom, from carbon in wt%. */
export function carbonPerMetal(matrix: Matrix, carbon: number): number {
  return carbon / weight.C / ((100 - carbon) * matrix.molesPerGram)
}

/** Carbon in wt% from carbon atoms for each metal atom. */
export function carbonFromPerMetal(matrix: Matrix, y: number): number {
  const grams = y * matrix.molesPerGram * weight.C
  return (100 * grams) / (1 + grams)
}

export function activityLine(matrix: Matrix, temperature: number): ActivityLine {
  const { share } = matrix
  let energy = share.Fe * ironStep(temperature)
  let slope = share.Fe * ironCarbonVacancy
  for (const metal of alloyed) {
    const y = share[metal]
    if (y === 0) continue
    const t = metal === 'Ni' ? nickel[matrix.nickelSet] : terms[metal]
    energy += y * t.dG(temperature)
    slope += y * t.carbonVacancy(temperature)
    const difference = t.sign * (share.Fe - y)
    let excess = 0
    let power = 1
    for (let k = 0; k < 3; k++) {
      const carbon = t.ofCarbon[k]
      const vacancy = t.ofVacancy[k]
      if (carbon !== undefined) excess += carbon(temperature) * power
      if (vacancy !== undefined) excess -= vacancy(temperature) * power
      power *= difference
    }
    energy += share.Fe * y * excess
  }
  const rt = R * temperature
  return { base: energy / rt, slope: slope / rt, ironSlope: ironCarbonVacancy / rt }
}

/** Activity of carbon against graphite, in a steel of this composition at this temperature (K). */
export function carbonActivity(
  composition: Composition,
  temperature: number,
  nickelSet: NickelSet = '1987',
): number {
  const matrix = matrixOf(composition, nickelSet)
  const y = carbonPerMetal(matrix, percent(composition, 'C'))
  const line = activityLine(matrix, temperature)
  return (y / (1 - y)) * Math.exp(line.base + (1 - 2 * y) * line.slope)
}

/** Carbon, wt%, at which this matrix has the activity asked for. Bisection: it always answers. */
export function carbonAtActivity(matrix: Matrix, temperature: number, activity: number): number {
  const line = activityLine(matrix, temperature)
  let low = 0
  let high = 0.35
  for (let i = 0; i < 60; i++) {
    const y = (low + high) / 2
    if ((y / (1 - y)) * Math.exp(line.base + (1 - 2 * y) * line.slope) < activity) low = y
    else high = y
  }
  return carbonFromPerMetal(matrix, (low + high) / 2)
}

/**
 * Where carbon settles when layers have been hot long enough: the same activity everywhere, the
 * total as laid. Returns carbon, wt%, for each layer, in order. Masses in any one unit.
 */
export function settleCarbon(
  layers: readonly { readonly composition: Composition; readonly mass: number }[],
  temperature: number,
  nickelSet: NickelSet = '1987',
): number[] {
  const matrices = layers.map((l) => matrixOf(l.composition, nickelSet))
  const mass = layers.map((l) => Math.max(l.mass, 0))
  const total = layers.reduce((sum, l, i) => sum + mass[i]! * percent(l.composition, 'C'), 0)
  let low = 0
  let high = 50
  let carbon = matrices.map(() => 0)
  for (let i = 0; i < 80; i++) {
    const activity = (low + high) / 2
    carbon = matrices.map((m) => carbonAtActivity(m, temperature, activity))
    if (carbon.reduce((sum, c, k) => sum + mass[k]! * c, 0) < total) low = activity
    else high = activity
  }
  return carbon
}
