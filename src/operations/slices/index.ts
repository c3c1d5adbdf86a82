import { type Problem, failed, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { slices as sliceWarp } from '#warp'
import { type Billet, type Turn, turnBuild, turnSize } from '#billet'
import { along, moving, stays } from '#movement'
import { sumLosses, takeOff } from '../fire.ts'
import { layTogether } from '../join.ts'
import { type Operation, operation, step } from '../operation.ts'
import { samplePack } from '../samples.ts'
import { alike, saw } from '../saw.ts'
import { planSlices, slicingParameters, workBackSlices } from '../slicing.ts'
import { cleanUp, crop, kerf } from '../usual.ts'
import { unwelded } from '../welds.ts'

const parameters = declare({
  ...slicingParameters,
  lay: {
    form: 'choice',
    options: {
      plain: 'every slice laid on the same face',
      bookmatched: 'every other slice laid on its other face, so that neighbours mirror each other',
    },
    default: 'plain',
    help: 'On which face each slice is laid',
  },
  crop,
  kerf,
  cleanUp,
})

/** Laid down backwards: what was up now runs along, what ran along is now up. */
const down: Turn = { x: { was: 'z' }, y: { was: 'y' }, z: { was: 'x', reversed: true } }
const downOther: Turn = { x: { was: 'z', reversed: true }, y: { was: 'y' }, z: { was: 'x' } }
const spares = { x: 'z', y: 'y', z: 'x' } as const

/** Cuts slices off the end like a loaf and lays them edge to edge: the end grain becomes the face. */
export const slices: Operation = operation({
  name: 'slices',
  summary: 'Cut the bar across into slices and lay them on their side, edge to edge.',
  takes: 'one',
  parameters,
  loses: ['crop', 'kerf', 'ground'],
  cautions: ['saw', 'dust', 'arc'],
  examples: [
    { values: { thickness: '10 mm' }, before: [samplePack(150, 40, 40)] },
    {
      values: { count: 6, lay: 'bookmatched', cleanUp: '0.2 mm' },
      before: [samplePack(150, 40, 40)],
    },
    { values: { count: 2, thickness: '8 mm', crop: '0 mm' }, before: [samplePack(150, 30, 25)] },
    {
      values: { count: 5 },
      before: [{ ...samplePack(90, 30, 60), spare: 'z' }],
    },
  ],
  forward([before], values, { shop, densities }) {
    const loose = unwelded(before, 'sawing slices')
    if (loose) return failed(loose)
    const ends = values.crop ?? shop.crop
    const cut = values.kerf ?? shop.kerf
    const planned = planSlices(before.size.length, { ...values, crop: ends, kerf: cut })
    if (planned.problems) return planned
    const { count, thickness } = planned.ok
    const cropped = takeOff(before, { x: { low: ends, high: ends } }, 'crop', densities)
    const sawn = cropped && saw(cropped.after, alike(count, thickness), cut, densities)
    if (!sawn) return failed(...(planSlices(0, { crop: ends, kerf: cut, count }).problems ?? []))
    const tiles = sawn.pieces.map((piece, i): Billet => {
      const turn = values.lay === 'bookmatched' && i % 2 === 1 ? downOther : down
      return {
        ...piece,
        size: turnSize(piece.size, turn),
        build: turnBuild(piece.build, turn),
        shape: piece.shape === 'rectangle' ? 'rectangle' : 'cut',
      }
    })
    const whole = values.thickness !== undefined && before.spare === 'x'
    const laid = layTogether(
      tiles,
      {
        axis: 'x',
        cleanUp: values.cleanUp ?? shop.cleanUp,
        how: `${count} slices edge to edge`,
        spare: whole ? 'x' : spares[before.spare],
      },
      densities,
    )
    if (laid.problems) return laid
    const { after, ground, warnings } = laid.ok
    const seam = printQuantity(tiles[0].size.length, 'length')
    return ok(
      step(after, {
        losses: sumLosses([cropped.loss, sawn.kerf, ground]),
        setAside: sawn.rest ? [sawn.rest] : [],
        warnings: [...warnings, ...standsTall(after)],
        notes: [
          `A weld runs across the face every ${seam}: the weak lines of this way of working.`,
          'Mark one face of every slice as it leaves the saw.',
        ],
      }),
    )
  },
  backward(demand, values, [before], smithy) {
    const { shop } = smithy
    const asked = { ...values, crop: values.crop ?? shop.crop, kerf: values.kerf ?? shop.kerf }
    return workBackSlices(demand, before, asked, (bar) =>
      slices.forward([bar], values as never, smithy),
    )
  },
  movement([before], values, _after, { shop }) {
    const crop = values.crop ?? shop.crop
    const kerf = values.kerf ?? shop.kerf
    const planned = planSlices(before.size.length, { ...values, crop, kerf }).ok
    if (!planned) return stays
    const laid = sliceWarp({
      ...planned,
      kerf,
      height: before.size.height,
      grind: values.cleanUp ?? shop.cleanUp,
      faces: values.lay === 'bookmatched' ? 'alternate' : 'one',
    })
    return moving([laid, along(crop)])
  },
})

/** Welded edge to edge the row is squeezed along its length: a thin row folds (common practice). */
function standsTall({ size }: Billet): Problem[] {
  if (size.length <= 12 * size.height) return []
  return [
    {
      at: 'thickness',
      what: `a row ${printQuantity(size.length, 'length')} long and ${printQuantity(size.height, 'length')} thick buckles when its joints are squeezed`,
      why: 'the joints are closed by pressing the row together end to end',
      try: [
        'weld fewer slices at a time',
        'cut thicker slices',
        'weld the row down on a plain sheet',
      ],
    },
  ]
}
