import type { ServerResponse } from 'node:http'

/** What other windows should know: the list changed, or a job has a new version. */
export type Announcement =
  | { readonly kind: 'list' }
  | { readonly kind: 'job'; readonly id: string; readonly version: number; readonly by?: string }

/** A line now and then keeps proxies and sleeping laptops from thinking that nobody is there. */
const HEARTBEAT = 20_000

/** Open windows, each with a stream of server-sent events. */
export class Announcements {
  private readonly listeners = new Set<ServerResponse>()
  private readonly beat: NodeJS.Timeout

  constructor() {
    this.beat = setInterval(() => this.send(': still here\n\n'), HEARTBEAT)
    this.beat.unref()
  }

  add(response: ServerResponse): void {
    response.writeHead(200, {
      'content-type': 'text/event-stream',
      'cache-control': 'no-store',
      'x-accel-buffering': 'no',
    })
    response.write('retry: 1000\n\nevent: hello\ndata: {}\n\n')
    this.listeners.add(response)
    response.on('close', () => this.listeners.delete(response))
  }

  tell(announcement: Announcement): void {
    this.send(`event: ${announcement.kind}\ndata: ${JSON.stringify(announcement)}\n\n`)
  }

  close(): void {
    clearInterval(this.beat)
    for (const listener of this.listeners) listener.end()
    this.listeners.clear()
  }

  private send(text: string): void {
    for (const listener of this.listeners) listener.write(text)
  }
}
