// Draws the plots of docs/physics for this room: node src/forming/plots/draw-plots.mjs
import { readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { freibergRows, henselSpittel } from '../flow-stress/hensel-spittel.ts'
import { misakaMean } from '../flow-stress/misaka.ts'
import { shida } from '../flow-stress/shida.ts'
import { blowsFor } from '../machines/work.ts'
import { flatPunch, narrowDies } from '../pressing/narrow-dies.ts'
import { pressedBlock, slabSticking } from '../pressing/plane-strain.ts'
import { spreadCoefficient } from '../spread/flat-tools.ts'
import { hillWithBite } from '../spread/rolling-laws.ts'
import { stampPressure } from '../stamp/press-in.ts'
import { solidus } from '../welding/weld.ts'
import { chart, range } from './chart.mjs'

const here = dirname(fileURLToPath(import.meta.url))
const read = (path) => JSON.parse(readFileSync(join(here, '..', path), 'utf8'))
const write = (name, svg) =>
  writeFileSync(join(here, '..', '..', '..', 'docs', 'physics', `${name}.svg`), svg)
const kelvin = (celsius) => celsius + 273.15

const flow = read('flow-stress/reference.json')
const heats = range(720, 1200)
const shidaAt = (C, rate) =>
  heats.map((T) => [T, shida(C, { temperature: kelvin(T), strain: 0.3, rate }) / 1e6])
write(
  'flow-stress',
  chart(
    'Flow stress against temperature',
    { label: 'temperature, °C', from: 700, to: 1220, ticks: [700, 800, 900, 1000, 1100, 1200] },
    { label: 'flow stress at strain 0.3, MPa', from: 0, to: 450, ticks: [0, 100, 200, 300, 400] },
    [
      { name: 'Shida 0.8 C, 1 /s', line: shidaAt(0.8, 1) },
      { name: 'Shida 0.8 C, 10 /s', line: shidaAt(0.8, 10) },
      { name: 'Shida 0.8 C, 100 /s', line: shidaAt(0.8, 100) },
      {
        name: 'Misaka mean, 100 /s',
        dash: '5 3',
        line: range(750, 1200).map((T) => [
          T,
          misakaMean(0.8, { temperature: kelvin(T), strain: 0.3, rate: 100 }) / 1e6,
        ]),
      },
      {
        name: 'Hensel-Spittel C45, 10',
        dash: '2 3',
        line: range(800, 1200).map((T) => [
          T,
          henselSpittel(freibergRows[0], { temperature: kelvin(T), strain: 0.3, rate: 10 }) / 1e6,
        ]),
      },
      {
        name: 'Shida, table',
        ink: '#000',
        points: Object.entries(flow.shidaTable.rows['0.8']).flatMap(([T, row]) =>
          row.map((s) => [Number(T), s]),
        ),
      },
      {
        name: 'C45, check points',
        ink: '#c00',
        points: flow.henselSpittel.points
          .filter((p) => p.steel === 'C45' && p.rate === 10)
          .map((p) => [p.T, p.MPa]),
      },
    ],
  ),
)

const spread = read('spread/reference.json')
const bites = range(0.05, 2.2)
write(
  'spread',
  chart(
    'Spread coefficient against bite over width',
    { label: 'bite over width, B/b', from: 0, to: 2.2, ticks: [0, 0.5, 1, 1.5, 2] },
    { label: 'spread coefficient S', from: 0, to: 0.8, ticks: [0, 0.2, 0.4, 0.6, 0.8] },
    [
      { name: 'bracket', band: bites.map((x) => [x, hillWithBite(x), 1.1 * spreadCoefficient(x)]) },
      { name: 'flat tools (T–S)', line: bites.map((x) => [x, spreadCoefficient(x)]) },
      { name: 'rolling (Hill)', line: bites.map((x) => [x, hillWithBite(x)]) },
      { name: 'listed, T–S', ink: '#b3541e', points: spread.tomlinsonStringer.points },
      { name: 'listed, Hill', ink: '#3d7a3d', points: spread.hillWithBite.points },
    ],
  ),
)

const pressing = read('pressing/reference.json')
const elements = read('pressing/check/results.json')
const ratios = range(Math.log(0.1), Math.log(6), 120).map(Math.exp)
const start = (m) =>
  elements.cases.filter((c) => c.friction === m).map((c) => [c.ratio, c.states[0].pressure])
write(
  'pressing',
  chart(
    'Die pressure against contact length over height',
    {
      label: 'contact length over height, L/h',
      from: 0.1,
      to: 6,
      log: true,
      ticks: [0.1, 0.2, 0.5, 1, 2, 5],
    },
    { label: 'mean pressure over 2k', from: 0.8, to: 2.8, ticks: [1, 1.5, 2, 2.5] },
    [
      {
        name: 'narrow dies, slip lines',
        line: ratios.filter((x) => x <= 1).map((x) => [x, narrowDies(1 / x)]),
      },
      { name: 'sticking, this room', line: ratios.map((x) => [x, pressedBlock(1, x)]) },
      {
        name: 'sticking, plain slab',
        dash: '5 3',
        line: ratios.map((x) => [x, slabSticking(1, x)]),
      },
      { name: 'm 0.1, this room', line: ratios.map((x) => [x, pressedBlock(0.1, x)]) },
      {
        name: 'slip-line table',
        ink: '#1f4e79',
        points: pressing.narrowDies.points.map(([h, p]) => [1 / h, p]),
      },
      { name: 'FreeFem++, m 1', ink: '#c00', points: start(1) },
      { name: 'FreeFem++, m 0.1', ink: '#7a3d6d', points: start(0.1) },
      {
        name: 'flat punch',
        dash: '2 3',
        ink: '#555',
        line: [
          [0.1, flatPunch],
          [6, flatPunch],
        ],
      },
    ],
  ),
)

const machines = read('machines/reference.json')
const energies = range(Math.log(20), Math.log(3000)).map(Math.exp)
const { work, hand, power } = machines.blows
const energy = (mass, speed) => 0.5 * mass * speed * speed
write(
  'machines',
  chart(
    'Blows against blow energy',
    {
      label: 'energy of one blow, J',
      from: 20,
      to: 3000,
      log: true,
      ticks: [20, 50, 100, 200, 500, 1000, 2000],
    },
    {
      label: 'blows for 2379 J of work',
      from: 1,
      to: 200,
      log: true,
      ticks: [1, 2, 5, 10, 20, 50, 100],
    },
    [
      { name: 'efficiency 0.8', line: energies.map((e) => [e, blowsFor(work, e, 0.8)]) },
      { name: 'efficiency 0.5', line: energies.map((e) => [e, blowsFor(work, e, 0.5)]) },
      {
        name: 'worked examples',
        ink: '#000',
        points: [
          [energy(hand.mass, hand.speed), hand.blows],
          ...power.map(([m, v, n]) => [energy(m, v), n]),
        ],
      },
    ],
  ),
)

const welding = read('welding/reference.json')
const carbons = range(0.05, 1.6)
const melts = (c) => solidus(c) - 273.15
write(
  'welding',
  chart(
    'Welding heat against carbon',
    { label: 'carbon, % by mass', from: 0, to: 1.6, ticks: [0, 0.4, 0.8, 1.2, 1.6] },
    { label: 'temperature, °C', from: 1050, to: 1550, ticks: [1100, 1200, 1300, 1400, 1500] },
    [
      {
        name: 'welding heat',
        band: carbons.map((c) => [
          c,
          1150,
          Math.max(1150, Math.min(c <= 0.2 ? 1350 : 1260, melts(c) - 100)),
        ]),
      },
      { name: 'solidus', line: carbons.map((c) => [c, melts(c)]) },
      { name: 'solidus less 100 K', dash: '5 3', line: carbons.map((c) => [c, melts(c) - 100]) },
      {
        name: 'from memory',
        ink: '#000',
        points: welding.solidus.points.flatMap(([c, low, high]) => [
          [c, low],
          [c, high],
        ]),
      },
    ],
  ),
)

const strokes = range(0.02, 1.5, 120)
write(
  'stamp',
  chart(
    'Stamping pressure against stroke width',
    {
      label: 'stroke width over thickness',
      from: 0,
      to: 1.5,
      ticks: [0, 0.25, 0.5, 0.75, 1, 1.25, 1.5],
    },
    { label: 'pressure over flow stress', from: 0, to: 6, ticks: [0, 1, 2, 3, 4, 5, 6] },
    [
      {
        name: 'rule of 3 to 5',
        band: [
          [0, 3, 5],
          [1.5, 3, 5],
        ],
      },
      { name: 'first touch', line: strokes.map((w) => [w, stampPressure(w, 1, 0, 0.85)]) },
      {
        name: 'depth ⅒ of thickness',
        line: strokes.map((w) => [w, stampPressure(w, 1, 0.1, 0.85)]),
      },
      { name: 'flat punch, Mises', ink: '#000', points: [[0.02, pressing.punch.overYieldMises]] },
    ],
  ),
)
