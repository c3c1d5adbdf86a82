import { type Problem, type Result, failed, ok } from '#problem'
import { type Size, SAME_LENGTH } from '#geometry'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { type Warp, edgeBar as edgeBarWarp, turn } from '#warp'
import { type Billet, type Turn, turnBuild } from '#billet'
import { along, input, laid, meeting, moving, peeled, through } from '#movement'
import { WRAPPED } from '../content.ts'
import { lossBetween, sumLosses } from '../fire.ts'
import { takeFlats } from '../flats.ts'
import { layTogether, toOneSide } from '../join.ts'
import { THIS, barsByName, nothingInHand, othersIn } from '../named-bars.ts'
import { type Operation, type Smithy, type Step, operation, step } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { alike, longEnough, saw, sawnLength } from '../saw.ts'
import { cleanUp, kerf } from '../usual.ts'
import { unwelded } from '../welds.ts'
import { type Point, cornersOff, roundThePoint, tipCurvature } from './point.ts'

const parameters = declare({
  bar: { form: 'bar', help: 'Name of the bar that becomes the edge' },
  core: {
    form: 'bar',
    optional: true,
    help: 'Name of the core, where this step begins a bar; left out, the bar in hand',
  },
  fit: {
    form: 'choice',
    options: {
      both: 'butted along both sides',
      one: 'butted along one side, for a single edge',
      wrapped: 'bent round the point and along both sides in one piece',
    },
    default: 'both',
    help: 'How the edge goes on the core',
  },
  point: {
    form: 'choice',
    options: { rounded: 'half an ellipse', pointed: 'two straight lines' },
    default: 'rounded',
    help: 'Shape of the core under a wrapped edge',
  },
  pointLength: {
    form: 'quantity',
    of: 'length',
    min: 1e-3,
    max: 0.3,
    optional: true,
    help: 'Length over which the core narrows to its point; left out, half its width',
  },
  kerf,
  cleanUp,
})

/** Over the perimeter of the core, to be cropped when it is fitted (common practice, no source). */
const ALLOWANCE = 1.05
const over: Turn = {
  x: { was: 'x' },
  y: { was: 'y', reversed: true },
  z: { was: 'z', reversed: true },
}

/** Puts a bar of edge steel on the sides of the core. */
export const edgeBar: Operation = operation({
  name: 'edge bar',
  summary:
    'Put a bar that will be the cutting edge along the core, or bend it right round the point.',
  takes: 'others',
  parameters,
  loses: ['kerf', 'ground', 'cut out', 'crop'],
  cautions: ['saw', 'dust', 'arc', 'heat'],
  examples: [
    {
      values: { bar: 'edge' },
      before: [samplePack(400, 30, 12), sampleBar(900, 12, 12, 'W2')],
    },
    {
      values: { bar: 'edge', core: 'core', fit: 'one', cleanUp: '0.6 mm' },
      before: [samplePack(300, 30, 12.2), sampleBar(320, 14, 12, '1095')],
    },
    {
      values: { bar: 'edge', fit: 'wrapped', pointLength: '40 mm' },
      before: [samplePack(700, 36, 10), sampleBar(1530, 8, 10, 'W2')],
    },
    {
      values: { bar: 'edge', fit: 'wrapped', point: 'pointed', cleanUp: '0 mm' },
      before: [samplePack(500, 40, 10), sampleBar(1300, 6, 10, 'W2')],
    },
  ],
  bars: ({ core, bar }) => othersIn([core, bar]),
  forward(before, values, smithy) {
    const { shop, densities } = smithy
    const named = barsByName(before, othersIn([values.core, values.bar]))
    const core = named.get(values.core ?? THIS)
    const edge = named.get(values.bar)
    if (!core || !edge || core === edge) return nothingInHand('core')
    for (const bar of before) {
      const loose = unwelded(bar, 'fitting the edge')
      if (loose) return failed(loose)
      if (bar.shape === 'round' || bar.shape === 'octagon') return failed(notFlat())
    }
    const level = toOneSide([core, edge], 'z', densities)
    const [flatCore, flatEdge] = level.pieces
    const on = values.fit === 'wrapped' ? wrap : butt
    const done = on(flatCore, flatEdge, {
      ...values,
      cut: values.kerf ?? shop.kerf,
      clean: values.cleanUp ?? shop.cleanUp,
      densities,
    })
    if (done.problems) return done
    return ok({
      ...done.ok,
      losses: sumLosses([...level.losses, ...done.ok.losses]),
      warnings: [...level.warnings, ...done.ok.warnings],
      notes: [
        ...done.ok.notes,
        'Bevelling and years of sharpening must both end inside the edge: leave it twice as wide as they take.',
      ],
    })
  },
  backward(demand, values, before, smithy) {
    return workBackEdge(demand, values, before, smithy)
  },
  movement(before, values, after, { shop }) {
    const names = [...barsByName(before, othersIn([values.core, values.bar])).keys()]
    const which = { core: names.indexOf(values.core ?? THIS), edge: names.indexOf(values.bar) }
    const [core, edge] = [before[which.core], before[which.edge]]
    const clean = values.cleanUp ?? shop.cleanUp
    if (values.fit === 'wrapped') {
      const half = core.size.width / 2 - clean
      const thick = edge.size.width - clean
      const nose = core.size.length - clean - half
      return moving([edgeBarWarp({ form: 'wrapped', half, width: thick, straight: nose })], {
        branches: [
          input(which.core),
          through([peeled({ y: { low: clean, high: 0 } })], input(which.edge)),
        ],
        // Round the nose the bar is thinned outside; a point of another form is drawn as a round one.
        beyond: (thick * thick) / (2 * half) + half + thick,
      })
    }
    const apart = after.size.length + (values.kerf ?? shop.kerf)
    const middle = { side: core.size.width, from: input(which.core) }
    const side = (warps: readonly (Warp | undefined)[]) => ({
      side: edge.size.width,
      from: through(warps, input(which.edge)),
    })
    const row =
      values.fit === 'both'
        ? [side([]), middle, side([turn('over'), along(apart)])]
        : [middle, side([])]
    return laid('y', meeting(row, clean))
  },
})

