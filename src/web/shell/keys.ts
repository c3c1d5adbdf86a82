import { closeOpen, redoEdit, undoEdit } from '#desk'
import { printWhole } from '../drawing/print-whole.ts'

/** Keys that work everywhere: undo, redo, printing, Escape to close what is open. */
export function listenToKeys(): void {
  addEventListener('keydown', (event) => {
    const command = event.ctrlKey || event.metaKey
    const key = event.key.toLowerCase()
    if (command && !event.altKey && (key === 'z' || key === 'y')) {
      // Inside a field the browser's own undo would only undo letters.
      event.preventDefault()
      if (event.target instanceof HTMLElement) event.target.blur()
      if (key === 'y' || event.shiftKey) redoEdit()
      else undoEdit()
    } else if (command && !event.altKey && !event.shiftKey && key === 'p') {
      // The browser itself would print what stands, be it a first coarse picture.
      event.preventDefault()
      void printWhole()
    } else if (event.key === 'Escape' && !event.defaultPrevented) {
      closeOpen()
    }
  })
}
