import { type Problem, failed, ok } from '#problem'
import { printCount, printQuantity } from '#units'
import { declare } from '#parameters'
import { type Billet, flatAxis, wholeCount, type GrooveRow, type Hollow } from '#billet'
import { grooveShape, stays } from '#movement'
import { type Cut, cutOut } from '../cut-out.ts'
import { operation, step } from '../operation.ts'
import { samplePack } from '../samples.ts'
import { unwelded } from '../welds.ts'

const parameters = declare({
  depth: {
    form: 'quantity',
    of: 'length',
    min: 1e-4,
    max: 0.05,
    help: 'How deep each groove is cut (common practice: a third of the thickness, a quarter to be safe)',
  },
  width: {
    form: 'quantity',
    of: 'length',
    min: 2e-4,
    max: 0.1,
    help: 'Width of the groove at the face',
  },
  pitch: {
    form: 'quantity',
    of: 'length',
    min: 1e-3,
    max: 0.5,
    help: 'From one groove to the next on the same side',
  },
  form: {
    form: 'choice',
    options: {
      round: 'round bottom: crowds the lines at the rim',
      v: 'V: spaces the lines evenly',
      square:
        'flat bottom, straight walls: crowds the lines at the rim; the corners are apt to fold',
    },
    default: 'round',
    help: 'Shape of the groove',
  },
  sides: {
    form: 'choice',
    options: {
      offset: 'both faces, the grooves of one between those of the other',
      opposite: 'both faces, groove over groove',
      top: 'the top face only',
    },
    default: 'offset',
    help: 'Which faces are cut',
  },
  ends: {
    form: 'quantity',
    of: 'length',
    min: 0,
    max: 0.5,
    default: '0 mm',
    help: 'Left uncut at each end',
  },
})

/** Cuts grooves across the bar: rungs of a ladder, once forged flat. */
export const ladder = operation({
  name: 'ladder',
  summary:
    'Cut grooves across the bar, through many layers; forging it flat brings the cut layers up as rungs.',
  takes: 'one',
  gradual: true,
  parameters,
  loses: ['cut out'],
  cautions: ['saw', 'dust'],
  examples: [
    {
      values: { depth: '1/4 in', width: '1/4 in', pitch: '1/2 in' },
      before: [samplePack(200, 32, 19.05, 15)],
    },
    {
      values: {
        depth: '1.6 mm',
        width: '3.2 mm',
        pitch: '6.4 mm',
        form: 'square',
        sides: 'top',
        ends: '10 mm',
      },
      before: [samplePack(150, 30, 8, 61)],
    },
    {
      values: { depth: '2 mm', width: '4 mm', pitch: '8 mm', form: 'v', sides: 'opposite' },
      before: [samplePack(120, 25, 10, 150)],
    },
  ],
  forward([before], whole, { densities }, share = 1) {
    const values = { ...whole, depth: whole.depth * share }
    const loose = unwelded(before, 'cutting grooves')
    if (loose) return failed(loose)
    const { depth, width, pitch, ends, sides } = values
    const { length, height } = before.size
    const cutLength = length - 2 * ends
    const shape = grooveShape(values.form, width, depth)
    const web = thinnest(height, pitch, shape.depthAt, sides)
    const problem = cannot(before, cutLength, web, values)
    if (problem) return failed(problem)

    const number = cutLength / pitch
    const across = before.size.width * fillOf(before)
    const face = (which: Cut['face']): Cut => ({
      face: which,
      depth,
      volume: shape.area * across * number,
      widthAt: shape.widthAt,
    })
    const cuts = sides === 'top' ? [face('top')] : [face('top'), face('bottom')]
    const { after: cut, loss } = cutOut(before, cuts, 'laddered', 'cut out', densities)
    const after: Billet = { ...cut, hollow: groovesIn(before, values, shape.area * number) }
    const thickness = height / Math.max(1, wholeCount(before.build).merged)
    const crossed = flatAxis(before.build) === 'z' ? Math.round(depth / thickness) : undefined
    const level = after.volume / (length * before.size.width)
    const grooves = printCount(Math.round(number), 'groove')
    const percent = figure((100 * (before.volume - after.volume)) / before.volume)
    return ok(
      step(after, {
        losses: [loss],
        warnings: warnings(height, values),
        notes: [
          sides === 'top'
            ? `${grooves} on the top, ${percent} % of the metal.`
            : `${grooves} a side, ${percent} % of the metal.`,
          `The thinnest web is ${show(web)}: forged flat to that or less every groove closes; level, the metal stands ${show(level)} thick.`,
          ...(crossed === undefined
            ? []
            : [`Each flank crosses about ${printCount(crossed, 'layer')}.`]),
          'Round the rims and leave no saw marks in the floors: a mark there becomes a cold shut.',
        ],
      }),
    )
  },
  movement() {
    return stays
  },
})

