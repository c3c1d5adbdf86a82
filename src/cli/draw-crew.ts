import { availableParallelism } from 'node:os'
import { Worker } from 'node:worker_threads'
import type { Result } from '#problem'
import { type Drawn, type Job, type LikelyRange, drawerOfJob, rangeOf, writeJob } from '#job'
import { type DrawShare, drawParts } from './draw-parts.ts'

/** Fewer makings than this are drawn before another thread has begun. */
const WORTH_A_THREAD = 3000

/** Draws the makings of a job on every core; the numbers are the same on one. */
export async function drawOnAllCores(
  job: Job,
  draws: number,
  longer: number,
  signal: AbortSignal,
): Promise<Result<LikelyRange>> {
  const next = new SharedArrayBuffer(4)
  const share: DrawShare = { text: writeJob(job.written), draws, longer, next }
  const others = Math.min(availableParallelism() - 1, Math.floor(draws / WORTH_A_THREAD))
  const crew = Array.from({ length: Math.max(0, others) }, () => drawInThread(share, signal))
  // A thread that is stopped while this one still draws is heard of below, not before.
  for (const one of crew) one.catch(() => undefined)
  const draw = drawerOfJob(job)
  if (draw.problems) {
    // The others find the same and come back with nothing.
    await Promise.allSettled(crew)
    return draw
  }
  const own = await drawParts(draw.ok, share, signal)
  const parts = [...own, ...(await Promise.all(crew)).flat()]
  return { ok: rangeOf(parts) }
}

function drawInThread(share: DrawShare, signal: AbortSignal): Promise<readonly Drawn[]> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./draw-worker.ts', import.meta.url), { workerData: share })
    const stop = () => void worker.terminate()
    signal.addEventListener('abort', stop, { once: true })
    worker.once('message', resolve)
    worker.once('error', reject)
    worker.once('exit', () => {
      signal.removeEventListener('abort', stop)
      reject(new Error('a thread stopped before it was done'))
    })
  })
}
