import type { Problem } from '#problem'
import type { HeatRecord, SteelState } from './heat-records.ts'
import type { Ranged } from './layers/layer-records.ts'
import type { LayerRecord } from './layers/steel-records.ts'
import type { Treated } from './treat-plan.ts'

/** What the heats leave as data: SI with the unit in the name; `plan --json` and `heat --json`. */
export interface HeatsRecord {
  readonly heats: readonly HeatData[]
  readonly layers: readonly LayerData[]
  readonly heatsLeave: LeftData
}

export interface LeftData {
  readonly window?: {
    readonly low_K: number
    readonly high_K: number
    readonly advised_K: number
    readonly suitsAll: boolean
    readonly stated_K?: number
    readonly verdict?: string
  }
  readonly quench?: {
    readonly medium: string
    readonly thickness_m: number
    readonly each: readonly {
      readonly steel: string
      readonly hardens: string
      readonly limit_m: Spread
      readonly martensite: number
    }[]
    readonly wouldDo: readonly string[]
    readonly advice: string
  }
  readonly temperChart: readonly {
    readonly temperature_K: number
    readonly hardness: readonly {
      readonly steel: string
      readonly bar: string
      readonly HRC?: number
    }[]
  }[]
  readonly growth?: { readonly length: Spread; readonly bow_m?: Spread; readonly risk?: string }
  readonly etch: readonly {
    readonly steels: readonly [string, string]
    readonly contrast: string
    readonly minutes?: Spread
    readonly relief_m?: number
  }[]
  readonly skin_m: Spread
  readonly lines: readonly {
    readonly bar: string
    readonly step: number
    readonly joints: number
    readonly deficit_wt: number
    readonly width_m: number
    readonly shows: string
  }[]
  readonly joints: readonly {
    readonly step: number
    readonly between: readonly [string, string]
    readonly carbon_wt: readonly [number, number]
    readonly atJoint_wt: readonly [number, number]
    readonly reach_m: number
  }[]
  readonly cautions: readonly string[]
  readonly warnings: readonly Problem[]
  readonly outOfRange: readonly Problem[]
}

/** A value and the lowest and highest to be expected. */
export interface Spread {
  readonly value: number
  readonly low: number
  readonly high: number
}

export interface HeatData {
  readonly bar: string
  readonly step: number
  readonly at: string
  readonly do: string
  readonly purpose: string
  readonly times: number
  readonly from_K: number
  readonly temperature_K: number
  readonly stop_K?: number
  readonly soak_s: number
  readonly medium: string
  readonly colour: string
  readonly fire: { readonly kind: string; readonly temperature_K: number }
  readonly section: {
    readonly shape: string
    readonly thickness_m: number
    readonly width_m?: number
  }
  readonly warming_s: Spread
  readonly working_s?: Spread
  readonly model: string
  readonly biot: number
  /** Each point: s from the start of the heat, then skin, core and mean, K. */
  readonly history: readonly (readonly [number, number, number, number])[]
  readonly scale_m?: Spread & { readonly shop: number }
  readonly carbonReach_m: number
  readonly grain_m: number
  readonly nearness: readonly {
    readonly steel: string
    readonly verdict: string
    readonly toSolidus_K: number
  }[]
  readonly carbonAfter: readonly CarbonData[]
  readonly cautions: readonly string[]
}

export interface CarbonData {
  readonly steel: string
  readonly bar: string
  readonly mean_wt: number
  readonly low_wt: number
  readonly high_wt: number
}

export interface LayerData {
  readonly steel: string
  readonly bar: string
  readonly count: number
  readonly thickness_m: number
  readonly share: number
  readonly carbonBought_wt: Spread
  readonly carbon_wt: Spread
  readonly within_wt: readonly [number, number]
  readonly asQuenched_HRC?: Spread
  readonly tempered_HRC?: Spread
  readonly middleAsQuenched_HRC?: Spread
  readonly middleTempered_HRC?: Spread
  readonly table?: string
  readonly published?: boolean
}

export function recordHeats(treated: Treated): HeatsRecord {
  return {
    heats: treated.heats.map(recordHeat),
    layers: treated.layers.map(recordLayer),
    heatsLeave: recordLeft(treated),
  }
}

