import { computeJob } from '#job'
import { problemsText } from '#report'
import { BadUsage, type Command, type ExitCode, type Terminal } from '../command.ts'
import { jobFrom } from '../job-file.ts'

export const check: Command = {
  name: 'check',
  summary: 'Say everything that is wrong with a job, and nothing else.',
  usage: 'FILE [FILE …]',
  options: {},
  help: [
    'Prints problems first, then warnings. Nothing printed and exit code 0: the job is sound.',
    'Of several files each is named before what is wrong with it.',
  ],
  async run(given, terminal) {
    if (given.words.length === 0)
      throw new BadUsage('no job file is named', ['billetwright new plaque > my-plate.json'])
    let code: ExitCode = 0
    for (const file of given.words) {
      const { told, sound } = await checkOne(file, terminal)
      if (!sound) code = 1
      if (given.words.length > 1) terminal.out(`${terminal.ink.bold(`== ${file}`)}\n`)
      if (told !== '') terminal.out(`${told}\n`)
    }
    return code
  },
}

async function checkOne(
  file: string,
  { ink, signal }: Terminal,
): Promise<{ readonly told: string; readonly sound: boolean }> {
  const job = await jobFrom({ words: [file], options: {} })
  const computed = job.problems ? job : computeJob(job.ok, { signal })
  if (computed.problems) return { told: problemsText(computed.problems, ink), sound: false }
  return { told: problemsText(computed.ok.warnings, ink), sound: true }
}
