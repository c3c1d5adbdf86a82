import { useEffect, useRef, useState } from 'react'
import { type LaidSteel, type SteelPlace, engine, useDesk } from '#desk'
import { Newest } from './newest.ts'

/**
 * The metal of the open job, or of one moment of its route, laid anew whenever the job works out again;
 * `waits` for it. Of moments asked for while one is being laid, only the newest is laid next.
 */
export function useSteel(
  place: SteelPlace | undefined,
  shape: 'facets' | 'mesh' | undefined,
): { readonly steel: LaidSteel | undefined; readonly waits: boolean } {
  const job = useDesk((desk) => desk.history?.now)
  const isSound = useDesk((desk) => desk.worked?.sound === true)
  const [steel, setSteel] = useState<LaidSteel>()
  const [waits, setWaits] = useState(false)
  const last = useRef<{ readonly shape: string; readonly steel: LaidSteel }>(undefined)
  const [asked] = useState(() => new Newest())
  const now = useRef<{ readonly job?: unknown; readonly shape?: string }>({})
  const { bar, index, done } = place ?? {}
  useEffect(() => {
    if (!job || !isSound || shape === undefined) return
    now.current = { job, shape }
    // Metal of another moment is welcome on the way; that of another job is not.
    const isOfUse = () => now.current.job === job && now.current.shape === shape
    setWaits(true)
    const at = bar === undefined || index === undefined ? undefined : { bar, index, done }
    asked.run(async () => {
      if (!isOfUse()) return
      const had = last.current?.shape === shape ? last.current.steel : undefined
      try {
        const known = had?.surface
        const laid = await engine.ask({ ask: 'steel', job, place: at, known, shape })
        if (!isOfUse() || !laid) return
        const { facets = had?.facets, mesh = had?.mesh } = laid
        const whole = { ...laid, facets, mesh }
        last.current = { shape, steel: whole }
        setSteel(whole)
      } catch (fault) {
        useDesk.setState({ notice: { words: (fault as Error).message } })
      } finally {
        if (!asked.overtaken) setWaits(false)
      }
    })
    return () => {
      now.current = {}
      setWaits(false)
    }
  }, [job, isSound, bar, index, done, shape, asked])
  return { steel, waits }
}
