import { engine, newJob, useDesk } from '#desk'
import { wordsIn } from '#words'

/** Bytes; a job is a page of text, and the engine reads two million characters. */
const LARGEST_FILE = 2_000_000

/** Opens a job file as a new job; what is wrong with it is told and mended on the card. */
export async function openFile(file: File): Promise<void> {
  const words = wordsIn(useDesk.getState().language)
  // By the size it is known before any of it is read.
  if (file.size > LARGEST_FILE) {
    const megabytes = say(file.size / 1e6)
    return useDesk.setState({ notice: { words: words.joblist.tooLarge(file.name, megabytes) } })
  }
  const text = await file.text()
  if (!/^\s*\{/.test(text))
    return useDesk.setState({ notice: { words: words.joblist.notText(file.name) } })
  const read = await engine.ask({ ask: 'read', text })
  if (!read.job) {
    useDesk.setState({
      notice: { words: words.joblist.notJob(file.name), problems: read.problems },
    })
    return
  }
  if (!(await newJob(read.job))) return
  if (read.problems.length > 0)
    useDesk.setState({ notice: { words: words.joblist.openedWithFaults(read.problems.length) } })
}

/** Megabytes to one place, as the language writes them. */
function say(megabytes: number): string {
  const { language } = useDesk.getState()
  return new Intl.NumberFormat(language, { maximumFractionDigits: 1 }).format(megabytes)
}

/** Gives the open job as a file, written as the command line writes it. */
export async function downloadJob(): Promise<void> {
  const job = useDesk.getState().history?.now
  if (!job) return
  const text = await engine.ask({ ask: 'write', job })
  const link = document.createElement('a')
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }))
  link.download = `${fileName(String(job.name ?? 'job'))}.json`
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000)
}

function fileName(name: string): string {
  const plain = name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
  return plain === '' ? 'job' : plain.slice(0, 60)
}
