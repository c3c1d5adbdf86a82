import type { Written } from './engine/messages.ts'

/** What a job was and will be again: undo and redo without end. Unchanged parts are shared. */
export interface History {
  readonly past: readonly Written[]
  readonly now: Written
  readonly future: readonly Written[]
  /** The field and sitting the last change was made in: its next keystroke is no new entry. */
  readonly within?: string
}

export function startHistory(now: Written): History {
  return { past: [], now, future: [] }
}

/** A change; those of one sitting in one field (`within`) are one entry. */
export function change(history: History, now: Written, within?: string): History {
  if (now === history.now) return history
  const goesOn = within !== undefined && within === history.within
  return {
    past: goesOn ? history.past : [...history.past, history.now],
    now,
    future: [],
    within,
  }
}

export function undo(history: History): History {
  const last = history.past.at(-1)
  if (!last) return history
  return { past: history.past.slice(0, -1), now: last, future: [history.now, ...history.future] }
}

export function redo(history: History): History {
  const [next, ...future] = history.future
  if (!next) return history
  return { past: [...history.past, history.now], now: next, future }
}
