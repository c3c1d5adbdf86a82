import { useEffect, useLayoutEffect, useRef, useState } from 'react'
import { type LaidSteel, useWords } from '#desk'
import { EnginePainter } from './engine-painter.ts'
import { Newest } from './newest.ts'
import type { StagePainter, Wanted, Weights } from './painters.ts'
import type { Vector } from '#scene'
import { StageCamera } from './stage-camera.ts'

/** What the hand moves. */
export type Tool = 'turn' | 'shift' | 'light'

interface StageProps {
  readonly steel: LaidSteel | undefined
  /** Whether other metal is on its way. */
  readonly waits: boolean
  /** Told when metal can be drawn. */
  readonly onLaid: (steel: LaidSteel) => void
  readonly weights: Weights
  readonly wanted: Wanted
  readonly tool: Tool
  readonly label: string
  /** Whether a graphics card is asked for even where the processor plays one. */
  readonly insist: boolean
  readonly onCamera: (camera: StageCamera) => void
  readonly onLight: (dx: number, dy: number) => void
  readonly onPainter: (painter: StagePainter, why?: 'none' | 'pretending' | 'failed') => void
}

/** After so long without a movement a picture is drawn in full, ms. */
const SETTLED = 140
/** Turned by a key, css px of a hand. */
const KEY = 24

/** The metal, to be turned, shifted, brought near and lit by hand, by keys or by two fingers. */
export function Stage(props: StageProps) {
  const { steel, weights, wanted, insist } = props
  const hasWeights = weights.length > 0
  const words = useWords()
  const place = useRef<HTMLDivElement>(null)
  const latest = useRef(props)
  latest.current = props
  const [painter, setPainter] = useState<StagePainter>()
  const shown = useRef(painter)
  shown.current = painter
  /** Metal is laid one after another: programs being made for one are not made again for the next. */
  const [laying] = useState(() => new Newest())
  const [refused, setRefused] = useState(false)
  const [camera] = useState(
    () =>
      new StageCamera(() => {
        latest.current.onCamera(camera)
        soon.current(true)
      }),
  )
  const frames = useRef({ drawn: 0, timer: undefined as ReturnType<typeof setTimeout> | undefined })
  /** Whether a picture is yet to be asked for. */
  const due = useRef(false)
  const size = useRef({ width: 0, height: 0 })
  const ready = useRef(false)
  const preparing = useRef(0)

  const draw = (moving: boolean) => {
    const { width, height } = size.current
    if (!painter || !ready.current || preparing.current > 0 || width === 0) return
    due.current = moving
    painter.draw(camera.camera, latest.current.wanted, width, height, moving)
  }
  /** Draws in the next frame, quickly; in full once nothing has moved for a while. */
  const drawSoon = (moving: boolean) => {
    cancelAnimationFrame(frames.current.drawn)
    clearTimeout(frames.current.timer)
    due.current = true
    if (painter) painter.canvas.dataset.drawn = 'no'
    frames.current.drawn = requestAnimationFrame(() => draw(moving))
    if (moving) frames.current.timer = setTimeout(settle, SETTLED)
  }
  const settle = () => {
    // On a slow card the frame may not have come yet: the quick picture must not follow the full one.
    cancelAnimationFrame(frames.current.drawn)
    draw(false)
  }
  const soon = useRef(drawSoon)
  soon.current = drawSoon
  const drawAtOnce = () => {
    clearTimeout(frames.current.timer)
    if (painter) painter.canvas.dataset.drawn = 'no'
    settle()
  }
  const atOnce = useRef(drawAtOnce)
  atOnce.current = drawAtOnce

  useEffect(() => {
    const holder = place.current
    if (!holder) return
    let gone = false
    let made: StagePainter | undefined
    const lay = (one: StagePainter, why?: 'none' | 'pretending' | 'failed') => {
      if (gone) return one.dispose()
      made = one
      // Metal that another painter was given is not yet this one's.
      ready.current = false
      due.current = true
      holder.replaceChildren(one.canvas)
      one.canvas.setAttribute('aria-hidden', 'true')
      one.canvas.dataset.by = one.by
      one.stretched = () => soon.current(true)
      setPainter(one)
      latest.current.onPainter(one, why)
    }
    const canvas = () => document.createElement('canvas')
    const rested = (one: StagePainter) => {
      if (!due.current) one.canvas.dataset.drawn = 'full'
    }
    const byEngine = (why: 'none' | 'pretending' | 'failed') =>
      lay(new EnginePainter(canvas(), rested), why)
    const byCard = async () => {
      if (!canvas().getContext('webgl2')) return byEngine('none')
      try {
        const { CardPainter } = await import('./card-painter.ts')
        const card = new CardPainter(canvas(), rested)
        if (!card.isPretending || insist) return lay(card)
        card.dispose()
        byEngine('pretending')
      } catch {
        byEngine('failed')
      }
    }
    if (refused) byEngine('failed')
    else void byCard()
    return () => {
      gone = true
      made?.dispose()
      holder.replaceChildren()
      setPainter(undefined)
    }
  }, [insist, refused])

  // With the page's own change, not a frame after it.
  useLayoutEffect(() => {
    if (!painter || !steel || !hasWeights) return
    // Laid for the other kind of painter: what is asked for comes next.
    if (!(painter.by === 'card' ? steel.facets : steel.mesh)) return
    const own = latest.current.weights
    painter.canvas.dataset.drawn = 'no'
    laying.run(async () => {
      const isGone = () => shown.current !== painter
      if (isGone()) return
      // What is asked for meanwhile would be drawn of other metal.
      ready.current = false
      try {
        await painter.lay(steel, own)
        await painter.prepare(latest.current.wanted.mode)
      } catch {
        if (!isGone()) setRefused(painter.by === 'card')
        return
      }
      if (isGone()) return
      ready.current = true
      if (latest.current.steel === steel) painter.weigh(latest.current.weights)
      latest.current.onLaid(steel)
      // Metal of another size is first seen on its way there, in the next frame.
      const moved = camera.setBox(steel)
      // On its way through a step it is drawn quickly, and in full where it is left.
      if (steel.place.done !== undefined) soon.current(true)
      else if (moved) soon.current(false)
      else atOnce.current()
    })
  }, [painter, steel, hasWeights, camera, laying])

  useEffect(() => {
    // What the heats leave is known later than the metal; a picture that shows nothing of it stands as it is.
    if (painter && ready.current && painter.weigh(weights)) soon.current(false)
  }, [painter, weights])

  const { mode } = wanted
  useEffect(() => {
    // Some overlays need a program of their own, made when first asked for.
    if (!painter || !ready.current) return
    preparing.current++
    painter
      .prepare(mode)
      .catch(() => setRefused(true))
      .finally(() => {
        preparing.current--
        soon.current(false)
      })
  }, [mode, painter])

  useEffect(() => soon.current(false), [wanted, painter])

  useEffect(() => {
    camera.setCut(wanted.cut, matchMedia('(prefers-reduced-motion: reduce)').matches)
  }, [wanted.cut, camera])

  useEffect(() => {
    const holder = place.current
    if (!holder) return
    const watch = new ResizeObserver(() => {
      size.current = { width: holder.clientWidth, height: holder.clientHeight }
      camera.resize(size.current.width, size.current.height)
      soon.current(false)
    })
    watch.observe(holder)
    return () => watch.disconnect()
  }, [camera])

  const hand = useHand(camera, latest)
  return (
    <div
      ref={place}
      className={`stage ${props.tool}`}
      role="application"
      aria-busy={props.waits}
      aria-roledescription={words.steelSheet.stageRole}
      aria-label={props.label}
      tabIndex={0}
      {...hand}
    />
  )
}

