import { useSyncExternalStore } from 'react'

/** Of a root's letters, px, on a screen of usual width: what every drawing's px are meant for. */
const USUAL = 16

let width = 0
let pen = 1

/** The style says how large type is on a screen so wide; read once for each width. */
function readPen(): number {
  if (window.innerWidth !== width) {
    width = window.innerWidth
    pen = parseFloat(getComputedStyle(document.documentElement).fontSize) / USUAL
  }
  return pen
}

/** How much larger than usual type is on this screen: drawings beside it grow with it. */
export function usePen(): number {
  return useSyncExternalStore((changed) => {
    window.addEventListener('resize', changed)
    return () => window.removeEventListener('resize', changed)
  }, readPen)
}
