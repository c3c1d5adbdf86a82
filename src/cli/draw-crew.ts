import { availableParallelism } from 'node:os'
import { Worker } from 'node:worker_threads'
import type { Result } from '#problem'
import { type Drawn, type LikelyRange, rangeOf } from '#job'

/** One thread's share of the makings. */
export interface DrawShare {
  readonly text: string
  readonly from: number
  readonly count: number
  readonly longer: number
}

/** Fewer makings than this are not worth another thread. */
const WORTH_A_THREAD = 1500

/** Draws the makings of a job on every core; the numbers are the same on one. */
export async function drawOnAllCores(
  text: string,
  draws: number,
  longer: number,
  signal: AbortSignal,
): Promise<Result<LikelyRange>> {
  const threads = Math.max(1, Math.min(availableParallelism(), Math.floor(draws / WORTH_A_THREAD)))
  const each = Math.ceil(draws / threads)
  const shares = Array.from({ length: threads }, (_, i) => {
    const from = i * each
    return { text, from, count: Math.min(each, draws - from), longer }
  })
  const parts = await Promise.all(shares.map((share) => drawInThread(share, signal)))
  const failed = parts.find((part) => part.problems)
  if (failed?.problems) return { problems: failed.problems }
  return { ok: rangeOf(parts.map((part) => part.ok as Drawn)) }
}

function drawInThread(share: DrawShare, signal: AbortSignal): Promise<Result<Drawn>> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./draw-worker.ts', import.meta.url), { workerData: share })
    const stop = () => void worker.terminate()
    signal.addEventListener('abort', stop, { once: true })
    worker.once('message', resolve)
    worker.once('error', reject)
    worker.once('exit', () => {
      signal.removeEventListener('abort', stop)
      reject(new Error('stopped'))
    })
  })
}
