import { ok } from '#problem'
import { declare } from '#parameters'
import { type Billet, barVolume, massesOf, solid } from '#billet'
import { layoutOf, startingFrom } from '#movement'
import { operation, step } from '../operation.ts'
import { sectionOptions } from '../usual.ts'

const side = { form: 'quantity', of: 'length', min: 5e-4, max: 0.5 } as const

const parameters = declare({
  steel: { form: 'steel', help: 'Grade of the bar' },
  width: { ...side, help: 'Width of the bar; of a round bar its diameter' },
  height: {
    ...side,
    optional: true,
    help: 'Thickness of the bar; left out, as much as its width',
  },
  length: {
    form: 'quantity',
    of: 'length',
    min: 0.002,
    max: 6,
    free: true,
    help: 'Length cut off the bar',
  },
  section: {
    form: 'choice',
    options: sectionOptions,
    default: 'rectangle',
    help: 'Section of the bar',
  },
})

/** A rolled bar has no weld to open: as far worked as can be. */
const NO_WELD = 0.001

/** A plain bar of one steel off the rack: a core, an edge, a jacket, a rod. */
export const takeBar = operation({
  name: 'take bar',
  summary: 'Cut a length of plain bar of one steel off the rack and clean it bright.',
  takes: 'none',
  parameters,
  loses: [],
  cautions: ['saw', 'dust'],
  examples: [
    { values: { steel: '1095', width: '40 mm', height: '6 mm', length: '150 mm' }, before: [] },
    { values: { steel: 'W2', width: '1/2 in', length: '30 in', section: 'round' }, before: [] },
  ],
  forward(_before, { steel, width, height = width, length, section }, { densities }) {
    const size = { length, width, height }
    const after: Billet = {
      size,
      shape: section,
      volume: barVolume(size, section),
      build: solid(steel, height),
      bond: 'welded',
      temper: 'annealed',
      worked: NO_WELD,
      spare: 'x',
    }
    const added = massesOf(after, densities)
    const taken = [
      { steel, form: 'bar', thickness: height, width, length, count: 1, mass: added[steel] },
    ] as const
    return ok(step(after, { added, taken }))
  },
  backward() {
    return ok([])
  },
  movement(_before, _values, after) {
    return startingFrom(layoutOf(after.build, after.size))
  },
})
