import { drawBand, type Band } from './band.ts'
import { nodeThreads } from './crew.ts'
import type { Origin } from './origin.ts'
import { type Tracer, type TracerOptions, traceOrigin } from './tracer.ts'
import type { FaceView } from '#view'

/** A picture to work at, told once. */
export interface PictureOrder {
  readonly picture: number
  readonly view: FaceView
  readonly origin: Origin
  readonly tracing: TracerOptions
  readonly fine: number
}
/** A band of it. */
export interface BandOrder {
  readonly picture: number
  readonly top: number
  readonly bottom: number
}
export interface BandAnswer {
  readonly picture: number
  readonly band: Band
}

let current: { order: PictureOrder; tracer: Tracer } | undefined

function answer(message: PictureOrder | BandOrder): BandAnswer | undefined {
  if ('view' in message) {
    current = { order: message, tracer: traceOrigin(message.origin, message.tracing) }
    return undefined
  }
  if (!current || current.order.picture !== message.picture) return undefined
  const { order, tracer } = current
  const band = drawBand(order.view, tracer, message.top, message.bottom, { fine: order.fine })
  return { picture: message.picture, band }
}

/** The buffers of a band, to be handed over instead of copied. */
function buffersOf(band: Band): ArrayBuffer[] {
  return Object.values(band)
    .flat()
    .filter((value) => ArrayBuffer.isView(value))
    .map((view) => view.buffer as ArrayBuffer)
}

const port = nodeThreads()?.parentPort
if (port) {
  port.on('message', (message: PictureOrder | BandOrder) => {
    const done = answer(message)
    if (done) port.postMessage(done, buffersOf(done.band))
  })
} else if (typeof self !== 'undefined' && 'postMessage' in self) {
  self.addEventListener('message', (event: MessageEvent<PictureOrder | BandOrder>) => {
    const done = answer(event.data)
    if (done) (self as unknown as Worker).postMessage(done, buffersOf(done.band))
  })
}
