// Draws the plots of docs/physics for this room: node src/metallurgy/plots/draw-plots.mjs
import { readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { etchRelief } from '../etch/attack.ts'
import { growGrains, growLz50, growSellars } from '../grain/grow-grains.ts'
import { idealDiameter, idealDiameterA255 } from '../hardenability/ideal-diameter.ts'
import { fullMartensite } from '../hardness/as-quenched.ts'
import { temperedHardness } from '../hardness/temper.ts'
import { heatBar } from '../heating/heat-bar.ts'
import { hold } from '../history.ts'
import { specificHeat } from '../hot-steel/steel-properties.ts'
import { fickLaw, heldFace } from '../mobility/carbon-law.ts'
import { carbonAtActivity, matrixOf, carbonActivity } from '../mobility/activity.ts'
import { evolveCarbon } from '../diffusion/evolve-carbon.ts'
import { march } from '../march/march.ts'
import { oxidise, paidassi, stanley } from '../scale/oxidise.ts'
import { burningTable, solidus } from '../solidus/overheating.ts'
import { ac3Laws, fullAustenite, msLaws } from '../transformation/critical-points.ts'
import { chart, range } from './chart.mjs'

const here = dirname(fileURLToPath(import.meta.url))
const read = (path) => JSON.parse(readFileSync(join(here, '..', path), 'utf8'))
const write = (name, svg) =>
  writeFileSync(join(here, '..', '..', '..', 'docs', 'physics', `${name}.svg`), svg)
const kelvin = (celsius) => Number(celsius) + 273.15

// Case depth: the solver against the published table.
const d = read('diffusion/reference.json')
const acm = (c) => (491.44 - Math.sqrt(491.44 ** 2 - 4 * 60.72 * (c - 388.3))) / (2 * 60.72)
function caseDepth(fahrenheit, hours) {
  const celsius = (fahrenheit - 32) / 1.8
  const n = 300
  const value = new Float64Array(n).fill(0.2)
  const width = new Float64Array(n).fill(6e-3 / n)
  const t = kelvin(celsius)
  march(
    { width, value, law: fickLaw(), ends: 'sealed', skin: heldFace(acm(celsius), fickLaw()) },
    [{ seconds: hours * 3600, from: t, to: t, stretch: 1 }],
    1e-5,
  )
  const i = value.findIndex((c) => c < 0.27)
  return (((i - 0.5 + (value[i - 1] - 0.27) / (value[i - 1] - value[i])) * 6e-3) / n) * 1000
}
write(
  'diffusion',
  chart(
    'Case depth against time',
    { label: 'hours', from: 0, to: 9, ticks: [0, 2, 4, 6, 8] },
    { label: 'case depth, mm', from: 0, to: 3, ticks: [0, 1, 2, 3] },
    [1600, 1700, 1800]
      .flatMap((f) => [
        {
          name: `solved, ${Math.round((f - 32) / 1.8)} °C`,
          line: range(0.2, 9, 30).map((h) => [h, caseDepth(f, h)]),
        },
        {
          name: 'table (HARRIS-T)',
          points: [1, 2, 4, 8].map((h) => [
            h,
            d.harris.hours[h][d.harris.fahrenheit.indexOf(f)] * 25.4,
          ]),
        },
      ])
      .map((s, i) => ({ ...s, ink: ['#171716', '#8a3b12', '#1f5673'][Math.floor(i / 2)] })),
  ),
)

// Uphill: Darken's couple.
const couple = evolveCarbon(
  [
    { composition: { C: 0.45, Si: 3.8 }, thickness: 0.03 },
    { composition: { C: 0.45 }, thickness: 0.03 },
  ],
  { points: hold(kelvin(1050), 13 * 86400) },
  { nodesPerLayer: 300 },
)
const across = couple.layers.map((l) => l.across)
write(
  'uphill',
  chart(
    'Carbon across a silicon steel and a plain steel',
    { label: 'mm from the weld', from: -25, to: 25, ticks: [-20, -10, 0, 10, 20] },
    { label: 'carbon, wt%', from: 0.2, to: 0.7, ticks: [0.2, 0.3, 0.4, 0.5, 0.6, 0.7] },
    [
      { name: '3.8 Si side, 13 days', line: across[0].map((c, i) => [-30 + (i + 0.5) / 10, c]) },
      { name: 'plain side', line: across[1].map((c, i) => [(i + 0.5) / 10, c]) },
      {
        name: 'found at the weld',
        ink: '#1f5673',
        points: [
          [0.15, d.darken.plain],
          [-0.15, d.darken.siliconSide],
        ],
      },
      {
        name: 'equal at the start',
        ink: '#a3a29d',
        dash: '4 3',
        line: [
          [-25, 0.45],
          [25, 0.45],
        ],
      },
    ],
  ),
)

// Splits by nickel.
const split = (set, ni, t) =>
  carbonAtActivity(matrixOf({ Ni: ni }, set), t, carbonActivity({ C: 0.8 }, t))
write(
  'activity',
  chart(
    'Carbon in a nickel steel beside plain steel',
    { label: 'nickel, wt%', from: 0, to: 4, ticks: [0, 1, 2, 3, 4] },
    { label: 'carbon over plain', from: 0.86, to: 1, ticks: [0.86, 0.9, 0.94, 0.98] },
    [
      {
        name: '1987 set, 1100 °C',
        line: range(0, 4).map((n) => [n, split('1987', n, kelvin(1100)) / 0.8]),
      },
      {
        name: '2023 set, 1100 °C',
        dash: '5 3',
        line: range(0, 4).map((n) => [n, split('2023', n, kelvin(1100)) / 0.8]),
      },
      {
        name: 'worked apart',
        ink: '#1f5673',
        points: [
          [2, 0.9457],
          [2, 0.9628],
        ],
      },
    ],
  ),
)

// Heating.
const h = read('heating/reference.json')
const scipy = read('heating/independent.json')
const fire = { wall: kelvin(1250), gas: kelvin(1250), emissivity: 0.8, convection: 25 }
const run = heatBar({ shape: 'plate', thickness: 0.04 }, fire, { seconds: 1000, points: 100 })
const curve = (points) => points.map((p) => [p.time, p.temperature - 273.15])
write(
  'heating',
  chart(
    'A 40 mm plate in a fire at 1250 °C',
    { label: 'seconds', from: 0, to: 1000, ticks: [0, 200, 400, 600, 800, 1000] },
    { label: 'temperature, °C', from: 0, to: 1300, ticks: [0, 200, 400, 600, 800, 1000, 1200] },
    [
      { name: 'skin', line: curve(run.skin) },
      { name: 'core', line: curve(run.core) },
      {
        name: 'SciPy BDF, core',
        ink: '#1f5673',
        points: scipy.plateHeating.seconds.map((s, i) => [s, scipy.plateHeating.core[i] - 273.15]),
      },
    ],
  ),
)
write(
  'specific-heat',
  chart(
    'Specific heat of steel',
    { label: 'temperature, °C', from: 0, to: 1200, ticks: [0, 200, 400, 600, 800, 1000, 1200] },
    { label: 'J/(kg K)', from: 0, to: 2000, ticks: [0, 500, 1000, 1500, 2000] },
    [
      {
        name: 'EN 1993-1-2',
        line: range(20, 1200, 300).map((c) => [c, Math.min(specificHeat(kelvin(c)), 2000)]),
      },
      {
        name: 'worked apart',
        ink: '#1f5673',
        points: h.properties.celsius.map((c, i) => [c, h.properties.specificHeat[i]]),
      },
    ],
  ),
)

// Scale.
const sc = read('scale/reference.json')
write(
  'scale',
  chart(
    'Metal lost from a face in still air',
    { label: 'minutes', from: 0, to: 60, ticks: [0, 15, 30, 45, 60] },
    { label: 'µm', from: 0, to: 650, ticks: [0, 200, 400, 600] },
    [1000, 1100, 1200].flatMap((c, i) => {
      const ink = ['#171716', '#8a3b12', '#1f5673'][i]
      return [
        {
          name: `${c} °C`,
          ink,
          line: range(0.2, 60).map((m) => [
            m,
            oxidise(hold(kelvin(c), m * 60), 'air').recession.value * 1e6,
          ]),
        },
        {
          name: 'worked apart',
          ink,
          points: sc.recession.minutes.map((m, k) => [m, sc.recession.rows[c][k]]),
        },
        {
          name: 'by Stanley (STAN)',
          ink,
          dash: '4 3',
          line: range(0.2, 60).map((m) => [
            m,
            oxidise(hold(kelvin(c), m * 60), 'air').recession.value *
              1e6 *
              Math.sqrt(stanley(kelvin(c)) / paidassi(kelvin(c))),
          ]),
        },
      ]
    }),
  ),
)

// Grain.
const g = read('grain/reference.json')
const at = kelvin(1100)
write(
  'grain',
  chart(
    'Austenite grain at 1100 °C',
    { label: 'hours', from: 0, to: 3.2, ticks: [0, 1, 2, 3] },
    { label: 'µm', from: 0, to: 180, ticks: [0, 50, 100, 150] },
    [
      {
        name: 'LZ50 law',
        line: range(0.02, 3.2).map((t) => [t, growLz50(hold(at, t * 3600), 12.5)]),
      },
      {
        name: 'Sellars–Whiteman',
        dash: '5 3',
        line: range(0.02, 3.2).map((t) => [t, growSellars(hold(at, t * 3600), 12.5)]),
      },
      {
        name: 'value given',
        dash: '2 3',
        line: range(0.02, 3.2).map((t) => [t, growGrains(hold(at, t * 3600)).size.value * 1e6]),
      },
      { name: 'LZ50 (GG)', points: g.lz50.hours.map((t, i) => [t, g.lz50.rows['1100'][i]]) },
      { name: 'O1 (GG)', points: g.o1.hours.map((t, i) => [t, g.o1.rows['1100'][i]]) },
      {
        name: 'bearing steel (GG)',
        points: g.bearing.hours.map((t, i) => [t, g.bearing.rows['1100'][i]]),
      },
    ],
  ),
)

// Solidus and burning.
const s = read('solidus/reference.json')
write(
  'solidus',
  chart(
    'Melting, burning and forging heats',
    { label: 'carbon, wt%', from: 0, to: 1.6, ticks: [0, 0.4, 0.8, 1.2, 1.6] },
    { label: '°C', from: 1000, to: 1550, ticks: [1000, 1100, 1200, 1300, 1400, 1500] },
    [
      { name: 'solidus', line: range(0.2, 1.6).map((c) => [c, solidus(c).value - 273.15]) },
      {
        name: 'Fe-C (OC-TDB)',
        ink: '#1f5673',
        points: Object.entries(s.solidus.rows).map(([c, t]) => [Number(c), t]),
      },
      {
        name: 'burning (memory)',
        ink: '#8a3b12',
        dash: '5 3',
        line: burningTable.map(([c, , b]) => [c, b]),
      },
      {
        name: 'forging, most',
        ink: '#8a6d12',
        dash: '2 3',
        line: burningTable.map(([c, f]) => [c, f]),
      },
      {
        name: 'published limits',
        ink: '#3b6b3b',
        points: s.forging.rows.map(([, c, t]) => [c, t]),
      },
    ],
  ),
)

// Transformation.
const t = read('transformation/reference.json')
const steel = (c) => ({ C: c, Mn: 0.3, Si: 0.25 })
write(
  'transformation',
  chart(
    'Ms and full austenite of plain steel',
    { label: 'carbon, wt%', from: 0.1, to: 1.4, ticks: [0.2, 0.6, 1, 1.4] },
    { label: '°C', from: 0, to: 1000, ticks: [0, 200, 400, 600, 800, 1000] },
    [
      {
        name: 'Ms van Bohemen',
        line: range(0.1, 1.4).map((c) => [c, msLaws[0].temperature(steel(c)) - 273.15]),
      },
      {
        name: 'Ms Ingber',
        dash: '5 3',
        line: range(0.1, 1.4).map((c) => [c, msLaws[1].temperature(steel(c)) - 273.15]),
      },
      {
        name: 'Ms Andrews',
        dash: '2 3',
        line: range(0.1, 1.4).map((c) => [c, msLaws[2].temperature(steel(c)) - 273.15]),
      },
      { name: 'Ms tables (CN-T)', ink: '#1f5673', points: t.measuredMs.rows },
      {
        name: 'Ac3, Acm',
        ink: '#8a3b12',
        line: range(0.1, 1.4).map((c) => [c, fullAustenite({ C: c }).value - 273.15]),
      },
      {
        name: 'Fe-C (OC-TDB)',
        ink: '#8a3b12',
        points: [...Object.entries(t.fec.a3), ...Object.entries(t.fec.acm)].map(([c, y]) => [
          Number(c),
          y,
        ]),
      },
      {
        name: 'Ac3 Andrews',
        ink: '#a3a29d',
        dash: '2 3',
        line: range(0.1, 0.9).map((c) => [c, ac3Laws[0].temperature({ C: c }) - 273.15]),
      },
    ],
  ),
)

// Hardenability.
const hd = read('hardenability/reference.json')
write(
  'hardenability',
  chart(
    'Observed and foretold critical diameter',
    { label: 'A255 ideal diameter, mm', from: 0, to: 45, ticks: [0, 10, 20, 30, 40] },
    { label: 'diameter, mm', from: 0, to: 45, ticks: [0, 10, 20, 30, 40] },
    [
      {
        name: 'A255 itself',
        dash: '5 3',
        line: [
          [0, 0],
          [45, 45],
        ],
      },
      {
        name: 'used above .90 % C',
        line: range(8, 45).map((x) => [x, Math.max(0.79 * x - 5.9, 0.3 * x)]),
      },
      {
        name: 'observed (RKK)',
        ink: '#1f5673',
        points: hd.waterHardening.rows.map((r) => [idealDiameterA255(r) * 1000, r.observed]),
      },
      {
        name: 'value given',
        ink: '#8a3b12',
        points: hd.waterHardening.rows.map((r) => [
          idealDiameterA255(r) * 1000,
          idealDiameter(r).value * 1000,
        ]),
      },
    ],
  ),
)

// Hardness.
const q = read('hardness/reference.json')
write(
  'as-quenched',
  chart(
    'Hardness as quenched',
    { label: 'carbon, wt%', from: 0, to: 1.3, ticks: [0, 0.4, 0.8, 1.2] },
    { label: 'HRC', from: 30, to: 70, ticks: [30, 40, 50, 60, 70] },
    [
      { name: 'martensite', line: range(0.1, 1.3).map((c) => [c, fullMartensite(c)]) },
      { name: 'A255 whole numbers', ink: '#5b5b58', points: q.integers.rows },
      { name: 'measured (RAIIPA)', ink: '#1f5673', points: q.measured.rows },
      { name: 'strip in oil (MEAD)', ink: '#8a3b12', points: q.strip.rows },
    ],
  ),
)
const tables = read('hardness/tempering-tables.json')
const column = (name, i) => {
  const table = tables.find((x) => x.steel === name)
  return table.celsius.map((c, r) => [c, table.hrc[r][i]]).filter(([, v]) => v !== null)
}
const temper = (composition, seconds) =>
  range(100, 650).map((c) => [
    c,
    temperedHardness(composition, [{ temperature: kelvin(c), seconds }]).value,
  ])
write(
  'tempering',
  chart(
    'Hardness after tempering',
    { label: 'temperature, °C', from: 80, to: 680, ticks: [100, 200, 300, 400, 500, 600] },
    { label: 'HRC', from: 15, to: 70, ticks: [20, 30, 40, 50, 60, 70] },
    [
      { name: '.89 C, 15 min', line: temper({ C: 0.89, Mn: 0.55, Si: 0.06 }, 900) },
      { name: 'table (RAIIPA)', ink: '#171716', points: column('plain carbon 0.89C', 2) },
      {
        name: '15N20, 2 h: no table',
        ink: '#8a3b12',
        dash: '5 3',
        line: temper({ C: 0.75, Mn: 0.35, Si: 0.25, Ni: 2 }, 7200),
      },
      {
        name: 'O1, 1 h',
        ink: '#1f5673',
        line: temper({ C: 0.92, Mn: 1.2, Si: 0.3, Cr: 0.5, W: 0.5 }, 3600),
      },
      { name: 'table (DIAM-O1)', ink: '#1f5673', points: column('O1', 0) },
      {
        name: '5160, 15 min',
        ink: '#8a6d12',
        line: temper({ C: 0.62, Mn: 0.88, Si: 0.22, Cr: 0.79 }, 900),
      },
      { name: 'table (RAIIPA)', ink: '#8a6d12', points: column('SAE 5160', 2) },
    ],
  ),
)

// Etch.
const pair = [
  { C: 0.8, Mn: 0.75, Si: 0.22 },
  { C: 0.75, Mn: 0.35, Si: 0.25, Ni: 2 },
]
const relief = (m) => etchRelief(pair[0], pair[1], { minutes: m })
write(
  'etch',
  chart(
    'Step between a carbon and a nickel steel, one to three, 20 °C',
    { label: 'minutes', from: 0, to: 60, ticks: [0, 15, 30, 45, 60] },
    { label: 'µm', from: 0, to: 150, ticks: [0, 50, 100, 150] },
    [
      { name: 'likely', line: range(0.5, 60).map((m) => [m, relief(m).value * 1e6]) },
      {
        name: 'lowest, highest',
        ink: '#a3a29d',
        dash: '4 3',
        line: range(0.5, 60).map((m) => [m, relief(m).range[0] * 1e6]),
      },
      {
        name: '',
        ink: '#a3a29d',
        dash: '4 3',
        line: range(0.5, 60).map((m) => [m, relief(m).range[1] * 1e6]),
      },
      {
        name: 'practice, ends',
        ink: '#1f5673',
        points: [
          [15, 5],
          [15, 20],
          [50, 30],
          [50, 80],
        ],
      },
    ],
  ),
)
