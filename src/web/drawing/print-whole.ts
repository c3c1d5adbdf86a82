import { painted } from '#desk'

/** Longer than this no picture is waited for, ms: a slow machine prints what it has. */
const LONGEST = 8000

const wanted = new Set<() => Promise<void>>()

/**
 * Has something fetched that only paper shows, before anything is printed; until what comes back is called.
 * The browser's own menu waits for nothing: then it is begun, and there when printed once more.
 */
export function fetchForPaper(fetch: () => Promise<void>): () => void {
  const begin = () => void fetch().catch(() => undefined)
  wanted.add(fetch)
  addEventListener('beforeprint', begin)
  return () => {
    wanted.delete(fetch)
    removeEventListener('beforeprint', begin)
  }
}

/** Prints once every picture on the sheet is drawn in full. */
export async function printWhole(): Promise<void> {
  const stages = document.querySelectorAll<HTMLCanvasElement>('.stage canvas')
  const late = new Promise<void>((resolve) => setTimeout(resolve, LONGEST))
  const texts = [...wanted].map((fetch) => fetch().catch(() => undefined))
  await Promise.race([Promise.all([painted(), ...texts, ...[...stages].map(drawnInFull)]), late])
  // What has been drawn on a card is on the sheet with the next frame.
  await new Promise(requestAnimationFrame)
  window.print()
}

/** Once a picture of the steel stands in full. */
export function drawnInFull(canvas: HTMLCanvasElement): Promise<void> {
  const isDrawn = () => canvas.dataset.drawn === 'full'
  return new Promise((resolve) => {
    if (isDrawn()) return resolve()
    const watch = new MutationObserver(() => {
      if (!isDrawn()) return
      watch.disconnect()
      resolve()
    })
    watch.observe(canvas, { attributes: true, attributeFilter: ['data-drawn'] })
  })
}
