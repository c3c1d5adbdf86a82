import type { StepPlace } from '#desk'

/** The step whose fields are wanted once it stands open: it was just put in by the keyboard. */
let awaited: StepPlace | undefined

export function awaitStep(place: StepPlace): void {
  awaited = place
}

/** Puts the focus on a row's name, once the row is drawn. */
export function focusRow({ bar, index }: StepPlace): void {
  requestAnimationFrame(() =>
    document.querySelector<HTMLElement>(`[data-step="${CSS.escape(`${bar} ${index}`)}"]`)?.focus(),
  )
}

/** Room kept below the fields, px. */
const BELOW = 66

/** A step has opened: its fields come into view, and into hand if they are awaited. */
export function showOpened(opened: HTMLElement, place: StepPlace): void {
  const fields = opened.querySelector('.fields')?.getBoundingClientRect()
  const row = opened.closest('.step')?.getBoundingClientRect()
  if (fields && row) {
    const wanted = fields.bottom + BELOW - window.innerHeight
    // Never so far that its head goes out of sight.
    if (wanted > 0) window.scrollBy(0, Math.max(0, Math.min(wanted, row.top)))
  }
  if (awaited?.bar !== place.bar || awaited.index !== place.index) return
  awaited = undefined
  const first = opened.querySelector<HTMLElement>('.fields :is(input, select)')
  if (first) first.focus({ preventScroll: true })
  else focusRow(place)
}
