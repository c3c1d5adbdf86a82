import { type RefObject, useLayoutEffect, useRef, useState } from 'react'
import { usePen } from './use-pen.ts'

/** How wide an element is, px, as it changes. */
export function useRoom<E extends HTMLElement>(): readonly [RefObject<E | null>, number] {
  const element = useRef<E>(null)
  const [room, setRoom] = useState(0)
  useLayoutEffect(() => {
    const measured = element.current
    if (!measured) return
    const measure = () => setRoom(Math.floor(measured.clientWidth))
    measure()
    const watch = new ResizeObserver(measure)
    watch.observe(measured)
    return () => watch.disconnect()
  }, [])
  return [element, room]
}

/** The same in the px of a plot, which the style lays out larger by the pen. */
export function usePlotRoom<E extends HTMLElement>(): readonly [RefObject<E | null>, number] {
  const [element, room] = useRoom<E>()
  return [element, Math.floor(room / usePen())]
}
