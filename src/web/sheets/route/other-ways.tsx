import { useEffect, useState } from 'react'
import { type Way, type Ways, edit, secondEngine, useDesk, useWords } from '#desk'
import { printQuantity } from '#units'
import { Faults } from '../../form/faults.tsx'
import { Measure } from '../../form/measure.tsx'
import type { Catalogue } from '#words'
import { numberIn } from '../../form/number-in.ts'
import { useSay } from '../../form/say.ts'
import { Tolds } from '../../form/told.tsx'

/** What else could be done: the planner's ways beside the one written, to be compared and taken. */
export function OtherWays() {
  const words = useWords()
  const job = useDesk((desk) => desk.history?.now)
  const isSound = useDesk((desk) => desk.worked?.sound === true)
  const [open, setOpen] = useState(false)
  const [found, setFound] = useState<{ readonly ways: Ways; readonly job: unknown }>()
  useEffect(() => {
    if (!open || !job || !isSound || found?.job === job) return
    let wanted = true
    const timer = setTimeout(() => {
      secondEngine()
        .ask({ ask: 'ways', job })
        .then((ways) => wanted && setFound({ ways, job }))
        .catch((fault: Error) => useDesk.setState({ notice: { words: fault.message } }))
    }, 300)
    return () => {
      wanted = false
      clearTimeout(timer)
    }
  }, [open, job, isSound, found])
  return (
    <section className="ways-list">
      <h3>
        <button type="button" className="fold" aria-expanded={open} onClick={() => setOpen(!open)}>
          {words.ways.title}
        </button>
      </h3>
      {open && !found && <p className="note soft">{words.ways.looking}</p>}
      {open && found && (
        <>
          <p className="note soft">{words.ways.considered(found.ways.considered)}</p>
          <Faults problems={found.ways.problems} placed />
          <ul>
            {found.ways.ways.map((way, i) => (
              <WayLine key={`${i} ${way.name}`} way={way} />
            ))}
          </ul>
        </>
      )}
    </section>
  )
}

function WayLine({ way }: { readonly way: Way }) {
  const words = useWords()
  const say = useSay()
  const language = useDesk((desk) => desk.language)
  const percent = numberIn(language, { style: 'percent', maximumFractionDigits: 0 })
  const { figures } = way
  return (
    <li>
      <p>
        <b>
          <Measure text={recipeWords(way.name, words)} />
        </b>
      </p>
      <p className="note">
        {words.route.totalHeats(figures.heats)}, {words.ways.layers(figures.layers)},{' '}
        {words.route.stays(percent(figures.yield))},{' '}
        {words.ways.hands(printQuantity(figures.hands, 'time'))}
        {figures.lines !== undefined && `, ${say.lines(figures.lines)}`}
      </p>
      <p className="note soft">
        <Tolds texts={way.reasons} />
      </p>
      {way.asWritten ? (
        <p className="note">
          <b>{words.ways.asWritten}</b>
        </p>
      ) : (
        <button type="button" className="press" onClick={() => edit(way.job)}>
          {words.ways.take}
        </button>
      )}
    </li>
  )
}

/** The engine writes `15 → ×3 → ×4`; a smith says how high it is restacked. */
function recipeWords(name: string, { ways }: Catalogue): string {
  const [sheets, ...high] = [...name.matchAll(/\d+/g)].map(Number)
  const isRecipe = sheets !== undefined && /^\d+(?: → ×\d+)*$/.test(name)
  return isRecipe ? ways.recipe(sheets, high) : name
}
