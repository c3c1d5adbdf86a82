import type { Written } from './messages.ts'
import type { Painted, PaintedSide } from './paint-face.ts'
import { openEngineWorker } from './open-worker.ts'
import type { PaintOrder, PaintReply } from './paint-orders.ts'

export interface PaintAsked {
  readonly job: Written
  readonly side: PaintedSide
  /** Pixels to a millimetre of the picture wanted. */
  readonly ppmm: number
  readonly onPainted: (painted: Painted | undefined) => void
}

/** Coarse enough to be there at once. */
const COARSE = 0.8
/** While keys are coming the coarse picture must do: the fine one waits until none came for so long, ms. */
const STILL = 250

let worker: Worker | undefined
let number = 0
let under: PaintAsked | undefined
let coarse: PaintAsked | undefined
let fine: PaintAsked | undefined
let wanted: PaintAsked | undefined
let still: ReturnType<typeof setTimeout> | undefined
let awaiting: (() => void)[] = []

/** Once the face last asked for is drawn as fine as it was asked for; it is waited for no longer than that takes. */
export function painted(): Promise<void> {
  return new Promise((resolve) => {
    awaiting.push(resolve)
    start()
  })
}

/** Has a face drawn: a coarse picture at once, then the fine one. Only the latest ask is drawn. */
export function paint(asked: PaintAsked): void {
  clearTimeout(still)
  still = fine = undefined
  wanted = asked
  coarse = { ...asked, ppmm: Math.min(COARSE, asked.ppmm) }
  if (asked.ppmm > COARSE)
    still = setTimeout(() => {
      beFine()
      start()
    }, STILL)
  start()
}

function beFine(): void {
  clearTimeout(still)
  still = undefined
  fine = wanted
}

function start(): void {
  if (under) return
  if (awaiting.length > 0 && still !== undefined) beFine()
  if (coarse) [under, coarse] = [coarse, undefined]
  else if (fine) [under, fine] = [fine, undefined]
  if (!under) {
    awaiting.forEach((resolve) => resolve())
    awaiting = []
    return
  }
  worker ??= opened()
  const { job, side, ppmm } = under
  worker.postMessage({ number: ++number, job, side, ppmm } satisfies PaintOrder)
}

function opened(): Worker {
  // Pictures take longer than plans: a worker of their own, so that no edit waits for them.
  const made = openEngineWorker()
  made.addEventListener('message', ({ data }: MessageEvent<PaintReply>) => {
    if (data.number !== number) return
    const done = under
    under = undefined
    // What was asked for since makes this picture an old one, yet better than none.
    done?.onPainted(data.painted)
    start()
  })
  return made
}
