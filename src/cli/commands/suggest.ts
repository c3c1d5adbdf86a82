import { suggestForJob, writeJob } from '#job'
import { type CardUnits, problemsText, suggestionsText } from '#report'
import { BadUsage, type Command, one, text } from '../command.ts'
import { jobFrom } from '../job-file.ts'

export const suggest: Command = {
  name: 'suggest',
  summary:
    'Find other ways to build the pattern up, with what each costs in heats, steel and hours.',
  usage: 'FILE [--bar NAME] [--pattern NAME] [--take N] [--units metric|inch] [--json]',
  options: {
    json: { type: 'boolean' },
    units: { type: 'string' },
    bar: { type: 'string' },
    pattern: { type: 'string' },
    take: { type: 'string' },
  },
  help: [
    'What may vary: sheets and their thicknesses, pieces and sections of every restack.',
    'What is kept: everything after the last weld of the build-up, and all other bars.',
    'Wishes for lines, layers, sheets, heats, hours and steel in the job are kept to.',
    '--bar NAME      the bar to build up another way; otherwise the one with most layers',
    '--pattern NAME  another pattern: random, ladder, raindrop, twist, feather, straight laminate on edge',
    '--take N        write the job with route N in it to standard output',
    '--json          the set as data, in SI',
  ],
  async run(given, terminal) {
    const units = one(given, ['metric', 'inch'], 'units', 'metric') as CardUnits
    const job = await jobFrom(given)
    const { signal } = terminal
    const found = job.problems
      ? job
      : suggestForJob(job.ok, {
          bar: text(given, 'bar'),
          pattern: text(given, 'pattern'),
          signal,
          onProgress: (share, doing) => terminal.progress(share, doing),
        })
    if (found.problems) {
      if (given.options.json === true)
        terminal.out(`${JSON.stringify({ routes: [], problems: found.problems }, null, 2)}\n`)
      else terminal.error(`${problemsText(found.problems, terminal.ink)}\n`)
      return 1
    }
    const take = text(given, 'take')
    if (take !== undefined) {
      const number = Number(take)
      if (!Number.isInteger(number) || number < 1)
        throw new BadUsage('--take is a number of the set')
      const taken = found.ok.take(number)
      if (taken.problems) {
        terminal.error(`${problemsText(taken.problems, terminal.ink)}\n`)
        return 1
      }
      terminal.out(writeJob(taken.ok))
      return 0
    }
    const { bars, considered, routes } = found.ok
    if (given.options.json === true)
      terminal.out(`${JSON.stringify({ bars, considered, routes }, null, 2)}\n`)
    else terminal.out(suggestionsText(found.ok, { units, ink: terminal.ink }))
    return 0
  },
}
