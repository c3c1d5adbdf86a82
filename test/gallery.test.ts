import { readFileSync, readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { axisLength } from '#geometry'
import {
  type Computed,
  type Job,
  computeJob,
  readJob,
  readJobObject,
  recordPlan,
  writeJob,
} from '#job'

const folder = new URL('../jobs/', import.meta.url)
const files = readdirSync(folder).filter((f) => f.endsWith('.json'))

function read(file: string): Job {
  const job = readJob(readFileSync(new URL(file, folder), 'utf8'))
  if (job.problems) throw new Error(`${file}: ${JSON.stringify(job.problems)}`)
  return job.ok
}

function compute(job: Job): Computed {
  const computed = computeJob(job)
  if (computed.problems) throw new Error(JSON.stringify(computed.problems, null, 1))
  return computed.ok
}

/** A job with one thing changed, as a smith would change the file. */
function changed(file: string, change: (written: Record<string, unknown>) => void): Job {
  const written = structuredClone(read(file).written) as Record<string, unknown>
  change(written)
  const job = readJobObject(written)
  if (job.problems) throw new Error(JSON.stringify(job.problems))
  return job.ok
}

describe.each(files)('%s', (file) => {
  const job = read(file)
  const computed = compute(job)
  const { plan } = computed

  it('worked back and worked forward agree to 0.01 mm and 0.1 g', () => {
    for (const { step, demand, operation, at } of plan.steps) {
      if (operation.takes !== 'none' || !demand) continue
      const side = axisLength[step.after.spare]
      expect(Math.abs(step.after.size[side] - demand[side]), at).toBeLessThan(1e-5)
      const needed =
        (Object.values(step.added).reduce((a, b) => a + b, 0) * demand[side]) /
        step.after.size[side]
      expect(
        Math.abs(needed - Object.values(step.added).reduce((a, b) => a + b, 0)),
        at,
      ).toBeLessThan(1e-4)
    }
    const finished = plan.finished.size
    for (const side of ['length', 'width', 'height'] as const) {
      expect(Math.abs(finished[side] - (computed.solid?.size[side] ?? 0)), side).toBeLessThan(1e-5)
    }
  })

  it('keeps every gram: off the rack = finished + lost + set aside', () => {
    const record = recordPlan(computed)
    const lost = record.steps.reduce(
      (n, s) => n + Object.values(s.losses_kg).reduce((a, b) => a + b, 0) + s.setAside_kg,
      0,
    )
    expect(record.finished?.mass_kg).toBeCloseTo((record.stack?.mass_kg ?? 0) - lost, 9)
    const sheets = record.stack?.sheets.reduce((n, s) => n + s.mass_kg, 0)
    expect(sheets).toBeCloseTo(record.stack?.mass_kg ?? 0, 9)
  })

  it('weighs what its solid weighs, less the microns the acid takes', () => {
    const etched = plan.steps.at(-1)?.step.losses.find((l) => l.cause === 'etched')?.masses ?? {}
    const density = Object.entries(plan.finished.build).length > 0 ? 7850 : 0
    const solid = (computed.solid?.volume ?? 0) * density
    const acid = Object.values(etched).reduce((a, b) => a + b, 0)
    // Steels of the jobs lie within 0.5 % of the design density.
    expect(Math.abs(computed.finishedMass + acid - solid) / solid).toBeLessThan(0.005)
  })

  it('is the same job, the same bytes, every time', () => {
    expect(JSON.stringify(recordPlan(compute(read(file))))).toBe(
      JSON.stringify(recordPlan(computed)),
    )
  })

  it('comes back from its file as it was written', () => {
    const text = readFileSync(new URL(file, folder), 'utf8')
    expect(writeJob(job.written)).toBe(text)
    expect(readJob(writeJob(job.written)).ok?.route).toEqual(job.route)
  })

  it('ends etched, from a stack, with cautions at every fire', () => {
    expect(plan.steps[0].operation.takes).toBe('none')
    expect(plan.steps.at(-1)?.operation.name).toBe('etch')
    for (const { step, operation } of plan.steps) {
      if (step.heats.length > 0) expect(operation.cautions, operation.name).toContain('heat')
    }
  })
})

describe('whole-job totals (a change here is a change of the account: say why in the changelog)', () => {
  it.each([
    ['builders-plate.json', { finished: 0.507, stack: 1.421, heats: 31, laid: 180 }],
    ['rigging-knife.json', { finished: 0.114, stack: 0.662, heats: 34, laid: 208 }],
    ['galley-knife.json', { finished: 0.102, stack: 0.628, heats: 29, laid: 55 }],
    ['presentation-sword.json', { finished: 0.53, stack: 2.461, heats: 55, laid: 73 }],
  ])('%s', (file, totals) => {
    const record = recordPlan(compute(read(file)))
    expect(record.finished?.mass_kg).toBeCloseTo(totals.finished, 3)
    expect(record.stack?.mass_kg).toBeCloseTo(totals.stack, 2)
    expect(record.totals?.heats).toBe(totals.heats)
    expect(record.steps.at(-1)?.layersLaid).toBe(totals.laid)
  })
})

describe("the builder's plate", () => {
  const file = 'builders-plate.json'
  const computed = compute(read(file))

  it('goes 15 → 43 → 169, 180 as laid, before the ends are cropped', () => {
    const counts = computed.plan.steps.map(({ operation }, i) => ({
      do: operation.name,
      n: recordPlan(computed).steps[i].layersMerged,
    }))
    const of = (name: string) => counts.filter((c) => c.do === name).map((c) => c.n)
    expect(of('stack')).toEqual([15])
    expect(of('restack')).toEqual([43, 169])
  })

  it('turns the stack so that its layers cross the length', () => {
    expect(computed.lines?.along).toBe('x')
  })

  it('shows the lines per millimetre that stack arithmetic gives, within 2 %', () => {
    // By hand, on a shop that loses nothing: a stack 38.1 mm wide and 36.957 mm high (8 × 3.175 + 7 × 1.651)
    // has n = 169 layers after ×3 ×4; its metal, drawn to 63 × 10.2 mm, is 38.1 · 36.957 · L / (63 · 10.2) long.
    const lossless = {
      weldingScale: '0 mm',
      forgingScale: '0 mm',
      treatingScale: '0 mm',
      crop: '0 mm',
      kerf: '0 mm',
      cleanUp: '0 mm',
      trim: '0 mm',
    }
    const job = changed(file, (written) => {
      written.shop = lossless
      written.piece = { kind: 'bar', length: '140 mm', width: '60 mm', thickness: '8 mm' }
      delete written.wishes
      const [stack, ...rest] = (written.bars as { plate: Record<string, unknown>[] }).plate
      const { outer: _outer, ...plain } = stack
      const draw = rest.findIndex((s) => s.height === '10.2 mm')
      const forged = rest.slice(0, draw + 1).map(({ cleanUp: _cleanUp, ...s }) => s)
      written.bars = { plate: [{ ...plain, length: '90 mm' }, ...forged] }
    })
    const { plan, lines } = compute(job)
    const length = (38.1 * 36.957 * 90) / (63 * 10.2)
    expect(plan.finished.size.length * 1000).toBeCloseTo(length, 1)
    expect((lines?.perMetre ?? 0) / 1000 / (169 / length)).toBeCloseTo(1, 2)
    expect(169 / length).toBeGreaterThan(0.8)
  })

  it('common practice: 150 layers over 5 in are 30 to the inch; 169 spanning 5 in about 34', () => {
    expect(150 / 5).toBe(30)
    const job = changed(file, (written) => {
      delete written.wishes
      written.piece = { kind: 'bar', length: '5 in', width: '1 in', thickness: '3/8 in' }
      written.bars = {
        plate: [
          {
            do: 'take remnant',
            length: '?',
            width: '1 1/2 in',
            height: '1 1/2 in',
            steels: [
              { steel: '1095', share: '60 %' },
              { steel: '15N20', share: '40 %' },
            ],
            layers: 169,
          },
          { do: 'turn', to: 'on end' },
          { do: 'draw out', height: '3/8 in', width: '1 in', heats: 3 },
        ],
      }
    })
    const { lines } = compute(job)
    expect((lines?.perMetre ?? 0) * 0.0254).toBeCloseTo(34, 0)
  })

  it('asked to weigh 700 g as well, names both cures', () => {
    const job = changed(file, (written) => {
      written.wishes = { mass: '700 g' }
    })
    const [problem] = computeJob(job).problems ?? []
    expect(problem.what).toMatch(/700 g/)
    expect(problem.try[0]).toMatch(/thickness/)
    expect(problem.try[1]).toMatch(/5\d\d g/)
  })

  it('a measured bar re-plans the rest', () => {
    const planned = computed.plan.steps[12].step.after
    const job = changed(file, (written) => {
      const { plate } = written.bars as { plate: Record<string, unknown>[] }
      plate[0].length = '100 mm'
      written.measured = [
        { bar: 'plate', after: 13, length: '66 mm', width: '49 mm', height: '33 mm' },
      ]
    })
    const [standing] = compute(job).plan.standings
    expect(standing.measured.size.length).toBeCloseTo(0.066, 9)
    expect(standing.planned.size.length).toBeGreaterThan(planned.size.length)
    expect(Number.isFinite(standing.spare)).toBe(true)
    expect(standing.needed?.length).toBeGreaterThan(0)
  })
})
