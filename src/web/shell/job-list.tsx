import { useEffect, useId, useState } from 'react'
import {
  type DeclaredKind,
  type JobLine,
  type VersionLine,
  type Written,
  choose,
  engine,
  go,
  loadList,
  newJob,
  server,
  takeVersion,
  useDesk,
  useTradeWord,
  useWords,
} from '#desk'
import { type Language, languages } from '#words'
import { Told } from '../form/told.tsx'
import { downloadJob, openFile } from './files.ts'
import { setApostrophes } from './sheet-head.tsx'

/** Every job kept here, and ways to begin another. */
export function JobList() {
  const words = useWords()
  const jobs = useDesk((desk) => desk.jobs)
  const open = useDesk((desk) => desk.id)
  const [versions, setVersions] = useState(false)
  useEffect(() => void loadList(), [])
  if (versions && open !== undefined) return <Versions id={open} back={() => setVersions(false)} />
  return (
    <div className="jobs">
      <section className="column">
        <header className="head">
          <h1 className="title">{words.joblist.title}</h1>
        </header>
        {jobs.length === 0 && <p className="empty">{words.joblist.none}</p>}
        <ul className="rows">
          {jobs.map((job) => (
            <JobRow
              key={job.id}
              job={job}
              open={job.id === open}
              versions={() => setVersions(true)}
            />
          ))}
        </ul>
      </section>
      <aside className="column">
        <NewJob />
        <OpenFile />
        <Preferences />
      </aside>
    </div>
  )
}

function JobRow({
  job,
  open,
  versions,
}: {
  readonly job: JobLine
  readonly open: boolean
  readonly versions: () => void
}) {
  const words = useWords()
  const language = useDesk((desk) => desk.language)
  const remove = async () => {
    await server.remove(job.id)
    await loadList()
    const putBack = async () => {
      await server.putBack(job.id)
      await loadList()
    }
    useDesk.setState({
      notice: {
        words: words.joblist.removed(job.name),
        press: { words: words.joblist.putBack, act: () => void putBack() },
      },
    })
  }
  const when = new Intl.DateTimeFormat(localeOf(language), {
    dateStyle: 'medium',
    timeStyle: 'short',
  })
  return (
    <li className={open ? 'open' : undefined}>
      <button
        type="button"
        className="job-name"
        aria-current={open || undefined}
        onClick={() => go({ job: job.id })}
      >
        <b>{setApostrophes(job.name)}</b>
        <span className="note soft">
          {job.sample !== null && `${words.joblist.sample}, `}
          {words.joblist.changed(when.format(new Date(job.changedAt)))}
        </span>
      </button>
      <span className="acts">
        {open && (
          <>
            <button type="button" className="word note" onClick={versions}>
              {words.joblist.versions}
            </button>
            <button type="button" className="word note" onClick={() => void downloadJob()}>
              {words.joblist.download}
            </button>
          </>
        )}
        <button
          type="button"
          className="word note"
          aria-label={`${words.joblist.remove}: ${job.name}`}
          onClick={() => void remove()}
        >
          {words.joblist.remove}
        </button>
      </span>
    </li>
  )
}