interface Fitting {
  readonly fit: 'both' | 'one' | 'wrapped'
  readonly point: Point['form']
  readonly pointLength: number | undefined
  readonly cut: number
  readonly clean: number
  readonly densities: Smithy['densities']
}

function butt(core: Billet, edge: Billet, f: Fitting): Result<Step> {
  const n = f.fit === 'both' ? 2 : 1
  const length = Math.min(core.size.length, (edge.size.length - (n - 1) * f.cut) / n)
  const edges = length > 0 ? saw(edge, alike(n, length), f.cut, f.densities) : undefined
  const cores = edges && saw(core, [length], f.cut, f.densities)
  if (!cores) return failed(edgeTooShort(edge.size.length, core.size.length))
  const [middle] = cores.pieces
  const [first, second] = edges.pieces
  const row = second
    ? [first, middle, { ...second, build: turnBuild(second.build, over) }]
    : [middle, first]
  const even = row.map((bar) => ({ ...bar, size: { ...bar.size, length } }))
  const together = layTogether(
    even,
    {
      axis: 'y',
      cleanUp: f.clean,
      how: n === 2 ? 'edge bars on both sides' : 'edge bar on one side',
      spare: core.spare,
    },
    f.densities,
  )
  if (together.problems) return together
  return ok(
    step(together.ok.after, {
      losses: [edges.kerf, cores.kerf, together.ok.ground],
      setAside: [edges.rest, cores.rest].filter((rest) => rest !== undefined),
      warnings: together.ok.warnings,
    }),
  )
}

function pointOf(
  width: number,
  { point, pointLength }: Pick<Fitting, 'point' | 'pointLength'>,
): Point {
  return { form: point, length: pointLength ?? width / 2, width }
}

/** Lengths of edge bar for a core: what it takes bent (along its own middle) and what to cut. */
function edgeLength(
  length: number,
  width: number,
  thick: number,
  f: Pick<Fitting, 'point' | 'pointLength'>,
) {
  const point = pointOf(width, f)
  const perimeter = 2 * (length - point.length) + roundThePoint(point)
  // An outline that turns by half a circle in all: a line outside it is longer by π × its distance.
  const taken = perimeter + (Math.PI * thick) / 2
  return { perimeter, taken, cut: Math.max(ALLOWANCE * perimeter, taken) }
}

function wrap(core: Billet, edge: Billet, f: Fitting): Result<Step> {
  const { length, height } = core.size
  const round = takeFlats(core, { y: { low: f.clean, high: f.clean } }, 'ground', f.densities)
  const mated = takeFlats(edge, { y: { low: f.clean, high: 0 } }, 'ground', f.densities)
  if (!round || !mated) return failed(groundThrough(f.clean))
  const { width } = round.after.size
  const point = pointOf(width, f)
  if (point.length >= length - f.clean) return failed(pointTooLong(point.length, length))
  // The face at the tip is ground back as the sides are.
  const shortened = takeTip(round.after, f)
  const thick = mated.after.size.width
  const needed = edgeLength(shortened.size.length, width, thick, f)
  if (edge.size.length < needed.cut - SAME_LENGTH)
    return failed(edgeTooShort(edge.size.length, needed.cut))
  const sawn = saw(mated.after, [needed.cut], f.cut, f.densities)
  if (!sawn) return failed(edgeTooShort(edge.size.length, needed.cut))
  const cropped = saw(sawn.pieces[0], [needed.taken], Infinity, f.densities)
  if (!cropped) return failed(edgeTooShort(edge.size.length, needed.taken))
  const bent = cropped.pieces[0]
  const volume =
    shortened.volume - cornersOff(point) * height * (shortened.volume / boxOf(shortened))
  const ready: Billet = { ...shortened, shape: 'cut', volume }
  const whole = ready.volume + bent.volume
  const after: Billet = {
    ...core,
    size: { length: shortened.size.length + thick, width: width + 2 * thick, height },
    shape: 'cut',
    volume: whole,
    build: {
      form: 'joined',
      axis: 'section',
      how: WRAPPED,
      parts: [
        { build: ready.build, share: ready.volume / whole, times: 1 },
        { build: bent.build, share: bent.volume / whole, times: 1 },
      ],
    },
    bond: 'loose',
    temper: 'as forged',
    worked: 1,
  }
  const tight = tipCurvature(point) * (thick / 2)
  return ok(
    step(after, {
      losses: [
        round.loss,
        mated.loss,
        lossBetween(round.after, shortened, 'ground', f.densities),
        lossBetween(shortened, ready, 'cut out', f.densities),
        sawn.kerf,
        { cause: 'crop', masses: cropped.kerf.masses },
      ],
      setAside: sawn.rest ? [sawn.rest] : [],
      warnings: tight > 0.2 ? [tightBend(point.form)] : [],
      notes: [
        `Edge bar: ${show(needed.cut)}, the ${show(needed.perimeter)} round the core and 5 % over.`,
      ],
    }),
  )
}

