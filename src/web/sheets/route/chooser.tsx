import { useEffect, useId, useMemo, useRef, useState } from 'react'
import {
  type DeclaredOperation,
  type StepPlace,
  edit,
  freshName,
  go,
  insertStep,
  newStep,
  stepsOf,
  useDesk,
  useSaid,
  useTradeWord,
  useWords,
} from '#desk'
import { capital } from '../../form/measure.tsx'
import { Told } from '../../form/told.tsx'
import { awaitStep, focusRow } from './focus-step.ts'

/** What can be done next, found by typing; arrows and Enter choose. */
export function Chooser({
  place,
  close,
}: {
  readonly place: StepPlace
  readonly close: () => void
}) {
  const words = useWords()
  const trade = useTradeWord()
  const said = useSaid()
  const id = useId()
  const declared = useDesk((desk) => desk.declared)
  const [sought, setSought] = useState('')
  const [at, setAt] = useState(0)
  const field = useRef<HTMLInputElement>(null)
  const list = useRef<HTMLUListElement>(null)
  useEffect(() => field.current?.focus(), [])
  const found = useMemo(() => {
    const word = sought.trim().toLowerCase()
    const fits = (o: DeclaredOperation) =>
      place.index === 0 ? o.takes !== 'one' : o.takes !== 'none'
    const score = (o: DeclaredOperation) => {
      const names = [o.name, trade(o.name).toLowerCase()]
      if (names.some((name) => name.startsWith(word))) return 0
      if (names.some((name) => name.includes(word))) return 1
      const summaries = [o.summary, said(o.summary).text]
      return summaries.some((s) => s.toLowerCase().includes(word)) ? 2 : 3
    }
    return (declared?.operations ?? [])
      .filter(fits)
      .map((o, i) => ({ o, i, rank: score(o) }))
      .filter(({ rank }) => rank < 3)
      .sort((a, b) => a.rank - b.rank || a.i - b.i)
      .map(({ o }) => o)
  }, [declared, place.index, sought, said, trade])
  useEffect(() => {
    list.current?.children[at]?.scrollIntoView({ block: 'nearest' })
  }, [at])
  const choose = (operation: DeclaredOperation | undefined, isByKey: boolean) => {
    const job = useDesk.getState().history?.now
    if (!operation || !job) return
    const begins = place.index === 0 && stepsOf(job, place.bar).length > 0
    const to = begins ? { bar: freshName(job, place.bar), index: 0 } : place
    edit(insertStep(job, to, newStep(operation, job, to)))
    close()
    // A finger would have the screen's keys come up over the step.
    if (isByKey) awaitStep(to)
    else focusRow(to)
    go({ bar: to.bar, step: to.index })
  }
  return (
    <div className="chooser" role="group" aria-label={words.route.chooser}>
      <div className="chooser-head">
        <label htmlFor={`${id}-find`}>
          <b>{words.route.chooser}</b>
        </label>
        <button type="button" className="word note" onClick={close}>
          {words.route.cancel}
        </button>
      </div>
      <input
        ref={field}
        id={`${id}-find`}
        type="text"
        role="combobox"
        className="find"
        placeholder={words.route.chooserFind}
        autoComplete="off"
        aria-expanded="true"
        aria-controls={`${id}-list`}
        aria-activedescendant={found[at] ? `${id}-${found[at].name}` : undefined}
        value={sought}
        onChange={(event) => {
          setSought(event.currentTarget.value)
          setAt(0)
        }}
        onKeyDown={(event) => {
          if (event.key === 'ArrowDown') setAt(Math.min(at + 1, found.length - 1))
          else if (event.key === 'ArrowUp') setAt(Math.max(at - 1, 0))
          else if (event.key === 'Enter') choose(found[at], true)
          else if (event.key === 'Escape') close()
          else return
          event.preventDefault()
          event.stopPropagation()
        }}
      />
      <ul ref={list} id={`${id}-list`} role="listbox" aria-label={words.route.chooser}>
        {found.map((operation, i) => (
          <li
            key={operation.name}
            id={`${id}-${operation.name}`}
            role="option"
            aria-selected={i === at}
            onPointerMove={() => setAt(i)}
            onClick={() => choose(operation, false)}
          >
            <b>{capital(trade(operation.name))}</b>
            <span className="note soft">
              <Told text={operation.summary} />
            </span>
          </li>
        ))}
      </ul>
      {found.length === 0 && <p className="note soft">{words.route.chooserNone}</p>}
    </div>
  )
}
