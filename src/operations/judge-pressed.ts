import type { Billet } from '#billet'
import { type Judgement, type StampAdvice, type StampPlan, adviseStamp } from '#forming'
import type { Heat, Smithy, Step } from './operation.ts'
import { accountOf, bestOf } from './judge.ts'
import { metalOf } from './metal-worked.ts'
import { toolsOf } from './shop-tools.ts'
import type { Judged } from './working.ts'

/** A die or a stamp driven into the metal. */
export interface Pressed {
  readonly before: Billet
  readonly step: Step
  readonly heat: Heat
  /** K, of the metal as the die goes in. */
  readonly temperature: number
  readonly plan: Omit<StampPlan, 'metal'>
  /** Places it is driven in at, one after another; 1 if left out. */
  readonly bites?: number
}

/** What the shop's best tool makes of it, and the whole advice for the mark. */
export function judgePressed(
  { before, step, heat, temperature, plan, bites = 1 }: Pressed,
  smithy: Smithy,
): { readonly judged: Judged; readonly advice: StampAdvice } | undefined {
  const metal = metalOf(before, smithy, temperature)
  const best = bestOf(
    // A press squeezes once and stays where it is: it comes first.
    toolsOf(smithy.shop)
      .toSorted((a, b) => Number(b.way === 'press') - Number(a.way === 'press'))
      .map((tool) => {
        const advice = adviseStamp({ ...plan, metal }, tool.tool)
        const all = (n: number) => n * bites
        const { low, value, high } = advice.blows
        const perMinute = tool.way === 'press' ? 12 : tool.way === 'power hammer' ? 180 : 60
        const time = smithy.workingTime?.(before, heat) ?? USUAL_TIME
        const heats = Math.max(1, Math.ceil(all(value) / ((perMinute / 60) * time) - 1e-9))
        const judged: Judgement = {
          verdict: advice.verdict,
          work: advice.work,
          force: advice.force,
          blows: { ...advice.blows, low: all(low), value: all(value), high: all(high) },
          heats,
          afterHeat: [],
          rate: 0,
          flowStress: advice.flowStress,
          wouldDo: advice.wouldDo,
        }
        return { tool, judged, advice }
      }),
  )
  return (
    best && {
      judged: accountOf(best.tool, best.judged, { step, heat, temperature }),
      advice: best.advice,
    }
  )
}

/** Seconds a heat lasts where nothing better is known (common practice). */
const USUAL_TIME = 30
