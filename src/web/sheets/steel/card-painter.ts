import type { Facets, LaidSteel } from '#desk'
import type { StagePainter, Wanted, Weights } from './painters.ts'
import { SteelScene } from './scene/steel-scene.ts'
import type { Camera, Vector } from './scene/views.ts'

/** Most pixels a picture is drawn with; a card's memory is not endless. */
const MOST_PIXELS = 4e6
/** A frame should take no longer than this while the hand moves, ms. */
const FRAME = 40

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

  constructor(canvas: HTMLCanvasElement) {
    this.canvas = canvas
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
    // What was drawn meanwhile was drawn of other metal.
    this.before = undefined
  }

  async prepare(mode: Wanted['mode']): Promise<void> {
    if (mode !== 'thickness' && mode !== 'strain') return
    await this.scene.prepareWorked()
    this.before = undefined
  }

  draw(camera: Camera, wanted: Wanted, width: number, height: number, moving: boolean): void {
    if (moving) this.learn()
    const sharp = Math.min(devicePixelRatio, Math.sqrt(MOST_PIXELS / (width * height)))
    const sharpness = sharp * (moving ? this.share : 1)
    const [w, h] = [
      Math.max(1, Math.round(width * sharpness)),
      Math.max(1, Math.round(height * sharpness)),
    ]
    const { ground, cut, mode } = wanted
    // Light and finish alone leave geometry and pattern as they are.
    const now = JSON.stringify([camera, ground, cut, mode, w, h, moving, this.stretching])
    const shot = {
      ...wanted,
      camera: { ...camera, pixel: camera.pixel / sharpness },
      exact: !moving,
    }
    this.scene.draw(shot, w, h, now !== this.before)
    this.before = now
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
  private learn(): void {
    const now = performance.now()
    const took = now - this.began
    this.began = now
    if (took > 1000) return
    if (took > FRAME) this.share = Math.max(0.2, this.share * 0.85)
    else if (took < FRAME / 2) this.share = Math.min(1, this.share * 1.05)
  }

  dispose(): void {
    this.scene.dispose()
  }
}