function NewJob() {
  const words = useWords()
  const trade = useTradeWord()
  const kinds = useDesk((desk) => desk.declared?.kinds)
  const begin = async (kind?: DeclaredKind) => {
    const { units } = useDesk.getState()
    const route = kind && (await engine.ask({ ask: 'begin', kind: kind.name, units }))
    const job: Written = {
      billetwright: 1,
      bars: {},
      ...(kind && { piece: { kind: kind.name, ...kind.start[units] } }),
      ...route,
      name: kind ? words.joblist.nameOf(trade(kind.title)) : words.joblist.blankName,
    }
    await newJob(job, kind ? 'piece' : 'route')
  }
  return (
    <section>
      <header className="head">
        <h2 className="title">{words.joblist.newFrom}</h2>
      </header>
      <p className="note soft">{words.joblist.ofKind}</p>
      <ul className="rows kinds">
        <li>
          <button type="button" className="job-name" onClick={() => void begin()}>
            <b>{words.joblist.blank}</b>
          </button>
        </li>
        {kinds?.map((kind) => (
          <li key={kind.name}>
            <button type="button" className="job-name" onClick={() => void begin(kind)}>
              <b>{trade(kind.title)}</b>
              <span className="note soft">
                <Told text={kind.summary} />
              </span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}

function OpenFile() {
  const words = useWords()
  const reset = async () => {
    await server.resetSamples()
    await loadList()
    const { id, jobs } = useDesk.getState()
    const line = jobs.find((job) => job.id === id)
    if (line) await takeVersion(line.id, line.version)
  }
  return (
    <section>
      <p className="file">
        <label className="press">
          {words.joblist.open}
          <input
            type="file"
            className="hidden"
            accept=".json,application/json"
            onChange={(event) => {
              const file = event.currentTarget.files?.[0]
              event.currentTarget.value = ''
              if (file) void openFile(file)
            }}
          />
        </label>{' '}
        <span className="note soft">{words.joblist.drop}</span>
      </p>
      <button type="button" className="word" onClick={() => void reset()}>
        {words.joblist.reset}
      </button>
    </section>
  )
}

function Preferences() {
  const words = useWords()
  const theme = useDesk((desk) => desk.theme)
  const language = useDesk((desk) => desk.language)
  const id = useId()
  return (
    <section className="fields preferences">
      <div className="field">
        <label className="note soft" htmlFor={`${id}-theme`}>
          {words.joblist.theme}
        </label>
        <span className="chosen">
          <select
            id={`${id}-theme`}
            value={theme}
            onChange={(event) => void choose({ theme: event.currentTarget.value as typeof theme })}
          >
            {(['system', 'paper', 'night'] as const).map((one) => (
              <option key={one} value={one}>
                {words.joblist.themes[one]}
              </option>
            ))}
          </select>
        </span>
      </div>
      <div className="field">
        <label className="note soft" htmlFor={`${id}-language`}>
          {words.joblist.language}
        </label>
        <span className="chosen">
          <select
            id={`${id}-language`}
            value={language}
            onChange={(event) => void choose({ language: event.currentTarget.value as Language })}
          >
            {Object.entries(languages).map(([tag, name]) => (
              <option key={tag} value={tag} lang={tag}>
                {name}
              </option>
            ))}
          </select>
        </span>
      </div>
    </section>
  )
}

function Versions({ id, back }: { readonly id: string; readonly back: () => void }) {
  const words = useWords()
  const language = useDesk((desk) => desk.language)
  const base = useDesk((desk) => desk.base)
  const [lines, setLines] = useState<readonly VersionLine[]>([])
  useEffect(() => {
    server
      .versions(id)
      .then(setLines, (fault: Error) => useDesk.setState({ notice: { words: fault.message } }))
  }, [id, base])
  const when = new Intl.DateTimeFormat(localeOf(language), {
    dateStyle: 'medium',
    timeStyle: 'medium',
  })
  const restore = async (number: number) => {
    const response = await server.restore(id, number)
    await takeVersion(id, response.version)
    useDesk.setState({ notice: { words: words.versions.restored(number) } })
  }
  return (
    <section className="column jobs">
      <header className="head">
        <h1 className="title">{words.versions.title}</h1>
        <button type="button" className="word" onClick={back}>
          {words.versions.back}
        </button>
      </header>
      <ul className="rows">
        {lines.map((line) => (
          <li key={line.number}>
            <span className="job-name">
              <b>{words.versions.number(line.number)}</b>
              <span className="note soft">
                {when.format(new Date(line.savedAt))}
                {line.aside && `, ${words.versions.aside}`}
              </span>
            </span>
            {line.number === base ? (
              <span className="note">{words.versions.now}</span>
            ) : (
              <button
                type="button"
                className="word"
                aria-label={`${words.versions.restore}: ${words.versions.number(line.number)}`}
                onClick={() => void restore(line.number)}
              >
                {words.versions.restore}
              </button>
            )}
          </li>
        ))}
      </ul>
    </section>
  )
}

/** The person's own way of writing dates where it is in the language chosen. */
function localeOf(language: Language): string {
  return navigator.languages.find((tag) => tag.startsWith(language)) ?? language
}
