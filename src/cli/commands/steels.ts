import { type SteelSheet, steelSheet, steelSheets } from '#job'
import { problemsText } from '#report'
import type { Command } from '../command.ts'

export const steels: Command = {
  name: 'steels',
  summary: 'List the grades known, or one with every figure and where it comes from.',
  usage: '[NAME] [--json]',
  options: { json: { type: 'boolean' } },
  help: ['NAME may be an alias: 75Ni8, 1.5634 and 15N20 are one steel.'],
  async run(given, { out, error, ink }) {
    const [name] = given.words
    if (name === undefined) {
      const sheets = steelSheets()
      if (given.options.json) out(`${JSON.stringify(sheets, null, 2)}\n`)
      else
        for (const s of sheets)
          out(
            `${ink.bold(s.name.padEnd(14))}${s.etch.padEnd(8)}${s.density.padEnd(12)}${s.analysis}\n`,
          )
      return 0
    }
    const sheet = steelSheet(name)
    if (sheet.problems) {
      error(`${problemsText(sheet.problems, ink)}\n`)
      return 1
    }
    out(given.options.json ? `${JSON.stringify(sheet.ok, null, 2)}\n` : page(sheet.ok, ink.bold))
    return 0
  },
}

function page(sheet: SteelSheet, bold: (text: string) => string): string {
  const rows = sheet.figures.map((f) => `  ${f.what.padEnd(18)}${f.value.padEnd(26)}${f.source}`)
  const head = [
    bold(sheet.name) + (sheet.aliases.length > 0 ? `  also ${sheet.aliases.join(', ')}` : ''),
    `  ${sheet.standard}`,
  ]
  return `${[...head, ...rows, ...sheet.notes.map((n) => `  ${n}`)].join('\n')}\n`
}
