import type { Written } from './engine/messages.ts'
import { channel, loadList, saveNow, takeEdit, takeVersion, useDesk } from './desk.ts'
import { thisWindow } from './server.ts'

type Told =
  | { readonly kind: 'list' }
  | { readonly kind: 'job'; readonly id: string; readonly version: number; readonly by?: string }

/** Keeps this window in step with others: those of this browser at once, all others as they save. */
export function listenToWindows(): void {
  channel.addEventListener('message', ({ data }: MessageEvent) => {
    const { kind, id, job } = data as { kind: string; id: string; job: Written }
    if (kind === 'edit') takeEdit(id, job)
  })
  const events = new EventSource('/api/events')
  events.addEventListener('list', () => void loadList())
  events.addEventListener('job', ({ data }) => {
    const told = JSON.parse(data as string) as Told
    if (told.kind !== 'job' || told.by === thisWindow) return
    takeVersion(told.id, told.version).catch(() => undefined)
    void loadList()
  })
  // The server is there again: what waited is saved.
  events.addEventListener('hello', () => {
    if (useDesk.getState().saving === 'offline') {
      useDesk.setState({ saving: 'unsaved' })
      void saveNow()
    }
  })
  addEventListener('pagehide', () => void saveNow())
}
