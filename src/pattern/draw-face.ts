import type { Weights } from '#share'
import type { PictureOrder, BandAnswer } from './band-worker.ts'
import { type Band, drawBand } from './band.ts'
import type { Crew } from './crew.ts'
import { cutsOf } from './joints.ts'
import { type Origin, type Stack, stacksOf } from './origin.ts'
import { precisionFor } from './precision.ts'
import { type TracerOptions, NOTHING, traceOrigin } from './tracer.ts'
import { type FaceView, coarsen } from '#view'

/** The pattern on a face: which steel, how much of each pixel. Row-major from the top left. */
export interface PatternMap {
  readonly view: FaceView
  readonly width: number
  readonly height: number
  /** Share of the pixel that is metal, 0 … 255. */
  readonly alpha: Uint8Array
  /** Mean of each weight asked for, 0 … 65535 for 0 … 1. */
  readonly means: readonly Uint16Array[]
  /** Number, in `stacks`, of the bar the metal came from; 65535: nothing. */
  readonly stack: Uint16Array
  readonly stacks: readonly Stack[]
  /** Share that is a welded skin, 0 … 255. */
  readonly seam?: Uint8Array
  /** Right and up parts of the surface's unit normal, −32767 … 32767; absent on a plane. */
  readonly normalRight?: Int16Array
  readonly normalUp?: Int16Array
  /** How much of polish and rubbing the face is spared there, 0 … 255; absent where all of it is reached. */
  readonly spared?: Uint8Array
  /** Of the pixels of metal, the share where the pattern is not smooth, taken in fine parts. */
  readonly splitShare: number
}

export interface DrawOptions {
  /** Of each steel or sheet, 0 … 1: `brightnessOf` a grade for a picture, 1 and 0 for a share. */
  readonly weights: readonly Weights[]
  /** Left out, f32 where its rounding would not show. */
  readonly precision?: 'f32' | 'f64'
  /** Parts a side into which pixels that are not smooth are split (default 4; 1: none). */
  readonly fine?: number
  readonly crew?: Crew
  readonly signal?: AbortSignal
  /** Share done, 0 … 1. */
  readonly onProgress?: (share: number) => void
  /** Given a first picture in far larger pixels before the rest is begun. */
  readonly onCoarse?: (map: PatternMap) => void
}

/** Work to give up the thread after, pixels: about a hundredth of a second. */
const BAND_PIXELS = 400_000

/** Draws a face at once, on this thread. */
export function drawFaceNow(
  view: FaceView,
  origin: Origin,
  options: Pick<DrawOptions, 'weights' | 'precision' | 'fine'>,
): PatternMap {
  const tracer = traceOrigin(origin, tracingOf(view, origin, options))
  const collected = new Collected(view, origin, options.weights.length)
  collected.put(drawBand(view, tracer, 0, view.height, { fine: options.fine ?? FINE }))
  return collected.map()
}

const FINE = 4
/** Pixels of a first picture: a few thousandths of a second. */
const COARSE_PIXELS = 60_000

function tracingOf(
  view: FaceView,
  origin: Origin,
  { precision, weights }: Pick<DrawOptions, 'weights' | 'precision'>,
): TracerOptions {
  return { precision: precision ?? precisionFor(view, origin), weights, cuts: cutsOf(origin) }
}

let pictures = 0

/** Draws a face in bands, by the crew if there is one; a coarse picture first if asked for. Rejects when aborted. */
export async function drawFace(
  view: FaceView,
  origin: Origin,
  options: DrawOptions,
): Promise<PatternMap> {
  const { crew, signal, onProgress, onCoarse } = options
  const fine = options.fine ?? FINE
  signal?.throwIfAborted()
  const order: PictureOrder = {
    picture: ++pictures,
    view,
    origin,
    tracing: tracingOf(view, origin, options),
    fine,
  }
  if (onCoarse) {
    const times = Math.max(4, Math.ceil(Math.sqrt((view.width * view.height) / COARSE_PIXELS)))
    onCoarse(drawFaceNow(coarsen(view, times), origin, { ...options, precision: 'f32', fine: 1 }))
  }
  crew?.hands.forEach((hand) => hand.post(order))
  const collected = new Collected(view, origin, options.weights.length)
  const bands = bandsOf(view, crew?.hands.length ?? 1)
  let done = 0
  const take = (band: Band) => {
    collected.put(band)
    done += band.rows
    onProgress?.(done / view.height)
  }
  if (crew && crew.hands.length > 0) await drawByCrew(order, bands, crew, take, signal)
  else await drawHere(order, bands, take, signal)
  return collected.map()
}

