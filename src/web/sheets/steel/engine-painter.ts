import type { LaidSteel } from '#desk'
import type { StagePainter, Wanted } from './painters.ts'
import { Painter } from './pictures/painter.ts'
import type { Camera } from '#scene'

/** Pictures by the engine, in a worker: slower than a graphics card, and the same to the eye. */
export class EnginePainter implements StagePainter {
  readonly by = 'engine'
  readonly whole = false
  readonly canvas: HTMLCanvasElement
  private readonly paper: CanvasRenderingContext2D | null
  private readonly painter: Painter
  private steel?: LaidSteel

  constructor(canvas: HTMLCanvasElement, rested: (by: StagePainter) => void) {
    this.canvas = canvas
    this.paper = canvas.getContext('2d')
    this.painter = new Painter(({ data, width, height, coarse }) => {
      if (!data || !this.paper) return
      const picture = new OffscreenCanvas(width, height)
      picture.getContext('2d')?.putImageData(new ImageData(data, width, height), 0, 0)
      this.paper.clearRect(0, 0, canvas.width, canvas.height)
      this.paper.drawImage(picture, 0, 0, canvas.width, canvas.height)
      if (!coarse) rested(this)
    })
  }

  lay(steel: LaidSteel): Promise<void> {
    this.steel = steel
    return Promise.resolve()
  }

  weigh(): boolean {
    // Brightness comes with the steel.
    return false
  }

  prepare(): Promise<void> {
    return Promise.resolve()
  }

  draw(camera: Camera, wanted: Wanted, width: number, height: number, moving: boolean): void {
    const { steel, canvas } = this
    if (!steel?.mesh) return
    const size = [Math.round(width), Math.round(height)] as const
    if (canvas.width !== size[0] || canvas.height !== size[1]) [canvas.width, canvas.height] = size
    const by = moving ? 3 : 1
    this.painter.draw({
      mesh: steel.mesh,
      origin: steel.origin,
      bright: steel.light,
      up: camera.up,
      out: camera.out,
      middle: camera.middle,
      pixel: camera.pixel * by,
      width: Math.ceil(size[0] / by),
      height: Math.ceil(size[1] / by),
      depth: wanted.ground,
      finish: wanted.finish,
      strip: wanted.strip,
      ground: wanted.night ? 'night' : 'paper',
    })
  }

  stretch(): void {
    // The engine draws what lies there, not the way there.
  }

  dispose(): void {
    this.painter.close()
  }
}
