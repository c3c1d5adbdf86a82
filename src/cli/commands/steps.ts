import { mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import { printQuantity } from '#units'
import { type BarPattern, type RoutePatterns, computeJob, routePatterns } from '#job'
import { problemsText } from '#report'
import { type Command, BadUsage, text } from '../command.ts'
import { jobFrom } from '../job-file.ts'
import { pictureHelp, pictureOptions, pictureWanted, writePicture } from '../picture.ts'

export const steps: Command = {
  name: 'steps',
  summary: 'Draw every bar after every step, and on the way there: its upper face and its end.',
  usage: 'FILE --pictures FOLDER [--between N]',
  options: {
    ...pictureOptions,
    pictures: { type: 'string' },
    between: { type: 'string' },
    even: { type: 'boolean' },
  },
  help: [
    'billetwright steps jobs/rigging-knife.json --pictures steps --ppmm 4',
    'The folder is made; the pictures are numbered in the order of the work.',
    '--between so many pictures more on the way through each step that is done bit by bit: frames of a film',
    '--even    as if forged perfectly even',
    ...pictureHelp.map((line) => line.replace('20 if left out', '5 if left out')),
  ],
  async run(given, terminal) {
    const folder = text(given, 'pictures')
    if (folder === undefined)
      throw new BadUsage('where the pictures go is not said', ['--pictures steps'])
    const wanted = pictureWanted(given, 5)
    const between = Number(text(given, 'between') ?? 0)
    if (!(Number.isInteger(between) && between >= 0 && between <= MOST_BETWEEN))
      throw new BadUsage(`--between ${text(given, 'between')} is no number of pictures`, [
        `--between 0 to ${MOST_BETWEEN}`,
      ])
    const job = await jobFrom(given)
    const computed = job.problems ? job : computeJob(job.ok, { signal: terminal.signal })
    if (computed.problems) {
      terminal.error(`${problemsText(computed.problems, terminal.ink)}\n`)
      return 1
    }
    const route = routePatterns(computed.ok, given.options.even === true)
    const patterns = framesOf(route, between)
    await mkdir(folder, { recursive: true })
    const digits = String(patterns.length).length
    const ending = wanted.map === 'lines' ? 'svg' : 'png'
    for (const [i, pattern] of patterns.entries()) {
      terminal.signal.throwIfAborted()
      terminal.progress(i / patterns.length, `${pattern.bar}: ${pattern.after}`)
      const name = `${String(i + 1).padStart(digits, '0')}-${nameOf(pattern)}`
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

const MOST_BETWEEN = 200

/** The stops of a route with so many looks in between on the way through each gradual step. */
function framesOf({ steps, partly }: RoutePatterns, between: number): readonly BarPattern[] {
  const shares = Array.from({ length: between }, (_, k) => (k + 1) / (between + 1))
  return steps.flatMap((step, i) => {
    const on = step.gradual ? shares.flatMap((share) => partly(i, share) ?? []) : []
    return [...on, step]
  })
}

function nameOf({ bar, after, done }: BarPattern): string {
  const far = done === undefined ? '' : `-${String(Math.round(done * 100)).padStart(2, '0')}`
  return `${bar}-${after}${far}`.replaceAll(' ', '-')
}

function sizeOf({ billet: { size } }: BarPattern): string {
  return [size.length, size.width, size.height].map((m) => printQuantity(m, 'length')).join(' × ')
}
