import { failed, ok } from '#problem'
import { declare } from '#parameters'
import { type Billet, type Densities, type Layer, barVolume, layered, massesOf } from '#billet'
import { layoutOf, startingFrom } from '#movement'
import { type Stock, operation, step } from '../operation.ts'

const parameters = declare({
  sheets: {
    form: 'list',
    fewest: 1,
    most: 400,
    help: 'The sheets from the bottom up; the list is repeated as often as `repeat` says',
    item: declare({
      steel: { form: 'steel', help: 'Grade of the sheet' },
      thickness: {
        form: 'quantity',
        of: 'length',
        min: 2e-5,
        max: 0.2,
        help: 'Thickness of the sheet',
      },
      count: {
        form: 'count',
        min: 1,
        max: 400,
        default: 1,
        help: 'How many of this sheet lie together',
      },
    }),
  },
  repeat: { form: 'count', min: 1, max: 2000, default: 1, help: 'How many times the list is laid' },
  closeWith: {
    form: 'steel',
    optional: true,
    help: 'One more sheet on top, of the thickness this steel has in the list, so that both outsides are alike',
  },
  outer: {
    form: 'quantity',
    of: 'length',
    min: 2e-5,
    max: 0.2,
    optional: true,
    help: 'Thickness of the two outside sheets, where they are thicker than in the list: they feed the scale and the grinder',
  },
  width: { form: 'quantity', of: 'length', min: 0.003, max: 0.5, help: 'Width of the sheets' },
  length: {
    form: 'quantity',
    of: 'length',
    min: 0.005,
    max: 6,
    free: true,
    help: 'Length the sheets are cut to',
  },
})

/** Lays loose sheets one on another: the start of a bar. */
export const stack = operation({
  name: 'stack',
  summary: 'Cut sheets off the rack, clean them bright and lay them one on another.',
  takes: 'none',
  parameters,
  loses: [],
  cautions: ['saw', 'dust'],
  examples: [
    {
      values: {
        sheets: [
          { steel: '1095', thickness: '3 mm' },
          { steel: '15N20', thickness: '1.5 mm' },
        ],
        repeat: 7,
        closeWith: '1095',
        width: '30 mm',
        length: '105 mm',
      },
      before: [],
    },
    {
      values: {
        sheets: [{ steel: '1084', thickness: '1/4 in', count: 11 }],
        width: '1 1/4 in',
        length: '5 1/2 in',
      },
      before: [],
    },
  ],
  forward(_before, values, smithy) {
    const once = values.sheets.flatMap((sheet) =>
      Array.from({ length: sheet.count }, () => ({
        steel: sheet.steel,
        thickness: sheet.thickness,
      })),
    )
    const sheets = Array.from({ length: values.repeat }, () => once).flat()
    if (values.closeWith !== undefined) {
      const like = values.sheets.find((sheet) => sheet.steel === values.closeWith)
      if (!like) {
        return failed({
          at: 'closeWith',
          what: `no sheet of ${values.closeWith} is in the list`,
          why: 'the closing sheet takes its thickness from the list',
          try: [`close with ${values.sheets[0].steel}`, 'add the closing sheet to the list itself'],
        })
      }
      sheets.push({ steel: like.steel, thickness: like.thickness })
    }
    if (values.outer !== undefined) {
      for (const i of [0, sheets.length - 1])
        sheets[i] = { steel: sheets[i].steel, thickness: values.outer }
    }
    const build = layered('z', sheets)
    const size = {
      length: values.length,
      width: values.width,
      height: sheets.reduce((sum, sheet) => sum + sheet.thickness, 0),
    }
    const after: Billet = {
      size,
      shape: 'rectangle',
      volume: barVolume(size, 'rectangle'),
      build,
      bond: sheets.length > 1 ? 'loose' : 'welded',
      temper: 'as forged',
      worked: 1,
      spare: 'x',
    }
    const warnings =
      build.layers.length < sheets.length
        ? [mergesInStack(sheets.length - build.layers.length)]
        : []
    const taken = sheetsOf(sheets, values, smithy.densities)
    return ok(step(after, { added: massesOf(after, smithy.densities), taken, warnings }))
  },
  backward() {
    return ok([])
  },
  movement(_before, _values, after) {
    return startingFrom(layoutOf(after.build, after.size))
  },
})

/** The sheets as they are cut: like with like. */
function sheetsOf(
  sheets: readonly Layer[],
  { width, length }: { readonly width: number; readonly length: number },
  densities: Densities,
): Stock[] {
  const stock = new Map<string, Stock>()
  for (const { steel, thickness } of sheets) {
    const key = `${steel} ${thickness}`
    const mass = width * length * thickness * densities[steel]
    const so = stock.get(key) ?? {
      steel,
      form: 'sheet',
      thickness,
      width,
      length,
      count: 0,
      mass: 0,
    }
    stock.set(key, { ...so, count: so.count + 1, mass: so.mass + mass })
  }
  return [...stock.values()]
}

function mergesInStack(joints: number) {
  return {
    at: 'sheets',
    what: joints === 1 ? '1 joint lies like on like' : `${joints} joints lie like on like`,
    why: 'sheets of one steel weld into one layer: no line will show there',
    try: ['alternate the steels', 'keep it, if thick layers are wanted'],
  }
}
