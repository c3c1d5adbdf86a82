import { useEffect, useRef, useState } from 'react'
import { type LaidSteel, type SteelPlace, engine, useDesk } from '#desk'

/** The metal of the open job, or of one step of its route, laid anew whenever the job works out again; `waits` for it. */
export function useSteel(
  place: SteelPlace | undefined,
  shape: 'facets' | 'mesh' | undefined,
): { readonly steel: LaidSteel | undefined; readonly waits: boolean } {
  const job = useDesk((desk) => desk.history?.now)
  const isSound = useDesk((desk) => desk.worked?.sound === true)
  const [steel, setSteel] = useState<LaidSteel>()
  const [waits, setWaits] = useState(false)
  const last = useRef<{ readonly shape: string; readonly steel: LaidSteel }>(undefined)
  const { bar, index } = place ?? {}
  useEffect(() => {
    if (!job || !isSound || shape === undefined) return
    let stale = false
    setWaits(true)
    const had = last.current?.shape === shape ? last.current.steel : undefined
    const at = bar === undefined || index === undefined ? undefined : { bar, index }
    engine
      .ask({ ask: 'steel', job, place: at, known: had?.surface, shape })
      .then((laid) => {
        if (stale || !laid) return
        const { facets = had?.facets, mesh = had?.mesh } = laid
        const whole = { ...laid, facets, mesh }
        last.current = { shape, steel: whole }
        setSteel(whole)
      })
      .catch((fault: Error) => useDesk.setState({ notice: { words: fault.message } }))
      .finally(() => !stale && setWaits(false))
    return () => {
      stale = true
      setWaits(false)
    }
  }, [job, isSound, bar, index, shape])
  return { steel, waits }
}
