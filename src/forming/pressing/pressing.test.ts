import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import { isSourceKey } from '#sources'
import { barrel } from './barrel.ts'
import committed from './check/results.json' with { type: 'json' }
import { chill, scaledErfc } from './chill.ts'
import { closedDieFactors, closedDieForce } from './closed-die.ts'
import { discBarrelled, discCoulomb, discCoulombStraight, discSticking } from './disc.ts'
import { coulombOf, factorOf } from './friction.ts'
import { flatPunchOverYield, indentWithWedge } from './indentation.ts'
import { flatPunch, narrowDies } from './narrow-dies.ts'
import {
  crossedPlanes,
  pressedBlock,
  slabCoulomb,
  slabMixed,
  slabSticking,
} from './plane-strain.ts'
import { platenPressure } from './platen.ts'
import reference from './reference.json' with { type: 'json' }
import { ringTest } from './ring.ts'
import { upsetForce, upsetTo } from './upset-force.ts'

const degrees = Math.PI / 180

describe('published and computed pressures', () => {
  it('plane strain: Coulomb (SLAB), sticking (HC), mixed (computed)', () => {
    for (const { law, mu = 0, m = 0, ratio, pressure } of reference.planeStrain) {
      const value = law.endsWith('Coulomb')
        ? slabCoulomb(mu, ratio)
        : law.endsWith('sticking')
          ? slabSticking(m, ratio)
          : slabMixed(mu, ratio)
      expect(value).toBeCloseTo(pressure, 4)
    }
  })

  it('disc: Coulomb and its straight form, sticking (from memory, KALP)', () => {
    const { mu, ratio, coulomb, straight, sticking } = reference.disc
    expect(discCoulomb(mu, ratio)).toBeCloseTo(coulomb, 5)
    expect(discCoulombStraight(mu, ratio)).toBeCloseTo(straight, 5)
    expect(discSticking(1, ratio)).toBeCloseTo(sticking, 4)
  })

  it('disc with barrelling: pressure and b of the least upper bound (computed)', () => {
    for (const { m, ratio, b, pressure } of reference.barrelledDisc.points) {
      expect(discBarrelled(m, ratio).pressure).toBeCloseTo(pressure, 4)
      expect(discBarrelled(m, ratio).b).toBeCloseTo(b, 2)
    }
  })

  it('narrow dies: the slip-line table, and the indentation limit at h/L 8.72', () => {
    for (const [slenderness, pressure] of reference.narrowDies.points)
      expect(narrowDies(slenderness!)).toBeCloseTo(pressure!, 3)
    expect(narrowDies(8.6)).toBeLessThan(flatPunch)
    expect(narrowDies(8.75)).toBeCloseTo(flatPunch, 6)
  })

  it('wedge of Hill, Lee and Tupper, and the flat punch (from memory)', () => {
    for (const [angle, fan, pressure, contact] of reference.wedge.rows) {
      const field = indentWithWedge(angle! * degrees)
      expect(field.fan / degrees).toBeCloseTo(fan!, 2)
      expect(field.pressure).toBeCloseTo(pressure!, 4)
      expect(field.contactOverDepth).toBeCloseTo(contact!, 4)
    }
    expect(flatPunch).toBeCloseTo(reference.punch.over2k, 4)
    expect(flatPunchOverYield).toBeCloseTo(reference.punch.overYieldMises, 4)
  })

  it('friction factor and Coulomb coefficient after Wanheim and Bay (PYR-FRI)', () => {
    for (const [m, mu] of reference.wanheimBay.points) {
      expect(coulombOf(m!)).toBeCloseTo(mu!, 4)
      if (m! < 1) expect(factorOf(coulombOf(m!))).toBeCloseTo(m!, 6)
    }
    expect(factorOf(0.45)).toBe(1)
  })

  it('ring test (computed): the whole table', () => {
    const { outerRadius, innerRadius, height, reductions, rows } = reference.ring
    for (const [m, row] of Object.entries(rows))
      row.forEach((shown, i) => {
        const closed = 100 * ringTest({ outerRadius, innerRadius, height }, +m, reductions[i]!, 300)
        expect(Math.abs(closed - shown)).toBeLessThan(0.15 + 0.03 * Math.abs(shown))
      })
  })

  it('names only sources of the bibliography', () => {
    const keys = [
      ...reference.planeStrain.map((r) => r.source),
      ...reference.textbook.map((r) => r.source),
      ...[
        reference.disc,
        reference.wedge,
        reference.ring,
        reference.wanheimBay,
        reference.kalpakjian,
      ].map((r) => r.source),
    ]
    expect(keys.filter((key) => !isSourceKey(key))).toEqual([])
  })
})

