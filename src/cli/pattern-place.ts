import { type BarPattern, computeJob, patternOf } from '#job'
import { problemsText } from '#report'
import { BadUsage, type Given, type Options, type Terminal, text } from './command.ts'
import { jobFrom } from './job-file.ts'
import { measure } from './picture.ts'

/** Which bar, after which step: asked for alike by every command that looks at the metal. */
export const placeOptions: Options = {
  bar: { type: 'string' },
  step: { type: 'string' },
  done: { type: 'string' },
  even: { type: 'boolean' },
}

export const placeHelp = [
  '--bar     a bar of the job, after its last step',
  '--step    after step N as the card numbers them, of whichever bar it is',
  '--done    how far that step has come, as 0.5 or "50 %": the metal on the way; what is done at a stroke is done from the middle on',
  '--even    as if forged perfectly even: the plan without the hand',
]

/** `after twist`, or `with twist half done` in figures. */
export function whenOf({ after, done }: BarPattern): string {
  return done === undefined ? `after ${after}` : `with ${after} ${Math.round(done * 100)} % done`
}

/** The pattern asked for; undefined where the job has problems, which are then told. */
export async function patternFrom(
  given: Given,
  terminal: Terminal,
): Promise<BarPattern | undefined> {
  const job = await jobFrom(given)
  const computed = job.problems ? job : computeJob(job.ok, { signal: terminal.signal })
  if (computed.problems) {
    terminal.error(`${problemsText(computed.problems, terminal.ink)}\n`)
    return undefined
  }
  const { route } = computed.ok.job
  const { steps } = computed.ok.plan
  const named = text(given, 'bar')
  if (named !== undefined && !(named in route.bars))
    throw new BadUsage(`there is no bar called "${named}"`, [
      `one of: ${Object.keys(route.bars).join(', ')}`,
    ])
  const numbers = steps.flatMap(({ bar }, i) => (bar === (named ?? bar) ? [i + 1] : []))
  const number = text(given, 'step')
  if (number !== undefined && !numbers.includes(Number(number)))
    throw new BadUsage(
      named === undefined
        ? `the card has no step ${number}`
        : `step ${number} of the card is none of the bar "${named}"`,
      [`--step ${numbers[0]} to ${numbers.at(-1)}`],
    )
  const asked = number === undefined ? undefined : steps[Number(number) - 1]
  const done = measure(given, 'done', 'ratio')
  if (done !== undefined && !(done >= 0 && done <= 1))
    throw new BadUsage(`--done ${text(given, 'done')} is no share of a step`, ['--done 0.5'])
  const even = given.options.even === true
  const bar = asked?.bar ?? named ?? route.finish
  const pattern = patternOf(computed.ok, { bar, index: asked?.index, done, even })
  if (!pattern) throw new BadUsage(`the bar "${bar}" has no steps`)
  return pattern
}
