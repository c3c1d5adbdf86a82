import type { LaidSteel } from '#desk'
import type { StagePainter, Wanted, Weights } from './painters.ts'
import { type Camera, type Facets, SteelScene, type Vector } from '#scene'

/** Most pixels a picture is drawn with; a card's memory is not endless. */
const MOST_PIXELS = 4e6
/** A frame should take no longer than this while the hand moves, ms. */
const FRAME = 40

/** Weights that a picture shows, by their places. */
const SHOWN: Readonly<Record<Wanted['mode'], readonly number[]>> = {
  ...{ etched: [0, 1], plain: [0, 1], thickness: [], strain: [] },
  ...{ carbon: [2], hardness: [3], bar: [] },
}

/** Pictures by the graphics card. */
export class CardPainter implements StagePainter {
  readonly by = 'card'
  readonly whole = true
  readonly canvas: HTMLCanvasElement
  private readonly scene: SteelScene
  private facets?: Facets
  /** Share of the full sharpness while moving: learnt from how long frames take. */
  private share = 1
  private began = 0
  private before?: string
  private next?: {
    readonly camera: Camera
    readonly wanted: Wanted
    readonly width: number
    readonly height: number
    readonly moving: boolean
  }
  private frame?: number
  private refining = false
  private moving = false
  private given?: WebGLSync

  private readonly rested: (by: StagePainter) => void

  /** `rested`: told when a picture is drawn in full. */
  constructor(canvas: HTMLCanvasElement, rested: (by: StagePainter) => void) {
    this.canvas = canvas
    this.rested = rested
    this.scene = new SteelScene(canvas)
  }

  /** Whether the "card" is the processor pretending to be one. */
  get isPretending(): boolean {
    const gl = this.scene.renderer.getContext()
    const info = gl.getExtension('WEBGL_debug_renderer_info')
    const name = String(gl.getParameter(info ? info.UNMASKED_RENDERER_WEBGL : gl.RENDERER))
    return /swiftshader|llvmpipe|software|basic render/i.test(name)
  }

  async lay(steel: LaidSteel, weights: Weights): Promise<void> {
    this.facets = steel.facets ?? this.facets
    if (!this.facets) throw new Error('no surface was laid')
    const { low, high, origin } = steel
    await this.scene.lay({ facets: this.facets, box: { low, high }, origin, weights })
    this.weights = this.drawn = weights
    // What was drawn meanwhile was drawn of other metal.
    this.before = undefined
  }
  weigh(weights: Weights): boolean {
    const same = (i: number) => JSON.stringify(weights[i]) === JSON.stringify(this.drawn[i])
    this.weights = weights
    if (SHOWN[this.mode].every(same)) return false
    this.giveWeights()
    return true
  }
  private weights: Weights = []
  /** The weights the card has, and what it shows of them. */
  private drawn: Weights = []
  private mode: Wanted['mode'] = 'etched'

  private giveWeights(): void {
    this.scene.weigh(this.weights)
    this.drawn = this.weights
  }

  async prepare(mode: Wanted['mode']): Promise<void> {
    if (mode !== 'thickness' && mode !== 'strain') return
    await this.scene.prepareWorked()
    this.before = undefined
  }

  draw(camera: Camera, wanted: Wanted, width: number, height: number, moving: boolean): void {
    this.next = { camera, wanted, width, height, moving }
    if (this.frame === undefined) this.work()
  }

  /** Gives the card one thing at a time: the newest picture, else a round more of the one that stands. */
  private readonly work = (): void => {
    this.frame = undefined
    if (this.isBusy()) return this.again()
    const { next } = this
    this.next = undefined
    if (next) {
      this.issue(next)
      this.refining = !next.moving
      return this.again()
    }
    if (!this.refining) return
    this.refining = !this.scene.refine()
    this.mark()
    if (this.refining) return this.again()
    this.rested(this)
  }

  private again(): void {
    this.frame = requestAnimationFrame(this.work)
  }

  private issue({ camera, wanted, width, height, moving }: NonNullable<CardPainter['next']>): void {
    const sharp = Math.min(devicePixelRatio, Math.sqrt(MOST_PIXELS / (width * height)))
    const sharpness = sharp * (moving ? this.share : 1)
    const size = [width, height].map((side) => Math.max(1, Math.round(side * sharpness)))
    const { ground, cut, mode } = wanted
    if (mode !== this.mode) this.giveWeights()
    this.mode = mode
    // Light and finish alone leave geometry and pattern as they are.
    const now = JSON.stringify([camera, ground, cut, mode, size, this.stretching])
    const shot = { ...wanted, camera: { ...camera, pixel: camera.pixel / sharpness } }
    this.canvas.dataset.drawn = 'first'
    this.moving = moving
    this.scene.draw(shot, size[0]!, size[1]!, now !== this.before)
    this.before = now
    this.mark()
  }

  /** Marks what the card was given, to know when it is done. */
  private mark(): void {
    const gl = this.scene.renderer.getContext() as WebGL2RenderingContext
    this.given = gl.fenceSync(gl.SYNC_GPU_COMMANDS_COMPLETE, 0) ?? undefined
    gl.flush()
    this.began = performance.now()
  }

  private isBusy(): boolean {
    if (!this.given) return false
    const gl = this.scene.renderer.getContext() as WebGL2RenderingContext
    if (gl.getSyncParameter(this.given, gl.SYNC_STATUS) !== gl.SIGNALED) return true
    gl.deleteSync(this.given)
    this.given = undefined
    if (this.moving) this.learn(performance.now() - this.began)
    return false
  }

  stretched?: () => void
  private stretching: Vector = [1, 1, 1]
  stretch(by: Vector): void {
    if (by.every((v, k) => v === this.stretching[k])) return
    this.stretching = by
    this.scene.stretch(by)
    this.stretched?.()
  }

  /** Frames that come late are drawn smaller, early ones larger again. */
  private learn(took: number): void {
    if (took > FRAME)
      this.share = Math.max(0.25, this.share * Math.max(0.5, Math.sqrt(FRAME / took)))
    else if (took < FRAME / 2) this.share = Math.min(1, this.share * 1.1)
  }

  dispose(): void {
    if (this.frame !== undefined) cancelAnimationFrame(this.frame)
    this.scene.dispose()
  }
}
