import { create } from 'zustand'
import type { Problem } from '#problem'
import type { UnitSystem } from '#units'
import { type Language, languageOf, loadWords, wordsIn } from '#words'
import { engine } from './engine/engine.ts'
import type { Declarations, PieceDrawing, Row, Worked, Written } from './engine/messages.ts'
import { barNames } from './engine/places.ts'
import { address, closeStep, go } from './address.ts'
import {
  draftOf,
  dropDraft,
  historyOf,
  keepDraft,
  keepHistory,
  keepLastOpen,
  keepPreferences,
  keptPreferences,
  lastOpen,
} from './drafts.ts'
import { type History, change, redo, startHistory, undo } from './history.ts'
import { type JobLine, NoServer, Refused, server } from './server.ts'

export type Theme = 'system' | 'paper' | 'night'
export type Saving = 'saved' | 'unsaved' | 'saving' | 'offline' | 'conflict'

/** Something said at the foot of the sheet, and what can be pressed about it. */
export interface Notice {
  readonly words: string
  readonly press?: { readonly words: string; readonly act: () => void }
  readonly problems?: readonly Problem[]
}

export interface Desk {
  readonly declared?: Declarations
  readonly jobs: readonly JobLine[]
  /** The open job. */
  readonly id?: string
  readonly history?: History
  /** The version this window builds on. */
  readonly base: number
  readonly saving: Saving
  readonly worked?: Worked
  /** Whether the engine has answered for the open job, be it that it cannot: until then no sheet is laid out by it. */
  readonly answered: boolean
  /** The last sound plan of the open job: shown while a change waits for sense. */
  readonly sound?: Worked
  readonly piece?: PieceDrawing
  readonly doing?: { readonly share: number; readonly what: string }
  readonly units: UnitSystem
  readonly language: Language
  readonly theme: Theme
  readonly notice?: Notice
}

const kept = keptPreferences()

export const useDesk = create<Desk>(() => ({
  jobs: [],
  base: 0,
  saving: 'saved',
  answered: false,
  units: kept.units === 'inch' ? 'inch' : 'metric',
  language: languageOf(kept.language ?? navigator.language),
  theme: kept.theme === 'paper' || kept.theme === 'night' ? kept.theme : 'system',
}))

const set = useDesk.setState
const get = useDesk.getState

/** The window's channel to other windows of this browser: what is typed here shows there at once. */
export const channel = new BroadcastChannel('billetwright')

/** Opens a job by its id: the draft of this browser if one was never saved, else as it stands. */
export async function openJob(id: string): Promise<void> {
  try {
    const stored = await server.get(id)
    // Meanwhile another was asked for.
    if (address().job !== id) return
    const draft = draftOf(id)
    lay(id, draft ? draft.job : stored.job, draft ? draft.base : stored.version)
    if (draft) {
      set({ saving: 'unsaved' })
      saveSoon(0)
    }
  } catch (fault) {
    if (address().job !== id) return
    const draft = draftOf(id)
    if (fault instanceof NoServer && draft) {
      lay(id, draft.job, draft.base)
      set({ saving: 'offline' })
    } else if (fault instanceof Refused && fault.status === 404) {
      set({ id: undefined, history: undefined, notice: { words: fault.message } })
      go({ list: true }, true)
    } else if (fault instanceof NoServer) {
      set({ notice: { words: wordsIn(get().language).notKeptHere } })
      go({ list: true }, true)
    } else set({ notice: { words: (fault as Error).message } })
  }
}

/** Lays a job on the desk. */
function lay(id: string, job: Written, base: number): void {
  const again = historyOf(id)
  const history = { ...startHistory(job), ...again }
  set({
    id,
    history,
    base,
    saving: 'saved',
    worked: undefined,
    answered: false,
    sound: undefined,
    piece: undefined,
  })
  keepLastOpen(id)
  workOutNow(job)
}

/** Changes the open job; changes of one sitting in one field are one step of undo. */
export function edit(now: Written, within?: string): void {
  const { history, id } = get()
  if (!history || id === undefined || now === history.now) return
  laid(id, change(history, now, within), true)
}

