import { type Problem, type Result, failed, ok } from '#problem'
import { findZero } from '#geometry'
import { printQuantity } from '#units'
import type { PieceKind, PieceSolid } from './piece-kind.ts'

/** Mass of a solid, kg, at a density in kg/m³. */
export function weigh(solid: Pick<PieceSolid, 'volume'>, density: number): number {
  return solid.volume * density
}

/** Wishes closer than this agree: a shop's scales and callipers do no better. Common practice, no source. */
const AGREE = 0.005

/**
 * Sizes against weight. Empty when they agree; otherwise one problem with both cures: the
 * thickness that gives the weight (every thickness of the kind in the same proportion), and the
 * weight that the sizes give.
 */
export function contradictions(
  kind: PieceKind,
  values: Readonly<Record<string, unknown>>,
  wishedMass: number,
  density: number,
): readonly Problem[] {
  const built = kind.build(values as never)
  if (built.problems) return built.problems
  const mass = weigh(built.ok, density)
  if (Math.abs(mass - wishedMass) <= AGREE * wishedMass) return []
  return [
    {
      at: 'mass',
      what: `these sizes give ${grams(mass)}; ${grams(wishedMass)} is asked for`,
      why: `${printQuantity(built.ok.volume, 'volume', { unit: 'cm³' })} at ${(density / 1000).toFixed(2)} g/cm³ is ${grams(mass)}`,
      try: [
        thicknessCure(kind, values, wishedMass, density),
        `ask for ${grams(mass)}, and keep the sizes`,
      ],
    },
  ]
}

function thicknessCure(
  kind: PieceKind,
  values: Readonly<Record<string, unknown>>,
  wishedMass: number,
  density: number,
): string {
  const solved = thicknessForMass(kind, values, wishedMass, density)
  if (solved.problems)
    return `no thickness gives ${grams(wishedMass)} with the other sizes (${solved.problems[0].what}): change length or width`
  const names = kind.thicknesses.filter((name) => typeof values[name] === 'number')
  const said = names.map((name) => `${name} ${length(solved.ok[name] as number)}`)
  return `make ${said.join(', ')}: that weighs ${grams(wishedMass)}`
}

/** The values with every thickness scaled alike so that the piece weighs what is wished. */
export function thicknessForMass(
  kind: PieceKind,
  values: Readonly<Record<string, unknown>>,
  wishedMass: number,
  density: number,
): Result<Record<string, unknown>> {
  const names = kind.thicknesses.filter((name) => typeof values[name] === 'number')
  const scaled = (by: number) => ({
    ...values,
    ...Object.fromEntries(names.map((name) => [name, (values[name] as number) * by])),
  })
  const excess = (by: number): number | undefined => {
    const built = kind.build(scaled(by) as never)
    return built.problems ? undefined : weigh(built.ok, density) - wishedMass
  }
  const bracket = (factor: number) => {
    let [known, knownExcess] = [1, excess(1)]
    for (let i = 0; i < 24 && knownExcess !== undefined; i++) {
      const next = known * factor
      const nextExcess = excess(next)
      if (nextExcess === undefined) return undefined
      if (nextExcess > 0 !== knownExcess > 0) return [known, next] as const
      ;[known, knownExcess] = [next, nextExcess]
    }
    return undefined
  }
  const range = bracket((excess(1) ?? 0) > 0 ? 1 / 1.25 : 1.25)
  if (range === undefined || names.length === 0) {
    return failed({
      at: 'mass',
      what: 'the thickness would leave what the other sizes allow',
      why: `${grams(wishedMass)} cannot be had by thickness alone`,
      try: ['change length or width', 'ask for another weight'],
    })
  }
  return ok(scaled(findZero((by) => excess(by) ?? 0, Math.min(...range), Math.max(...range), 1e-7)))
}

function grams(mass: number): string {
  return printQuantity(mass, 'mass', { unit: 'g', digits: mass < 0.01 ? 1 : 0 })
}

function length(m: number): string {
  return `${printQuantity(m, 'length', { unit: 'in', digits: 3 })} (${printQuantity(m, 'length', { unit: 'mm', digits: 2 })})`
}
