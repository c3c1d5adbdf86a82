import type { Problem } from '#problem'
import { type Build, layeredWithin, sharesOf, steelsIn } from '#billet'
import { type Composition, percent } from '#steel'
import type { Shop } from '#shop'
import type { DoneStep, Plan } from '#planner'
import { checkOverheating, fires, settleCarbon } from '#metallurgy'
import { type HardenedSteel, findHardening, windowOf, windowProblems } from './quench/hardening.ts'
import { fireFor } from './fire/heat-order.ts'
import { type HeatRecord, ironBased } from './heat-records.ts'

const celsius = (kelvin: number) => `${Math.round(kelvin - 273.15)} °C`

/** Heats that burn a steel of the bar, at the carbon it has by then. */
export function heatProblems(heats: readonly HeatRecord[]): Problem[] {
  return heats.flatMap((h) => {
    const found = h.nearness.filter((n) => n.verdict === 'burning' || n.verdict === 'melting')
    return found.map((n) => burning(h.at, n.steel, n.carbon, h.temperature))
  })
}

function burning(at: string, steel: string, carbon: number, temperature: number): Problem {
  const { verdict, burnsAt, forgeAtMost, margin } = checkOverheating(carbon, temperature)
  const melts = verdict === 'melting'
  return {
    at: `${at}.temperature`,
    what: melts
      ? `${steel} melts at ${celsius(temperature)}`
      : `${steel} burns at ${celsius(temperature)}`,
    why: melts
      ? `with ${carbon.toFixed(2)} % carbon it begins to melt at ${celsius(temperature + margin.value)} (OC-TDB)`
      : `with ${carbon.toFixed(2)} % carbon it burns from about ${celsius(burnsAt)}, and its grain boundaries may be lost for good (from memory)`,
    try: [
      `stay under ${celsius(burnsAt - 40)}; ${celsius(forgeAtMost)} is the table's highest forging heat`,
      'choose a steel with less carbon',
    ],
  }
}

/** Checks quick enough for every plan: burning at the carbon bought, the fire's reach, the hardening window. */
export function checkHeats(
  plan: Plan,
  shop: Shop,
  compositionOf: (steel: string) => Composition,
): Map<string, Problem[]> {
  const found = new Map<string, Problem[]>()
  const add = (at: string, problems: readonly Problem[]) =>
    found.set(at, [...(found.get(at) ?? []), ...problems])
  for (const done of plan.steps) {
    const problems = stepProblems(done, shop, compositionOf)
    if (problems.length > 0) add(done.at, problems)
  }
  const hardening = findHardening(plan.steps)
  if (hardening) {
    const stated = hardening.temperature
    // Carbon moves in the heats: only what is wrong both as bought and when levelled is surely wrong.
    const [bought, levelled] = [asBought, asLevelled].map((as) =>
      windowProblems(
        windowOf(as(plan.finished.build, compositionOf), compositionOf, stated),
        hardening.at,
      ),
    )
    const both = bought!.filter((b) =>
      levelled!.some((l) => l.what.split(' of ')[0] === b.what.split(' of ')[0]),
    )
    if (both.length > 0) add(hardening.at, levelled!)
  }
  return found
}

function stepProblems(
  { at, before, step }: DoneStep,
  shop: Shop,
  compositionOf: (steel: string) => Composition,
): Problem[] {
  const steels = [...new Set([...before, step.after].flatMap((b) => steelsIn(b.build)))]
  return step.heats.flatMap(({ purpose, temperature }) => {
    if (purpose === 'temper') return []
    const burnt = steels.flatMap((steel): Problem[] => {
      const composition = compositionOf(steel)
      const carbon = percent(composition, 'C')
      const { verdict } = checkOverheating(carbon, temperature)
      const bad = ironBased(composition) && (verdict === 'burning' || verdict === 'melting')
      return bad ? [burning(at, steel, carbon, temperature)] : []
    })
    const wall = fireFor(purpose, temperature, shop.fire)
    const [, most] = fires[shop.fire].range
    return wall > most ? [...burnt, tooHot(at, temperature, shop.fire, most)] : burnt
  })
}

function tooHot(at: string, temperature: number, fire: Shop['fire'], most: number): Problem {
  return {
    at: `${at}.temperature`,
    what: `a ${fire} fire is asked for ${celsius(temperature)}`,
    why: `such fires reach about ${celsius(most)}, and the bar stays under its fire (common practice)`,
    try: ['ask for a lower heat', 'use a hotter fire'],
  }
}

function asBought(build: Build, compositionOf: (steel: string) => Composition): HardenedSteel[] {
  return steelsIn(build).map((steel) => ({
    steel,
    bar: '',
    carbon: percent(compositionOf(steel), 'C'),
  }))
}

/** Carbon levelled by its activity within each pack; any forging heat will do for where it settles. */
function asLevelled(build: Build, compositionOf: (steel: string) => Composition): HardenedSteel[] {
  return layeredWithin(build).flatMap((pack) => {
    const shares = Object.entries(sharesOf(pack))
    if (!shares.every(([steel]) => ironBased(compositionOf(steel)))) return []
    const settled = settleCarbon(
      shares.map(([steel, mass]) => ({ composition: compositionOf(steel), mass })),
      1373.15,
    )
    return shares.map(([steel], i) => ({ steel, bar: '', carbon: settled[i]! }))
  })
}
