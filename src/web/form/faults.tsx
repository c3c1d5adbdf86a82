import type { Problem } from '#problem'
import { barNames, edit, pathOf, useDesk, useSaid, useWords, withValue } from '#desk'
import { Measure } from './measure.tsx'
import { Told } from './told.tsx'

/** Cannot be: a solid mark. */
export function WrongMark() {
  return (
    <svg className="mark" viewBox="0 0 15 14" aria-hidden="true">
      <path d="M7.5 0 15 14H0z" fill="currentColor" />
      <path d="M7.5 5v4.5M7.5 11v1.4" stroke="var(--ground)" strokeWidth="1.6" />
    </svg>
  )
}

/** Can be made; mind this: an open mark. */
export function CautionMark() {
  return (
    <svg className="mark" viewBox="0 0 15 14" aria-hidden="true">
      <path d="M7.5 1.2 14 13.3H1z" fill="none" stroke="currentColor" strokeWidth="1.3" />
      <path d="M7.5 5.2v4M7.5 10.4v1.4" stroke="currentColor" strokeWidth="1.3" />
    </svg>
  )
}

/** What is wrong at one place, why, and what to press. */
export function Faults({
  problems,
  placed,
}: {
  readonly problems: readonly Problem[]
  /** Says where, because they do not stand there. */
  readonly placed?: boolean
}) {
  const words = useWords()
  const said = useSaid()
  if (problems.length === 0) return null
  // The names of kinds are for those who write job files by hand; here one is chosen from a list.
  const told = problems.map((problem) =>
    problem.at === 'piece.kind'
      ? { ...problem, what: words.piece.unknownKind, why: words.piece.chooseKind, try: [] }
      : problem,
  )
  // A path is the same in every language; the line of a torn file is told.
  const place = (at: string) => (/\s/.test(at) ? said(at).text : at)
  return (
    <div className="faults">
      {told.map((problem) => (
        <div key={`${problem.at} ${problem.what}`} className="fault">
          <p>
            <WrongMark />{' '}
            {placed && problem.at !== '' && <span className="soft">{place(problem.at)}: </span>}
            <b>
              <Told text={problem.what} whole />
            </b>{' '}
            <Told text={problem.why} whole />
          </p>
          {problem.try.length > 0 && (
            <ul className="cures">
              <li className="soft">{words.errors.try}:</li>
              {problem.try.map((cure) => (
                <li key={cure}>
                  <CureWords problem={problem} cure={cure} />
                </li>
              ))}
            </ul>
          )}
        </div>
      ))}
    </div>
  )
}

function CureWords({ problem, cure }: { readonly problem: Problem; readonly cure: string }) {
  const words = useWords()
  const said = useSaid()
  const job = useDesk((desk) => desk.history?.now)
  const value = valueOf(cure)
  const path = job && pathOf(problem.at, barNames(job))
  if (value === undefined || !job || !path || path.length === 0) return <Told text={cure} />
  return (
    <button
      type="button"
      className="word cure"
      onClick={() => edit(withValue(job, path, value))}
      title={said(cure).text}
    >
      <Measure text={words.errors.apply(said(value).text)} />
    </button>
  )
}

/** The value a cure proposes for the very place of its problem, if it proposes one. */
function valueOf(cure: string): string | undefined {
  return (
    /^did you mean "(.+)"\?$/.exec(cure)?.[1] ??
    /^for example "(.+)"$/.exec(cure)?.[1] ??
    /^at (?:least|most) ([−-]?[\d.][^,;:]*)$/.exec(cure)?.[1]
  )
}
