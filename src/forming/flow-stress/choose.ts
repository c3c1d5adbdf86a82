import type { Problem } from '#problem'
import { type Composition, percent } from '#steel'
import {
  type Basis,
  type Estimate,
  type Span,
  clamp,
  isInside,
  outsideRange,
  showTemperature,
} from '../estimate.ts'
import { freibergRange, henselSpittel, nearestRow } from './hensel-spittel.ts'
import { alloyFactor, misakaAtStrain, misakaMean, misakaRange } from './misaka.ts'
import { highAlloyRow, powerRows, powerStress } from './power-law.ts'
import { leeHighRate, shida, shidaMean, shidaRange } from './shida.ts'
import { sinhPeak, sinhRange } from './sinh-law.ts'
import type { State } from './state.ts'

/** One law's answer, whether its published range holds, and what kind of stress it gives. */
export interface LawReading {
  readonly law: string
  /** Pa. */
  readonly stress: number
  readonly kind: 'at strain' | 'mean' | 'peak'
  readonly inRange: boolean
  readonly basis: Basis
}

export interface FlowStress extends Estimate {
  /** Every law that speaks of such a steel, in its own terms. */
  readonly readings: readonly LawReading[]
  /** Highest over lowest of the laws that are in range and of the same kind, less one. */
  readonly spread: number
}

/** Plain factor of a steel with 0.7 % manganese, which the carbon-steel laws already contain. */
const plainFactor = alloyFactor({ Mn: 0.7 })
/** Two good laws for one steel differ by about a tenth (reference comparison at 0.45 % C, 1100 °C). */
const usualBand = 0.1

const pyrMis: Basis = {
  law: 'Misaka-Yoshimoto 1967',
  sources: ['PYR-MIS', 'ROLLJS'],
  standing: 'read secondary',
}
const pyrLee: Basis = {
  law: 'Shida 1968/69',
  sources: ['PYR-LEE', 'ROLLJS'],
  standing: 'read secondary',
}
const lee: Basis = {
  law: 'Shida with the rate factor of Lee 2002',
  sources: ['PYR-LEE'],
  standing: 'read secondary',
}
const freiberg: Basis = { law: 'Hensel-Spittel', sources: ['PYR-FRB'], standing: 'read secondary' }
const sinhBasis: Basis = {
  law: 'Medina-Hernandez',
  sources: ['MEDCODE', 'memory'],
  standing: 'from memory',
}
const powerBasis: Basis = {
  law: 'handbook power law',
  sources: ['memory'],
  standing: 'from memory',
}

/** Stiffening alloy (wt%) above which the carbon-steel laws are only a guess. */
const plainAlloyLimit = 1
/** Nickel (wt%) that leaves hot stress as it is: the alloy factor gives it 0.4 % for one per cent. */
const mildNickel = 3

function alloySum(composition: Composition): number {
  const stiffening = (['Cr', 'Mo', 'V', 'W', 'Co'] as const).reduce(
    (sum, element) => sum + percent(composition, element),
    0,
  )
  return stiffening + Math.max(0, percent(composition, 'Ni') - mildNickel)
}

const fits = (ranges: Readonly<Record<string, Span>>, values: Record<string, number>): boolean =>
  Object.entries(ranges).every(([key, span]) => isInside(values[key] ?? 0, span))

/** Keeps a state where the laws are finite and rising; what was cut is told by the cautions. */
function tame(state: State): State {
  return {
    temperature: clamp(state.temperature, [shidaRange.temperature[0], 1673.15]),
    strain: clamp(state.strain, [0.01, 0.7]),
    rate: clamp(state.rate, [1e-4, 3000]),
  }
}

/**
 * The carbon-steel stress (Pa) the room works with: Shida up to 30 /s, Misaka above 100 /s, and
 * between them a passage along the logarithm of the rate so that nothing jumps. Either way at the
 * strain itself or as the mean from 0 to it; both times the alloy factor against plain steel.
 */
export function carbonSteelStress(composition: Composition, given: State, mean = false): number {
  const state = tame(given)
  const carbon = clamp(percent(composition, 'C'), [0, 1.2])
  const factor = alloyFactor({ ...composition, Mn: composition.Mn ?? 0.7 }) / plainFactor
  const slow = (mean ? shidaMean : shida)(Math.max(shidaRange.carbon[0], carbon), state)
  const share = clamp(Math.log(state.rate / 30) / Math.log(100 / 30), [0, 1])
  if (share === 0) return factor * slow
  const fast = (mean ? misakaMean : misakaAtStrain)(carbon, {
    ...state,
    strain: Math.min(0.5, state.strain),
  })
  return factor * ((1 - share) * slow + share * fast)
}

/** The stress (Pa) of any steel: carbon-steel laws, or a handbook row carried along Shida's slope with temperature. */
export function steelStress(composition: Composition, state: State, mean = false): number {
  const row = highAlloyRow(composition)
  if (!row) return carbonSteelStress(composition, state, mean)
  const { temperature, rate, strain } = tame(state)
  const reference = { strain: Math.min(0.3, strain), rate: 1 }
  const carried =
    carbonSteelStress({ C: 0.2 }, { ...reference, temperature }) /
    carbonSteelStress({ C: 0.2 }, { strain: 0.3, rate: 1, temperature: row.temperature })
  return powerStress(row, rate) * carried
}

