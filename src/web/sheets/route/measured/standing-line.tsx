import { useDesk, useWords } from '#desk'
import { Measure } from '../../../form/measure.tsx'
import { useSay } from '../../../form/say.ts'
import { MeasuredMark } from './measured-mark.tsx'
import { standingAt } from './standing.ts'
import './measured.css'

interface StandingLineProps {
  readonly bar: string
  readonly index: number
}

/** Under a row: what was measured there, and what that leaves. */
export function StandingLine({ bar, index }: StandingLineProps) {
  const { ahead } = useWords()
  const say = useSay()
  const standing = useDesk((desk) => standingAt(desk.worked, bar, index))
  if (!standing) return null
  const { measured, needed, spare } = standing
  const found = `${say.size(measured.size)}, ${say.mass(measured.mass)}`
  const stands = spare < 0 ? ahead.lacks(say.length(-spare)) : ahead.spare(say.length(spare))
  return (
    <p className="standing note">
      <MeasuredMark /> <Measure text={ahead.found(found)} />
      {needed && (
        <>
          {': '}
          <b>
            <Measure text={stands} />
          </b>
        </>
      )}
    </p>
  )
}
