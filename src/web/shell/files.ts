import { engine, newJob, useDesk } from '#desk'
import { wordsIn } from '#words'

/** Opens a job file as a new job; what is wrong with it is told and mended on the card. */
export async function openFile(file: File): Promise<void> {
  const words = wordsIn(useDesk.getState().language)
  const read = await engine.ask({ ask: 'read', text: await file.text() })
  if (!read.job) {
    useDesk.setState({
      notice: { words: words.joblist.notJob(file.name), problems: read.problems },
    })
    return
  }
  await newJob(read.job)
  if (read.problems.length > 0)
    useDesk.setState({ notice: { words: words.joblist.openedWithFaults(read.problems.length) } })
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
