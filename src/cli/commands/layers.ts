import { type Restack, countRestacks } from '#job'
import { problemsText } from '#report'
import { BadUsage, type Command } from '../command.ts'

export const layers: Command = {
  name: 'layers',
  summary: 'Count layers through restacks, as laid and after like merges with like.',
  usage: 'SHEETS [PIECES …] [--fold] [--between like|other]',
  options: { fold: { type: 'boolean' }, between: { type: 'string' }, json: { type: 'boolean' } },
  help: [
    'billetwright layers 15 3 4    fifteen alternating sheets, cut in three, then in four',
    '--fold             every other piece turned over, as in folding (an even stack then merges)',
    '--between other    an extra sheet of the other steel at each joint (or: like)',
  ],
  async run(given, { out, error, ink }) {
    const [sheets, ...pieces] = given.words.map(whole)
    if (sheets === undefined)
      throw new BadUsage('no number of sheets is given', ['billetwright layers 15 3 4'])
    const between = given.options.between as Restack['between']
    if (between !== undefined && between !== 'like' && between !== 'other')
      throw new BadUsage(`--between ${String(between)} is not known`, ['like, or other'])
    const lay = given.options.fold ? 'folded' : 'straight'
    const counted = countRestacks(
      sheets,
      pieces.map((n) => ({ pieces: n, lay, between })),
    )
    if (counted.problems) {
      error(`${problemsText(counted.problems, ink)}\n`)
      return 1
    }
    if (given.options.json) out(`${JSON.stringify(counted.ok, null, 2)}\n`)
    else {
      for (const step of counted.ok) {
        const how = step.pieces === 1 ? 'first stack' : `restacked from ${step.pieces}`
        const merges =
          step.mergedHere > 0
            ? `  ${step.mergedHere} like ${step.mergedHere === 1 ? 'joint' : 'joints'} merged`
            : ''
        out(
          `${how.padEnd(20)}${ink.bold(String(step.merged).padStart(9))} layers  ${String(step.laid).padStart(9)} as laid${merges}\n`,
        )
      }
    }
    return 0
  },
}

function whole(word: string): number {
  if (!/^\d{1,7}$/.test(word))
    throw new BadUsage(`"${word.slice(0, 40)}" is not a whole number`, [
      'billetwright layers 15 3 4',
    ])
  return Number(word)
}
