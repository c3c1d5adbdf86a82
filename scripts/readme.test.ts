import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { computeJob, readJob, recordPlan } from '#job'

const readme = readFileSync(new URL('../README.md', import.meta.url), 'utf8')

test('the job in the README plans to the figures the README gives', () => {
  const text = /```json\n([\s\S]*?)```/.exec(readme)?.[1]
  const job = readJob(text ?? '')
  expect(job.problems).toBeUndefined()
  const computed = computeJob(job.ok!)
  expect(computed.problems).toBeUndefined()
  const plan = recordPlan(computed.ok!)
  const last = plan.steps.at(-1)!
  const mm = (m: number) => (m * 1000).toPrecision(3)
  const grams = (kg: number) => Math.round(kg * 1000).toString()
  const said = readme.replaceAll('\n', ' ').replace(/(\d) (\d{3})/g, '$1$2')
  expect(said).toContain(`cut ${mm(plan.stack!.sheets[0].length_m)} mm long`)
  expect(said).toContain(`${grams(plan.stack!.mass_kg)} g in all`)
  const { length, width, height } = last.size_m
  expect(said).toContain(`${mm(length)} × ${mm(width)} × ${mm(height)} mm in six heats`)
  expect(plan.totals!.heats).toBe(6)
  expect(said).toContain(`weigh ${grams(last.mass_kg)} g`)
})

test('the README shows the two commands that package.json has', () => {
  const { scripts } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'))
  for (const command of ['start', 'test']) {
    expect(readme).toContain(`npm ${command} `)
    expect(scripts[command]).toBeDefined()
  }
})