function recordLeft(treated: Treated): LeftData {
  const { window, quench, growth } = treated
  return {
    ...(window && {
      window: {
        low_K: window.low,
        high_K: window.high,
        advised_K: window.advised,
        suitsAll: window.suitsAll,
        ...(window.stated !== undefined && { stated_K: window.stated, verdict: window.verdict }),
      },
    }),
    ...(quench && {
      quench: {
        medium: quench.medium,
        thickness_m: quench.size,
        each: quench.each.map(({ steel, hardens, limit, martensite }) => ({
          steel,
          hardens,
          limit_m: spread(limit),
          martensite,
        })),
        wouldDo: quench.wouldDo,
        advice: quench.sentence,
      },
    }),
    temperChart: treated.temperChart.map(({ temperature, steels }) => ({
      temperature_K: temperature,
      hardness: steels.map(({ steel, bar, hardness }) => ({
        steel,
        bar,
        ...(hardness && { HRC: hardness.value }),
      })),
    })),
    ...(growth && {
      growth: {
        length: spread(growth.growth),
        ...(growth.bow && { bow_m: spread(growth.bow), risk: growth.risk }),
      },
    }),
    etch: treated.etch.map(({ steels, contrast, minutes, relief }) => ({
      steels,
      contrast,
      ...(minutes && { minutes: spread(minutes), relief_m: relief }),
    })),
    skin_m: spread(treated.skin),
    lines: treated.lines.map(({ bar, step, joints, deficit, width, shows }) => ({
      bar,
      step,
      joints,
      deficit_wt: deficit,
      width_m: width,
      shows,
    })),
    joints: treated.joints.map(({ step, between, carbon, atJoint, reach }) => ({
      step,
      between,
      carbon_wt: carbon,
      atJoint_wt: atJoint,
      reach_m: reach,
    })),
    cautions: treated.cautions,
    warnings: treated.warnings,
    outOfRange: treated.outOfRange,
  }
}

function spread({ value, range }: Ranged): Spread {
  return { value, low: range[0], high: range[1] }
}

export function recordHeat(h: HeatRecord): HeatData {
  const { thickness, width, shape } = h.section
  return {
    bar: h.bar,
    step: h.step,
    at: h.at,
    do: h.do,
    purpose: h.purpose,
    times: h.times,
    from_K: h.from,
    temperature_K: h.temperature,
    ...(h.stop !== undefined && { stop_K: h.stop }),
    soak_s: h.soak,
    medium: h.medium,
    colour: h.colour,
    fire: { kind: h.fire, temperature_K: h.fireTemperature },
    section: { shape, thickness_m: thickness, ...(width !== undefined && { width_m: width }) },
    warming_s: spread(h.warming),
    ...(h.working && { working_s: spread(h.working) }),
    model: h.model,
    biot: h.biot,
    history: h.history.map(({ time, skin, core, mean }) => [time, skin, core, mean]),
    ...(h.scale && {
      scale_m: { ...spread({ value: h.scale.model, range: h.scale.range }), shop: h.scale.shop },
    }),
    carbonReach_m: h.reach,
    grain_m: h.grain,
    nearness: h.nearness.map(({ steel, verdict, margin }) => ({
      steel,
      verdict,
      toSolidus_K: margin,
    })),
    carbonAfter: h.carbon.map(recordState),
    cautions: h.cautions,
  }
}

function recordState({ steel, bar, carbon, lowest, highest }: SteelState): CarbonData {
  return { steel, bar, mean_wt: carbon, low_wt: lowest, high_wt: highest }
}

function recordLayer(l: LayerRecord): LayerData {
  return {
    steel: l.steel,
    bar: l.bar,
    count: l.count,
    thickness_m: l.thickness,
    share: l.share,
    carbonBought_wt: spread(l.carbonBought),
    carbon_wt: spread(l.carbon),
    within_wt: l.within,
    ...(l.asQuenched && { asQuenched_HRC: spread(l.asQuenched) }),
    ...(l.tempered && { tempered_HRC: spread(l.tempered) }),
    ...(l.middle && {
      middleAsQuenched_HRC: spread(l.middle.asQuenched),
      middleTempered_HRC: spread(l.middle.tempered),
    }),
    ...(l.table !== undefined && { table: l.table, published: l.published }),
  }
}
