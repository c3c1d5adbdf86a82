import { type StepPlace, useDesk, useWords } from '#desk'
import { numberIn } from '../../form/number-in.ts'
import { useSay } from '../../form/say.ts'

/** The foot of the card: from the rack to the etched piece. */
export function CardFoot({ adding }: { readonly adding: (place: StepPlace) => void }) {
  const words = useWords()
  const say = useSay()
  const worked = useDesk((desk) => desk.worked)
  const sound = useDesk((desk) => desk.sound)
  const language = useDesk((desk) => desk.language)
  const shown = worked?.sound ? worked : sound
  const totals = shown?.totals
  const percent = numberIn(language, { style: 'percent', maximumFractionDigits: 0 })
  return (
    <>
      {totals && (
        <p className="foot">
          <b>{words.route.foot}</b>
          <span>
            {say.mass(totals.stackMass)} → {say.mass(totals.finishedMass)}
          </span>
          <span className="note">{words.route.stays(percent(totals.yield))}</span>
          <b>
            {words.route.totalHeats(totals.heats)}
            {totals.tempers > 0 && `, ${words.route.totalTempers(totals.tempers)}`}
          </b>
        </p>
      )}
      {shown !== worked && shown && <p className="note soft">{words.stale}</p>}
      <button
        type="button"
        className="word add"
        onClick={() => adding({ bar: words.route.newBarName, index: 0 })}
      >
        {words.route.addBar}
      </button>
    </>
  )
}
