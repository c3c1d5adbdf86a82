import type { PictureOrder, PictureReply } from './picture-worker.ts'

export type Picture = Omit<PictureOrder, 'number'>

/** A worker that draws one picture at a time, the last one asked for: an earlier one under way is given up. */
export class Painter {
  private readonly worker = new Worker(new URL('./picture-worker.ts', import.meta.url), {
    type: 'module',
    name: 'pictures',
  })
  private number = 0
  private sent: Pick<Picture, 'mesh' | 'origin'> = {}
  private readonly show: (reply: PictureReply) => void

  constructor(show: (reply: PictureReply) => void) {
    this.show = show
    this.worker.addEventListener('message', ({ data }: MessageEvent<PictureReply>) => {
      if (data.number === this.number) this.show(data)
    })
    this.worker.addEventListener('error', (event) =>
      this.show({ number: this.number, width: 0, height: 0, coarse: false, fault: event.message }),
    )
  }

  draw(picture: Picture): void {
    const { mesh, origin } = picture
    const order: PictureOrder = {
      ...picture,
      mesh: mesh === this.sent.mesh ? undefined : mesh,
      origin: origin === this.sent.origin ? undefined : origin,
      number: ++this.number,
    }
    this.sent = { mesh, origin }
    this.worker.postMessage(order)
  }

  close(): void {
    this.worker.terminate()
  }
}
