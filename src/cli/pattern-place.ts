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
  '--bar     a bar of the job, after its last step or after --step N as the card numbers them',
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
  const bar = text(given, 'bar') ?? computed.ok.job.route.finish
  const own = computed.ok.plan.steps.filter((step) => step.bar === bar)
  if (own.length === 0)
    throw new BadUsage(`there is no bar called "${bar}"`, [
      `one of: ${Object.keys(computed.ok.job.route.bars).join(', ')}`,
    ])
  const step = text(given, 'step')
  const index = step === undefined ? undefined : Number(step) - 1
  const done = measure(given, 'done', 'ratio')
  if (done !== undefined && !(done >= 0 && done <= 1))
    throw new BadUsage(`--done ${text(given, 'done')} is no share of a step`, ['--done 0.5'])
  const even = given.options.even === true
  const pattern = patternOf(computed.ok, { bar, index, done, even })
  if (!pattern)
    throw new BadUsage(`the bar "${bar}" has no step ${step}`, [`--step 1 to ${own.length}`])
  return pattern
}
