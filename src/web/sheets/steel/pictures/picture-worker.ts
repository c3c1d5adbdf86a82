import { type FinishName, drawEtched, finishes, stripLight } from '#look'
import { type Origin, type PatternMap, drawFace } from '#pattern'
import { type FaceView, type Faceted, crop, faceOfMesh } from '#view'

/** What a picture of the engine shows. */
export interface PictureOrder {
  readonly number: number
  /** The surface, when it is another than the last order of this kind had. */
  readonly mesh?: Faceted
  readonly origin?: Origin
  /** Brightness of each steel. */
  readonly bright: Readonly<Record<string, number>>
  readonly up: readonly [number, number, number]
  readonly out: readonly [number, number, number]
  /** The point in the middle of the picture, and the side of a pixel, m. */
  readonly middle: readonly [number, number, number]
  readonly pixel: number
  readonly width: number
  readonly height: number
  /** Ground away, m. */
  readonly depth: number
  readonly finish: FinishName
  readonly strip: number
  readonly ground: 'paper' | 'night'
}

export interface PictureReply {
  readonly number: number
  /** Opaque pixels, four bytes each; a first picture is coarse. */
  readonly data?: Uint8ClampedArray<ArrayBuffer>
  readonly width: number
  readonly height: number
  readonly coarse: boolean
  readonly fault?: string
}

let current: AbortController | undefined
let mesh: PictureOrder['mesh']
let origin: Origin | undefined

addEventListener('message', ({ data }: MessageEvent<PictureOrder>) => {
  current?.abort()
  current = new AbortController()
  mesh = data.mesh ?? mesh
  origin = data.origin ?? origin
  void draw(data, current.signal)
})

async function draw(order: PictureOrder, signal: AbortSignal): Promise<void> {
  const { number, width, height } = order
  const none = { number, width, height, coarse: false }
  try {
    if (!mesh || !origin) return postMessage(none satisfies PictureReply)
    const send = (map: PatternMap, coarse: boolean) => {
      const data = rgba(map, order)
      const reply: PictureReply = { number, data, width: map.width, height: map.height, coarse }
      postMessage(reply, { transfer: [data.buffer] })
    }
    const map = await drawFace(viewOf(order, mesh), origin, {
      weights: [order.bright],
      signal,
      onCoarse: (first) => send(first, true),
    })
    send(map, false)
  } catch (fault) {
    if (!signal.aborted) postMessage({ ...none, fault: (fault as Error).message })
  }
}

/** The part of the whole face that lies in the window. */
function viewOf(order: PictureOrder, of: NonNullable<PictureOrder['mesh']>): FaceView {
  const { up, out, pixel, width, height, depth } = order
  const whole = faceOfMesh(of, { out, up }, { ppmm: 1e-3 / pixel, depth })
  const { right, up: upright, origin: corner } = whole.frame
  const along = (v: readonly number[]) =>
    v.reduce((sum, c, k) => sum + c * (order.middle[k] - corner[k]), 0) / pixel
  return crop(whole, {
    left: Math.round(along(right) - width / 2),
    top: Math.round(whole.height - along(upright) - height / 2),
    width,
    height,
  })
}

function rgba(map: PatternMap, order: PictureOrder): Uint8ClampedArray<ArrayBuffer> {
  const { finish, strip, ground } = order
  const image = drawEtched(map, {
    finish: finishes[finish],
    light: { ...stripLight, strip },
    ground,
    scaleBar: false,
  })
  const data = new Uint8ClampedArray(image.width * image.height * 4)
  for (let i = 0, n = image.width * image.height; i < n; i++) {
    data[4 * i] = image.data[3 * i]
    data[4 * i + 1] = image.data[3 * i + 1]
    data[4 * i + 2] = image.data[3 * i + 2]
    // Off the metal the page itself shows.
    data[4 * i + 3] = map.alpha[i] === 0 ? 0 : 255
  }
  return data
}