export function undoEdit(): void {
  const { history, id } = get()
  if (history && id !== undefined && history.past.length > 0) laid(id, undo(history), true)
}

export function redoEdit(): void {
  const { history, id } = get()
  if (history && id !== undefined && history.future.length > 0) laid(id, redo(history), true)
}

function laid(id: string, history: History, ours: boolean): void {
  set({ history })
  // The worker first: what is kept is written while it works.
  workOutNow(history.now)
  keepHistory(id, history)
  if (ours) {
    keepDraft(id, { base: get().base, job: history.now })
    channel.postMessage({ kind: 'edit', id, job: history.now })
    set({ saving: 'unsaved' })
    saveSoon()
  }
}

/** A change made in another window of this browser. */
export function takeEdit(id: string, job: Written): void {
  const { history } = get()
  if (get().id !== id || !history || sameWords(history.now, job)) return
  laid(id, change(history, job), false)
}

/** A version another window saved. */
export async function takeVersion(id: string, version: number): Promise<void> {
  if (get().id !== id || version <= get().base) return
  const stored = await server.get(id)
  const { history, saving } = get()
  if (get().id !== id || !history || stored.version <= get().base) return
  if (sameWords(history.now, stored.job)) {
    dropDraft(id)
    return set({ base: stored.version, saving: 'saved' })
  }
  if (saving !== 'saved') {
    // What is typed here was built on it: nothing to take, and nothing in each other's way.
    const seen = history.past.slice(-SEEN).some((job) => sameWords(job, stored.job))
    return seen ? set({ base: stored.version }) : undefined
  }
  dropDraft(id)
  set({ base: stored.version, saving: 'saved' })
  laid(id, change(history, stored.job), false)
}

/** How far back a version of another window is looked for among those seen here. */
const SEEN = 20

function sameWords(a: Written, b: Written): boolean {
  return JSON.stringify(a) === JSON.stringify(b)
}

const SAVE_AFTER = 700
let timer: ReturnType<typeof setTimeout> | undefined

function saveSoon(after = SAVE_AFTER): void {
  clearTimeout(timer)
  timer = setTimeout(() => void saveNow(), after)
}

/** A save has been sent and not answered: the next waits, else it would clash with the one before. */
let onItsWay = false

/** Saves the open job; without a server it waits in the browser and is tried again. */
export async function saveNow(): Promise<void> {
  const { id, history, base, saving } = get()
  if (id === undefined || !history || onItsWay || saving === 'saved') return
  const job = history.now
  onItsWay = true
  set({ saving: 'saving' })
  try {
    const result = await server.save(id, base, job)
    if (get().id !== id) return
    if (result.kind === 'saved') {
      const changed = get().history?.now !== job
      set({ base: result.line.version, saving: changed ? 'unsaved' : 'saved' })
      if (!changed) dropDraft(id)
      await loadList()
    } else if (result.kind === 'conflict') {
      // Both are kept; the standing one is laid under, ours on top of it, undoable.
      dropDraft(id)
      set({ base: result.standing.version, saving: 'saved' })
      const mine = job
      const now = get().history
      if (now) laid(id, change(now, result.standing.job), false)
      set({
        notice: {
          words: wordsIn(get().language).bothKept(result.keptAs),
          press: { words: wordsIn(get().language).layMine, act: () => edit(mine) },
        },
      })
    } else set({ saving: 'offline' })
  } catch {
    if (get().id === id) set({ saving: 'offline' })
    saveSoon(4000)
  } finally {
    onItsWay = false
    if (get().saving === 'unsaved') saveSoon()
  }
}

export async function loadList(): Promise<void> {
  try {
    set({ jobs: await server.list() })
  } catch (fault) {
    if (!(fault instanceof NoServer)) set({ notice: { words: (fault as Error).message } })
  }
}

