import { useEffect, useMemo, useRef, useState } from 'react'
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
  const last = useRef<{ readonly shape: string; readonly steel: LaidSteel }>(undefined)
  const [laying] = useState(() => new Newest())
  const { bar, index, done } = place ?? {}
  const asked = useMemo(() => {
    if (!job || !isSound || shape === undefined) return undefined
    const at = bar === undefined || index === undefined ? undefined : { bar, index, done }
    return { job, shape, place: at }
  }, [job, isSound, bar, index, done, shape])
  // Told by what was asked for, not by an effect: it waits from the very moment that another place is named.
  const [answered, setAnswered] = useState<typeof asked>()
  const now = useRef<typeof asked>(undefined)
  useEffect(() => {
    now.current = asked
    if (!asked) return
    const { job, shape } = asked
    // Metal of another moment is welcome on the way; that of another job is not.
    const isOfUse = () => now.current?.job === job && now.current.shape === shape
    laying.run(async () => {
      if (!isOfUse()) return
      const had = last.current?.shape === shape ? last.current.steel : undefined
      try {
        const laid = await engine.ask({ ask: 'steel', ...asked, known: had?.surface })
        if (!isOfUse()) return
        setAnswered(asked)
        if (!laid) return
        const { facets = had?.facets, mesh = had?.mesh } = laid
        const whole = { ...laid, facets, mesh }
        last.current = { shape, steel: whole }
        setSteel(whole)
      } catch (fault) {
        setAnswered(asked)
        useDesk.setState({ notice: { words: (fault as Error).message } })
      }
    })
    return () => {
      now.current = undefined
    }
  }, [asked, laying])
  return { steel, waits: asked !== undefined && asked !== answered }
}
