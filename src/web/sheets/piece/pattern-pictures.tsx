import { useState } from 'react'
import { edit, secondEngine, useDesk, useWords, valueAt } from '#desk'
import { capital } from '../../form/measure.tsx'
import { Told } from '../../form/told.tsx'
import { cuttings } from './cuttings.ts'

/** Patterns kept as steps, each with a true cutting; pressed, the route is planned anew for it. */
export function PatternPictures() {
  const words = useWords()
  const patterns = useDesk((desk) => desk.declared?.patterns)
  const wished = useDesk((desk) => valueAt(desk.history?.now, ['wishes', 'pattern']))
  const [asked, setAsked] = useState<string>()
  const choose = async (pattern: string) => {
    const job = useDesk.getState().history?.now
    if (!job || asked !== undefined) return
    setAsked(pattern)
    try {
      const { ways, problems } = await secondEngine().ask({ ask: 'ways', job, pattern })
      if (useDesk.getState().history?.now !== job) return
      if (ways[0]) edit(ways[0].job)
      else
        useDesk.setState({
          notice: { words: words.piece.noWay(words.piece.patternCalled(pattern)), problems },
        })
    } catch (fault) {
      useDesk.setState({ notice: { words: (fault as Error).message } })
    } finally {
      setAsked(undefined)
    }
  }
  return (
    <section className="patterns">
      <p className="note soft">{words.piece.patternScale}</p>
      <ul>
        {patterns?.map(({ name, shows }) => (
          <Pattern
            key={name}
            name={name}
            shows={shows}
            chosen={wished === name}
            busy={asked === name}
            choose={() => void choose(name)}
          />
        ))}
      </ul>
    </section>
  )
}

interface PatternProps {
  readonly name: string
  readonly shows: string
  readonly chosen: boolean
  readonly busy: boolean
  readonly choose: () => void
}

function Pattern({ name, shows, chosen, busy, choose }: PatternProps) {
  const words = useWords()
  const cutting = cuttings[name]
  return (
    <li>
      <button type="button" aria-pressed={chosen} aria-busy={busy} onClick={choose}>
        {cutting && (
          <img
            src={cutting.url}
            width={cutting.width / 2}
            height={cutting.height / 2}
            loading="lazy"
            decoding="async"
            alt=""
          />
        )}
        <span className="pattern-name">{capital(words.piece.patternCalled(name))}</span>
        <span className="note soft">{busy ? words.piece.planning : <Told text={shows} />}</span>
      </button>
    </li>
  )
}
