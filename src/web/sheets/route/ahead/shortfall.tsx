import { useEffect, useState } from 'react'
import { edit, go, placeOf, secondEngine, useDesk, useTradeWord, useWords, withValue } from '#desk'
import type { LikelyRange } from '#job'
import { printQuantity } from '#units'
import { Measure, capital } from '../../../form/measure.tsx'
import { numberIn } from '../../../form/number-in.ts'
import { useSay } from '../../../form/say.ts'
import type { CardRow } from '../card-rows.ts'
import { useStepAt } from './step-names.ts'

interface ShortfallProps {
  readonly range: LikelyRange
  readonly rows: readonly CardRow[]
  readonly isOld: boolean
}

/** Makings drawn as strokes. */
const STROKES = 50
/** Steps named as the place where it happens. */
const PLACES = 3
/** The risk a longer stack is sought for; below it none is offered. */
const RISK = 0.05

/** How often the piece comes up short, where, and how much longer to cut. */
export function Shortfall({ range, rows, isOld }: ShortfallProps) {
  const { ahead } = useWords()
  const stepAt = useStepAt(rows)
  const isSolved = useDesk(({ worked }) => Object.keys(worked?.solved ?? {}).length > 0)
  const strokes = Math.round(range.short * STROKES)
  const inHundred = (share: number) => (100 * share).toFixed(share > 0 && share < 0.0095 ? 1 : 0)
  const times = new Map<string, number>()
  for (const { problem, times: n } of range.reasons)
    times.set(problem.at, (times.get(problem.at) ?? 0) + n)
  const places = [...times].sort(([, a], [, b]) => b - a).slice(0, PLACES)
  return (
    <div className="shortfall">
      <p className="tally" aria-hidden="true">
        {Array.from({ length: STROKES }, (_, i) => (
          <i key={i} className={i < STROKES - strokes ? undefined : 'lacking'} />
        ))}
      </p>
      <p>
        <b>{ahead.short(inHundred(range.short))}</b>
        {range.short > 0 && (
          <span className="note soft"> {ahead.shortNote(inHundred(2 * range.shortDeviation))}</span>
        )}
      </p>
      <ul className="note">
        {places.map(([at, n]) => {
          const step = stepAt(at)
          const share = inHundred(n / range.draws)
          return (
            step && (
              <li key={at}>
                <button
                  type="button"
                  className="word note"
                  onClick={() => go({ bar: step.row.bar, step: step.row.index })}
                >
                  {ahead.at(step.number, step.name, share)}
                </button>
              </li>
            )
          )
        })}
      </ul>
      {range.short > RISK && isSolved && <p className="note">{ahead.bare}</p>}
      {range.short > RISK && !isOld && <Longer rows={rows} inHundred={inHundred} />}
    </div>
  )
}

interface LongerProps {
  readonly rows: readonly CardRow[]
  readonly inHundred: (share: number) => string
}

type Found = { readonly longer: number; readonly short: number } | 'none'

/** How much longer to cut what the bars begin with: sought when asked, taken when pressed. */
function Longer({ rows, inHundred }: LongerProps) {
  const { ahead } = useWords()
  const say = useSay()
  const trade = useTradeWord()
  const language = useDesk((desk) => desk.language)
  const units = useDesk((desk) => desk.units)
  const [found, setFound] = useState<{ readonly answer: Found; readonly job: unknown }>()
  const [seeking, setSeeking] = useState<AbortController>()
  const job = useDesk((desk) => desk.history?.now)
  useEffect(() => () => seeking?.abort(), [seeking])
  if (!job) return null
  const seek = () => {
    const still = new AbortController()
    setSeeking(still)
    secondEngine()
      .ask({ ask: 'allowance', job, risk: RISK }, { signal: still.signal })
      .then((answer) => setFound({ answer: answer ?? 'none', job }))
      .catch((fault: Error) => useDesk.setState({ notice: { words: fault.message } }))
      .finally(() => setSeeking(undefined))
  }
  if (seeking)
    return (
      <p className="note working">
        <span role="status">{ahead.seeking}</span>
        <button
          type="button"
          className="word note"
          onClick={() => {
            seeking.abort()
            setSeeking(undefined)
          }}
        >
          {ahead.stop}
        </button>
      </p>
    )
  const answer = found?.job === job ? found.answer : undefined
  if (answer === undefined)
    return (
      <button type="button" className="press" onClick={seek}>
        {ahead.askLonger}
      </button>
    )
  if (answer === 'none') return <p role="status">{ahead.notLonger}</p>
  const percent = numberIn(language, { style: 'percent', maximumFractionDigits: 1 })
  const cuts = rows.flatMap(({ bar, index, number, step, row }) => {
    const length = row?.values.length
    if (index > 0 || row === undefined || row.taken.length === 0 || typeof length !== 'number')
      return []
    const text = upward(length * (1 + answer.longer), units)
    const name = capital(trade(String(step.do)))
    return [{ path: ['bars', bar, index, 'length'], number, name, text, was: say.length(length) }]
  })
  return (
    <div role="status">
      <p>{ahead.longer(percent(answer.longer), inHundred(answer.short))}</p>
      <ul className="note">
        {cuts.map(({ path, number, name, text, was }) => (
          <li key={placeOf(path)}>
            <Measure text={ahead.cutTo(number, name, text, was)} />
          </li>
        ))}
      </ul>
      {cuts.length > 0 && (
        <button
          type="button"
          className="press"
          onClick={() => edit(cuts.reduce((to, { path, text }) => withValue(to, path, text), job))}
        >
          {ahead.cutSo}
        </button>
      )}
    </div>
  )
}

/** A length to cut to: up to the next millimetre, or the next 1/16 in. */
function upward(m: number, units: 'metric' | 'inch'): string {
  if (units === 'metric') return `${Math.ceil(m * 1000)} mm`
  return printQuantity((Math.ceil((m / 0.0254) * 16) / 16) * 0.0254, 'length', { nearest: 16 })
}
