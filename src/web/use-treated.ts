import { useEffect, useState } from 'react'
import type { Treated } from '#job'
import { engine, useDesk } from '#desk'

/** What the heats of the open job leave; kept while a change is being followed. */
export function useTreated(): {
  readonly treated?: Treated
  readonly failed: boolean
} {
  const job = useDesk((desk) => desk.history?.now)
  const isSound = useDesk((desk) => desk.worked?.sound === true)
  const [treated, setTreated] = useState<Treated>()
  const [failed, setFailed] = useState(false)
  useEffect(() => {
    if (!job || !isSound) return
    let stale = false
    engine
      .ask({ ask: 'heats', job })
      .then((answer) => {
        if (stale) return
        setFailed(false)
        if (answer) setTreated(answer)
      })
      .catch(() => !stale && setFailed(true))
    return () => {
      stale = true
    }
  }, [job, isSound])
  return { treated, failed }
}
