import { computeJob } from '#job'
import { problemsText } from '#report'
import type { Command } from '../command.ts'
import { jobFrom } from '../job-file.ts'

export const check: Command = {
  name: 'check',
  summary: 'Say everything that is wrong with a job, and nothing else.',
  usage: 'FILE',
  options: {},
  help: [
    'Prints problems first, then warnings. Nothing printed and exit code 0: the job is sound.',
  ],
  async run(given, terminal) {
    const job = await jobFrom(given)
    const computed = job.problems ? job : computeJob(job.ok, { signal: terminal.signal })
    if (computed.problems) {
      terminal.out(`${problemsText(computed.problems, terminal.ink)}\n`)
      return 1
    }
    if (computed.ok.warnings.length > 0)
      terminal.out(`${problemsText(computed.ok.warnings, terminal.ink)}\n`)
    return 0
  },
}