describe('textbook upsetting, within 0.1 %', () => {
  it('Groover example 18.2 and problem 19.19 (read)', () => {
    for (const { diameter, height, K, n, mu, forces } of reference.textbook)
      for (const [to, force] of forces)
        expect(
          Math.abs(upsetForce({ diameter, height }, to!, { K, n }, mu) / force! - 1),
        ).toBeLessThan(1e-3)
  })

  it('Kalpakjian example 14.1 (read): 45 MN with the straight factor, 47.88 MN exact', () => {
    const { diameter, from, to, mu, stress, own, exactCoulomb } = reference.kalpakjian
    const after = upsetTo({ diameter, height: from }, to)
    const ideal = stress * (Math.PI / 4) * after.diameter ** 2
    const ratio = after.diameter / 2 / to
    expect((ideal * discCoulombStraight(mu, ratio)) / own).toBeCloseTo(1, 3)
    expect((ideal * discCoulomb(mu, ratio)) / exactCoulomb).toBeCloseTo(1, 3)
    expect(after.diameter ** 2 * to).toBeCloseTo(diameter ** 2 * from, 15)
  })
})

/** Computed afresh where the program is installed, else as committed. */
function finiteElements(): Pick<typeof committed, 'cases' | 'rings'> {
  const folder = mkdtempSync(join(tmpdir(), 'pressing-'))
  try {
    const out = join(folder, 'results.json')
    const runner = join(import.meta.dirname, 'check', 'run-upset.mjs')
    const run = spawnSync(process.execPath, [runner, 'quick', out])
    return run.status === 0
      ? (JSON.parse(readFileSync(out, 'utf8')) as typeof committed)
      : committed
  } finally {
    rmSync(folder, { recursive: true })
  }
}

describe('against FreeFem++, an independent finite-element program', () => {
  let fresh: ReturnType<typeof finiteElements> = committed
  beforeAll(() => {
    fresh = finiteElements()
  }, 180_000)
  const both = () => [...committed.cases, ...fresh.cases]

  it('load within 10 % at every height: sticking at two L/h, small friction, two more', () => {
    expect(committed.cases.length).toBe(5)
    for (const { friction, ratio, states } of both())
      for (const { height, contact, pressure } of states) {
        // Same volume, straight sides: what a plan knows of the block.
        const length = (4 * ratio) / height
        const ours = pressedBlock(friction, length / height) * length
        expect(Math.abs(ours / (pressure * contact) - 1)).toBeLessThan(0.1)
      }
  })

  it('the slab method alone would miss the sticking block at L/h 1 by more than 10 %', () => {
    const { states } = committed.cases[0]!
    expect(slabSticking(1, 1) / states[0]!.pressure).toBeGreaterThan(1.1)
  })

  it('bulge shape: the barrel map fits within 10 % of the bulge, and its size is foretold within 10 %', () => {
    for (const { friction, ratio, states } of both()) {
      const last = states.at(-1)!
      expect(last.misfit).toBeLessThan(0.1)
      const { value } = barrel(2 * ratio, 2, last.height, friction)
      expect(Math.abs(value / last.b - 1)).toBeLessThan(0.1)
      // The widest place of the map against the widest place of the block.
      const widest = (last.meanHalfWidth * (1 + value / 2)) / last.middle
      expect(Math.abs(widest - 1)).toBeLessThan(0.01)
    }
  })

  it('first movement of the bore of a 6:3:2 ring within 5 % of the platen speed', () => {
    for (const { friction, bore } of [...committed.rings, ...fresh.rings]) {
      const [small, radius] = [1e-3, 1.5]
      const closing = ringTest(
        { outerRadius: 3, innerRadius: radius, height: 2 },
        friction,
        small,
        5,
      )
      expect(Math.abs((-closing * radius) / small - bore)).toBeLessThan(0.05)
    }
  })
})

