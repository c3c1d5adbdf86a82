/** What a worker is sent and answers, whichever kind of worker it is. */
export interface Hand {
  post(message: unknown, transfer?: readonly ArrayBuffer[]): void
  onMessage(listen: (message: unknown) => void): void
  onError(listen: (error: Error) => void): void
  close(): void
}

/** Workers that draw bands, kept from picture to picture: opening one costs more than drawing a small face. */
export interface Crew {
  readonly hands: readonly Hand[]
  close(): void
}

type Threads = NonNullable<ReturnType<typeof threadsOfNode>>

/** Node's threads, if this is Node: asked for at run time, so that a browser never looks for them. */
export function nodeThreads(): Threads | undefined {
  return typeof process === 'undefined' ? undefined : threadsOfNode()
}
function threadsOfNode() {
  return process.getBuiltinModule?.('node:worker_threads')
}

/** Not written where it is used: a bundler would take it for a file to be copied, and for the web there is another way. */
const NODE_WORKER = './band-worker.ts'

function openNodeHand(threads: Threads): Hand {
  const worker = new threads.Worker(new URL(NODE_WORKER, import.meta.url))
  worker.unref()
  return {
    post: (message, transfer = []) => worker.postMessage(message, [...transfer]),
    onMessage: (listen) => worker.on('message', listen),
    onError: (listen) => worker.on('error', listen),
    close: () => void worker.terminate(),
  }
}

function openWebHand(): Hand {
  const worker = new Worker(new URL('./band-worker.ts', import.meta.url), { type: 'module' })
  return {
    post: (message, transfer = []) => worker.postMessage(message, [...transfer]),
    onMessage: (listen) => worker.addEventListener('message', (event) => listen(event.data)),
    onError: (listen) =>
      worker.addEventListener('error', (event) => listen(new Error(event.message))),
    close: () => worker.terminate(),
  }
}

/** Processors there are. */
export function coreCount(): number {
  return typeof navigator === 'undefined' ? 1 : navigator.hardwareConcurrency || 1
}

/** Opens workers: in Node threads, in a browser web workers. */
export function openCrew(count = coreCount()): Crew {
  const threads = nodeThreads()
  const hands = Array.from({ length: count }, () =>
    threads ? openNodeHand(threads) : openWebHand(),
  )
  return {
    hands,
    close() {
      hands.forEach((hand) => hand.close())
    },
  }
}
