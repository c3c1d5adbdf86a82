import { mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import { printQuantity } from '#units'
import { type BarPattern, computeJob, patternsOf } from '#job'
import { problemsText } from '#report'
import { type Command, BadUsage, text } from '../command.ts'
import { jobFrom } from '../job-file.ts'
import { pictureHelp, pictureOptions, pictureWanted, writePicture } from '../picture.ts'

export const steps: Command = {
  name: 'steps',
  summary: 'Draw every bar after every step: its upper face and its end.',
  usage: 'FILE --pictures FOLDER',
  options: { ...pictureOptions, pictures: { type: 'string' }, even: { type: 'boolean' } },
  help: [
    'billetwright steps jobs/rigging-knife.json --pictures steps --ppmm 4',
    'The folder is made; the pictures are numbered in the order of the work.',
    '--even    as if forged perfectly even',
    ...pictureHelp.map((line) => line.replace('20 if left out', '5 if left out')),
  ],
  async run(given, terminal) {
    const folder = text(given, 'pictures')
    if (folder === undefined)
      throw new BadUsage('where the pictures go is not said', ['--pictures steps'])
    const wanted = pictureWanted(given, 5)
    const job = await jobFrom(given)
    const computed = job.problems ? job : computeJob(job.ok, { signal: terminal.signal })
    if (computed.problems) {
      terminal.error(`${problemsText(computed.problems, terminal.ink)}\n`)
      return 1
    }
    const patterns = patternsOf(computed.ok, given.options.even === true)
    await mkdir(folder, { recursive: true })
    const digits = String(patterns.length).length
    const ending = wanted.map === 'lines' ? 'svg' : 'png'
    for (const [i, pattern] of patterns.entries()) {
      terminal.signal.throwIfAborted()
      terminal.progress(i / patterns.length, `${pattern.bar}: ${pattern.after}`)
      const name =
        `${String(i + 1).padStart(digits, '0')}-${pattern.bar}-${pattern.after}`.replaceAll(
          ' ',
          '-',
        )
      const still = { ...terminal, progress: () => undefined }
      await writePicture(
        pattern,
        { side: 'front' },
        wanted,
        join(folder, `${name}-face.${ending}`),
        still,
      )
      await writePicture(
        pattern,
        { side: 'butt' },
        wanted,
        join(folder, `${name}-end.${ending}`),
        still,
      )
      terminal.out(`${name}: ${sizeOf(pattern)}\n`)
    }
    return 0
  },
}

function sizeOf({ billet: { size } }: BarPattern): string {
  return [size.length, size.width, size.height].map((m) => printQuantity(m, 'length')).join(' × ')
}
