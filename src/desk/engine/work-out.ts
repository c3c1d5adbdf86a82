import {
  CAUTIONS_DEFER,
  type Computed,
  type Job,
  type SoFar,
  cardStep,
  cardSteps,
  computeJob,
  densitiesFor,
  routeSoFar,
} from '#job'
import type { Problem } from '#problem'
import type { Billet, DrawnBar, Row, Worked, Written } from './messages.ts'
import { readLeniently } from './read-leniently.ts'
import { weighWish } from './weigh-wish.ts'

type DoneStep = SoFar['steps'][number]

/** Works a written job out, as far as it goes. */
export function workOut(
  written: Written,
  solvedBefore: Readonly<Record<string, number>>,
  options: Parameters<typeof computeJob>[1] = {},
): Worked {
  const since = performance.now()
  const name = typeof written.name === 'string' ? written.name : ''
  const read = readLeniently(written)
  const bare = { name, warnings: [], cautionsDefer: CAUTIONS_DEFER, solved: {}, standings: [] }
  const milliseconds = () => performance.now() - since
  if (!read.job)
    return {
      ...bare,
      sound: false,
      rows: [],
      problems: read.problems,
      milliseconds: milliseconds(),
    }
  const computed = read.whole ? computeJob(read.job, options) : { problems: read.problems }
  const weight = weighWish(read.job, computed.ok)
  if (computed.ok) {
    const { totals } = cardSteps(computed.ok)
    return {
      ...bare,
      sound: true,
      rows: rowsOf(computed.ok.plan.steps, read.job),
      problems: [],
      warnings: computed.ok.warnings,
      totals,
      lines: computed.ok.lines,
      solved: solvedIn(computed.ok),
      standings: computed.ok.plan.standings,
      weight,
      milliseconds: milliseconds(),
    }
  }
  const soFar = routeSoFar(read.job, solvedBefore)
  return {
    ...bare,
    sound: false,
    rows: rowsOf(soFar.steps, read.job),
    problems: distinct([...computed.problems, ...soFar.problems]),
    solved: solvedBefore,
    weight,
    milliseconds: milliseconds(),
  }
}

function rowsOf(steps: readonly DoneStep[], job: Job): Row[] {
  const densities = densitiesFor(job.steels)
  return steps.map((done) => {
    const row = {
      ...cardStep(done, densities),
      index: done.index,
      before: done.before.map(drawn),
      after: drawn(done.step.after),
      joins: done.operation.bars?.(done.values as never) ?? [],
      values: done.values,
    }
    return { ...row, words: fingerprint(JSON.stringify(row)) }
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
