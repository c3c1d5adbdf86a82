import { amissAt, go, useDesk, useWords } from '#desk'
import { WrongMark } from './faults.tsx'

/** That the card does not work out, and the way to what is amiss: where the eye falls first. */
export function Amiss() {
  const words = useWords()
  const isAmiss = useDesk((desk) => amissAt(desk) !== undefined)
  if (!isAmiss) return null
  return (
    <p className="amiss note">
      <WrongMark /> <b>{words.amiss}</b>{' '}
      <button
        type="button"
        className="word note"
        onClick={() => go(amissAt(useDesk.getState()) ?? {})}
      >
        {words.seeWhy}
      </button>
    </p>
  )
}