/** Rows that say what they said are the very same, so that nothing of them is drawn again. */
function sameRows(before: readonly Row[] | undefined, now: readonly Row[]): readonly Row[] {
  const known = new Map(before?.map((row) => [`${row.bar}\n${row.index}`, row]))
  return now.map((row) => {
    const was = known.get(`${row.bar}\n${row.index}`)
    return was && was.words === row.words ? was : row
  })
}

/** Whether the last sound plan was made for a piece. */
let forPiece = false

/** The last sound plan once this has been worked out: a stack alone is none, nor is one made for no piece or for another. */
function soundAfter(worked: Worked, job: Written): Pick<Desk, 'sound'> | undefined {
  const hasPiece = job.piece !== undefined
  if (worked.sound && (worked.totals?.heats ?? 0) > 0) {
    forPiece = hasPiece
    return { sound: worked }
  }
  return hasPiece === forPiece && !worked.sound ? undefined : { sound: undefined }
}

/** The piece drawn last, so that only a changed one is drawn again. */
let drawnPiece: unknown

function workOutNow(job: Written): void {
  const { sound } = get()
  // Drawn in no time, and the sheet is laid out by it: before the card.
  if (job.piece !== drawnPiece || !get().piece) {
    drawnPiece = job.piece
    const drawn = engine.ask({ ask: 'piece', job }).then((piece) => {
      // A piece that cannot be is drawn as it last could.
      if (get().history?.now.piece === job.piece && (piece || job.piece === undefined))
        set({ piece })
    })
    // What keeps the engine from it keeps it from the card, and is told there.
    drawn.catch(() => undefined)
  }
  engine
    .compute(
      { job, solved: sound?.solved ?? {} },
      { onProgress: (share, what) => set({ doing: { share, what } }) },
    )
    .then((told) => {
      if (!told || get().history?.now !== job) return
      const worked = { ...told, rows: sameRows(get().worked?.rows, told.rows) }
      set({ worked, answered: true, doing: undefined, ...soundAfter(worked, job) })
    })
    .catch((fault: Error) => {
      set({ doing: undefined, notice: { words: fault.message } })
      if (get().history?.now === job) set({ answered: true })
    })
}

/** Makes a job and opens it; whether it could be. What went wrong is told. */
export async function newJob(job: Written, sheet?: string): Promise<boolean> {
  try {
    const line = await server.add(job)
    await loadList()
    go({ job: line.id, ...(sheet !== undefined && { sheet }) })
    return true
  } catch (fault) {
    const tooLarge = fault instanceof Refused && fault.status === TOO_LARGE
    set({
      notice: { words: tooLarge ? wordsIn(get().language).tooLarge : (fault as Error).message },
    })
    return false
  }
}

const TOO_LARGE = 413

export async function choose(
  what: Partial<Pick<Desk, 'units' | 'language' | 'theme'>>,
): Promise<void> {
  if (what.language) await loadWords(what.language)
  set(what)
  const { units, language, theme } = get()
  keepPreferences({ units, language, theme })
}

/** The bars of the open job by name. */
export function openBars(): readonly string[] {
  const { history } = get()
  return history ? barNames(history.now) : []
}

/** The job being fetched: it is laid once, however often it is asked for. */
let opening: string | undefined

/** Closes what is open, as Escape does: the list, or the open step. */
export function closeOpen(): void {
  if (address().list) leaveList()
  else closeStep()
}

/** From the list back to the job that lay open, be it before a reload; if there is none, to the newest. */
export function leaveList(sheet?: string): void {
  const { id, jobs } = get()
  const last = lastOpen()
  const job = id ?? (jobs.find((line) => line.id === last) ?? jobs[0])?.id
  if (job !== undefined) go({ job, ...(sheet !== undefined && { sheet }) })
}

/** Opens the job the address names, or the newest. */
export async function followAddress(): Promise<void> {
  const { job, list } = address()
  if (list) return
  if (job === undefined) {
    await loadList()
    const first = get().jobs[0]
    go(first ? { job: first.id } : { list: true }, true)
    return
  }
  if (job === get().id || job === opening) return
  opening = job
  await openJob(job)
  if (opening === job) opening = undefined
}
