import { expect, test } from 'vitest'
import reference from './reference.json' with { type: 'json' }
import { hold, tidyHistory } from '../history.ts'
import { carbonActivity, carbonAtActivity, matrixOf, settleCarbon } from '../mobility/activity.ts'
import { fickLaw, heldFace } from '../mobility/carbon-law.ts'
import { decarburise, fadeWeldLine } from '../skin/decarburisation.ts'
import {
  type Substitutional,
  agren,
  diffuseCarbon,
  liuCarbon,
  substitutional,
  substitutionalDiffusivity,
} from '../mobility/diffusivity.ts'
import { evolveCarbon } from './evolve-carbon.ts'
import { acrossWeld, creepOf, swingLeft } from '../mobility/interface-width.ts'
import { march } from '../march/march.ts'

const kelvin = (celsius: number | string) => Number(celsius) + 273.15
const near = (got: number, want: number, share: number) =>
  expect(Math.abs(got / want - 1)).toBeLessThan(share)

test('carbon diffusivity: the table of Ågren 1986 (CPART)', () => {
  for (const [celsius, row] of Object.entries(reference.agren.table))
    row.forEach((d, i) => near(agren(reference.agren.carbon[i]!, kelvin(celsius)), d, 1e-4))
})

test('carbon diffusivity: the independent set (MOB) lies in the range given', () => {
  for (const [carbon, row] of Object.entries(reference.liu.rows))
    row.forEach((d, i) => {
      const t = kelvin([900, 1000, 1100, 1200][i]!)
      near(liuCarbon(Number(carbon), t), d * 1e-12, 0.01)
      const { range } = diffuseCarbon(Number(carbon), t)
      expect(d * 1e-12).toBeGreaterThan(range[0])
      expect(d * 1e-12).toBeLessThan(range[1] * 1.001)
    })
})

test('case depth: the solver against the published Harris table (HARRIS-T) within 8 %', () => {
  // Acm of Fe-C: 388.30 + 491.44 C - 60.72 C² °C (OC-TDB); core 0.20 %; depth at core + 0.07 (FLAME).
  const acm = (celsius: number) =>
    (491.44 - Math.sqrt(491.44 ** 2 - 4 * 60.72 * (celsius - 388.3))) / (2 * 60.72)
  for (const f of [1600, 1700, 1800] as const)
    for (const hours of ['1', '2', '4', '8'] as const) {
      const celsius = (f - 32) / 1.8
      const n = 400
      const width = new Float64Array(n).fill(6e-3 / n)
      const carbon = new Float64Array(n).fill(0.2)
      const t = kelvin(celsius)
      march(
        {
          width,
          value: carbon,
          law: fickLaw(),
          ends: 'sealed',
          skin: heldFace(acm(celsius), fickLaw()),
        },
        [{ seconds: Number(hours) * 3600, from: t, to: t, stretch: 1 }],
        1e-5,
      )
      const i = carbon.findIndex((c) => c < 0.27)
      const depth = (i - 0.5 + (carbon[i - 1]! - 0.27) / (carbon[i - 1]! - carbon[i]!)) * (6e-3 / n)
      const inch = reference.harris.hours[hours][reference.harris.fahrenheit.indexOf(f)]!
      // the table is printed to a thousandth of an inch
      expect(Math.abs(depth - inch * 0.0254)).toBeLessThan(0.08 * inch * 0.0254 + 0.0005 * 0.0254)
    }
})

test('activity of carbon in iron (OC-TDB)', () => {
  for (const [carbon, row] of Object.entries(reference.activity.rows))
    row.forEach((a, i) =>
      near(carbonActivity({ C: Number(carbon) }, kelvin([900, 1000, 1100, 1200][i]!)), a, 1e-4),
    )
  for (const [celsius, carbon] of Object.entries(reference.saturation.rows))
    near(carbonAtActivity(matrixOf({}), kelvin(celsius), 1), carbon, 2e-3)
})

test('where carbon settles, by pair', () => {
  for (const c of reference.splits.cases) {
    const layers = [
      { composition: c.a, mass: c.massA },
      { composition: c.b, mass: 1 },
    ]
    settleCarbon(layers, kelvin(c.celsius)).forEach((got, i) => {
      expect(Math.abs(got - c.carbon[i]!)).toBeLessThan(5e-4)
    })
    // the second description of nickel stays within the 0.01 % the sources differ by
    settleCarbon(layers, kelvin(c.celsius), '2023').forEach((got, i) => {
      expect(Math.abs(got - c.carbon[i]!)).toBeLessThan(0.011)
    })
  }
  for (const set of ['1987', '2023'] as const)
    reference.nickelRatio[set].forEach((ratio, i) => {
      const t = kelvin([900, 1100, 1200][i]!)
      const other = carbonAtActivity(matrixOf({ Ni: 2 }, set), t, carbonActivity({ C: 0.8 }, t))
      expect(Math.abs(other / 0.8 - ratio)).toBeLessThan(1e-3)
    })
})