/** The grooves of both faces as shares of the bar; `area` cut from one face along the whole bar. */
function groovesIn(
  { size: { length, height } }: Billet,
  {
    depth,
    width,
    pitch,
    ends,
    form,
    sides,
  }: Sizes & {
    readonly form: GrooveRow['shape']
    readonly sides: 'offset' | 'opposite' | 'top'
  },
  area: number,
): Hollow {
  const row = (first: number): GrooveRow => ({
    shape: form,
    depth: depth / height,
    width: width / length,
    pitch: pitch / length,
    mean: area / (length * height),
    first: (ends + first) / length,
    from: ends / length,
    to: 1 - ends / length,
  })
  const top = row(pitch / 2)
  if (sides === 'top') return { form: 'grooved', top }
  return { form: 'grooved', top, bottom: row(sides === 'offset' ? pitch : pitch / 2) }
}

/** Share of the bar's width that a groove across it meets: all of a bar with flat faces. */
function fillOf(bar: Billet): number {
  return bar.shape === 'cut'
    ? Math.min(1, bar.volume / (bar.size.length * bar.size.width * bar.size.height))
    : 1
}

/** Least metal left between the two faces over one pitch. */
function thinnest(
  height: number,
  pitch: number,
  depthAt: (off: number) => number,
  sides: 'offset' | 'opposite' | 'top',
): number {
  const nearest = (x: number) => x - pitch * Math.round(x / pitch)
  let least = height
  for (let i = 0; i <= 400; i++) {
    const x = (pitch * i) / 400
    const top = depthAt(nearest(x))
    const bottom = sides === 'top' ? 0 : depthAt(nearest(sides === 'offset' ? x + pitch / 2 : x))
    least = Math.min(least, height - top - bottom)
  }
  return least
}

interface Sizes {
  readonly depth: number
  readonly width: number
  readonly pitch: number
  readonly ends: number
}

function cannot(
  bar: Billet,
  cutLength: number,
  web: number,
  { width, pitch, depth, ends }: Sizes,
): Problem | undefined {
  if (bar.shape === 'octagon' || bar.shape === 'round') {
    return {
      at: '',
      what: `the bar is ${bar.shape}: it has no two flat faces to cut`,
      why: 'a ladder is cut across a flat bar',
      try: ['square up or draw out flat first'],
    }
  }
  if (width > pitch) {
    return {
      at: 'pitch',
      what: `grooves ${show(width)} wide run into one another at a pitch of ${show(pitch)}`,
      why: 'nothing of the face would be left between them',
      try: [`a pitch of ${show(width)} or more`, 'narrower grooves'],
    }
  }
  if (!(cutLength > 0)) {
    return {
      at: 'ends',
      what: `leaving ${show(ends)} at each end leaves nothing of ${show(bar.size.length)} to cut`,
      why: 'the grooves lie between the two ends',
      try: ['leave less', 'start from a longer bar'],
    }
  }
  if (!(web > bar.size.height * 0.02)) {
    return {
      at: 'depth',
      what: `grooves ${show(depth)} deep cut a bar ${show(bar.size.height)} thick through`,
      why: 'the grooves of the two faces meet',
      try: [
        `cut ${show(bar.size.height / 3)} deep: a third of the thickness`,
        'offset the grooves of the two faces',
        'a wider pitch',
      ],
    }
  }
  return undefined
}

function warnings(height: number, { depth, width }: Sizes): Problem[] {
  const found: Problem[] = []
  if (depth > width * 1.001) {
    found.push({
      at: 'depth',
      what: `the grooves are deeper (${show(depth)}) than wide (${show(width)})`,
      why: 'a narrow groove closes at its mouth first and its floor becomes a cold shut (common practice)',
      try: [`${show(width)} deep or less`, 'wider grooves'],
    })
  }
  if (depth > (height / 3) * 1.01) {
    found.push({
      at: 'depth',
      what: `the grooves take ${Math.round((100 * depth) / height)} % of the thickness`,
      why: 'a third is the rule and a quarter is safer: the blade can come out thinner than the grooves are deep (common practice)',
      try: [`${show(height / 3)} deep`, 'a thicker bar'],
    })
  }
  return found
}

const figure = (n: number) => String(Number(n.toPrecision(3)))
const show = (m: number) => printQuantity(m, 'length')