function readings(composition: Composition, state: State): LawReading[] {
  const carbon = percent(composition, 'C')
  const at = tame(state)
  const values = { ...state, carbon }
  const plain = alloySum(composition) <= plainAlloyLimit && !highAlloyRow(composition)
  const factor = alloyFactor({ ...composition, Mn: composition.Mn ?? 0.7 }) / plainFactor
  const row = nearestRow(composition)
  const high =
    highAlloyRow(composition) ??
    powerRows.find((r) => Math.abs((r.composition.C ?? 0) - carbon) < 0.06)
  const all: LawReading[] = [
    {
      law: 'Shida',
      stress: factor * shida(carbon, at),
      kind: 'at strain',
      inRange: plain && fits(shidaRange, values),
      basis: pyrLee,
    },
    {
      law: 'Misaka-Yoshimoto',
      stress: factor * misakaMean(carbon, at),
      kind: 'mean',
      inRange: plain && fits(misakaRange, values),
      basis: pyrMis,
    },
    {
      law: 'Medina-Hernandez',
      stress: sinhPeak(composition, at),
      kind: 'peak',
      inRange: plain && fits(sinhRange, { ...values }),
      basis: sinhBasis,
    },
  ]
  if (state.rate > 100)
    all.push({
      law: 'Shida-Lee',
      stress: factor * leeHighRate(carbon, at),
      kind: 'at strain',
      inRange: plain && fits({ ...shidaRange, rate: [100, 3000] }, values),
      basis: lee,
    })
  if (row)
    all.push({
      law: `Hensel-Spittel ${row.steel}`,
      stress: henselSpittel(row, at),
      kind: 'at strain',
      inRange: fits(freibergRange, values),
      basis: freiberg,
    })
  if (high)
    all.push({
      law: `power law ${high.steel}`,
      stress: powerStress(high, at.rate),
      kind: 'at strain',
      inRange: Math.abs(state.temperature - high.temperature) <= 30,
      basis: powerBasis,
    })
  return all.filter((reading) => Number.isFinite(reading.stress))
}

/** Laws put in one kind: a mean is turned into the stress at the strain, or the other way. */
function alike(reading: LawReading, mean: boolean): number | undefined {
  if (reading.kind === 'peak') return undefined
  if (reading.law === 'Misaka-Yoshimoto') return mean ? reading.stress : 1.21 * reading.stress
  return mean ? undefined : reading.stress
}

function cautionsFor(composition: Composition, state: State): Problem[] {
  const sum = alloySum(composition)
  const row = highAlloyRow(composition)
  const nickel = percent(composition, 'Ni') > 20
  const cautions: Problem[] = [
    ...outsideRange(
      'temperature',
      'the flow-stress law',
      state.temperature,
      shidaRange.temperature,
      showTemperature,
    ),
    ...outsideRange('strain', 'the flow-stress law', state.strain, shidaRange.strain, (s) =>
      s.toFixed(2),
    ),
    ...outsideRange(
      'rate',
      'the flow-stress law',
      state.rate,
      [0.1, 200],
      (r) => `${Number(r.toPrecision(2))} /s`,
    ),
    ...outsideRange(
      'carbon',
      'the flow-stress law',
      percent(composition, 'C'),
      [0, 1.2],
      (c) => `${Number(c.toPrecision(2))} % C`,
    ),
  ]
  if (nickel || row || sum > plainAlloyLimit)
    cautions.push({
      at: 'composition',
      what: nickel
        ? 'No published law for nickel or high-nickel metal was found; carbon steel stands in.'
        : row
          ? `Only a handbook row (${row.steel} at ${showTemperature(row.temperature)}) speaks of such a steel.`
          : `The carbon-steel laws do not know ${sum.toFixed(1)} % of stiffening alloy.`,
      why: 'Chromium, tungsten and much nickel stiffen hot steel in a way no law read here measures.',
      try: ['Allow for half as much force again.', 'Press a small piece first and note the force.'],
    })
  return cautions
}

/** How wide the answer is: a tenth for plain steel, two fifths where the laws do not know the steel. */
function bandFor(cautions: readonly Problem[]): number {
  if (cautions.some((c) => c.at === 'composition')) return 0.4
  return cautions.length > 0 ? 0.2 : usualBand
}

/**
 * Flow stress (Pa, uniaxial, von Mises) of one steel at a temperature (K), strain and rate (1/s).
 * `value` is the law whose published range holds; `low` to `high` takes in every law in range and a
 * tenth at least. `mean` asks for the mean from strain 0, which is what work needs.
 */
export function flowStress(composition: Composition, state: State, mean = false): FlowStress {
  const value = steelStress(composition, state, mean)
  const said = readings(composition, state)
  const same = said.filter((r) => r.inRange).flatMap((r) => alike(r, mean) ?? [])
  const cautions = cautionsFor(composition, state)
  const band = bandFor(cautions)
  const chosen = said.filter((r) => r.inRange).map((r) => r.basis)
  return {
    value,
    low: Math.min(value * (1 - band), ...same),
    high: Math.max(value * (1 + band), ...same),
    basis: chosen.length > 0 ? chosen : [highAlloyRow(composition) ? powerBasis : pyrLee],
    cautions,
    readings: said,
    spread: same.length > 1 ? Math.max(...same) / Math.min(...same) - 1 : 0,
  }
}
