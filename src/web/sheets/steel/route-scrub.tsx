import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react'
import { type SteelPlace, type SteelStep, useTradeWord, useWords } from '#desk'
import type { Size } from '#geometry'
import { capital } from '../../form/measure.tsx'
import { useSay } from '../../form/say.ts'
import { placeAt, positionOf, snapped } from './route-place.ts'

/** Played, a step takes so long, ms. */
const PACE = 1200
/** An arrow key goes so far on the way through a step. */
const FINE = 0.05

interface RouteScrubProps {
  readonly steps: readonly SteelStep[]
  readonly place: SteelPlace | undefined
  /** Of the metal that is shown, once it is. */
  readonly size: Size | undefined
  readonly onPlace: (place: SteelPlace | undefined) => void
}

/** The route as a rule to be gone along: each mark is the bar as a step left it, between two it is on its way. */
export function RouteScrub({ steps, place, size, onPlace }: RouteScrubProps) {
  const id = useId()
  const words = useWords()
  const say = useSay()
  const trade = useTradeWord()
  const last = Math.max(0, steps.length - 1)
  const position = positionOf(steps, place)
  const several = new Set(steps.map((s) => s.bar)).size > 1
  const go = (to: number) => onPlace(placeAt(steps, Math.min(last, Math.max(0, to))))
  const [plays, setPlays] = usePlaying({ position, last, go })

  // Between two stops it is told which step is on, or, of one done at a stroke, which has been.
  const ahead = Math.ceil(position - 1e-6)
  const share = steps[ahead]?.gradual ? 1 - (ahead - position) : 1
  const at = steps[ahead]?.gradual ? ahead : Math.round(position)
  const step = steps[at]
  const tell = (told: (n: number, after: string) => string) => {
    if (!step || (at === last && share > 1 - 1e-6)) return words.steelSheet.asPiece
    const what = told(at + 1, trade(step.after))
    const far = share > 1 - 1e-6 ? '' : `, ${words.steelSheet.farDone(Math.round(share * 100))}`
    return `${what}${several ? `, ${step.bar}` : ''}${far}`
  }
  const onKeyDown = (event: KeyboardEvent) => {
    const ways: Readonly<Record<string, number>> = {
      ArrowRight: Math.round(position / FINE + 1) * FINE,
      ArrowUp: Math.round(position / FINE + 1) * FINE,
      ArrowLeft: Math.round(position / FINE - 1) * FINE,
      ArrowDown: Math.round(position / FINE - 1) * FINE,
      PageUp: Math.floor(position + 1e-6) + 1,
      PageDown: Math.ceil(position - 1e-6) - 1,
    }
    const to = ways[event.key]
    if (to === undefined) return
    event.preventDefault()
    setPlays(false)
    go(to)
  }
  return (
    <div className="scrub">
      <label className="name" htmlFor={id}>
        {words.steelSheet.step}
      </label>
      <span className="value">{capital(tell(words.steelSheet.stepOf))}</span>
      <button type="button" className="word" disabled={last === 0} onClick={() => setPlays(!plays)}>
        <span>{plays ? words.steelSheet.halt : words.steelSheet.play}</span>
      </button>
      <span className="line">
        <input
          id={id}
          type="range"
          min={0}
          max={last}
          step="any"
          value={position}
          disabled={last === 0}
          aria-valuetext={tell(words.steelSheet.stepSpoken)}
          onKeyDown={onKeyDown}
          onChange={(event) => {
            setPlays(false)
            go(snapped(Number(event.currentTarget.value)))
          }}
        />
        <span className="scale" aria-hidden="true">
          {steps.map((step, i) => (
            <i
              key={i}
              className={i > 0 && steps[i - 1]!.bar !== step.bar ? 'long' : ''}
              style={{ left: `${(i / Math.max(last, 1)) * 100}%` }}
            />
          ))}
        </span>
      </span>
      <span className="size note soft">
        {size
          ? [size.length, size.width, size.height].map((side) => say.length(side)).join(' × ')
          : '\u00a0'}
      </span>
    </div>
  )
}

/** Goes through the route at a steady pace and stops at its end; for who wants no motion, stop by stop. */
function usePlaying(now: {
  readonly position: number
  readonly last: number
  readonly go: (to: number) => void
}) {
  const latest = useRef(now)
  latest.current = now
  const [plays, setPlays] = useState(false)
  useEffect(() => {
    if (!plays) return
    const begins = latest.current
    let position = begins.position >= begins.last ? 0 : begins.position
    const to = (next: number) => {
      const { last, go } = latest.current
      position = Math.min(next, last)
      go(position)
      if (position >= last) setPlays(false)
    }
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) {
      to(position)
      const timer = setInterval(() => to(Math.floor(position + 1e-6) + 1), PACE)
      return () => clearInterval(timer)
    }
    let [frame, since] = [0, undefined as number | undefined]
    const step = (moment: number) => {
      // A frame long in coming is no reason to leap.
      const passed = Math.min(moment - (since ?? moment), PACE / 4)
      since = moment
      frame = requestAnimationFrame(step)
      to(position + passed / PACE)
    }
    frame = requestAnimationFrame(step)
    return () => cancelAnimationFrame(frame)
  }, [plays])
  return [plays, setPlays] as const
}
