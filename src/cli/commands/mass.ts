import { readQuantity } from '#units'
import type { Result } from '#problem'
import { DESIGN_DENSITY, computeJob, cutOffFor, densityNamed, readSides, weighBlock } from '#job'
import { problemsText, sayIn } from '#report'
import { BadUsage, type Command, type Given, type Terminal, text } from '../command.ts'
import { jobFrom } from '../job-file.ts'

const inches = sayIn('inch')
const metric = sayIn('metric')

export const mass: Command = {
  name: 'mass',
  summary: 'Weigh a piece or a bar; find the thickness for a weight, or how much to cut off a bar.',
  usage:
    'FILE | --size "A x B x C" [--want MASS] | --for MASS --section "A x B" [--kerf L] [--allow P]',
  options: {
    size: { type: 'string' },
    want: { type: 'string' },
    for: { type: 'string' },
    section: { type: 'string' },
    kerf: { type: 'string' },
    allow: { type: 'string' },
    cuts: { type: 'string' },
    steel: { type: 'string' },
  },
  help: [
    'billetwright mass --size "5 x 2 1/2 x 1/4 in"                 what a block weighs',
    'billetwright mass --size "5 x 2 1/2 x 1/4 in" --want 600g     and how thick it must be to weigh that',
    'billetwright mass --for "10.6 g" --section "25 x 12 mm" --allow "10 %" --kerf "1.6 mm" --cuts 2',
    'billetwright mass jobs/builders-plate.json                    piece, billet and stack of a job',
    '--steel NAME  density of that grade; otherwise 7.85 g/cm³, the design value',
  ],
  async run(given, terminal) {
    if (text(given, 'size') !== undefined) return block(given, terminal)
    if (text(given, 'for') !== undefined) return cut(given, terminal)
    return ofJob(given, terminal)
  },
}

function block(given: Given, { out, error, ink }: Terminal): 0 | 1 {
  const sides = readSides(text(given, 'size') as string)
  if (sides.problems) throw new BadUsage(sides.problems[0].what, sides.problems[0].try)
  const density = densityOf(given)
  const want = text(given, 'want')
  const asked = want === undefined ? undefined : quantity(want, 'mass')
  const weighed = weighBlock(sides.ok, density, asked)
  out(
    `${ink.bold(metric.mass(weighed.mass))}  (${inches.mass(weighed.mass)}; ${(weighed.volume * 1e6).toFixed(2)} cm³ at ${(density / 1000).toFixed(2)} g/cm³)\n`,
  )
  if (asked === undefined || Math.abs(weighed.mass - asked) <= 0.005 * asked) return 0
  const thick = weighed.thicknessFor as number
  error(
    `${problemsText(
      [
        {
          at: 'want',
          what: `this size gives ${metric.mass(weighed.mass)}; ${metric.mass(asked)} is asked for`,
          why: 'size and density settle the weight',
          try: [
            `make it ${(thick / 0.0254).toFixed(3)} in (${metric.length(thick)}) thick: that weighs ${metric.mass(asked)}`,
            `ask for ${metric.mass(weighed.mass)}, and keep the sizes`,
          ],
        },
      ],
      ink,
    )}\n`,
  )
  return 1
}

function cut(given: Given, { out, error, ink }: Terminal): 0 | 1 {
  const section = readSides(text(given, 'section') ?? '', 2)
  if (section.problems) throw new BadUsage(section.problems[0].what, section.problems[0].try)
  const allowance = quantity(text(given, 'allow') ?? '10 %', 'ratio')
  const kerf = quantity(text(given, 'kerf') ?? '1.6 mm', 'length')
  const cuts = Number(text(given, 'cuts') ?? 1)
  if (!Number.isInteger(cuts) || cuts < 0 || cuts > 100)
    throw new BadUsage('--cuts is a whole number, 0 to 100')
  const found = cutOffFor(
    quantity(text(given, 'for') as string, 'mass'),
    section.ok,
    densityOf(given),
    { allowance, kerf, cuts },
  )
  if (found.problems) {
    error(`${problemsText(found.problems, ink)}\n`)
    return 1
  }
  out(
    `cut ${ink.bold(metric.length(found.ok.cut))} (${inches.length(found.ok.cut)}): ${metric.length(found.ok.net)} of metal, the rest is allowance and kerf\n`,
  )
  return 0
}

async function ofJob(given: Given, { out, error, ink, signal }: Terminal): Promise<0 | 1> {
  const job = await jobFrom(given)
  const computed = job.problems ? job : computeJob(job.ok, { signal })
  if (computed.problems) {
    error(`${problemsText(computed.problems, ink)}\n`)
    return 1
  }
  const { finishedMass, stackMass, plan } = computed.ok
  out(`finished  ${metric.mass(finishedMass).padStart(10)}  ${metric.size(plan.finished.size)}\n`)
  out(
    `stack     ${metric.mass(stackMass).padStart(10)}  ${Math.round((100 * finishedMass) / stackMass)} % of it stays in the piece\n`,
  )
  for (const s of plan.solved)
    out(`cut       ${metric.length(s.value).padStart(10)}  ${s.name} of ${s.at}\n`)
  return 0
}

function densityOf(given: Given): number {
  const name = text(given, 'steel')
  if (name === undefined) return DESIGN_DENSITY
  return orUsage(densityNamed(name))
}

function quantity(word: string, kind: 'mass' | 'length' | 'ratio'): number {
  return orUsage(readQuantity(word, kind)).si
}

function orUsage<T>(read: Result<T>): T {
  if (read.problems) throw new BadUsage(read.problems[0].what, read.problems[0].try)
  return read.ok
}
