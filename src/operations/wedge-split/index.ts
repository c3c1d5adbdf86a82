import { type Problem, failed, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { shear, shift } from '#warp'
import { type Billet, flatAxis, layered, stretch, worked, UNWEIGHED } from '#billet'
import { along, input, laid, meeting, moving, through } from '#movement'
import { lossBetween, sumLosses, burn } from '../fire.ts'
import { forgeInHeats, type ForgingAim } from '../forge-in-heats.ts'
import { operation, step, type Smithy } from '../operation.ts'
import { samplePack } from '../samples.ts'
import { cleanUp } from '../usual.ts'
import { judgeDrawn } from '../squeezes.ts'
import { unwelded, youngWelds } from '../welds.ts'
import { warm } from '../warm.ts'
import { movedInHeats } from '../movement-in-heats.ts'

const parameters = declare({
  drag: {
    form: 'quantity',
    of: 'length',
    min: 0,
    max: 0.1,
    default: '15 mm',
    help: 'How far the wedge drags the layers down at the cut (from memory: 10 to 30 mm)',
  },
  reach: {
    form: 'quantity',
    of: 'length',
    min: 1e-3,
    max: 0.05,
    default: '8 mm',
    help: 'Distance from the cut over which the drag dies away to about a third (from memory: 5 to 12 mm)',
  },
  splitHeats: { form: 'count', min: 1, max: 10, default: 1, help: 'Heats it is split in' },
  cleanUp,
  close: {
    form: 'quantity',
    of: 'ratio',
    min: 0.4,
    max: 0.99,
    default: '90 %',
    help: 'Width left when the halves are welded together again, as a share of the width before',
  },
  weldHeats: { form: 'count', min: 1, max: 20, default: 2, help: 'Welding heats to close the cut' },
  soak: {
    form: 'quantity',
    of: 'time',
    min: 0,
    max: 7200,
    default: '5 min',
    help: 'Time at welding heat once the colour is even',
  },
})

/** Splits a block lengthwise with a dull wedge that drags its layers, and welds the halves together again. */
export const wedgeSplit = operation({
  name: 'wedge split',
  summary:
    'Drive a dull wedge through the hot block along its length, clean the halves and weld them together again.',
  takes: 'one',
  gradual: true,
  parameters,
  loses: ['scale', 'ground'],
  cautions: ['heat', 'glare', 'gas', 'flux', 'strike'],
  examples: [
    { values: {}, before: [feather(90, 40, 26)] },
    {
      values: { drag: '25 mm', cleanUp: '0.8 mm', close: '80 %', weldHeats: 3, splitHeats: 2 },
      before: [{ ...feather(120, 50, 25), spare: 'y' }],
    },
    { values: { cleanUp: '0 mm' }, before: [samplePack(100, 40, 26)] },
  ],
  forward([before], whole, smithy, share = 1) {
    const values = openedSoFar(whole, smithy, share)
    const { shop, densities } = smithy
    const loose = unwelded(before, 'the wedge')
    if (loose) return failed(loose)
    if (before.shape === 'round' || before.shape === 'octagon') return failed(notSquare())
    const split = warm(
      before,
      {
        purpose: 'forge',
        count: values.splitHeats,
        temperature: shop.weldingHeat,
        stop: shop.stopHeat,
        scale: values.splitHeats * shop.forgingScale,
      },
      smithy,
    )
    if (split.problems) return split
    const clean = values.cleanUp
    const halves = grindSplit(split.ok.bar, clean)
    if (!halves) return failed(groundThrough(before.size.width, clean))
    const ground = lossBetween(split.ok.bar, halves, 'ground', densities)
    const welded = forgeInHeats(
      { ...halves, build: worked('wedge split', halves.build) },
      aimOf(halves, values, smithy),
      smithy,
    )
    if (welded.problems) return welded
    const after: Billet = {
      ...welded.ok.after,
      bond: 'welded',
      worked: Math.max(values.close, before.worked * values.close),
      temper: 'as forged',
    }
    return ok(
      step(after, {
        losses: sumLosses([...split.ok.losses, ground, ...welded.ok.losses]),
        heats: [...split.ok.heats, ...welded.ok.heats],
        warnings: [
          ...split.ok.warnings,
          ...welded.ok.warnings,
          ...youngWelds(before, 'split', 'the wedge'),
          ...alongTheCut(before),
        ],
        notes: [
          `Barbs leave the quill at about ${Math.round((Math.atan(values.drag / values.reach) * 180) / Math.PI)}° to straight across.`,
          'Wedge: a convex edge with a small flat, polished; too blunt it drags until the welds open.',
        ],
      }),
    )
  },
  force([before], _values, step, smithy) {
    // Closing the cut: the block lies on its side, and its width is what is pressed.
    const { width, height } = step.after.size
    const lain: Billet = {
      ...before,
      size: { ...before.size, width: before.size.height, height: before.size.width },
    }
    const to = { height: width, width: height }
    return judgeDrawn(lain, step, smithy, { to, heat: step.heats.length - 1 })
  },
  movement([before], whole, _after, smithy, share = 1) {
    const values = openedSoFar(whole, smithy, share)
    const { shop } = smithy
    const { drag, reach } = values
    const clean = values.cleanUp
    const burnt = values.splitHeats * shop.forgingScale
    const split = burn(before, burnt, UNWEIGHED)?.after ?? before
    const halves = grindSplit(split, clean) ?? split
    const { width } = split.size
    const closed = movedInHeats(halves, aimOf(halves, values, smithy), smithy)
    // As much is dragged in at the cut as stands out beside it: the ends keep their place in the mean.
    const mean = ((2 * drag * reach) / width) * (1 - Math.exp(-width / (2 * reach)))
    const dragged = moving([shear({ drag, reach }), along(burnt - mean)], { branches: [input(0)] })
    const half = (y: number) => ({ side: width / 2, from: through([shift({ y })], dragged) })
    const cut = laid('y', meeting([half(-width / 4), half(width / 4)], clean))
    return {
      ...closed,
      ...cut,
      warps: [...closed.warps, ...cut.warps],
      beyond: (closed.beyond ?? 0) + Math.max(mean, drag - mean),
    }
  },
})

/** Drag, clean-up and closing with a share of each done: they go together, as they are seen in the end. */
function openedSoFar<
  V extends { readonly drag: number; readonly cleanUp?: number; readonly close: number },
>(whole: V, { shop }: Smithy, share: number) {
  const cleanUp = (whole.cleanUp ?? shop.cleanUp) * share
  return { ...whole, cleanUp, drag: whole.drag * share, close: whole.close ** share }
}

/** A block with its layers across its length. */
function feather(length: number, width: number, height: number): Billet {
  const sheets = Array.from({ length: 31 }, (_, i) => ({
    steel: i % 2 === 0 ? '1095' : '15N20',
    thickness: ((i % 2 === 0 ? 2 : 1) * length) / 47 / 1000,
  }))
  return { ...samplePack(length, width, height), build: layered('x', sheets) }
}

function aimOf(
  { size }: Billet,
  values: { readonly close: number; readonly weldHeats: number; readonly soak: number },
  { shop }: Smithy,
): ForgingAim {
  return {
    height: size.height,
    width: size.width * values.close,
    purpose: 'weld',
    heats: values.weldHeats,
    temperature: shop.weldingHeat,
    scale: shop.weldingScale,
    soak: values.soak,
  }
}

/** The two split faces ground clean: the middle of the width goes, twice the clean-up. */
function grindSplit(bar: Billet, clean: number): Billet | undefined {
  const width = bar.size.width - 2 * clean
  if (!(width > 0)) return undefined
  const f = width / bar.size.width
  return {
    ...bar,
    size: { ...bar.size, width },
    volume: bar.volume * f,
    build: stretch(bar.build, { x: 1, y: f, z: 1 }),
  }
}

function alongTheCut(bar: Billet): Problem[] {
  const axis = flatAxis(bar.build)
  if (axis === undefined || axis === 'x') return []
  return [
    {
      at: '',
      what: 'the wedge runs along the layers and drags none of them',
      why: 'a feather wants layers that cross the length of the block',
      try: ['turn the block on end first', 'restack it tall, and turn it "stack along"'],
    },
  ]
}

function notSquare(): Problem {
  return {
    at: '',
    what: 'a round or eight-sided bar rolls away under the wedge',
    why: 'it must stand flat on the anvil, and its halves must meet flush',
    try: ['square the bar up first'],
  }
}

function groundThrough(width: number, clean: number): Problem {
  return {
    at: 'cleanUp',
    what: `grinding ${printQuantity(clean, 'length')} off both split faces leaves nothing of a block ${printQuantity(width, 'length')} wide`,
    why: 'both halves are ground clean where they meet',
    try: ['grind less', 'start from a wider block'],
  }
}