describe('limits', () => {
  const ratio = fc.double({ min: 0.02, max: 60, noNaN: true })
  const share = fc.double({ min: 0, max: 1, noNaN: true })

  it('no pressing needs less than the ideal, and force rises with friction', () => {
    fc.assert(
      fc.property(ratio, share, share, (r, a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)]
        for (const law of [
          pressedBlock,
          slabSticking,
          discSticking,
          (m: number, x: number) => discBarrelled(m, x).pressure,
        ]) {
          expect(law(less, r)).toBeGreaterThanOrEqual(1 - 1e-12)
          expect(law(more, r)).toBeGreaterThanOrEqual(law(less, r) - 1e-9)
        }
        for (const law of [slabCoulomb, slabMixed, discCoulomb])
          if (r <= 20) expect(law(more, r)).toBeGreaterThanOrEqual(law(less, r) - 1e-9)
        expect(discBarrelled(more, r).pressure).toBeLessThanOrEqual(discSticking(more, r) + 1e-9)
        if (r >= 1)
          expect(pressedBlock(more, r)).toBeLessThanOrEqual(Math.max(1, crossedPlanes(r)) + 1e-9)
        expect(pressedBlock(more, r)).toBeLessThanOrEqual(slabSticking(more, r) + 1e-9)
      }),
      { seed: 5, numRuns: 300 },
    )
  })

  it('platen pressure is a finite bracket around its value for any sane face', () => {
    const size = fc.double({ min: 0.001, max: 0.5, noNaN: true })
    fc.assert(
      fc.property(
        size,
        size,
        size,
        share,
        fc.boolean(),
        (length, width, height, friction, overhang) => {
          const { value, low, high } = platenPressure({ length, width, height, friction, overhang })
          expect(Number.isFinite(high)).toBe(true)
          expect(low).toBeLessThanOrEqual(value)
          expect(value).toBeLessThanOrEqual(high)
          expect(value).toBeGreaterThanOrEqual(1)
        },
      ),
      { seed: 5, numRuns: 300 },
    )
  })

  it('the barrel grows with reduction and friction and says when it is outside its table', () => {
    for (const r of [0.35, 1, 4])
      for (const m of [0, 0.3, 1]) {
        const b = (to: number, f = m) => barrel(r, 1, to, f).value
        expect(b(0.8)).toBeGreaterThanOrEqual(b(0.9))
        expect(b(0.8, 1)).toBeGreaterThanOrEqual(b(0.8))
      }
    expect(barrel(10, 1, 0.5, 1).cautions.length).toBe(2)
  })

  it('closed dies need at least three times the flow stress', () => {
    for (const die of Object.keys(closedDieFactors) as (keyof typeof closedDieFactors)[]) {
      const { low, value, high } = closedDieForce(die, 100e6, 30e-6)
      expect(low).toBeGreaterThanOrEqual(9000)
      expect(low <= value && value <= high).toBe(true)
    }
  })
})

describe('chill from the dies', () => {
  it('the scaled complementary error function, against tables of erfc', () => {
    // Abramowitz and Stegun's erfc: 0.5 → 0.4795001222, 1 → 0.1572992071, 2 → 0.004677734981.
    for (const [x, erfc] of [
      [0.5, 0.4795001222],
      [1, 0.1572992071],
      [2, 0.004677734981],
    ] as const)
      expect(scaledErfc(x) * Math.exp(-x * x)).toBeCloseTo(erfc, 9)
    // SciPy 1.17 erfcx: 3.9, 4.1 (either side of the change of method) and 50.
    for (const [x, shown] of [
      [3.9, 0.1403141816],
      [4.1, 0.1338341164],
      [50, 0.0112815363],
    ] as const)
      expect(scaledErfc(x)).toBeCloseTo(shown, 9)
  })

  it('perfect contact: the face meets the die at the effusivity mean; heat goes with √t', () => {
    const touch = { metal: 1373, die: 473, height: 0.03, conductance: 1e7 }
    const [one, four] = [chill({ ...touch, time: 0.1 }), chill({ ...touch, time: 0.4 })]
    expect(four.heat / one.heat).toBeCloseTo(2, 2)
    expect(one.faceFall).toBeGreaterThan(0.45 * 900)
    expect(one.faceFall).toBeLessThan(0.55 * 900)
  })

  it('a hammer blow chills little, a press dwell much', () => {
    const blow = chill({ metal: 1373, die: 473, height: 0.03, time: 0.005 })
    const dwell = chill({ metal: 1373, die: 473, height: 0.03, time: 1 })
    expect(blow.meanFall).toBeLessThan(2)
    expect(dwell.meanFall).toBeGreaterThan(20)
    expect(chill({ metal: 1373, die: 473, height: 0.03, time: 0 }).heat).toBeCloseTo(0, 6)
  })
})
