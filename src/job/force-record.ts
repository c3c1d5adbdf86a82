import type { Size } from '#geometry'
import type { Bracket, Impression, Working } from '#operations'

/** What a step asks of the shop's best tool, as data: blows of a hammer, or newtons of a press. */
export interface ForceRecord {
  readonly tool: string
  readonly way: Working['way']
  /** Of a hammer, for the whole step: the likely number. */
  readonly blows?: number
  /** Of a press, the greatest: the likely number. */
  readonly force_N?: number
  /** Least and most of what is given. */
  readonly low: number
  readonly high: number
  readonly squeezes?: number
  readonly verdict: Working['verdict']
  readonly heatsNeeded: number
  readonly heatsPlanned: number
  readonly temperature_K: number
  readonly flowStress_Pa: Bracket
  readonly laws: readonly string[]
  readonly size_m: { readonly low: Size; readonly high: Size }
  readonly wouldDo: readonly string[]
  /** Thickness of each steel's layers over what equal thinning gives: in the mean, and at the sides. */
  readonly layerDrift?: Working['drift']
  readonly stamp?: StampRecord
}

export interface StampRecord {
  readonly area_m2: number
  readonly perimeter_m: number
  readonly size_m: readonly [number, number]
  readonly outline: boolean
  readonly depth_m: number
  readonly takenOff_m: number
  readonly depthLeft_m: number
  readonly smallestStroke_m: number
  readonly crack: Impression['crack']
  readonly sinking_m: Impression['sinking']
  readonly at: readonly {
    readonly temperature_K: number
    readonly handHammer4lbBlows: Bracket
    readonly press_N: Bracket
  }[]
}

export function recordForce(working: Working): ForceRecord {
  const press = working.way === 'press'
  const asked = press ? working.force : working.blows
  return {
    tool: working.tool,
    way: working.way,
    ...(press ? { force_N: asked.value } : { blows: asked.value }),
    low: asked.low,
    high: asked.high,
    ...(press && { squeezes: working.blows.value }),
    verdict: working.verdict,
    heatsNeeded: working.heats,
    heatsPlanned: working.planned,
    temperature_K: working.temperature,
    flowStress_Pa: working.flowStress,
    laws: working.laws,
    size_m: working.size,
    wouldDo: working.wouldDo,
    ...(working.drift && { layerDrift: working.drift }),
    ...(working.impression && { stamp: recordStamp(working.impression) }),
  }
}

function recordStamp(i: Impression): StampRecord {
  return {
    area_m2: i.area,
    perimeter_m: i.perimeter,
    size_m: i.size,
    outline: i.drawn,
    depth_m: i.depth,
    takenOff_m: i.takenOff,
    depthLeft_m: i.depthLeft,
    smallestStroke_m: i.smallestStroke,
    crack: i.crack,
    sinking_m: i.sinking,
    at: i.at.map(({ temperature, handBlows, pressForce }) => ({
      temperature_K: temperature,
      handHammer4lbBlows: handBlows,
      press_N: pressForce,
    })),
  }
}
