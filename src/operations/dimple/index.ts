import { type Problem, failed, ok } from '#problem'
import { printCount, printQuantity } from '#units'
import { declare } from '#parameters'
import { flatAxis, wholeCount, type Billet } from '#billet'
import { stays } from '#movement'
import { type Cut, cutOut } from '../cut-out.ts'
import { operation, step } from '../operation.ts'
import { samplePack } from '../samples.ts'
import { unwelded } from '../welds.ts'
import { dimplesIn } from './places.ts'

const parameters = declare({
  depth: {
    form: 'quantity',
    of: 'length',
    min: 1e-4,
    max: 0.05,
    help: 'Depth of each dimple (common practice: a third of the thickness)',
  },
  diameter: {
    form: 'quantity',
    of: 'length',
    min: 5e-4,
    max: 0.1,
    help: 'Diameter at the face (from memory: 6 to 12 mm)',
  },
  form: {
    form: 'choice',
    options: {
      ball: 'ball-nosed cutter: a bowl, or a round-bottomed hole where it is deeper than half its width',
      cone: 'the point of a drill or a countersink: a cone',
      flat: 'flat-bottomed: its walls are apt to close as cold shuts',
    },
    default: 'ball',
    help: 'Shape of the dimple',
  },
  spacing: {
    form: 'quantity',
    of: 'length',
    min: 1e-3,
    max: 0.5,
    help: 'From one dimple to its neighbours on the same face, on average (from memory: 10 to 25 mm)',
  },
  sides: {
    form: 'choice',
    options: {
      both: 'both faces, never one over the other',
      top: 'the top face only',
    },
    default: 'both',
    help: 'Which faces are drilled',
  },
})

/** Drills dimples into the faces: raindrops, once forged flat. */
export const dimple = operation({
  name: 'dimple',
  summary:
    'Drill or mill dimples through many layers; forging it flat brings them up as rings, like rain on water.',
  takes: 'one',
  gradual: true,
  parameters,
  loses: ['drilled'],
  cautions: ['drill', 'dust'],
  examples: [
    {
      values: { depth: '4 mm', diameter: '8 mm', spacing: '14 mm' },
      before: [samplePack(180, 32, 12, 149)],
    },
    {
      values: { depth: '1.5 mm', diameter: '6 mm', spacing: '10 mm', form: 'cone', sides: 'top' },
      before: [samplePack(150, 30, 6, 21)],
    },
  ],
  forward([before], whole, { densities }, share = 1) {
    const values = { ...whole, depth: whole.depth * share }
    const loose = unwelded(before, 'drilling dimples')
    if (loose) return failed(loose)
    const { depth, diameter, spacing, sides } = values
    const { length, width, height } = before.size
    const problem = cannot(before.shape, height, values)
    if (problem) return failed(problem)

    const hole = dimpleShape(values.form, diameter, depth)
    // Centres on even triangles take spacing² × √3/2 of the face each.
    const number = (length * width) / (spacing * spacing * (Math.sqrt(3) / 2))
    const taken = (hole.volume * number * (sides === 'top' ? 1 : 2)) / before.volume
    if (taken > 0.6) return failed(tooMuch(taken))
    const face = (which: Cut['face']): Cut => ({
      face: which,
      depth,
      volume: hole.volume * number,
      widthAt: hole.areaAt,
    })
    const cuts = sides === 'top' ? [face('top')] : [face('top'), face('bottom')]
    const { after: cut, loss } = cutOut(before, cuts, 'dimpled', 'drilled', densities)
    const after: Billet = { ...cut, hollow: dimplesIn(before, values, number, hole.volume) }
    const thickness = height / Math.max(1, wholeCount(before.build).merged)
    const rings = depth / thickness
    const apart = diameter / 2 / rings
    const flat = flatAxis(before.build) === 'z'
    const dimples = printCount(Math.round(number), 'dimple')
    const percent = figure((100 * (before.volume - after.volume)) / before.volume)
    return ok(
      step(after, {
        losses: [loss],
        warnings: [...warnings(height, values), ...(flat ? tooFine(rings, apart) : [])],
        notes: [
          sides === 'top'
            ? `About ${dimples} on the top, ${percent} % of the metal.`
            : `About ${dimples} a side, ${percent} % of the metal.`,
          ...(flat
            ? [
                `Each dimple crosses ${printCount(figure(rings), 'layer')}: so many rings, about ${show(apart)} apart.`,
              ]
            : []),
          `Forge flat to ${show(height - depth)} or less: every dimple closes.`,
        ],
      }),
    )
  },
  movement() {
    return stays
  },
})

