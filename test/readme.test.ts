import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { cardSteps, computeJob, readJob } from '#job'
import { sayIn } from '#report'

const readme = readFileSync(new URL('../README.md', import.meta.url), 'utf8')

it('the job in the README works out to the figures printed below it', () => {
  const [, text] = /```json\n([\s\S]*?)```/.exec(readme) ?? []
  const job = readJob(text ?? '')
  if (!job.ok) throw new Error(JSON.stringify(job.problems))
  const computed = computeJob(job.ok)
  if (!computed.ok) throw new Error(JSON.stringify(computed.problems))
  const { totals, steps } = cardSteps(computed.ok)
  const say = sayIn('metric')
  const plain = readme.replaceAll('\u202f', ' ')
  const told = [
    `cut ${say.length(steps[0].taken[0].length)} long`,
    `${say.mass(totals.stackMass)} in all`,
    say.block(totals.finishedSize),
    `${['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'][totals.heats]} heats`,
    `weigh ${say.mass(totals.finishedMass)}`,
  ]
  for (const figure of told) expect(plain).toContain(figure.replaceAll('\u202f', ' '))
})

it('shows the two commands that package.json has', () => {
  const { scripts } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'))
  for (const command of ['start', 'test']) {
    expect(readme).toContain(`npm ${command} `)
    expect(scripts[command]).toBeDefined()
  }
})
