import { jobSchema } from '#job'
import type { Command } from '../command.ts'

export const schema: Command = {
  name: 'schema',
  summary: 'Print the JSON Schema of a job file.',
  usage: '',
  options: {},
  help: ['The schema comes from the same declarations that read the file.'],
  async run(_given, { out }) {
    out(`${JSON.stringify(jobSchema(), null, 2)}\n`)
    return 0
  },
}
