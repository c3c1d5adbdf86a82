import { type Computed, type RoutePatterns, type Treated, computeJob } from '#job'
import type { Problem } from '#problem'
import type { Written } from './messages.ts'
import { type Lenient, readLeniently } from './read-leniently.ts'

/** A job read and worked out, and what has been made of it since. */
export interface WorkedJob {
  readonly read: Lenient
  readonly computed?: Computed
  /** What stopped it. */
  readonly problems: readonly Problem[]
  patterns?: RoutePatterns
  treated?: Treated
}

let last: (WorkedJob & { readonly text: string }) | undefined

/** Works a job out once: its card, its metal and its heats are asked for one after another. */
export function workedJob(
  written: Written,
  options: Parameters<typeof computeJob>[1] = {},
): WorkedJob {
  const text = JSON.stringify(written)
  if (last?.text === text) return last
  const read = readLeniently(written)
  const computed = read.whole && read.job ? computeJob(read.job, options) : undefined
  const problems = computed ? (computed.problems ?? []) : read.problems
  last = { text, read, computed: computed?.ok, problems }
  return last
}

/** Does work that leaves no trace in what was worked out last. */
export function asideFromLast(work: () => void): void {
  const kept = last
  last = undefined
  try {
    work()
  } finally {
    last = kept
  }
}