/** The tip ground back by the clean-up: the bar shorter, its steels alike. */
function takeTip(core: Billet, { clean }: Fitting): Billet {
  const { length } = core.size
  const size = { ...core.size, length: length - clean }
  return { ...core, size, volume: (core.volume * size.length) / length }
}

function boxOf({ size: { length, width, height } }: Billet): number {
  return length * width * height
}

function workBackEdge(
  demand: Size,
  values: {
    readonly bar: string
    readonly core?: string
    readonly kerf?: number
    readonly cleanUp?: number
  } & Pick<Fitting, 'fit' | 'point' | 'pointLength'>,
  before: readonly Billet[],
  { shop }: Smithy,
): Result<readonly Size[]> {
  const names = othersIn([values.core, values.bar])
  const keys = [...barsByName(before, names).keys()]
  const [core, edge] = [before[keys.indexOf(values.core ?? THIS)], before[keys.indexOf(values.bar)]]
  if (!core || !edge || core === edge) return nothingInHand('core')
  const clean = values.cleanUp ?? shop.cleanUp
  const sides = values.fit === 'one' ? 1 : 2
  const width = core.size.width + sides * edge.size.width - 2 * sides * clean
  const height = Math.min(core.size.height, edge.size.height)
  if (width < demand.width - SAME_LENGTH || height < demand.height - SAME_LENGTH)
    return failed(tooSlight(demand))
  let [ofCore, ofEdge] = [demand.length, sawnLength(sides, demand.length, values.kerf ?? shop.kerf)]
  if (values.fit === 'wrapped') {
    const thick = edge.size.width - clean
    ofCore = demand.length - thick + clean
    ofEdge = edgeLength(ofCore - clean, core.size.width - 2 * clean, thick, values).cut
  }
  return longEnough(
    before,
    before.map((bar) => (bar === core ? ofCore : ofEdge)),
  )
}

function notFlat(): Problem {
  return {
    at: '',
    what: 'a round or eight-sided bar gives the edge no face to lie on',
    why: 'core and edge meet along a flat',
    try: ['square the bar up first'],
  }
}

function edgeTooShort(has: number, needs: number): Problem {
  return {
    at: 'bar',
    what: `the edge bar is ${show(has)} long; ${show(needs)} is needed`,
    why: 'it goes along the core, and wrapped round the point it takes the whole outline and 5 % over',
    try: ['make the edge bar longer', 'use a shorter core', 'butt it on one side only'],
  }
}

function groundThrough(clean: number): Problem {
  return {
    at: 'cleanUp',
    what: `grinding ${show(clean)} off the faces that meet leaves nothing`,
    why: 'core and edge are ground where they meet',
    try: ['grind less', 'use a wider core or edge'],
  }
}

function pointTooLong(point: number, length: number): Problem {
  return {
    at: 'pointLength',
    what: `a point ${show(point)} long is more than a core ${show(length)} long has`,
    why: 'the sides run straight before the point begins',
    try: ['state a shorter point', 'use a longer core'],
  }
}

function tightBend(form: Point['form']): Problem {
  return {
    at: 'point',
    what: 'the edge bar is too thick to follow the point',
    why:
      form === 'pointed'
        ? 'round a sharp corner the outside tears and the inside folds'
        : 'half its thickness is more than a fifth of the radius at the tip (the limit of plain bending used here)',
    try: ['scarf or mitre it at the point', 'thin the bar there', 'round the point more'],
  }
}

function tooSlight(demand: Size): Problem {
  return {
    at: '',
    what: `core and edge together do not make ${show(demand.width)} × ${show(demand.height)}`,
    why: 'longer bars make it longer, not wider or thicker',
    try: ['use a wider core or edge', 'use thicker bars'],
  }
}

const show = (m: number) => printQuantity(m, 'length')
