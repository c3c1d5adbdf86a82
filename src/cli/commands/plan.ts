import { computeJob, recordPlan, recordProblems, treatJob } from '#job'
import { type CardUnits, problemsText, routeCard } from '#report'
import { type Command, one } from '../command.ts'
import { jobFrom } from '../job-file.ts'

export const plan: Command = {
  name: 'plan',
  summary: 'Work a job out and print its route card.',
  usage: 'FILE [--units metric|inch|both] [--json] [--brief]',
  options: { json: { type: 'boolean' }, units: { type: 'string' }, brief: { type: 'boolean' } },
  help: [
    'FILE is a job file, or - for standard input.',
    '--units   metric (usual), inch (nearest 1/64; thin stock in thousandths), or both',
    '--json    the plan as data, in SI, for other programs',
    '--brief   without the cautions: for a second look, not for the anvil',
  ],
  async run(given, terminal) {
    const units = one(given, ['metric', 'inch', 'both'], 'units', 'metric') as CardUnits
    const json = given.options.json === true
    const job = await jobFrom(given)
    const computed = job.problems ? job : computeJob(job.ok, { signal: terminal.signal })
    if (computed.problems) {
      if (json)
        terminal.out(
          `${JSON.stringify(recordProblems(job.ok?.name ?? '', computed.problems), null, 2)}\n`,
        )
      else terminal.error(`${problemsText(computed.problems, terminal.ink)}\n`)
      return 1
    }
    const treated = treatJob(computed.ok, {
      signal: terminal.signal,
      onProgress: terminal.progress,
    })
    if (json) terminal.out(`${JSON.stringify(recordPlan(computed.ok, treated), null, 2)}\n`)
    else {
      const { ink, width } = terminal
      terminal.out(
        routeCard(computed.ok, { units, ink, width, brief: given.options.brief === true, treated }),
      )
    }
    return 0
  },
}
