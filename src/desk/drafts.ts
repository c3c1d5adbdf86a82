import type { Written } from './engine/messages.ts'
import type { History } from './history.ts'

/**
 * What is not saved yet is kept in the browser at every change: a reload, a crash or a stopped
 * server loses nothing. The history of this window is kept for its own reloads.
 */
export interface Draft {
  readonly base: number
  readonly job: Written
}

const draftKey = (id: string) => `draft ${id}`
const historyKey = (id: string) => `history ${id}`
const lastOpenKey = 'last open'
/** Entries kept over a reload; a window that stays open keeps all. */
const KEPT = 100

export function keepDraft(id: string, draft: Draft): void {
  quietly(() => localStorage.setItem(draftKey(id), JSON.stringify(draft)))
}

export function dropDraft(id: string): void {
  quietly(() => localStorage.removeItem(draftKey(id)))
}

export function draftOf(id: string): Draft | undefined {
  return (
    quietly(() => JSON.parse(localStorage.getItem(draftKey(id)) ?? 'null') as Draft | null) ??
    undefined
  )
}

export function keepHistory(id: string, { past, future }: History): void {
  const kept = { past: past.slice(-KEPT), future: future.slice(0, KEPT) }
  quietly(() => sessionStorage.setItem(historyKey(id), JSON.stringify(kept)))
}

export function historyOf(id: string): Pick<History, 'past' | 'future'> | undefined {
  return (
    quietly(
      () =>
        JSON.parse(sessionStorage.getItem(historyKey(id)) ?? 'null') as Pick<
          History,
          'past' | 'future'
        > | null,
    ) ?? undefined
  )
}

/** The job that lies open in this window, for its own reloads. */
export function keepLastOpen(id: string): void {
  quietly(() => sessionStorage.setItem(lastOpenKey, id))
}

export function lastOpen(): string | undefined {
  return quietly(() => sessionStorage.getItem(lastOpenKey)) ?? undefined
}

/** Storage may be full or forbidden: the job itself is safe with the server. */
function quietly<T>(act: () => T): T | undefined {
  try {
    return act()
  } catch {
    return undefined
  }
}

const preferences = 'preferences'

export function keepPreferences(kept: Readonly<Record<string, string>>): void {
  quietly(() => localStorage.setItem(preferences, JSON.stringify(kept)))
}

export function keptPreferences(): Readonly<Record<string, string>> {
  return (
    quietly(
      () => JSON.parse(localStorage.getItem(preferences) ?? '{}') as Record<string, string>,
    ) ?? {}
  )
}
