import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { sharesOf } from '#billet'
import { type Origin, findSteel } from '#pattern'
import { computeJob } from '../compute-job.ts'
import { readJob } from '../read-job.ts'
import { patternOf, routePatterns } from './pattern-of.ts'

const jobs = ['builders-plate', 'galley-knife', 'presentation-sword', 'rigging-knife']

const known = new Map<string, ReturnType<typeof work>>()

function worked(name: string) {
  const computed = known.get(name) ?? work(name)
  known.set(name, computed)
  return computed
}

function work(name: string) {
  const text = readFileSync(new URL(`../../../jobs/${name}.json`, import.meta.url), 'utf8')
  const job = readJob(text)
  if (!job.ok) throw new Error(job.problems[0].what)
  const computed = computeJob(job.ok)
  if (!computed.ok) throw new Error(computed.problems.map((p) => `${p.at} ${p.what}`).join('; '))
  return computed.ok
}

/** Places spread evenly in the piece (Halton), by whether its solid says there is metal. */
function scattered(solid: NonNullable<ReturnType<typeof worked>['solid']>, count: number) {
  const rows = { x: [] as number[], y: [] as number[], z: [] as number[] }
  for (let i = 1; rows.x.length < count; i++) {
    const x = radical(i, 2) * solid.size.length
    const y = (radical(i, 3) - 0.5) * solid.size.width
    const z = (radical(i, 5) - 0.5) * solid.size.height
    if (!solid.inside(x, y) || z > solid.top(x, y) || z < solid.bottom(x, y)) continue
    rows.x.push(x)
    rows.y.push(y)
    rows.z.push(z)
  }
  return rows
}

function radical(i: number, base: number): number {
  let [value, part] = [0, 1]
  for (let n = i; n > 0; n = Math.floor(n / base)) {
    part /= base
    value += part * (n % base)
  }
  return value
}

/**
 * Forged evenly, what the picture holds is what the ledger holds. Of the sword the ledger lets fire
 * burn all steels of a twisted bar alike, where the outermost go first: 1 % between them is that.
 */
const within: Readonly<Record<string, number>> = { 'presentation-sword': 0.015 }

describe.each(jobs)('%s', (name) => {
  const computed = worked(name)
  const { solid } = computed
  if (!solid) throw new Error('a sample job has a piece')
  const shares = sharesOf(computed.plan.finished.build)
  const points = scattered(solid, 12_000)
  const met = (even: boolean) => {
    const pattern = patternOf(computed, { even })
    const found = pattern ? findSteel(pattern.origin, points) : []
    expect(found.every((f) => f !== undefined)).toBe(true)
    return (steel: string) => found.filter((f) => f?.steel === steel).length / found.length
  }

  it('holds the steels of the ledger, forged evenly', () => {
    const has = met(true)
    for (const [steel, share] of Object.entries(shares))
      expect(Math.abs(has(steel) - share), steel).toBeLessThan(within[name] ?? 0.01)
  })

  it('holds them within two per cent, forged by hand', () => {
    const has = met(false)
    for (const [steel, share] of Object.entries(shares))
      expect(Math.abs(has(steel) - share), steel).toBeLessThan(0.02)
  })

  it('is the same bar again from the same seed, another from another', () => {
    const steels = (seed: number) => {
      const pattern = patternOf({ ...computed, job: { ...computed.job, seed } })
      const few = {
        x: points.x.slice(0, 1500),
        y: points.y.slice(0, 1500),
        z: points.z.slice(0, 1500),
      }
      return pattern ? findSteel(pattern.origin, few).map((f) => f?.layer) : []
    }
    expect(steels(5)).toEqual(steels(5))
    expect(steels(5)).not.toEqual(steels(6))
  })
})

describe('lines across the face', () => {
  it.each([true, false])('the plate shows as many as the account counts (even: %s)', (even) => {
    const computed = worked('builders-plate')
    const { solid, lines } = computed
    const pattern = patternOf(computed, { even })
    if (!pattern || !solid || !lines) throw new Error('no lines')
    expect(lines.along).toBe('x')
    const n = 40_000
    const { length } = solid.size
    const x = Array.from({ length: n }, (_, i) => ((i + 0.5) / n) * length)
    const row = (y: number) => {
      const found = findSteel(pattern.origin, { x, y: x.map(() => y), z: x.map(() => 1e-3) })
      return found.filter((f, i) => i > 0 && f?.steel !== found[i - 1]?.steel).length
    }
    const rows = [-0.02, -0.01, 0, 0.01, 0.02].map(row)
    const mean = rows.reduce((a, b) => a + b, 0) / rows.length
    // A line is a layer: one more than the boundaries between them.
    const share = (mean + 1) / length / lines.perMetre
    expect(Math.abs(share - 1)).toBeLessThan(0.02)
  })
})

describe('a step looked at before it is done', () => {
  const computed = worked('presentation-sword')
  const { steps, partly } = routePatterns(computed)
  const at = (bar: string, after: string) => {
    const i = steps.findIndex((step) => step.bar === bar && step.after === after)
    return (done: number) => {
      const pattern = partly(i, done)
      if (!pattern) throw new Error(`no ${after} of ${bar}`)
      return pattern
    }
  }

  it('lies between the bar before and the bar after, and starts where it lay', () => {
    const draw = at('edge', 'draw out')
    const lengths = [1e-3, 0.25, 0.5, 0.75, 1].map((done) => draw(done).billet.size.length)
    expect(lengths).toEqual([...lengths].sort((a, b) => a - b))
    const before = draw(0)
    expect(before.after).toBe('trim')
    expect(lengths[0]! / before.billet.size.length).toBeCloseTo(1, 2)
    // Hot metal drawn by like ratios in like times: half way is the geometric mean, but for spread and scale.
    const mean = Math.sqrt(before.billet.size.height * draw(1).billet.size.height)
    expect(draw(0.5).billet.size.height).toBeCloseTo(mean, 9)
  })

  it('shows half the turns of a twist half done', () => {
    const twist = at('right', 'twist')
    const pitchOf = (done: number) => {
      const { by } = twist(done).billet.build as { by?: string }
      return /([\d.]+) mm pitch/.exec(by ?? '')?.[1]
    }
    expect(Number(pitchOf(0.5)) / Number(pitchOf(1))).toBeCloseTo(2, 1)
  })

  it('is of one structure all the way, so that a card compiles nothing on it', () => {
    for (const [bar, after] of [
      ['right', 'twist'],
      ['edge', 'draw out'],
      ['sword', 'weld'],
    ] as const) {
      const look = at(bar, after)
      const told = (done: number) => kindsOf(look(done).origin).join(' ')
      expect(new Set([1e-3, 0.3, 0.999].map(told)).size, after).toBe(1)
    }
  })

  it('is not done before the middle where it is done at a stroke', () => {
    const restack = at('edge', 'restack')
    expect(restack(0.49).after).toBe('draw out')
    expect(restack(0.5)).toBe(restack(1))
    // A bar that is only now laid has nothing before.
    expect(at('sword', 'lay side by side')(0.1).after).toBe('lay side by side')
  })
})

function kindsOf(origin: Origin): string[] {
  if (origin.kind === 'stack') return [origin.bar]
  return [
    ...origin.warps.map(({ kind, form }) => `${kind}${form ?? ''}`),
    ...origin.from.flatMap(kindsOf),
  ]
}