/** Pointer, wheel and keys on the stage. */
function useHand(camera: StageCamera, props: { readonly current: StageProps }) {
  const held = useRef(new Map<number, readonly [number, number]>())
  const middle = (element: Element, x: number, y: number) => {
    const box = element.getBoundingClientRect()
    return [x - box.left - box.width / 2, box.top + box.height / 2 - y] as const
  }
  const act = (tool: Tool, dx: number, dy: number) => {
    if (tool === 'light') props.current.onLight(dx, dy)
    else if (tool === 'shift') camera.shift(dx, dy)
    else camera.turn(dx, dy)
  }
  return {
    onPointerDown(event: React.PointerEvent<HTMLDivElement>) {
      event.currentTarget.setPointerCapture(event.pointerId)
      held.current.set(event.pointerId, [event.clientX, event.clientY])
    },
    onPointerMove(event: React.PointerEvent<HTMLDivElement>) {
      const from = held.current.get(event.pointerId)
      if (!from) return
      const [dx, dy] = [event.clientX - from[0], event.clientY - from[1]]
      const other = [...held.current].find(([id]) => id !== event.pointerId)?.[1]
      held.current.set(event.pointerId, [event.clientX, event.clientY])
      if (!other) {
        const { tool } = props.current
        return act(event.shiftKey || event.button === 1 ? 'shift' : tool, dx, dy)
      }
      const far = (p: readonly [number, number]) => Math.hypot(p[0] - other[0], p[1] - other[1])
      const by = far([event.clientX, event.clientY]) / Math.max(far(from), 1)
      const [x, y] = middle(
        event.currentTarget,
        (event.clientX + other[0]) / 2,
        (event.clientY + other[1]) / 2,
      )
      camera.zoom(by, x, y)
      camera.shift(dx / 2, dy / 2)
    },
    onPointerUp: (event: React.PointerEvent<HTMLDivElement>) =>
      void held.current.delete(event.pointerId),
    onPointerCancel: (event: React.PointerEvent<HTMLDivElement>) =>
      void held.current.delete(event.pointerId),
    onWheel(event: React.WheelEvent<HTMLDivElement>) {
      const lines = event.deltaMode === 1 ? 16 : 1
      const [x, y] = middle(event.currentTarget, event.clientX, event.clientY)
      camera.zoom(Math.exp(-event.deltaY * lines * 0.0016), x, y)
    },
    onKeyDown(event: React.KeyboardEvent<HTMLDivElement>) {
      const ways: Readonly<Record<string, readonly [number, number]>> = {
        ArrowLeft: [-KEY, 0],
        ArrowRight: [KEY, 0],
        ArrowUp: [0, -KEY],
        ArrowDown: [0, KEY],
      }
      const way = ways[event.key]
      if (way) act(event.shiftKey ? 'shift' : props.current.tool, way[0], way[1])
      else if (event.key === '+' || event.key === '=') camera.zoom(1.25)
      else if (event.key === '-') camera.zoom(0.8)
      else if (event.key === '0' || event.key === 'Home') camera.fit()
      else return
      event.preventDefault()
    },
  }
}

/** A box part of the way from one size to another, as shares of the second. */
export function wayBetween(from: Vector, to: Vector, share: number): Vector {
  return [0, 1, 2].map(
    (k) => (from[k]! + (to[k]! - from[k]!) * share) / to[k]!,
  ) as unknown as Vector
}
