import {
  CAUTIONS_DEFER,
  type Computed,
  type Job,
  type SoFar,
  cardStep,
  cardSteps,
  densitiesFor,
  routeSoFar,
} from '#job'
import type { Problem } from '#problem'
import type { Billet, Build, DrawnBar, Row, Worked, Written } from './messages.ts'
import { weighWish } from './weigh-wish.ts'
import { workedJob } from './worked-job.ts'

type DoneStep = SoFar['steps'][number]

/** Works a written job out, as far as it goes. */
export function workOut(
  written: Written,
  solvedBefore: Readonly<Record<string, number>>,
  options: Parameters<typeof workedJob>[1] = {},
): Worked {
  const since = performance.now()
  const name = typeof written.name === 'string' ? written.name : ''
  const { read, computed, problems } = workedJob(written, options)
  const bare = { name, warnings: [], cautionsDefer: CAUTIONS_DEFER, solved: {}, standings: [] }
  const milliseconds = () => performance.now() - since
  if (!read.job)
    return {
      ...bare,
      sound: false,
      rows: [],
      problems,
      milliseconds: milliseconds(),
    }
  const weight = weighWish(read.job, computed)
  if (computed) {
    const { totals } = cardSteps(computed)
    return {
      ...bare,
      sound: true,
      rows: rowsOf(computed.plan.steps, read.job),
      problems: [],
      warnings: computed.warnings,
      totals,
      lines: computed.lines,
      solved: solvedIn(computed),
      standings: computed.plan.standings,
      weight,
      milliseconds: milliseconds(),
    }
  }
  const soFar = routeSoFar(read.job, solvedBefore)
  return {
    ...bare,
    sound: false,
    rows: rowsOf(soFar.steps, read.job),
    problems: distinct([...problems, ...soFar.problems]),
    solved: solvedBefore,
    weight,
    milliseconds: milliseconds(),
  }
}

function rowsOf(steps: readonly DoneStep[], job: Job): Row[] {
  const densities = densitiesFor(job.steels)
  // A bar is the same before a step as after the one ahead of it: its layers are spelt out once.
  const spelt = new Map<Build, string>()
  const inShort = (bar: DrawnBar) => {
    const build = spelt.get(bar.build) ?? fingerprint(JSON.stringify(bar.build))
    spelt.set(bar.build, build)
    return { ...bar, build }
  }
  return steps.map((done) => {
    const row = {
      ...cardStep(done, densities),
      index: done.index,
      before: done.before.map(drawn),
      after: drawn(done.step.after),
      joins: done.operation.bars?.(done.values as never) ?? [],
      values: done.values,
    }
    const short = { ...row, before: row.before.map(inShort), after: inShort(row.after) }
    return { ...row, words: fingerprint(JSON.stringify(short)) }
  })
}

/** A text in twelve letters; two different ones alike is once in 2^52 (a product hash in two halves, from memory). */
function fingerprint(text: string): string {
  let [a, b] = [0xdeadbeef, 0x41c6ce57]
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i)
    a = Math.imul(a ^ c, 2654435761)
    b = Math.imul(b ^ c, 1597334677)
  }
  return (a >>> 0).toString(36) + (b >>> 0).toString(36)
}

function drawn({ size, shape, build, bond, made }: Billet): DrawnBar {
  return { size, shape, build, bond, made }
}

function solvedIn({ plan }: Computed): Record<string, number> {
  return Object.fromEntries(plan.solved.map((s) => [`${s.at}.${s.name}`, s.value]))
}

/** The planner and the way forward may meet the same trouble. */
function distinct(problems: readonly Problem[]): Problem[] {
  const told = new Set<string>()
  return problems.filter(({ at, what }) => {
    const key = `${at} ${what}`
    return !told.has(key) && told.add(key)
  })
}
