import type { PictureOrder, PictureReply } from './picture-worker.ts'

export type Picture = Omit<PictureOrder, 'number'>

/**
 * A worker that draws one picture at a time, the last one asked for. An earlier one under way is given up once
 * something of it has been seen: where metal or hand move without end, pictures come all the same.
 */
export class Painter {
  private readonly worker = new Worker(new URL('./picture-worker.ts', import.meta.url), {
    type: 'module',
    name: 'pictures',
  })
  private number = 0
  private sent: Pick<Picture, 'mesh' | 'origin'> = {}
  /** Nothing has come yet of what was ordered last. */
  private waits = false
  private next?: Picture
  private readonly show: (reply: PictureReply) => void

  constructor(show: (reply: PictureReply) => void) {
    this.show = show
    this.worker.addEventListener('message', ({ data }: MessageEvent<PictureReply>) => {
      if (data.number !== this.number) return
      const { next } = this
      this.next = undefined
      this.waits = false
      this.show({ ...data, coarse: data.coarse || next !== undefined })
      if (next) this.order(next)
    })
    this.worker.addEventListener('error', (event) =>
      this.show({ number: this.number, width: 0, height: 0, coarse: false, fault: event.message }),
    )
  }

  draw(picture: Picture): void {
    if (this.waits) this.next = picture
    else this.order(picture)
  }

  private order(picture: Picture): void {
    const { mesh, origin } = picture
    const order: PictureOrder = {
      ...picture,
      mesh: mesh === this.sent.mesh ? undefined : mesh,
      origin: origin === this.sent.origin ? undefined : origin,
      number: ++this.number,
    }
    this.sent = { mesh, origin }
    this.waits = true
    this.worker.postMessage(order)
  }

  close(): void {
    this.worker.terminate()
  }
}
