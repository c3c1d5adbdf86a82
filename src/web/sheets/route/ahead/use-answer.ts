import { useEffect, useRef, useState } from 'react'
import { type Asking, type Written, useDesk } from '#desk'

interface Kept {
  readonly id: string | undefined
  readonly job: Written
  readonly answer: unknown
}

/** The last answer of each kind: coming back to the sheet asks nothing again. */
const kept = new Map<string, Kept>()

/** The card must have stood so long before it is asked about again, ms. */
const STANDS = 900

export interface Progress {
  readonly done: number
  readonly of: number
}

export interface Answered<A> {
  readonly answer?: A
  /** The job has changed since. */
  readonly isOld: boolean
  /** How much of the work is done, while it goes on; of none where it has only been asked for. */
  readonly progress?: Progress
  readonly isStopped: boolean
  readonly isSound: boolean
  readonly stop: () => void
  readonly begin: () => void
}

/**
 * A long answer about the open job: asked for once the card stands, stopped when it changes or is no
 * longer looked at, kept and told to be old until the new one comes. `ask` must be the same function
 * every time.
 */
export function useAnswer<A>(
  name: string,
  ask: (job: Written, asking: Asking) => Promise<A>,
): Answered<A> {
  const id = useDesk((desk) => desk.id)
  const job = useDesk((desk) => desk.history?.now)
  const isSound = useDesk((desk) => desk.worked?.sound === true)
  const [found, setFound] = useState(() => kept.get(name))
  const [progress, setProgress] = useState<Progress>()
  const [stopped, setStopped] = useState<Written>()
  const mine = found && found.id === id ? found : undefined
  /** Asked for by unfolding it: at once; again because the card changed: when it stands. */
  const again = useRef(mine !== undefined)
  useEffect(() => {
    if (!job || !isSound || stopped === job || mine?.job === job) return
    const still = new AbortController()
    const timer = setTimeout(
      () => {
        again.current = true
        setProgress({ done: 0, of: 0 })
        ask(job, {
          signal: still.signal,
          onProgress: (share, total) => {
            const of = Number(total)
            if (!still.signal.aborted) setProgress({ done: Math.round(share * of), of })
          },
        })
          .then((answer) => {
            if (still.signal.aborted) return
            const now = { id, job, answer }
            kept.set(name, now)
            setFound(now)
            setProgress(undefined)
          })
          .catch((fault: Error) => {
            if (still.signal.aborted) return
            setStopped(job)
            useDesk.setState({ notice: { words: fault.message } })
          })
      },
      again.current ? STANDS : 0,
    )
    return () => {
      clearTimeout(timer)
      still.abort()
      setProgress(undefined)
    }
  }, [name, ask, id, job, isSound, stopped, mine])
  return {
    answer: mine?.answer as A | undefined,
    isOld: mine !== undefined && mine.job !== job,
    progress,
    isStopped: stopped !== undefined && stopped === job && mine?.job !== job,
    isSound,
    stop: () => setStopped(job),
    begin: () => {
      again.current = false
      setStopped(undefined)
    },
  }
}
