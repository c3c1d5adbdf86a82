import { type Problem, failed, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import type { PieceSolid } from '#piece'
import type { Billet } from '#billet'
import { skinned } from '#movement'
import { lossBetween, takeOff } from '../fire.ts'
import { operation, step } from '../operation.ts'
import { samplePack } from '../samples.ts'
import { shapedPlaque } from '../sample-pieces.ts'
import { buildWithout } from '../skin-steels.ts'
import { featuresToCome, isShaped, stockLeft, withMade } from '../shaped.ts'

const parameters = declare({
  grit: {
    form: 'count',
    min: 60,
    max: 10000,
    default: 800,
    help: 'Grit it is taken to before the etch (common practice: 400 to 800 for working knives, 2000 for show)',
  },
  off: {
    form: 'quantity',
    of: 'length',
    min: 0,
    max: 2e-3,
    optional: true,
    help: "Taken off every face of a bar that is no piece; left out, the shop's polish stock. A piece is polished to its drawn size",
  },
})

/** Takes the last stock off, to the finished size. */
export const polish = operation({
  name: 'polish',
  summary: 'Take the last stock off every face, grit by grit, to the finished size.',
  takes: 'one',
  parameters,
  loses: ['polished'],
  cautions: ['dust'],
  examples: [
    {
      values: {},
      get before() {
        return [shapedPlaque(1e-4, ['hole'])]
      },
      piece: {
        kind: 'plaque',
        length: '140 mm',
        width: '60 mm',
        thickness: '8 mm',
        holes: 'corners',
      },
    },
    { values: { grit: 2000, off: '0.2 mm' }, before: [samplePack(150, 30, 6, 61)] },
  ],
  forward([before], values, { shop, densities, piece }) {
    if (!piece || !isShaped(before)) {
      const off = values.off ?? shop.polishStock
      const each = { low: off, high: off }
      const done = takeOff(before, { x: each, y: each, z: each }, 'polished', densities)
      if (!done) return failed(nothingLeft(off))
      return ok(step(done.after, { losses: [done.loss], notes: notes(values.grit) }))
    }
    const left = stockLeft(before, piece)
    const volume = piece.volume + featuresToCome(before, piece)
    const short = left < -1e-9 || volume > before.volume * (1 + 1e-9)
    const after: Billet = withMade(
      short
        ? before
        : {
            ...before,
            size: piece.size,
            volume: Math.min(volume, before.volume),
            build: buildWithout(before, piece, { from: left, to: 0 }, volume, densities),
          },
      'polish',
    )
    return ok(
      step(after, {
        losses: [lossBetween(before, after, 'polished', densities)],
        warnings: [...(short ? [noStock(left)] : []), ...notMade(before, piece)],
        notes: notes(values.grit),
      }),
    )
  },
  movement([before], _values, after) {
    return skinned(before, after)
  },
})

function notes(grit: number): string[] {
  return [
    `To ${grit} grit, the last strokes all along the piece: the acid shouts every scratch across.`,
  ]
}

function noStock(left: number): Problem {
  return {
    at: '',
    what: 'there is nothing left to polish off',
    why:
      left < 0
        ? `its faces stand ${printQuantity(-left, 'length')} inside the drawn ones, and it holds less metal than the drawing`
        : `its faces stand ${printQuantity(left, 'length')} outside the drawn ones, and it holds less metal than the drawing`,
    try: ['leave more on every face when grinding to shape', 'draw the piece a little smaller'],
  }
}

/** What the piece has and the route has not made. */
function notMade(bar: Billet, piece: PieceSolid): Problem[] {
  const made = bar.made ?? []
  const kinds = [
    ...new Set(
      piece.features.filter((f) => f.volume > 0 && !made.includes(f.kind)).map((f) => f.kind),
    ),
  ]
  if (kinds.length === 0) return []
  return [
    {
      at: '',
      what: `the piece is polished and still without its ${kinds.map((kind) => `${kind}s`).join(' and ')}`,
      why: 'the drawing has them and no step of this route makes them',
      try: ['add the step that makes them (drill, groove, stamp)', 'leave them out of the piece'],
    },
  ]
}

function nothingLeft(off: number): Problem {
  return {
    at: 'off',
    what: `polishing ${printQuantity(off, 'length')} off every face leaves nothing`,
    why: 'both faces of a pair are polished',
    try: ['take less off'],
  }
}
