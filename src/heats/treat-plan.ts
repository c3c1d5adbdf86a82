import type { Problem } from '#problem'
import { type Composition, type Grade, findGrade } from '#steel'
import { temperChart } from '#metallurgy'
import type { Smithy } from '#operations'
import type { Plan } from '#planner'
import { cautionsOf, rangeProblems } from './cautions.ts'
import { type EtchPair, type Growth, etchPairs, growthOf } from './etch-and-growth.ts'
import { type FollowOptions, followPlan, unlike } from './follow-plan.ts'
import {
  type Hardening,
  THIN,
  type Window,
  findHardening,
  hardenSteel,
  hardensByRule,
  windowOf,
  windowProblems,
} from './quench/hardening.ts'
import { heatProblems } from './heat-problems.ts'
import { type HeatRecord, heatRecords } from './heat-records.ts'
import { type Ranged, layerClasses } from './layers/layer-records.ts'
import { type PileMoment, hardenPiles, pileRecords } from './layers/pile-records.ts'
import { type QuenchAdvice, adviseQuench } from './quench/quench-advice.ts'
import { type BarJoint, type WeldLine, barJoints, skinLeft, weldLines } from './skin-and-lines.ts'
import {
  type LayerRecord,
  type SteelRecord,
  cached,
  hardnessOf,
  steelRecords,
} from './layers/steel-records.ts'
import { type Profile, profilesOf } from './metal/profiles.ts'

/** What the heats of a plan leave. */
export interface Treated {
  readonly heats: readonly HeatRecord[]
  readonly layers: readonly LayerRecord[]
  readonly steels: readonly SteelRecord[]
  /** After each step of the route, what has become of every sheet ever laid. */
  readonly piles: readonly PileMoment[]
  readonly hardening?: Hardening
  readonly window?: Window
  readonly quench?: QuenchAdvice
  readonly temperChart: readonly {
    readonly temperature: number
    readonly steels: readonly {
      readonly steel: string
      readonly bar: string
      /** Left out where the steel's table does not reach. */
      readonly hardness?: Ranged
    }[]
  }[]
  /** Carbon across each pack of the finished metal, from one face: place (m) and wt%. */
  readonly profiles: readonly Profile[]
  readonly growth?: Growth
  readonly etch: readonly EtchPair[]
  /** m: skin that has lost carbon, on the finished faces. */
  readonly skin: Ranged
  readonly lines: readonly WeldLine[]
  readonly joints: readonly BarJoint[]
  readonly cautions: readonly string[]
  readonly notes: readonly string[]
  readonly warnings: readonly Problem[]
  /** Where a model was asked beyond what was published for it: its figure is a rough guide there. */
  readonly outOfRange: readonly Problem[]
}

/**
 * Follows the metal of a plan through every heat and says what is left. `smithy` is the one the plan
 * was made in, with the composition of every steel; `own` are the smith's grades beside those of the
 * program. Never throws but when stopped.
 */
export function treatPlan(
  plan: Plan,
  smithy: Smithy,
  own: readonly Grade[] = [],
  options: FollowOptions = {},
): Treated {
  const compositionOf = (steel: string): Composition => smithy.compositions?.[steel] ?? {}
  const followed = followPlan(plan, smithy, compositionOf, options)
  const metal = followed.steps.at(-1)?.metal ?? []
  const { build } = plan.finished
  const hardening = findHardening(plan.steps)
  const treat = cached((steel, carbon, where) =>
    hardening && hardensByRule(compositionOf(steel), carbon)
      ? hardenSteel(
          { steel, carbon },
          hardening,
          compositionOf,
          where && Math.min(THIN, hardening.size),
        )
      : undefined,
  )
  const heat = hardening?.temperature ?? 0
  const measuredOn = (steel: string) => findGrade(steel, own).ok?.asQuenched
  const layers = layerClasses(metal, build, compositionOf, own).map((layer): LayerRecord => ({
    ...layer,
    ...hardnessOf(layer, treat, heat, measuredOn(layer.steel)),
  }))
  const steels = steelRecords(layers, treat, heat, measuredOn)
  const window = windowOf(
    steels.map(({ steel, bar, carbon }) => ({ steel, bar, carbon: carbon.value })),
    compositionOf,
    hardening?.temperature,
  )
  const quench = hardening && adviseQuench(steels, hardening, compositionOf)
  const heats = heatRecords(followed, smithy.shop, compositionOf)
  const able = steels.filter((s) => s.asQuenched)
  const chart = temperChart(
    able.map((s) => ({
      composition: { ...compositionOf(s.steel), C: s.carbon.value },
      quenched: s.asQuenched!.value,
    })),
    chartAt,
  )
  return {
    heats,
    layers,
    steels,
    piles: followed.steps.map(({ done: { bar, index, step }, metal: left }, i) => {
      const piles = pileRecords(left, step.after.build)
      const isLast = i === followed.steps.length - 1
      return { bar, index, piles: isLast ? hardenPiles(piles, treat) : piles }
    }),
    hardening,
    window,
    quench,
    temperChart: chart.map(({ temperature, steels: row }) => ({
      temperature,
      steels: row.map(({ value, range, outOfRange }, i) => ({
        steel: able[i]!.steel,
        bar: able[i]!.bar,
        ...(outOfRange.every((p) => p.at !== 'temper') && { hardness: { value, range } }),
      })),
    })),
    profiles: profilesOf(metal),
    growth: hardening && growthOf(metal, plan.finished, treat),
    etch: etchPairs(steels, plan, smithy.shop, compositionOf),
    skin: skinLeft(followed.steps, smithy.shop),
    lines: weldLines(followed.steps, smithy.shop),
    joints: barJoints(followed.steps, compositionOf),
    cautions: cautionsOf(steels, heats, compositionOf, hardening),
    notes: followed.notes,
    warnings: unlike([...heatProblems(heats), ...windowProblems(window, hardening?.at ?? '')]),
    outOfRange: unlike(
      rangeProblems(
        followed,
        heats,
        able.map(({ steel, carbon }) => ({ steel, treated: treat(steel, carbon.value) })),
        hardening,
        compositionOf,
      ),
    ),
  }
}

/** Tempers of the chart, K: 150 to 650 °C. */
const chartAt = [150, 175, 200, 225, 250, 275, 300, 350, 400, 450, 500, 550, 600, 650].map(
  (celsius) => celsius + 273.15,
)
