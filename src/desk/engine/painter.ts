import type { Written } from './messages.ts'
import type { Cutting, Painted, PaintedSide } from './paint-face.ts'
import { openEngineWorker } from './open-worker.ts'
import type { PaintOrder } from './paint-orders.ts'

export interface PaintAsked {
  readonly job: Written
  readonly side: PaintedSide
  /** Pixels to a millimetre of the picture wanted. */
  readonly ppmm: number
  /** Only this much out of the middle. */
  readonly cutting?: Cutting
  readonly onPainted: (painted: Painted | undefined) => void
}

interface Told {
  readonly number: number
  readonly painted?: Painted
  readonly last: boolean
}

/** Coarse enough to be there at once. */
const COARSE = 0.8

let worker: Worker | undefined
let number = 0
let busy = false
let under: PaintAsked | undefined
let next: PaintAsked | undefined
const waiting: PaintAsked[] = []

/** Has a face drawn: a coarse picture at once, then the fine one. Only the latest ask is drawn. */
export function paint(asked: PaintAsked): void {
  next = asked
  if (!busy) start()
}

/** Has a small picture drawn once nothing more pressing is. */
export function paintCutting(asked: PaintAsked): void {
  waiting.push(asked)
  if (!busy) start()
}

function start(): void {
  const first = next ?? waiting.shift()
  if (!first) return
  worker ??= opened()
  under = first
  if (first === next) next = undefined
  busy = true
  const { job, side, ppmm, cutting } = under
  const order: PaintOrder = {
    number: ++number,
    job,
    side,
    cutting,
    ppmm: cutting ? [ppmm] : [Math.min(COARSE, ppmm), ppmm],
  }
  worker.postMessage(order)
}

function opened(): Worker {
  // Pictures take longer than plans: a worker of their own, so that no edit waits for them.
  const made = openEngineWorker()
  made.addEventListener('message', ({ data }: MessageEvent<Told>) => {
    if (data.number !== number) return
    // What was asked for since makes this picture an old one, yet better than none.
    if (data.painted || data.last) under?.onPainted(data.painted)
    if (!data.last) return
    busy = false
    start()
  })
  return made
}
