import { failed, ok } from '#problem'
import { printQuantity } from '#units'
import { declare } from '#parameters'
import { taper as taperWarp } from '#warp'
import { type Billet, filled } from '#billet'
import { along, moving, unevennessOf } from '#movement'
import { heatsFor } from '../forge-in-heats.ts'
import { barOf, judgeSqueezing } from '../judge.ts'
import { operation, step } from '../operation.ts'
import { sampleBar, samplePack } from '../samples.ts'
import { tapered } from '../squeezes.ts'
import { unwelded, youngWelds } from '../welds.ts'
import { warm } from '../warm.ts'

const parameters = declare({
  over: {
    form: 'quantity',
    of: 'length',
    min: 5e-3,
    max: 3,
    optional: true,
    help: 'Length of the tapered part when it is done; left out, the whole bar tapers',
  },
  endHeight: {
    form: 'quantity',
    of: 'length',
    min: 3e-4,
    max: 0.3,
    help: 'Thickness at the thin end',
  },
  endWidth: {
    form: 'quantity',
    of: 'length',
    min: 3e-4,
    max: 0.5,
    optional: true,
    help: 'Width at the thin end; left out, the width stays',
  },
  heats: {
    form: 'count',
    min: 1,
    max: 60,
    optional: true,
    help: 'Heats taken; left out, as many as the reduction at the thin end needs',
  },
})

/** Draws the bar thinner towards one end: distal taper, profile taper, a point. */
export const taper = operation({
  name: 'taper',
  summary:
    'Draw the bar thinner, narrower or both towards its far end; the layers stay parallel to its faces.',
  takes: 'one',
  gradual: true,
  parameters,
  loses: ['scale'],
  cautions: ['heat', 'glare', 'gas', 'strike'],
  examples: [
    { values: { endHeight: '3 mm' }, before: [samplePack(200, 30, 6, 61)] },
    {
      values: { over: '80 mm', endHeight: '2 mm', endWidth: '8 mm', heats: 4 },
      before: [sampleBar(250, 32, 6)],
    },
  ],
  forward([before], wanted, smithy, share = 1) {
    const values = drawnSoFar(before, wanted, share)
    const loose = unwelded(before, 'drawing a taper')
    if (loose) return failed(loose)
    const { shop } = smithy
    const toWidth = values.endWidth ?? before.size.width
    const ratio =
      (before.size.width * before.size.height) /
      ((wanted.endWidth ?? before.size.width) * wanted.endHeight)
    const count = values.heats ?? heatsFor(ratio, smithy)
    if (values.endHeight > before.size.height || toWidth > before.size.width * (1 + 1e-9)) {
      return failed({
        at: 'endHeight',
        what: `the thin end (${show(toWidth)} × ${show(values.endHeight)}) is not inside the bar (${show(before.size.width)} × ${show(before.size.height)})`,
        why: 'a taper draws metal along the bar, never back into it',
        try: ['a thinner end', 'upset the bar first'],
      })
    }
    const warmed = warm(
      before,
      {
        purpose: 'forge',
        count,
        temperature: shop.forgingHeat,
        scale: shop.forgingScale * count,
        stop: shop.stopHeat,
      },
      smithy,
    )
    if (warmed.problems) return warmed
    const { bar, losses, heats, warnings } = warmed.ok
    const { width, height } = bar.size
    const fill =
      bar.shape === 'cut' ? bar.volume / (bar.size.length * width * height) : filled[bar.shape]
    const [w, h] = [Math.min(1, toWidth / width), Math.min(1, values.endHeight / height)]
    const mean = meanOf(w, h)
    const full = bar.volume / (width * height * fill)
    const whole = full / mean
    const over = values.over ?? whole
    const left = full - over * mean
    if (left < -1e-12) {
      return failed({
        at: 'over',
        what: `the bar holds metal for a taper ${show(whole)} long, not ${show(over)}`,
        why: `tapered to ${show(toWidth)} × ${show(values.endHeight)} it is used up after that`,
        try: [`a taper of ${show(whole)}`, 'start from a longer bar'],
      })
    }
    const length = Math.max(0, left) + over
    const after: Billet = {
      ...bar,
      shape: 'cut',
      size: { length, width, height },
      temper: 'as forged',
      spare: 'x',
    }
    return ok(
      step(after, {
        losses,
        heats,
        warnings: [...warnings, ...youngWelds(before, 'on edge', 'drawing a taper')],
        notes: [
          `Of the bar, ${show(over * mean)} goes into ${show(over)} of taper; the bar becomes ${show(length)} long.`,
          `At the thin end every length in the pattern is drawn ${(1 / (w * h)).toFixed(2)} times.`,
        ],
      }),
    )
  },
  force([before], values, step, smithy) {
    const full = barOf(before, step.after.volume)
    const thin = { height: values.endHeight, width: values.endWidth ?? before.size.width }
    const over = values.over ?? step.after.size.length
    const { spread } = smithy.shop
    return judgeSqueezing(
      { before, step, passes: (bite) => tapered(full, thin, over, bite, spread) },
      smithy,
    )
  },
  movement([before], wanted, after, { shop }, share = 1) {
    const values = drawnSoFar(before, wanted, share)
    const burnt = (before.size.height - after.size.height) / 2
    const { length, width, height } = after.size
    const over = Math.min(values.over ?? length, length)
    const [w, h] = [
      Math.min(values.endWidth ?? before.size.width, width),
      Math.min(values.endHeight, height),
    ]
    // How far along the taper each of many places is.
    const taken = Array.from({ length: 1001 }, (_, i) =>
      Math.max(0, ((i / 1000) * length - (length - over)) / over),
    )
    const tapered = taperWarp({
      ...{ width, height, length },
      widths: taken.map((s) => width + s * (w - width)),
      heights: taken.map((s) => height + s * (h - height)),
    })
    return moving([tapered, along(burnt)], { uneven: unevennessOf(shop) })
  },
})

/** Mean section of a taper whose end is `w` wide and `h` high, as shares: both sides run straight. */
function meanOf(w: number, h: number): number {
  return (2 + w + h + 2 * w * h) / 6
}

/** The thin end with a share of the drawing done: what is in the taper when it is done is in it from the start. */
function drawnSoFar<
  V extends { readonly over?: number; readonly endHeight: number; readonly endWidth?: number },
>({ size: { width, height } }: Billet, wanted: V, share: number): V {
  if (share === 1) return wanted
  const [w, h] = [(wanted.endWidth ?? width) / width, wanted.endHeight / height]
  const mean = meanOf(w ** share, h ** share)
  return {
    ...wanted,
    endHeight: height * h ** share,
    endWidth: wanted.endWidth === undefined ? undefined : width * w ** share,
    over: wanted.over === undefined ? undefined : (wanted.over * meanOf(w, h)) / mean,
  }
}

const show = (m: number) => printQuantity(m, 'length')
