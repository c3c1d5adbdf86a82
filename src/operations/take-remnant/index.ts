import { type Problem, failed, ok } from '#problem'
import { axisLength } from '#geometry'
import { printCount, printQuantity } from '#units'
import { declare } from '#parameters'
import { type Billet, type Layer, barVolume, layered, massOf, massesOf, worked } from '#billet'
import { layoutOf, startingFrom } from '#movement'
import { type Stock, operation, step } from '../operation.ts'
import { sectionOptions } from '../usual.ts'

const side = { form: 'quantity', of: 'length', min: 5e-4, max: 0.5 } as const

const parameters = declare({
  length: {
    form: 'quantity',
    of: 'length',
    min: 0.002,
    max: 6,
    free: true,
    help: 'Length taken of it, measured',
  },
  width: { ...side, help: 'Width, measured' },
  height: { ...side, help: 'Thickness, measured' },
  section: {
    form: 'choice',
    options: sectionOptions,
    default: 'rectangle',
    help: 'Section of the billet',
  },
  steels: {
    form: 'list',
    fewest: 1,
    most: 8,
    help: 'Steels in it, in the order they lie, and the share of each',
    item: declare({
      steel: { form: 'steel', help: 'Grade' },
      share: {
        form: 'quantity',
        of: 'ratio',
        min: 0.001,
        max: 1,
        help: 'Share of the volume that is this steel',
      },
    }),
  },
  layers: {
    form: 'count',
    min: 1,
    max: 5000,
    help: 'Layers counted, or as the label says after merging',
  },
  laid: {
    form: 'count',
    min: 1,
    max: 1000000,
    optional: true,
    help: 'Sheets as they were ever laid; left out, as many as there are layers',
  },
  lie: {
    form: 'choice',
    options: {
      flat: 'layers lie flat, square to its height',
      'on edge': 'layers stand on edge, square to its width',
      across: 'layers cross its length',
    },
    default: 'flat',
    help: 'How its layers lie',
  },
  pattern: {
    form: 'text',
    optional: true,
    longest: 60,
    help: 'What was done to it that bent its layers: twisted, laddered, feathered; left out, they lie straight',
  },
  worked: {
    form: 'quantity',
    of: 'ratio',
    min: 0.001,
    max: 1,
    default: '40 %',
    help: 'Height left of its youngest weld since it was closed, as a share',
  },
  mass: {
    form: 'quantity',
    of: 'mass',
    min: 0.001,
    max: 200,
    optional: true,
    help: 'Mass on the scales: compared with what its sizes say',
  },
})

const axes = { flat: 'z', 'on edge': 'y', across: 'x' } as const
/** Measured sizes and a weight further apart than this share want another look. */
const WEIGHS_RIGHT = 0.03

/** Starts a bar from a billet that lies on the rack already, as its label and the caliper say. */
export const takeRemnant = operation({
  name: 'take remnant',
  summary: 'Take a billet that is there already, by its measured sizes and its label.',
  takes: 'none',
  parameters,
  loses: [],
  cautions: ['saw'],
  examples: [
    {
      values: {
        length: '180 mm',
        width: '38 mm',
        height: '9.5 mm',
        steels: [
          { steel: '1095', share: '70 %' },
          { steel: '15N20', share: '30 %' },
        ],
        layers: 169,
        laid: 180,
        mass: '511 g',
      },
      before: [],
    },
    {
      values: {
        length: '14 in',
        width: '1/2 in',
        height: '1/2 in',
        section: 'octagon',
        steels: [
          { steel: '1084', share: '0.6' },
          { steel: '15N20', share: '0.4' },
        ],
        layers: 11,
        pattern: 'twisted to the right',
        lie: 'on edge',
      },
      before: [],
    },
  ],
  forward(_before, values, { densities }) {
    const { steels, layers, section, length, width, height } = values
    if (layers < steels.length) return failed(tooFewLayers(layers, steels.length))
    const sum = steels.reduce((total, { share }) => total + share, 0)
    if (Math.abs(sum - 1) > 0.01) return failed(sharesAstray(sum))
    const size = { length, width, height }
    const axis = axes[values.lie]
    const of = sheets(steels, layers, size[axisLength[axis]] / sum)
    const flat = layered(axis, of, Math.max(values.laid ?? layers, layers))
    const after: Billet = {
      size,
      shape: section,
      volume: barVolume(size, section),
      build: values.pattern === undefined ? flat : worked(values.pattern, flat),
      bond: 'welded',
      temper: 'as forged',
      worked: values.worked,
      spare: 'x',
    }
    const added = massesOf(after, densities)
    const taken = Object.entries(added).map(([steel, mass]): Stock => ({
      steel,
      form: 'remnant',
      thickness: height,
      width,
      length,
      count: 1,
      mass,
    }))
    const mass = massOf(after, densities)
    const off = values.mass === undefined ? 0 : values.mass / mass - 1
    const warnings =
      Math.abs(off) > WEIGHS_RIGHT ? [weighsOtherwise(values.mass ?? mass, mass)] : []
    return ok(step(after, { added, taken, warnings }))
  },
  backward() {
    return ok([])
  },
  movement(_before, _values, after) {
    return startingFrom(layoutOf(after.build, after.size))
  },
})

/** Layers taking turns, each steel's share spread evenly over its layers. */
function sheets(
  steels: readonly { readonly steel: string; readonly share: number }[],
  layers: number,
  side: number,
): Layer[] {
  const k = steels.length
  return Array.from({ length: layers }, (_, i) => {
    const { steel, share } = steels[i % k]
    const often = Math.floor((layers - 1 - (i % k)) / k) + 1
    return { steel, thickness: (share * side) / often }
  })
}

function tooFewLayers(layers: number, steels: number): Problem {
  return {
    at: 'layers',
    what: `${printCount(layers, 'layer')} cannot hold ${printCount(steels, 'steel')}`,
    why: 'each steel is in one layer at least',
    try: [`count again: at least ${steels}`, 'leave out a steel'],
  }
}

function sharesAstray(sum: number): Problem {
  return {
    at: 'steels',
    what: `the shares add up to ${printQuantity(sum, 'ratio')}`,
    why: 'the steels together are the whole billet',
    try: ['make the shares add up to 100 %'],
  }
}

function weighsOtherwise(weighed: number, computed: number): Problem {
  return {
    at: 'mass',
    what: `it weighs ${printQuantity(weighed, 'mass')}; its sizes say ${printQuantity(computed, 'mass')}`,
    why: 'a void, a wrong size or a wrong steel: they differ by more than 3 %',
    try: ['measure again', 'look for an open weld', 'check the label against a test etch'],
  }
}
