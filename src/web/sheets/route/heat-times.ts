import { useEffect } from 'react'
import { create } from 'zustand'
import { type Worked, type Written, secondEngine, useDesk } from '#desk'
import type { Treated } from '#job'

type Times = Treated['heats']

/** How long the heats of one state of the job take, once that was asked for. */
const useTimes = create<{ readonly job?: Written; readonly times?: Times }>(() => ({}))

/** The card must have stood so long before it is asked about again, ms: nothing is followed while somebody types. */
const STANDS = 600

/** Asks how long each heat takes, away from the engine that answers edits; done at once where it is known. */
export async function fetchHeatTimes(): Promise<void> {
  const { history, worked } = useDesk.getState()
  const job = history?.now
  if (!job || !worked?.sound || useTimes.getState().job === job) return
  const treated = await secondEngine().ask({ ask: 'heats', job })
  if (treated) useTimes.setState({ job, times: treated.heats })
}

/** Has them fetched while something shows them. */
export function useFetchedHeatTimes(): void {
  const worked = useDesk((desk) => desk.worked)
  useEffect(() => {
    const wait = useTimes.getState().job ? STANDS : 0
    // Without them the stop heats stand there alone: nothing to make a noise about.
    const timer = setTimeout(() => void fetchHeatTimes().catch(() => undefined), wait)
    return () => clearTimeout(timer)
  }, [worked])
}

/** The heats of one step with their times; nothing where they are not known for the job as it is. */
export function useHeatTimes(bar: string, index: number): Times {
  const { job, times } = useTimes()
  const now = useDesk((desk) => desk.history?.now)
  const number = useDesk((desk) => numberIn(desk.worked, bar, index))
  return job === now && times ? times.filter((heat) => heat.step === number) : NONE
}

/** Whether the job has heats whose times could stand, and do not yet. */
export function useLacksHeatTimes(): boolean {
  const { job } = useTimes()
  return useDesk(
    ({ history, worked }) =>
      job !== history?.now &&
      worked?.sound === true &&
      worked.rows.some((row) => row.heats.length > 0),
  )
}

const NONE: Times = []

/** Heats count their steps in the order of the work, from 1. */
function numberIn(worked: Worked | undefined, bar: string, index: number): number {
  return (worked?.rows.findIndex((row) => row.bar === bar && row.index === index) ?? -1) + 1
}
