import { Suspense, useEffect, useRef, useState } from 'react'
import {
  choose,
  followAddress,
  go,
  leaveList,
  redoEdit,
  undoEdit,
  useAddress,
  useDesk,
  useSaid,
  useWords,
} from '#desk'
import { isNight, useNight } from '../drawing/night.ts'
import { sheets } from '../sheets.ts'
import { openFile } from './files.ts'
import { JobList } from './job-list.tsx'
import { Mishap } from './mishap.tsx'
import { NoticeLine } from './notice-line.tsx'

/** The top line, the open sheet, and what is said at the foot. */
export function Shell() {
  const address = useAddress()
  const listOpen = address.list === true
  // While another job is fetched the old one does not stand under the new one's address; and a sheet stands
  // once the job is worked out, or it is said why not: nothing leaps away from under a hand.
  const open = useDesk(
    ({ history, id, answered }) => history !== undefined && id === address.job && answered,
  )
  const words = useWords()
  useTheme()
  useDocumentWords(listOpen)
  useWorkedMark()
  useFocusOnArrival(`${address.job} ${listOpen}`)
  useEffect(() => void followAddress(), [address.job, listOpen])
  const sheet = sheets.find(({ name }) => name === address.sheet) ?? sheets[1]
  return (
    <>
      <a className="skip" href="#sheet">
        {words.skip}
      </a>
      <TopLine current={sheet.name} listOpen={listOpen} />
      <main id="sheet" tabIndex={-1} className={listOpen ? 'sheet' : `sheet ${sheet.name}`}>
        <Mishap
          key={`${address.job} ${sheet.name} ${listOpen}`}
          words={words.broke}
          again={words.openAgain}
        >
          {listOpen ? (
            <JobList />
          ) : open ? (
            <Suspense fallback={<p className="empty" aria-busy="true" />}>
              <sheet.Page key={address.job} />
            </Suspense>
          ) : null}
        </Mishap>
      </main>
      <NoticeLine />
      <DropHere />
    </>
  )
}

function TopLine({ current, listOpen }: { readonly current: string; readonly listOpen: boolean }) {
  const words = useWords()
  const past = useDesk((desk) => desk.history?.past.length ?? 0)
  const future = useDesk((desk) => desk.history?.future.length ?? 0)
  const units = useDesk((desk) => desk.units)
  return (
    <div className="top">
      <nav aria-label={words.sheetsNav}>
        {sheets.map(({ name }) => (
          <button
            key={name}
            type="button"
            className="word"
            aria-current={!listOpen && name === current ? 'page' : undefined}
            onClick={() => {
              if (listOpen) leaveList(name)
              else go({ sheet: name, bar: undefined, step: undefined })
            }}
          >
            <span>{words.sheets[name]}</span>
          </button>
        ))}
      </nav>
      <div className="tools">
        <SavingWords />
        <button
          type="button"
          className="word"
          aria-pressed={listOpen}
          onClick={() => (listOpen ? leaveList() : go({ list: true }))}
        >
          <span>{words.jobs}</span>
        </button>
        <button type="button" className="word note" disabled={past === 0} onClick={undoEdit}>
          {words.undo(past)}
        </button>
        <button type="button" className="word note" disabled={future === 0} onClick={redoEdit}>
          {words.redo}
        </button>
        <div role="group" aria-label={words.units} className="switch">
          {(['metric', 'inch'] as const).map((system) => (
            <button
              key={system}
              type="button"
              className="word"
              aria-pressed={units === system}
              onClick={() => void choose({ units: system })}
            >
              <span>{system === 'metric' ? 'mm' : 'in'}</span>
            </button>
          ))}
        </div>
      </div>
    </div>
  )
}

/** How the job is kept; silent while all is well and saved. */
function SavingWords() {
  const words = useWords()
  const said = useSaid()
  const saving = useDesk((desk) => desk.saving)
  const open = useDesk((desk) => desk.id !== undefined)
  const doing = useDesk((desk) => desk.doing)
  const [slow, setSlow] = useState(false)
  const busy = doing !== undefined
  useEffect(() => {
    if (!busy) return setSlow(false)
    const timer = setTimeout(() => setSlow(true), 400)
    return () => clearTimeout(timer)
  }, [busy])
  return (
    <span className="note soft saving" role="status" data-saving={saving}>
      {slow && doing ? words.working(said(doing.what).text) : open ? words[saving] : ''}
    </span>
  )
}

/** What was pressed went with the sheet it stood on: the keyboard goes on at the new one, not at the top of the page. */
function useFocusOnArrival(where: string): void {
  const was = useRef(where)
  useEffect(() => {
    if (was.current === where) return
    was.current = where
    const { activeElement, body } = document
    if (activeElement === null || activeElement === body)
      document.getElementById('sheet')?.focus({ preventScroll: true })
  }, [where])
}

function useTheme(): void {
  const theme = useDesk((desk) => desk.theme)
  const night = useNight()
  document.documentElement.dataset.theme = isNight(theme) ? 'night' : 'paper'
  useEffect(() => {
    document.documentElement.dataset.theme = night ? 'night' : 'paper'
  }, [night])
}

function useDocumentWords(listOpen: boolean): void {
  const { jobs } = useWords()
  const language = useDesk((desk) => desk.language)
  const name = useDesk((desk) => desk.history?.now.name)
  useEffect(() => {
    document.documentElement.lang = language
    const here = listOpen ? jobs : name
    document.title = typeof here === 'string' ? `${here} – Billetwright` : 'Billetwright'
  }, [language, listOpen, jobs, name])
}

/** Counts the plans shown: what measures the app sees when an edit has reached the card. */
function useWorkedMark(): void {
  const worked = useDesk((desk) => desk.worked)
  useEffect(() => {
    const { dataset } = document.documentElement
    if (worked) dataset.worked = String(Number(dataset.worked ?? 0) + 1)
  }, [worked])
}

/** A job file may be dropped anywhere. */
function DropHere() {
  const words = useWords()
  const [over, setOver] = useState(false)
  useEffect(() => {
    const hasFile = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false
    const dragOver = (event: DragEvent) => {
      if (!hasFile(event)) return
      event.preventDefault()
      setOver(true)
    }
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setOver(false)
    }
    const drop = (event: DragEvent) => {
      if (!hasFile(event)) return
      event.preventDefault()
      setOver(false)
      const file = event.dataTransfer?.files[0]
      if (file) void openFile(file)
    }
    addEventListener('dragover', dragOver)
    addEventListener('dragleave', leave)
    addEventListener('drop', drop)
    return () => {
      removeEventListener('dragover', dragOver)
      removeEventListener('dragleave', leave)
      removeEventListener('drop', drop)
    }
  }, [])
  return over ? <div className="drop title">{words.joblist.dropHere}</div> : null
}
