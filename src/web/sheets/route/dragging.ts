import { type PointerEvent, useCallback, useEffect, useRef, useState } from 'react'
import { edit, moveStep, useDesk } from '#desk'
import type { CardRow } from './card-rows.ts'

/** Dragging a step by its number: a heavy rule shows where it will lie. */
export function useDragging(laid: readonly CardRow[]) {
  const now = useRef(laid)
  useEffect(() => {
    now.current = laid
  }, [laid])
  /** Row before which the step would lie. */
  const [over, setOver] = useState<number>()
  const grab = useCallback((event: PointerEvent, row: CardRow) => {
    if (event.button !== 0) return
    event.preventDefault()
    const handle = event.currentTarget as HTMLElement
    handle.setPointerCapture(event.pointerId)
    let target: number | undefined
    const move = ({ clientX, clientY }: globalThis.PointerEvent) => {
      const under = document.elementFromPoint(clientX, clientY)?.closest<HTMLElement>('[data-row]')
      if (!under) return
      const box = under.getBoundingClientRect()
      const i = Number(under.dataset.row)
      target = clientY < box.top + box.height / 2 ? i : i + 1
      setOver(target)
    }
    const drop = () => {
      handle.removeEventListener('pointermove', move)
      handle.removeEventListener('pointerup', drop)
      handle.removeEventListener('pointercancel', leave)
      setOver(undefined)
      const rows = now.current
      const job = useDesk.getState().history?.now
      if (target === undefined || !job) return
      const before = rows[target]
      const last = rows[target - 1]
      const to = before
        ? // At a seam between two bars it stays with its own.
          last && last.bar === row.bar && before.bar !== row.bar
          ? { bar: last.bar, index: last.index + 1 }
          : { bar: before.bar, index: before.index }
        : last && { bar: last.bar, index: last.index + 1 }
      if (to) edit(moveStep(job, row, to))
    }
    const leave = () => {
      target = undefined
      drop()
    }
    handle.addEventListener('pointermove', move)
    handle.addEventListener('pointerup', drop)
    handle.addEventListener('pointercancel', leave)
  }, [])
  return { over, grab }
}
