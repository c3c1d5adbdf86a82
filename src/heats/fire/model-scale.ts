import type { Problem } from '#problem'
import type { Shop } from '#shop'
import { type HeatOrder, oxidise } from '#metallurgy'
import type { HeatPurpose } from '#operations'
import { type HeatRun, orderFor, run } from './heat-order.ts'

type Atmosphere = NonNullable<Parameters<typeof oxidise>[1]>

/** What the fires of the shop usually are when nothing is said (common practice). */
const usual: Readonly<Record<Shop['fire'], Atmosphere>> = {
  gas: 'rich',
  coal: 'neutral',
  induction: 'air',
  kiln: 'air',
}

export function atmosphereOf(shop: Shop): Atmosphere {
  return shop.atmosphere ?? usual[shop.fire]
}

/** Bars the shop's three factors are meant for: a stack at welding heat, a bar being drawn, a blade. */
const meant = {
  weldingScale: { purpose: 'weld', soak: 300, bar: { thickness: 0.03, width: 0.038 } },
  forgingScale: { purpose: 'forge', soak: 0, bar: { thickness: 0.015, width: 0.032 } },
  treatingScale: { purpose: 'harden', soak: 240, bar: { thickness: 0.005, width: 0.035 } },
} as const satisfies Record<
  string,
  { purpose: HeatPurpose; soak: number; bar: Omit<HeatOrder['bar'], 'shape'> }
>

export type ScaleFactor = keyof typeof meant

/** Which of the shop's factors a heat goes by. */
export function factorOf(purpose: HeatPurpose): ScaleFactor | undefined {
  switch (purpose) {
    case 'weld':
      return 'weldingScale'
    case 'forge':
      return 'forgingScale'
    case 'temper':
      return undefined
    default:
      return 'treatingScale'
  }
}

/** Heats of treating differ; 800 °C is where blade steels are hardened (common practice). */
const TREATED_AT = 1073.15

/** Steel burnt off a face in one heat of this kind by the oxidation model, m. */
export function modelledScale(factor: ScaleFactor, shop: Shop): number {
  const { purpose, soak, bar } = meant[factor]
  const temperature =
    purpose === 'weld' ? shop.weldingHeat : purpose === 'forge' ? shop.forgingHeat : TREATED_AT
  const heat = { purpose, count: 1, temperature, soak, medium: 'air' }
  // Forging heats follow one another: the bar comes back to the fire at its stop heat.
  const from = purpose === 'forge' ? shop.stopHeat : 293.15
  return burntIn(run(orderFor(heat, { shape: 'rectangle', ...bar }, shop, from)), soak, shop).value
}

/** Steel burnt off a face in one heat, m: in the fire as it burns, then in air, the first blow having cleared the scale. */
export function burntIn(
  heat: HeatRun,
  soak: number,
  shop: Shop,
): {
  readonly value: number
  readonly range: readonly [number, number]
  readonly outOfRange: readonly Problem[]
} {
  const out = heat.warming.value + soak + 1e-6
  const inFire = oxidise(
    heat.skin.filter((p) => p.time <= out),
    atmosphereOf(shop),
  ).recession
  const inAir = oxidise(
    heat.skin.filter((p) => p.time >= out - 2e-6),
    'air',
  ).recession
  return {
    value: inFire.value + inAir.value,
    range: [inFire.range[0] + inAir.range[0], inFire.range[1] + inAir.range[1]],
    outOfRange: inFire.outOfRange,
  }
}

/**
 * The shop as its account is kept: where scale is asked from the model, its factors take the place
 * of the usual ones. A factor the smith has measured and written down stays.
 */
export function scaledShop(shop: Shop, written: unknown): Shop {
  if (shop.scaleFrom !== 'model') return shop
  const own = typeof written === 'object' && written !== null ? written : {}
  const changed: Partial<Record<ScaleFactor, number>> = {}
  for (const factor of Object.keys(meant) as ScaleFactor[])
    if (!Object.hasOwn(own, factor)) changed[factor] = modelledScale(factor, shop)
  return { ...shop, ...changed }
}
