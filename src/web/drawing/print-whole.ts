import { painted } from '#desk'

/** Longer than this no picture is waited for, ms: a slow machine prints what it has. */
const LONGEST = 8000

/** Prints once every picture on the sheet is drawn in full. */
export async function printWhole(): Promise<void> {
  const stages = document.querySelectorAll<HTMLCanvasElement>('.stage canvas')
  const late = new Promise<void>((resolve) => setTimeout(resolve, LONGEST))
  await Promise.race([Promise.all([painted(), ...[...stages].map(drawnInFull)]), late])
  // What has been painted is on the sheet with the next frame.
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
