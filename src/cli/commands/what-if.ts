import { sensitivitiesOfJob, whatIfOfJob } from '#job'
import { type CardUnits, problemsText, sensitivityText, whatIfText } from '#report'
import { BadUsage, type Command, one, text } from '../command.ts'
import { jobFrom } from '../job-file.ts'

export const ifChanged: Command = {
  name: 'what-if',
  summary: 'Change one number of a job and see what moves; or which number matters most.',
  usage: 'FILE [--change "PLACE = VALUE"] [--units metric|inch] [--json]',
  options: { json: { type: 'boolean' }, units: { type: 'string' }, change: { type: 'string' } },
  help: [
    '--change "bars.plate[4].height = 15 mm"   steps are counted from 0, as problems name them',
    '--change "shop.crop = 10 mm"              anything that stands in a job file will do',
    'without --change: the numbers of the route that move the steel most, strongest first',
  ],
  async run(given, terminal) {
    const units = one(given, ['metric', 'inch'], 'units', 'metric') as CardUnits
    const change = text(given, 'change')
    const match = change === undefined ? undefined : /^\s*([\w.[\]-]+)\s*=\s*(.+?)\s*$/.exec(change)
    if (match === null) throw new BadUsage('--change is a place, an equals sign and a value')
    const job = await jobFrom(given)
    const json = given.options.json === true
    if (match === undefined) {
      const found = job.problems ? job : sensitivitiesOfJob(job.ok, terminal.signal)
      if (found.problems) {
        terminal.error(`${problemsText(found.problems, terminal.ink)}\n`)
        return 1
      }
      terminal.out(json ? `${JSON.stringify(found.ok, null, 2)}\n` : sensitivityText(found.ok, 12))
      return 0
    }
    const [, place = '', value = ''] = match
    // Whole numbers stand bare in a job file, everything else in quotes.
    const written = /^-?\d+$/.test(value) ? Number(value) : value
    const found = job.problems ? job : whatIfOfJob(job.ok, place, written)
    if (found.problems) {
      terminal.error(`${problemsText(found.problems, terminal.ink)}\n`)
      return 1
    }
    terminal.out(json ? `${JSON.stringify(found.ok, null, 2)}\n` : whatIfText(found.ok, { units }))
    return 0
  },
}
