import { access, writeFile } from 'node:fs/promises'
import { pieceKinds } from '#piece'
import { starterJob, writeJob } from '#job'
import { problemsText } from '#report'
import { BadUsage, type Command, text } from '../command.ts'

export const fresh: Command = {
  name: 'new',
  summary: 'Write a job to begin with: a piece of a kind and a plain route that makes it.',
  usage: 'KIND [--out FILE]',
  options: { out: { type: 'string' } },
  help: [
    `KIND: ${pieceKinds.map((kind) => kind.name).join(', ')}`,
    'Without --out the job is printed. A file that is there already is never written over.',
  ],
  async run(given, { out, error, ink }) {
    const [kind] = given.words
    if (kind === undefined)
      throw new BadUsage('no kind of piece is named', [
        `one of: ${pieceKinds.map((k) => k.name).join(', ')}`,
      ])
    const job = starterJob(kind)
    if (job.problems) {
      error(`${problemsText(job.problems, ink)}\n`)
      return 1
    }
    const path = text(given, 'out')
    const written = writeJob(job.ok)
    if (path === undefined) {
      out(written)
      return 0
    }
    if (await there(path)) throw new BadUsage(`"${path}" is there already`, ['another name'])
    await writeFile(path, written)
    out(`Written: ${path}. Now: billetwright plan ${path}\n`)
    return 0
  },
}

async function there(path: string): Promise<boolean> {
  return access(path).then(
    () => true,
    () => false,
  )
}
