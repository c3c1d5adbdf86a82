import type { Written } from './engine/messages.ts'
import { withValue } from './engine/places.ts'

/** What was measured after a step, as a job file holds it. */
export type Measurement = Readonly<Record<string, unknown>>

interface Place {
  readonly bar: string
  readonly index: number
}

/** Nothing measured is always the same nothing. */
const NONE: readonly Measurement[] = []

function measurementsOf(job: Written | undefined): readonly Measurement[] {
  const given = job?.measured
  return Array.isArray(given) ? (given as readonly Measurement[]) : NONE
}

/** Index of what was measured after a step among the job's measurements; -1 where nothing was. */
export function measurementAt(job: Written | undefined, { bar, index }: Place): number {
  return measurementsOf(job).findIndex((m) => m.bar === bar && m.after === index + 1)
}

/** Writes one measured size; a measurement of nothing is struck out. */
export function withMeasured(job: Written, place: Place, name: string, value: unknown): Written {
  const all = measurementsOf(job)
  const at = measurementAt(job, place)
  const before = all[at] ?? { bar: place.bar, after: place.index + 1 }
  const now = withValue(before, [name], value)
  const isEmpty = Object.keys(now).every((key) => key === 'bar' || key === 'after')
  const rest = all.toSpliced(at < 0 ? all.length : at, at < 0 ? 0 : 1, ...(isEmpty ? [] : [now]))
  return withAll(job, rest)
}

export function withoutMeasured(job: Written, place: Place): Written {
  const at = measurementAt(job, place)
  return at < 0 ? job : withAll(job, measurementsOf(job).toSpliced(at, 1))
}

/**
 * Measurements stay with their steps when these move: `to` says where the step at an index of the bar
 * goes, and nothing where it goes away.
 */
export function carryMeasured(
  job: Written,
  bar: string,
  to: (index: number) => number | undefined,
): Written {
  const all = measurementsOf(job)
  if (!all.some((m) => m.bar === bar)) return job
  return withAll(
    job,
    all.flatMap((m) => {
      if (m.bar !== bar || typeof m.after !== 'number') return [m]
      const index = to(m.after - 1)
      return index === undefined ? [] : [{ ...m, after: index + 1 }]
    }),
  )
}

function withAll(job: Written, all: readonly Measurement[]): Written {
  return withValue(job, ['measured'], all.length > 0 ? all : undefined)
}
