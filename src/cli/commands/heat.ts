import { computeJob, recordHeats, treatJob } from '#job'
import { type CardUnits, heatHistory, problemsText } from '#report'
import { BadUsage, type Command, one, text } from '../command.ts'
import { jobFrom } from '../job-file.ts'

export const heat: Command = {
  name: 'heat',
  summary: 'Follow a job through its heats: temperatures, carbon, scale, hardness.',
  usage: 'FILE [--step N] [--units metric|inch|both] [--json]',
  options: { json: { type: 'boolean' }, step: { type: 'string' }, units: { type: 'string' } },
  help: [
    'FILE is a job file, or - for standard input.',
    '--step N  only the heats of step N of the route card',
    '--units   metric (usual), inch, or both',
    '--json    heats with their histories, layers with carbon and hardness, in SI',
    'Each heat is plotted: s the skin, c the core, * where the bar is one temperature throughout.',
  ],
  async run(given, terminal) {
    const units = one(given, ['metric', 'inch', 'both'], 'units', 'metric') as CardUnits
    const asked = text(given, 'step')
    const step = asked === undefined ? undefined : Number(asked)
    const job = await jobFrom(given)
    const computed = job.problems ? job : computeJob(job.ok, { signal: terminal.signal })
    if (computed.problems) {
      terminal.error(`${problemsText(computed.problems, terminal.ink)}\n`)
      return 1
    }
    const { signal, ink, width } = terminal
    const treated = treatJob(computed.ok, { signal, onProgress: terminal.progress })
    if (step !== undefined && !treated.heats.some((h) => h.step === step)) {
      const hot = [...new Set(treated.heats.map((h) => h.step))]
      throw new BadUsage(`step ${asked} has no heats`, [
        hot.length > 0 ? `steps with heats: ${hot.join(', ')}` : 'no step of this job has heats',
      ])
    }
    if (given.options.json === true) {
      const record = recordHeats(treated)
      const heats = record.heats.filter((h) => step === undefined || h.step === step)
      terminal.out(`${JSON.stringify({ ...record, heats }, null, 2)}\n`)
    } else terminal.out(heatHistory(computed.ok.job.name, treated, { units, ink, width }, step))
    return 0
  },
}
