import { readQuantity } from '#units'
import { USUAL_DRAWS, allowanceOfJob, computeJob } from '#job'
import { type CardUnits, problemsText, rangeText } from '#report'
import { BadUsage, type Command, one, text } from '../command.ts'
import { drawOnAllCores } from '../draw-crew.ts'
import { jobFrom } from '../job-file.ts'

export const range: Command = {
  name: 'range',
  summary:
    'How the piece is likely to turn out: mass, length, lines, and whether it comes up short.',
  usage: 'FILE [--draws N] [--risk P] [--longer P] [--units metric|inch] [--json]',
  options: {
    json: { type: 'boolean' },
    units: { type: 'string' },
    draws: { type: 'string' },
    risk: { type: 'string' },
    longer: { type: 'string' },
  },
  help: [
    'Makes the piece over and over on paper, bars, heats, cuts and the hand each as far off as',
    'the tolerances of the job say (common practice where it says nothing). The job’s seed fixes it.',
    '--draws N        makings, 10 000 unless said otherwise',
    '--risk P         also find how much longer to cut the stacks: --risk "5 %"',
    '--longer P       as if every stack were cut longer by this share',
  ],
  async run(given, terminal) {
    const units = one(given, ['metric', 'inch'], 'units', 'metric') as CardUnits
    const draws = Number(text(given, 'draws') ?? USUAL_DRAWS)
    if (!Number.isInteger(draws) || draws < 10 || draws > 10_000_000)
      throw new BadUsage('--draws is a whole number from 10 to 10 000 000')
    const job = await jobFrom(given)
    if (job.problems) {
      terminal.error(`${problemsText(job.problems, terminal.ink)}\n`)
      return 1
    }
    const longer = share(text(given, 'longer'), 'longer') ?? 0
    const found = await drawOnAllCores(job.ok, draws, longer, terminal.signal)
    if (found.problems) {
      terminal.error(`${problemsText(found.problems, terminal.ink)}\n`)
      return 1
    }
    const risk = share(text(given, 'risk'), 'risk')
    const allowance =
      risk === undefined
        ? undefined
        : { risk, found: allowanceOfJob(job.ok, risk, terminal.signal).ok }
    if (given.options.json === true) {
      terminal.out(`${JSON.stringify({ ...found.ok, allowance }, null, 2)}\n`)
      return 0
    }
    const { steps = [] } = computeJob(job.ok, { signal: terminal.signal }).ok?.plan ?? {}
    terminal.out(rangeText(found.ok, steps, allowance, { units, ink: terminal.ink }))
    return 0
  },
}

function share(word: string | undefined, option: string): number | undefined {
  if (word === undefined) return undefined
  const read = readQuantity(word, 'ratio')
  if (read.problems || read.ok.si < 0 || read.ok.si >= 1)
    throw new BadUsage(`--${option} is a share from 0 to 100 %, such as "5 %"`)
  return read.ok.si
}