/** About equal numbers of rows, several for each worker, so that none waits long for the last. */
function bandsOf(view: FaceView, hands: number): (readonly [number, number])[] {
  const most = Math.max(8, Math.floor(BAND_PIXELS / view.width))
  const count = Math.max(1, Math.ceil(view.height / most), Math.min(hands * 4, view.height >> 3))
  return Array.from(
    { length: count },
    (_, i) =>
      [Math.round((view.height * i) / count), Math.round((view.height * (i + 1)) / count)] as const,
  )
}

async function drawHere(
  order: PictureOrder,
  bands: readonly (readonly [number, number])[],
  take: (band: Band) => void,
  signal: AbortSignal | undefined,
): Promise<void> {
  const tracer = traceOrigin(order.origin, order.tracing)
  for (const [top, bottom] of bands) {
    take(drawBand(order.view, tracer, top, bottom, { fine: order.fine }))
    if (bands.length > 1) await new Promise((resolve) => setTimeout(resolve))
    signal?.throwIfAborted()
  }
}

function drawByCrew(
  order: PictureOrder,
  bands: readonly (readonly [number, number])[],
  crew: Crew,
  take: (band: Band) => void,
  signal: AbortSignal | undefined,
): Promise<void> {
  const { picture } = order
  return new Promise((resolve, reject) => {
    let next = 0
    let left = bands.length
    let over = false
    const stop = (error?: unknown) => {
      if (over) return
      over = true
      signal?.removeEventListener('abort', abort)
      for (const hand of crew.hands) listeners.get(hand)?.delete(picture)
      if (error === undefined) resolve()
      else reject(error as Error)
    }
    const abort = () => stop(signal?.reason)
    signal?.addEventListener('abort', abort)
    const send = (hand: Crew['hands'][number]) => {
      if (over || next >= bands.length) return
      const [top, bottom] = bands[next++]!
      hand.post({ picture, top, bottom })
    }
    for (const hand of crew.hands) {
      listenTo(hand).set(picture, {
        band: (band) => {
          if (over) return
          take(band)
          if (--left === 0) stop()
          else send(hand)
        },
        error: stop,
      })
      // Two bands each: one being drawn, one waiting.
      send(hand)
      send(hand)
    }
  })
}

interface Listener {
  band(band: Band): void
  error(error: Error): void
}
const listeners = new WeakMap<Crew['hands'][number], Map<number, Listener>>()

function listenTo(hand: Crew['hands'][number]): Map<number, Listener> {
  const seen = listeners.get(hand)
  if (seen) return seen
  const waiting = new Map<number, Listener>()
  listeners.set(hand, waiting)
  hand.onMessage((message) => {
    const { picture, band } = message as BandAnswer
    waiting.get(picture)?.band(band)
  })
  hand.onError((error) => waiting.forEach((listener) => listener.error(error)))
  return waiting
}

/** A picture put together from its bands. */
class Collected {
  private readonly alpha: Uint8Array
  private readonly means: readonly Uint16Array[]
  private readonly stack: Uint16Array
  private seam: Uint8Array | undefined
  private normalRight: Int16Array | undefined
  private normalUp: Int16Array | undefined
  private spared: Uint8Array | undefined
  private metal = 0
  private split = 0
  private readonly view: FaceView
  private readonly origin: Origin

  constructor(view: FaceView, origin: Origin, means: number) {
    const size = view.width * view.height
    this.view = view
    this.origin = origin
    this.alpha = new Uint8Array(size)
    this.means = Array.from({ length: means }, () => new Uint16Array(size))
    this.stack = new Uint16Array(size).fill(NOTHING)
  }

  put(band: Band): void {
    const size = this.alpha.length
    const at = band.top * this.view.width
    this.alpha.set(band.alpha, at)
    this.means.forEach((mean, k) => mean.set(band.means[k]!, at))
    this.stack.set(band.stack, at)
    if (band.seam) (this.seam ??= new Uint8Array(size)).set(band.seam, at)
    if (band.normalRight) (this.normalRight ??= new Int16Array(size)).set(band.normalRight, at)
    if (band.normalUp) (this.normalUp ??= new Int16Array(size)).set(band.normalUp, at)
    if (band.spared) (this.spared ??= new Uint8Array(size)).set(band.spared, at)
    this.metal += band.metal
    this.split += band.split
  }

  map(): PatternMap {
    const { view, alpha, means, stack, seam, normalRight, normalUp, spared } = this
    return {
      view,
      width: view.width,
      height: view.height,
      alpha,
      means,
      stack,
      stacks: stacksOf(this.origin),
      seam,
      normalRight,
      normalUp,
      spared,
      splitShare: this.metal > 0 ? this.split / this.metal : 0,
    }
  }
}
