import { type Result, failed, ok } from '#problem'
import type { Size } from '#geometry'
import { DESIGN_DENSITY } from '#steel'
import {
  type Cost,
  type CutList,
  type FromRemnant,
  type Quote,
  type Sensitivity,
  costOf,
  cutStock,
  piecesFromRemnant,
  planRoute,
  quoteOf,
  sensitivitiesOf,
} from '#planner'
import { type Computed, computeJob } from '../compute-job.ts'
import type { Job } from '../job.ts'
import { smithyFor } from './smithy-for.ts'

/** What to cut from the rack for a job, and what to buy. */
export function cutListsOfJob(job: Job, signal?: AbortSignal): Result<readonly CutList[]> {
  const smithy = smithyFor(job)
  if (smithy.problems) return smithy
  const plan = planRoute({ ...job.route, measured: [] }, smithy.ok, { signal })
  if (plan.problems) return plan
  const taken = plan.ok.steps.flatMap(({ step }) => step.taken)
  return ok(cutStock(taken, job.rack, job.shop.kerf, job.cutting, signal))
}

/** Hours, cost and price of a job. */
export interface Priced {
  readonly computed: Computed
  readonly cost: Cost
  readonly quote: Quote
}

export function priceJob(job: Job, signal?: AbortSignal): Result<Priced> {
  const computed = computeJob(job, { signal })
  if (computed.problems) return computed
  const cost = costOf(computed.ok.plan, job.rates)
  return ok({ computed: computed.ok, cost, quote: quoteOf(cost, job.rates) })
}

/** Which numbers of a job's route move the steel it takes, the strongest first. */
export function sensitivitiesOfJob(job: Job, signal?: AbortSignal): Result<readonly Sensitivity[]> {
  const smithy = smithyFor(job)
  if (smithy.problems) return smithy
  return ok(sensitivitiesOf({ ...job.route, measured: [] }, smithy.ok, job.rates, signal))
}

/** A remnant and what can be made of it. */
export interface RemnantUse {
  /** Where it comes from: a place on the rack, or the step that sets it aside. */
  readonly what: string
  readonly size: Size
  readonly pieces: readonly FromRemnant[]
}

/** What the remnants on the rack of a job, and those its own route sets aside, would make. */
export function fromRemnantsOfJob(job: Job): Result<readonly RemnantUse[]> {
  const onRack = job.rack
    .filter((item) => item.form === 'remnant')
    .map((item) => ({
      what: `${item.steel}${item.place === undefined ? '' : `, ${item.place}`}`,
      size: { length: item.length, width: item.width, height: item.thickness },
    }))
  const computed = computeJob(job)
  const setAside = (computed.ok?.plan.steps ?? []).flatMap(({ at, step }) =>
    step.setAside.map((billet) => ({ what: `set aside at ${at}`, size: billet.size })),
  )
  const remnants = [...onRack, ...setAside]
  if (remnants.length === 0) {
    if (computed.problems) return computed
    return failed({
      at: 'rack',
      what: 'there is no remnant here',
      why: 'none lies on the rack of this job, and its route sets none aside',
      try: ['write one into "rack" with "form": "remnant"'],
    })
  }
  return ok(
    remnants.map(({ what, size }) => ({
      what,
      size,
      pieces: piecesFromRemnant(size, DESIGN_DENSITY, job.shop),
    })),
  )
}
