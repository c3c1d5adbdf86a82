import { readFile, stat } from 'node:fs/promises'
import { type Problem, type Result, failed } from '#problem'
import { type Job, readJob } from '#job'
import { BadUsage, type Given } from './command.ts'

const LARGEST = 50_000_000

/** The job in the file named first on the command line; `-` reads standard input. */
export async function jobFrom(given: Given): Promise<Result<Job>> {
  const [path, ...more] = given.words
  if (path === undefined)
    throw new BadUsage('no job file is named', ['billetwright new plaque > my-plate.json'])
  if (more.length > 0) throw new BadUsage(`one job file at a time: ${more.join(' ')} is too much`)
  const text = await readText(path)
  return text.problems ? text : readJob(text.ok)
}

export async function readText(path: string): Promise<Result<string>> {
  try {
    if (path === '-') return { ok: await standardInput() }
    const found = await stat(path)
    if (found.isDirectory()) return failed(unreadable(path, 'it is a folder'))
    if (found.size > LARGEST) {
      return failed(
        unreadable(
          path,
          `it holds ${Math.round(found.size / 1e6)} MB; a job file has a few kilobytes`,
        ),
      )
    }
    return { ok: await readFile(path, 'utf8') }
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code
    const why =
      code === 'ENOENT'
        ? 'there is no such file'
        : code === 'EACCES'
          ? 'it may not be read'
          : String(code ?? error)
    return failed(unreadable(path, why))
  }
}

function unreadable(path: string, why: string): Problem {
  return {
    at: path,
    what: `"${path}" cannot be read`,
    why,
    try: ['check the name and the folder', 'jobs/builders-plate.json is one of the sample jobs'],
  }
}

async function standardInput(): Promise<string> {
  const chunks: Buffer[] = []
  for await (const chunk of process.stdin) chunks.push(chunk as Buffer)
  return Buffer.concat(chunks).toString('utf8')
}
