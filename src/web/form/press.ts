/** How long after the press its click may still come, ms. */
const CLICK = 50

/**
 * A press ends where it began: while the pointer is down, the field that is left keeps its help, so
 * that nothing moves away under the finger before the click is told.
 */
export function holdWhilePressed(): void {
  const press = () => {
    const left = document.activeElement?.closest<HTMLElement>('.field')
    if (!left) return
    left.dataset.pressed = ''
    const release = () => {
      removeEventListener('pointerup', release)
      removeEventListener('pointercancel', release)
      setTimeout(() => delete left.dataset.pressed, CLICK)
    }
    addEventListener('pointerup', release)
    addEventListener('pointercancel', release)
  }
  addEventListener('pointerdown', press, { capture: true })
}
