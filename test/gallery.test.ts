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

  it('says of every forging step what it asks of the shop, and this shop can do it', () => {
    const forging = /^(weld|draw out|square up|forge to section|forge to shape|forge flat|stamp)$/
    const record = recordPlan(computed)
    for (const { do: name, force, at, size_m, heats } of record.steps) {
      if (!forging.test(name)) continue
      if (!force) throw new Error(`${at} tells no force`)
      expect(force.verdict, at).toBe('can do')
      const asked = force.blows ?? force.force_N ?? 0
      expect(asked, at).toBeGreaterThan(0)
      expect(force.low, at).toBeLessThanOrEqual(asked)
      expect(force.high, at).toBeGreaterThanOrEqual(asked)
      expect(force.heatsNeeded, at).toBeLessThanOrEqual(heats)
      for (const side of ['length', 'width', 'height'] as const) {
        expect(force.size_m.low[side], at).toBeLessThanOrEqual(size_m[side] * (1 + 1e-9))
        expect(force.size_m.high[side], at).toBeGreaterThanOrEqual(size_m[side] * (1 - 1e-9))
      }
    }
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
    ['builders-plate.json', { finished: 0.506, stack: 1.32, heats: 21, laid: 180 }],
    ['rigging-knife.json', { finished: 0.114, stack: 0.658, heats: 34, laid: 208 }],
    ['galley-knife.json', { finished: 0.102, stack: 0.622, heats: 29, laid: 55 }],
    ['presentation-sword.json', { finished: 0.53, stack: 2.481, heats: 58, laid: 73 }],
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

  it('turns the stack so that its layers cross the length, and wishes for just that pattern', () => {
    expect(computed.lines?.along).toBe('x')
    expect(computed.job.wishes.pattern).toBe('straight laminate on end')
    // Turned on edge the lines would run along the piece (the preset of that name).
    const turned = computed.plan.steps.find(({ operation }) => operation.name === 'turn')
    expect(turned?.values.to).toBe('on end')
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

  /** What the record of the plate says of its stamp, with the step changed. */
  const stamped = (change: Record<string, unknown> = {}, shop?: Record<string, unknown>) => {
    const job = changed(file, (written) => {
      const { plate } = written.bars as { plate: Record<string, unknown>[] }
      Object.assign(plate.find((s) => s.do === 'stamp') as object, change)
      if (shop) written.shop = shop
    })
    const step = recordPlan(compute(job)).steps.find((s) => s.do === 'stamp')
    if (!step?.force?.stamp) throw new Error('the stamp tells no force')
    return { ...step, force: step.force, stamp: step.force.stamp }
  }

  it('its seabird: 4 lb blows and press force at three heats, fewer and less the hotter', () => {
    const { stamp, notes } = stamped()
    expect(stamp.outline).toBe(true)
    expect(stamp.size_m[0]).toBeCloseTo(0.046, 12)
    expect(stamp.size_m[1]).toBeLessThanOrEqual(0.03)
    expect(stamp.at.length).toBeGreaterThanOrEqual(2)
    stamp.at.forEach(({ handHammer4lbBlows: blows, press_N, temperature_K }, i) => {
      // Shop rule: 3 to 5 times the flow stress, which is 55 to 110 MPa here, on the raised area; wide strokes less.
      expect(press_N.value, String(temperature_K)).toBeGreaterThan(1 * 55e6 * stamp.area_m2)
      expect(press_N.value).toBeLessThan(5 * 110e6 * stamp.area_m2)
      expect(blows.value).toBeGreaterThan(1)
      const cooler = stamp.at[i - 1]
      if (!cooler) return
      expect(blows.value).toBeLessThan(cooler.handHammer4lbBlows.value)
      expect(press_N.value).toBeLessThan(cooler.press_N.value)
    })
    expect(notes.join(' ')).toMatch(/4 lb hand hammer \(common practice\): \d+ \(/)
  })

  it('keeps its depth through grinding and polish; pressed too shallow it says how deep', () => {
    const { stamp, warnings } = stamped()
    expect(stamp.depthLeft_m).toBeCloseTo(0.0009, 9)
    expect(stamp.depth_m - stamp.takenOff_m).toBeCloseTo(stamp.depthLeft_m, 12)
    expect(warnings).toEqual([])
    const shallow = stamped({ depth: '0.5 mm' })
    expect(shallow.stamp.depthLeft_m).toBeLessThan(0.0003)
    const [problem] = shallow.warnings.filter((w) => w.at === 'depth')
    expect(problem?.what).toMatch(/mm of the mark is left/)
    expect(problem?.try.join()).toMatch(/press 1\.1 mm deep/)
  })

  it('by hand alone it is near the end of what a hammer can do, and a press is the cure', () => {
    const { force, warnings } = stamped({}, { hammer: 'hand' })
    expect(force.verdict).not.toBe('can do')
    expect(force.way).toBe('hand hammer')
    expect(warnings.map((w) => w.try.join()).join()).toMatch(/press of \d+ to \d+ kN/)
  })

  it('an emblem that fills more of its box than the piece says, or does not read, is told', () => {
    const field = stamped({ emblem: 'M0 0H46V30H0Z' })
    expect(field.warnings.some((w) => w.what.includes('100 % of its box'))).toBe(true)
    const job = changed(file, (written) => {
      const { plate } = written.bars as { plate: Record<string, unknown>[] }
      Object.assign(plate.find((s) => s.do === 'stamp') as object, { emblem: 'gull' })
    })
    expect(computeJob(job).problems?.[0]?.at).toMatch(/emblem/)
  })

  it('a sharp-cornered drawing and an unbroken edge raise the risk of a crack', () => {
    expect(stamped().stamp.crack).toBe('low')
    expect(stamped({ edgeRadius: '0.1 mm' }).stamp.crack).not.toBe('low')
    const star = 'M23 0L28 11L46 12L32 18L37 30L23 22L9 30L14 18L0 12L18 11Z'
    expect(stamped({ emblem: star, edgeRadius: '0.05 mm' }).stamp.crack).toBe('high')
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

  it('a bar measured too small says by how much, where it was measured', () => {
    const planned = computed.plan.steps[9].step.after
    const mm = (m: number) => `${m * 1000} mm`
    const job = changed(file, (written) => {
      const { width, height } = planned.size
      // A tenth of its length is gone; the section is as planned.
      const found = { length: mm(planned.size.length * 0.9), width: mm(width), height: mm(height) }
      written.measured = [{ bar: 'plate', after: 10, ...found }]
    })
    const [first] = computeJob(job).problems!
    expect(first.at).toBe('bars.plate[9]')
    const [, short] = /is ([\d.]+) mm short/.exec(first.what)!
    expect(Number(short)).toBeCloseTo(planned.size.length * 100, 1)
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
