import type { Answers, Ask, AskMessage, Reply } from './messages.ts'
import { openEngineWorker } from './open-worker.ts'

/** Progress of long work, and the answer; `undefined` if a later ask took its place. */
export interface Asking {
  readonly onProgress?: (share: number, doing: string) => void
  /** Stops long work where the two sides share memory; the answer of stopped work never comes. */
  readonly signal?: AbortSignal
}

interface Waiting {
  readonly resolve: (answer: unknown) => void
  readonly reject: (fault: Error) => void
  readonly onProgress?: Asking['onProgress']
}

/** Memory both sides see; only where the server isolates the page. */
const shared = typeof SharedArrayBuffer === 'function' && globalThis.crossOriginIsolated

/** The engine as the window sees it: one worker, asks by number, the latest computing wins. */
export class Engine {
  private readonly worker = openEngineWorker()
  private readonly waiting = new Map<number, Waiting>()
  private readonly latest = shared ? new SharedArrayBuffer(4) : undefined
  private number = 0
  private busy?: number
  private unloaded?: Error
  private next?: () => void

  constructor() {
    this.worker.addEventListener('message', ({ data }: MessageEvent<Reply>) => this.take(data))
    this.worker.addEventListener('error', (event) => {
      const fault = new Error(event.message || 'the engine could not be loaded')
      // Nothing that is asked from now on would ever be answered.
      if (!event.message) this.unloaded = fault
      for (const one of this.waiting.values()) one.reject(fault)
      this.waiting.clear()
    })
  }

  ask<A extends Exclude<Ask['ask'], 'compute'>>(
    asked: Extract<Ask, { ask: A }>,
    asking: Asking = {},
  ): Promise<Answers[A]> {
    return this.send(asked, asking) as Promise<Answers[A]>
  }

  /**
   * Works a job out. Asks that come while one is under way wait for it, and only the last of them is
   * done; the one under way stops where it can.
   */
  compute(
    asked: Omit<Extract<Ask, { ask: 'compute' }>, 'ask' | 'latest'>,
    asking: Asking = {},
  ): Promise<Answers['compute'] | undefined> {
    this.next?.()
    return new Promise((resolve, reject) => {
      const start = () => {
        this.next = undefined
        const sent = this.send({ ask: 'compute', ...asked, latest: this.latest }, asking)
        this.busy = this.number
        sent
          .then((answer) => resolve(answer as Answers['compute'] | undefined), reject)
          .finally(() => {
            this.busy = undefined
            const { pending } = this
            this.pending = undefined
            pending?.()
          })
      }
      if (this.busy === undefined) return start()
      if (this.latest) Atomics.store(new Int32Array(this.latest), 0, this.busy + 1)
      this.pending = start
      this.next = () => resolve(undefined)
    })
  }

  private pending?: () => void

  private send(asked: Ask, { onProgress, signal }: Asking): Promise<unknown> {
    const number = ++this.number
    if (this.unloaded) return Promise.reject(this.unloaded)
    const stop = signal && shared ? new SharedArrayBuffer(4) : undefined
    signal?.addEventListener('abort', () => {
      this.waiting.delete(number)
      if (stop) Atomics.store(new Int32Array(stop), 0, number + 1)
    })
    return new Promise((resolve, reject) => {
      this.waiting.set(number, { resolve, reject, onProgress })
      this.worker.postMessage({ ...asked, number, stop } satisfies AskMessage)
    })
  }

  private take(reply: Reply): void {
    const waiting = this.waiting.get(reply.number)
    if (!waiting) return
    if ('progress' in reply) return waiting.onProgress?.(reply.progress, reply.doing)
    this.waiting.delete(reply.number)
    if ('fault' in reply) waiting.reject(new Error(reply.fault))
    else waiting.resolve('stopped' in reply ? undefined : reply.answer)
  }
}

export const engine = new Engine()

let second: Engine | undefined

/** Another engine for long thoughts, opened when first wanted: no edit waits for what it does. */
export function secondEngine(): Engine {
  return (second ??= new Engine())
}
