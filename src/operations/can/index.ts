import { type Problem, failed, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { type Billet, type Build, type Joined, type Part, massesOf, solid } from '#billet'
import { layoutOf, startingFrom } from '#movement'
import { type Stock, operation, step } from '../operation.ts'
import { solidsInPowder } from './solids.ts'

const parameters = declare({
  inside: {
    form: 'quantity',
    of: 'length',
    min: 0.005,
    max: 0.3,
    help: 'Width and height inside the tube',
  },
  length: {
    form: 'quantity',
    of: 'length',
    min: 0.02,
    max: 1,
    free: 'length',
    help: 'Length of the can over its caps',
  },
  wall: {
    form: 'quantity',
    of: 'length',
    min: 5e-4,
    max: 0.01,
    default: '1/16 in',
    help: 'Thickness of the tube (common practice: 1/16 to 1/8 in)',
  },
  cap: {
    form: 'quantity',
    of: 'length',
    min: 5e-4,
    max: 0.02,
    default: '1/4 in',
    help: 'Thickness of the plate on each end',
  },
  wallSteel: { form: 'steel', default: '1018', help: 'Steel of the tube and its caps' },
  powder: { form: 'steel', help: 'Steel of the powder' },
  packing: {
    form: 'quantity',
    of: 'ratio',
    min: 0.3,
    max: 0.8,
    default: '60 %',
    help: 'Share of its own space that the powder fills once shaken down (from memory: 55 to 65 %)',
  },
  solids: {
    form: 'list',
    fewest: 0,
    most: 40,
    default: [],
    help: 'What stands in the powder: balls, chain, cable, rods, shapes',
    item: declare({
      what: { form: 'text', longest: 60, default: 'pieces', help: 'What they are' },
      steel: { form: 'steel', help: 'Grade' },
      mass: {
        form: 'quantity',
        of: 'mass',
        min: 1e-4,
        max: 100,
        help: 'Mass of all of them together, weighed',
      },
    }),
  },
})

/**
 * Solids may take this share of the room at most; balls shaken down fill 64 % (random close packing,
 * from memory), rods and cable laid parallel more. Above it the figures are wrong.
 */
const FULL = 0.9
const BALLS = 0.64

/** A tube of powder and solids, closed: the start of a bar. Its wall is ground off once it is welded. */
export const can = operation({
  name: 'can',
  summary: 'Fill a square steel tube with powder and solids, shake it down and weld on its caps.',
  takes: 'none',
  parameters,
  loses: [],
  cautions: ['sealed', 'arc', 'dust'],
  examples: [
    { values: { inside: '22 mm', length: '5 1/2 in', powder: '1084' }, before: [] },
    {
      values: {
        inside: '1 3/4 in',
        length: '150 mm',
        wall: '1/8 in',
        powder: '1095',
        packing: '0.55',
        solids: [
          { what: '6 mm bearing balls', steel: '52100', mass: '400 g' },
          { what: 'nickel steel strip', steel: '15N20', mass: '250 g' },
        ],
      },
      before: [],
    },
  ],
  forward(_before, values, { densities }) {
    const { inside, wall, cap, wallSteel, powder, packing } = values
    const room = values.length - 2 * cap
    if (room <= 0) return failed(allCap(values.length, cap))
    const cavity = inside * inside * room
    const solids = values.solids.map((s) => ({ ...s, volume: s.mass / densities[s.steel] }))
    const taken = solids.reduce((sum, s) => sum + s.volume, 0)
    if (taken > FULL * cavity) return failed(tooFull(taken / cavity))
    const fill = [
      ...solids.map((s) => ({ steel: s.steel, volume: s.volume })),
      { steel: powder, volume: packing * (cavity - taken) },
    ]
    const filled = fill.reduce((sum, part) => sum + part.volume, 0)
    const outside = inside + 2 * wall
    const tube = (outside * outside - inside * inside) * room
    const caps = outside * outside * cap
    const volume = filled + tube + 2 * caps
    const inner: Joined = {
      form: 'joined',
      axis: 'section',
      how: 'solids in powder',
      parts: fill.map((part) => ({
        build: solid(part.steel, inside),
        share: part.volume / filled,
        times: 1,
      })),
    }
    const after: Billet = {
      size: { length: values.length, width: outside, height: outside },
      shape: 'cut',
      volume,
      build: inCan(inner, filled, { wallSteel, outside, wall, inside, room, caps }),
      bond: 'sealed',
      temper: 'as forged',
      worked: 1,
      spare: 'x',
    }
    const mean = filled / cavity
    const added = massesOf(after, densities)
    const stock: Stock[] = [
      {
        steel: wallSteel,
        form: 'tube',
        thickness: wall,
        width: outside,
        length: room,
        count: 1,
        mass: tube * densities[wallSteel],
      },
      {
        steel: wallSteel,
        form: 'sheet',
        thickness: cap,
        width: outside,
        length: outside,
        count: 2,
        mass: 2 * caps * densities[wallSteel],
      },
      {
        steel: powder,
        form: 'powder',
        thickness: 0,
        width: 0,
        length: 0,
        count: 1,
        mass: packing * (cavity - taken) * densities[powder],
      },
      ...solids.map((s): Stock => ({
        steel: s.steel,
        form: 'remnant',
        thickness: 0,
        width: 0,
        length: 0,
        count: 1,
        mass: s.mass,
      })),
    ]
    return ok(
      step(after, {
        added,
        taken: stock,
        warnings: taken > BALLS * cavity ? [tightlyFull(taken / cavity)] : [],
        notes: [
          `Filled to ${percent(mean)} of its room: solid once its section is ${percent(Math.sqrt(mean))} across each way, or ${percent(mean)} of its height pressed one way only.`,
          'Soak it 10 to 15 min at welding heat before the first squeeze (common practice).',
        ],
      }),
    )
  },
  backward() {
    return ok([])
  },
  movement(_before, _values, after) {
    return startingFrom(layoutOf(after.build, after.size, solidsInPowder))
  },
})

interface Shell {
  readonly wallSteel: string
  readonly outside: number
  readonly wall: number
  readonly inside: number
  readonly room: number
  /** Volume of one cap, m³. */
  readonly caps: number
}

/**
 * Fill within walls within caps: parts that follow one another along y, z and x, so that grinding a
 * side takes the wall there and nothing else.
 */
function inCan(inner: Build, filled: number, s: Shell): Build {
  const wall = solid(s.wallSteel, s.wall)
  const between = (
    axis: 'x' | 'y' | 'z',
    how: string,
    side: number,
    middle: Build,
    volume: number,
  ) => {
    const whole = volume + 2 * side
    const shell: Part = { build: wall, share: side / whole, times: 1 }
    const parts = [shell, { build: middle, share: volume / whole, times: 1 }, shell]
    return { build: { form: 'joined', axis, how, parts } as const, volume: whole }
  }
  const floor = s.inside * s.wall * s.room
  const upright = s.outside * s.wall * s.room
  const up = between('z', 'between bottom and top wall', floor, inner, filled)
  const across = between('y', 'between side walls', upright, up.build, up.volume)
  return between('x', 'between caps', s.caps, across.build, across.volume).build
}

function allCap(length: number, cap: number): Problem {
  return {
    at: 'length',
    what: `two caps of ${printQuantity(cap, 'length')} leave no room in a can ${printQuantity(length, 'length')} long`,
    why: 'the length is stated over the caps',
    try: ['make the can longer', 'use thinner caps'],
  }
}

function tooFull(share: number): Problem {
  return {
    at: 'solids',
    what: `the solids would take ${printQuantity(share, 'ratio')} of the room`,
    why: 'no shape packs as tightly as that: the can is too small or a mass is wrong',
    try: ['weigh them again', 'use a wider or longer can', 'put fewer in'],
  }
}

function tightlyFull(share: number): Problem {
  return {
    at: 'solids',
    what: `the solids take ${printQuantity(share, 'ratio')} of the room`,
    why: 'balls shaken down fill 64 %; more goes in only if they lie in order, and powder reaches the gaps badly',
    try: [
      'put fewer in',
      'lay rods and cable side by side',
      'shake the powder in as the can is filled',
    ],
  }
}

const percent = (share: number) => `${Math.round(100 * share)} %`