/** Exact volume of one dimple and its area at a depth below the face. */
function dimpleShape(form: 'ball' | 'cone' | 'flat', diameter: number, depth: number) {
  const r = diameter / 2
  const disc = (radius: number) => Math.PI * radius * radius
  if (form === 'flat') return { volume: disc(r) * depth, areaAt: () => disc(r) }
  if (form === 'cone') {
    return {
      volume: (disc(r) * depth) / 3,
      areaAt: (below: number) => disc(r * Math.max(0, 1 - below / depth)),
    }
  }
  if (depth >= r) {
    const wall = depth - r
    return {
      volume: disc(r) * wall + (2 / 3) * Math.PI * r ** 3,
      areaAt: (below: number) =>
        below <= wall ? disc(r) : Math.PI * Math.max(0, r * r - (below - wall) ** 2),
    }
  }
  const ball = (r * r + depth * depth) / (2 * depth)
  return {
    volume: (Math.PI * depth * depth * (3 * ball - depth)) / 3,
    areaAt: (below: number) => Math.PI * Math.max(0, ball * ball - (ball - depth + below) ** 2),
  }
}

interface Sizes {
  readonly depth: number
  readonly diameter: number
  readonly spacing: number
  readonly sides: 'both' | 'top'
  readonly form: 'ball' | 'cone' | 'flat'
}

function cannot(
  shape: string,
  height: number,
  { depth, diameter, spacing }: Sizes,
): Problem | undefined {
  if (shape === 'octagon' || shape === 'round') {
    return {
      at: '',
      what: `the bar is ${shape}: it has no flat face to drill`,
      why: 'dimples are drilled into the faces of a flat bar',
      try: ['square up or draw out flat first'],
    }
  }
  if (depth >= height * 0.98) {
    return {
      at: 'depth',
      what: `dimples ${show(depth)} deep go through a bar ${show(height)} thick`,
      why: 'a hole right through never closes to a ring',
      try: [`drill ${show(height / 3)} deep: a third of the thickness`, 'a thicker bar'],
    }
  }
  if (diameter > spacing) {
    return {
      at: 'spacing',
      what: `dimples ${show(diameter)} across run into one another at ${show(spacing)}`,
      why: 'each needs its own rim to show a ring',
      try: [`space them ${show(diameter * 1.25)} apart or more`, 'a smaller drill'],
    }
  }
  return undefined
}

function tooMuch(taken: number): Problem {
  return {
    at: 'spacing',
    what: `the dimples take ${Math.round(taken * 100)} % of the metal`,
    why: 'hardly any land is left between them to forge the rings up against',
    try: ['space them further apart', 'drill less deep', 'a smaller drill'],
  }
}

function warnings(height: number, { depth, diameter, form }: Sizes): Problem[] {
  const found: Problem[] = []
  if (depth > (height / 3) * 1.01) {
    found.push({
      at: 'depth',
      what: `the dimples go ${Math.round((100 * depth) / height)} % into the thickness`,
      why: 'about a third is the rule (common practice)',
      try: [`${show(height / 3)} deep`, 'a thicker bar'],
    })
  }
  if (form === 'flat' || depth > diameter) {
    found.push({
      at: 'form',
      what:
        form === 'flat'
          ? 'flat-bottomed holes with straight walls'
          : 'the dimples are deeper than wide',
      why: 'straight walls fold in and close as cold shuts (common practice)',
      try: ['countersink them', 'use a ball-nosed cutter', 'drill less deep'],
    })
  }
  return found
}

/** Rings closer than the eye parts at reading distance: 1 minute of arc at 300 mm is 0.09 mm. */
function tooFine(rings: number, apart: number): Problem[] {
  if (apart >= 0.09e-3) return []
  return [
    {
      at: 'depth',
      what: `${figure(rings)} rings ${show(apart)} apart: a shimmer, not rings`,
      why: 'the eye parts lines 0.09 mm apart at 300 mm',
      try: ['fewer layers', 'wider dimples of the same depth', 'shallower dimples'],
    },
  ]
}

const figure = (n: number) => String(Number(n.toPrecision(3)))
const show = (m: number) => printQuantity(m, 'length')