test('Darken’s couple: carbon runs uphill into the iron, to the size he found (DARK-F)', () => {
  const d = reference.darken
  const out = evolveCarbon(
    [
      { composition: { C: 0.45, Si: d.silicon }, thickness: 0.03 },
      { composition: { C: 0.45 }, thickness: 0.03 },
    ],
    { points: hold(kelvin(d.celsius), d.days * 86400) },
    { nodesPerLayer: 500 },
  )
  const silicon = out.layers[0]!.across.at(-1)!
  const plain = out.layers[1]!.across[0]!
  expect(plain).toBeGreaterThan(0.5)
  expect(silicon).toBeLessThan(0.35)
  // equal activity across the weld, as measured: the ratio within 2 %, the level within 5 %
  near(silicon / plain, d.siliconSide / d.plain, 0.02)
  near(plain, d.plain, 0.05)
  expect(out.drift).toBeLessThan(1e-10)
})

test('equal carbon with 2 % nickel against none: carbon leaves the nickel side', () => {
  const out = evolveCarbon(
    [
      { composition: { C: 0.8, Ni: 2 }, thickness: 1e-4 },
      { composition: { C: 0.8 }, thickness: 1e-4 },
    ],
    { points: hold(kelvin(1100), 3600) },
  )
  const ratio = out.layers[0]!.mean / out.layers[1]!.mean
  expect(ratio).toBeGreaterThan(0.9457 - 0.005)
  expect(ratio).toBeLessThan(0.9628)
})

test('levelling time of an equal stack at 0.8 % (CPART)', () => {
  for (const [celsius, row] of Object.entries(reference.levelling.rows))
    row.forEach((seconds, i) => {
      const L = reference.levelling.millimetres[i]! / 1000
      const out = evolveCarbon(
        [
          { composition: { C: 0.801 }, thickness: L / 2 },
          { composition: { C: 0.799 }, thickness: L / 2 },
        ],
        { points: hold(kelvin(celsius), seconds) },
        { tolerance: 1e-7, driving: 'fick' },
      )
      const swing = (out.layers[0]!.across[0]! - out.layers[1]!.across.at(-1)!) / 0.002
      expect(Math.abs(swing - 0.05)).toBeLessThan(0.002)
    })
})

test('substitutional diffusivities (MOB, MOBK) and creep in an hour', () => {
  for (const row of reference.substitutional.rows) {
    const element = row.element as Substitutional
    const set = substitutional[element].findIndex(
      (s) => s.set.replace(' ', '-') === row.set.replace(' ', '-'),
    )
    expect(set).toBeGreaterThanOrEqual(0)
    for (const [celsius, d] of Object.entries(row.D))
      near(substitutionalDiffusivity(element, kelvin(celsius), set), d, 2e-3)
  }
  for (const [celsius, cm2] of Object.entries(reference.millionIron.rows)) {
    const ratio = substitutionalDiffusivity('Fe', kelvin(celsius)) / (cm2 * 1e-4)
    expect(ratio).toBeGreaterThan(0.5)
    expect(ratio).toBeLessThan(2)
  }
  for (const element of ['Ni', 'Cr', 'Mn', 'Si'] as const)
    reference.creepMicrometres[element].forEach((um, i) => {
      const creep = creepOf(element, hold(kelvin([1000, 1100, 1200][i]!), 3600))
      near(creep.value * 1e6, um, 0.005)
    })
})

test('nickel hardly moves where carbon levels', () => {
  const history = hold(kelvin(1150), 6000)
  const creep = creepOf('Ni', history)
  // 100 minutes at 1150 °C: 6.3 µm (MOB)
  near(creep.value * 1e6, 6.3, 0.01)
  expect(swingLeft(1.5e-4, creep.value)).toBeGreaterThan(0.99)
  expect(acrossWeld(2, 0, -5e-5, creep.value)).toBeCloseTo(2, 5)
  expect(acrossWeld(2, 0, 0, creep.value)).toBe(1)
})

test('decarburised skin: upper bound, and less as scale eats it', () => {
  for (const [celsius, row] of Object.entries(reference.decarburisation.rows))
    row.forEach((mm, i) => {
      const heat = hold(kelvin(celsius), [300, 1800, 3600][i]!)
      near(decarburise(heat, 0.8).depth.value * 1000, mm, 0.005)
      const eaten = decarburise(heat, 0.8, 1e-4).depth.value
      expect(eaten).toBeLessThan(mm / 1000)
      expect(eaten).toBeGreaterThan(mm / 1000 - 1e-4)
    })
  expect(decarburise(tidyHistory([]), 0.8).depth.value).toBe(0)
})

test('a light weld line fades with every further heat', () => {
  const before = fadeWeldLine(1e-4, 0.4, [], 0.8)
  const after = fadeWeldLine(1e-4, 0.4, hold(kelvin(1100), 600), 0.8)
  expect(before).toEqual({ deficit: 0.4, width: 2e-4 })
  // erf(1e-4 / 2 sqrt(8.0335e-11 × 600)) = erf(0.2278) = 0.2526
  expect(after.deficit).toBeCloseTo(0.4 * 0.2526, 3)
})
