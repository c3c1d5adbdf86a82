import type { Result } from '#problem'
import { type Job, cutListsOfJob, fromRemnantsOfJob, priceJob } from '#job'
import {
  type CardUnits,
  type PlanningStyle,
  cutListText,
  problemsText,
  quoteText,
  remnantText,
} from '#report'
import { type Command, one } from '../command.ts'
import { jobFrom } from '../job-file.ts'

interface Answer<T> {
  readonly name: string
  readonly summary: string
  readonly help: readonly string[]
  work(job: Job, signal: AbortSignal): Result<T>
  print(found: T, style: PlanningStyle): string
  data(found: T): unknown
}

/** A command that works one thing out of a job and prints it, or gives it as data. */
function answering<T>({ name, summary, help, work, print, data }: Answer<T>): Command {
  return {
    name,
    summary,
    usage: 'FILE [--units metric|inch] [--json]',
    options: { json: { type: 'boolean' }, units: { type: 'string' } },
    help,
    async run(given, terminal) {
      const units = one(given, ['metric', 'inch'], 'units', 'metric') as CardUnits
      const job = await jobFrom(given)
      const found = job.problems ? job : work(job.ok, terminal.signal)
      if (found.problems) {
        terminal.error(`${problemsText(found.problems, terminal.ink)}\n`)
        return 1
      }
      if (given.options.json === true) terminal.out(`${JSON.stringify(data(found.ok), null, 2)}\n`)
      else terminal.out(print(found.ok, { units, ink: terminal.ink }))
      return 0
    },
  }
}

export const cut = answering({
  name: 'cut',
  summary: 'Cut the stacks of a job from the bars and remnants on the rack, with least waste.',
  help: [
    'Remnants are used first, then bars on the rack; what is missing is to be bought in standard lengths.',
    'The rack stands in the job file: "rack": [ { "steel": "1095", "thickness": "3 mm", … } ]',
    '"cutting" says what is lost at the ends, the shortest remnant kept, and metric or inch sizes.',
  ],
  work: cutListsOfJob,
  print: cutListText,
  data: (lists) => lists,
})

export const quote = answering({
  name: 'quote',
  summary: 'Hours, fire, steel and belts of a job, its price, and the range it may cost.',
  help: [
    'Every rate is the shop’s own: "rates" in the job file; common practice where it says nothing.',
  ],
  work: priceJob,
  print: quoteText,
  data: ({ cost, quote }) => ({ cost, quote }),
})

export const fromRemnant = answering({
  name: 'from-remnant',
  summary: 'What can be made of the remnants on the rack, and of those the job sets aside.',
  help: ['For every kind of piece: the greatest, ground from the remnant or forged out of it.'],
  work: fromRemnantsOfJob,
  print: remnantText,
  data: (uses) => uses,
})
