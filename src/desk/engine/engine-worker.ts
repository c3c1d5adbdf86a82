import { declared, heatColour, readJob, starterJob, startingSizes, writeJob } from '#job'
import { pieceKinds } from '#piece'
import { drawPiece } from './draw-piece.ts'
import type { Answers, AskMessage, Declarations, Reply } from './messages.ts'
import type { PaintOrder } from './paint-orders.ts'
import { readLeniently } from './read-leniently.ts'
import { asideFromLast } from './worked-job.ts'
import { workOut } from './work-out.ts'

/** The engine in a worker: asks come in by number, answers go out under the same. */
const post = (reply: Reply) => postMessage(reply)

addEventListener('message', ({ data }: MessageEvent<AskMessage | PaintOrder>) => {
  if ('ppmm' in data) return void import('./paint-orders.ts').then(({ fill }) => fill(data))
  const { number } = data
  try {
    if (isLaid(data)) void lay(data)
    else post({ number, answer: answer(data) })
  } catch (fault) {
    if (fault instanceof Stopped) post({ number, stopped: true })
    else post({ number, fault: (fault as Error).message })
  }
})

type Foreseeing = Extract<AskMessage, { ask: 'foresee' | 'allowance' | 'weigh numbers' | 'try' }>
type Laid = Foreseeing | Extract<AskMessage, { ask: 'steel' | 'heats' | 'ways' }>

const laid: readonly AskMessage['ask'][] = [
  'steel',
  'heats',
  'ways',
  'foresee',
  'allowance',
  'weigh numbers',
  'try',
] satisfies Laid['ask'][]

function isLaid(asked: AskMessage): asked is Laid {
  return laid.includes(asked.ask)
}

/** Where metal lies, what the heats leave and what else could be done is a large part of the engine, fetched when first asked for. */
async function lay(asked: Laid): Promise<void> {
  const { number } = asked
  try {
    if (asked.ask === 'ways') {
      const { suggestWays } = await import('./suggest-ways.ts')
      return post({ number, answer: suggestWays(asked.job, asked.pattern, searching(asked)) })
    }
    if (asked.ask !== 'steel' && asked.ask !== 'heats')
      return post({ number, answer: await lookAhead(asked) })
    const { layHeats, laySteel } = await import('./lay-steel.ts')
    if (asked.ask === 'heats') return post({ number, answer: layHeats(asked.job) })
    const laid = laySteel(asked.job, asked.place, asked.known, asked.shape)
    const rows = { ...laid?.facets, ...laid?.mesh }
    const transfer = Object.values(rows).flatMap((row) =>
      ArrayBuffer.isView(row) ? [row.buffer] : [],
    )
    postMessage({ number, answer: laid } satisfies Reply, { transfer })
  } catch (fault) {
    if (fault instanceof Stopped) post({ number, stopped: true })
    else post({ number, fault: (fault as Error).message })
  }
}

/** How far a search is, told in hundredths of it, and its stop. */
function searching({ number, stop }: AskMessage) {
  return {
    signal: flagSignal(stop, number),
    onProgress: (progress: number) => post({ number, progress, doing: '100' }),
  }
}

async function lookAhead(asked: Foreseeing): Promise<Answers[Foreseeing['ask']]> {
  const { allow, foresee, tryOut, weighNumbers } = await import('./foresee.ts')
  const { number, job } = asked
  const long = {
    signal: flagSignal(asked.stop, number),
    onProgress: (done: number, of: number) =>
      post({ number, progress: done / of, doing: String(of) }),
  }
  if (asked.ask === 'foresee') return foresee(job, long)
  if (asked.ask === 'allowance') return allow(job, asked.risk, long)
  return asked.ask === 'try' ? tryOut(job, asked.other) : weighNumbers(job, long)
}

function answer(asked: Exclude<AskMessage, Laid>): Answers[keyof Answers] {
  switch (asked.ask) {
    case 'declare':
      return declarations()
    case 'compute':
      return worked(asked)
    case 'piece': {
      const { job } = readLeniently(asked.job)
      return job?.piece && drawPiece(job.piece)
    }
    case 'read': {
      const read = readJob(asked.text)
      return read.ok ? { job: read.ok.written, problems: [] } : rawElse(asked.text, read.problems)
    }
    case 'write':
      return writeJob(asked.job)
    case 'begin':
      return starterJob(asked.kind, asked.units).ok
  }
}

/** A file that is a job with faults is opened with its faults; anything else is refused. */
function rawElse(text: string, problems: Answers['read']['problems']): Answers['read'] {
  try {
    const raw: unknown = JSON.parse(text)
    const group = typeof raw === 'object' && raw !== null && !Array.isArray(raw)
    if (group && (raw as { billetwright?: unknown }).billetwright === 1)
      return { job: raw as Record<string, unknown>, problems }
  } catch {
    // Not JSON: the problems say so.
  }
  return { problems }
}

/** Work that is soon done says nothing of how far it is: each word would hold the window up. */
const TELL_AFTER = 100

function tellLate(number: number): (share: number, doing: string) => void {
  const since = performance.now()
  return (progress, doing) => {
    if (performance.now() - since > TELL_AFTER) post({ number, progress, doing })
  }
}

function worked(asked: Extract<AskMessage, { ask: 'compute' }>): Answers['compute'] {
  const { job, solved, latest, number } = asked
  clearTimeout(rehearsal)
  const told = workOut(job, solved, {
    signal: flagSignal(latest, number),
    onProgress: tellLate(number),
  })
  rehearseSoon(() => workOut(job, solved), IDLE)
  return told
}

/** Nothing asked for so long is a pause, ms. */
const IDLE = 1000
/** Between two rehearsals what is asked meanwhile is answered, ms. */
const BREATH = 30
/** Rehearsing takes no longer in all, ms. */
const REHEARSALS = 200
let rehearsing = 0
let rehearsal: ReturnType<typeof setTimeout> | undefined

/** Code that has run some times runs twice as fast: in the first pause a plan is worked out again and again, aside, so that the first edits find it so. */
function rehearseSoon(work: () => void, after: number): void {
  if (rehearsing >= REHEARSALS) return
  rehearsal = setTimeout(() => {
    const since = performance.now()
    asideFromLast(work)
    rehearsing += performance.now() - since
    rehearseSoon(work, BREATH)
  }, after)
}

class Stopped extends Error {}

/** A signal that reads a flag in shared memory: long work stops although no message can come in. */
function flagSignal(
  latest: SharedArrayBuffer | undefined,
  number: number,
): AbortSignal | undefined {
  if (!latest) return undefined
  const flag = new Int32Array(latest)
  return {
    get aborted() {
      return Atomics.load(flag, 0) > number
    },
    throwIfAborted() {
      if (Atomics.load(flag, 0) > number) throw new Stopped()
    },
  } as unknown as AbortSignal
}

function declarations(): Declarations {
  return {
    ...declared(),
    kinds: pieceKinds.map((kind) => ({
      name: kind.name,
      title: kind.title,
      summary: kind.summary,
      parameters: kind.parameters,
      thicknesses: kind.thicknesses,
      sizes: kind.sizes,
      start: { metric: startingSizes(kind, 'metric'), inch: startingSizes(kind, 'inch') },
    })),
    glow: Array.from({ length: 91 }, (_, i) => heatColour(500 + 273.15 + 10 * i).hex ?? '#000000'),
  }
}
