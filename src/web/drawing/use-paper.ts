import { useSyncExternalStore } from 'react'
import { flushSync } from 'react-dom'

const paper = matchMedia('print')
let prints = false

/** Whether the page is laid out for paper: what only paper says is not worked out at every edit. */
export function usePaper(): boolean {
  return useSyncExternalStore(listen, () => prints || paper.matches)
}

function listen(changed: () => void): () => void {
  // The browser lays the page out as soon as it has told: what paper says must stand by then.
  const say = (now: boolean) => () => {
    prints = now
    flushSync(changed)
  }
  const [begins, ends] = [say(true), say(false)]
  addEventListener('beforeprint', begins)
  addEventListener('afterprint', ends)
  paper.addEventListener('change', changed)
  return () => {
    removeEventListener('beforeprint', begins)
    removeEventListener('afterprint', ends)
    paper.removeEventListener('change', changed)
  }
}
