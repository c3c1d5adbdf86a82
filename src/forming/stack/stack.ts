import type { Composition } from '#steel'
import { type Estimate, crossing } from '../estimate.ts'
import { flowStress, steelStress } from '../flow-stress/choose.ts'
import type { State } from '../flow-stress/state.ts'

/** One kind of layer: its steel and its share of the stack's thickness (shares need not sum to 1). */
export interface LayerShare {
  readonly composition: Composition
  readonly share: number
}

export interface StackStress extends Estimate {
  /** Layers free to strain by their own law at one common stress, Pa: the softest the stack can be. */
  readonly series: number
  /** Layers held to one common strain, Pa: the stiffest it can be. */
  readonly parallel: number
  /** Each layer's strain over the stack's, if the layers were free (series). */
  readonly freeStrain: readonly number[]
}

function normal(layers: readonly LayerShare[]): LayerShare[] {
  const sum = layers.reduce((total, layer) => total + Math.max(0, layer.share), 0)
  return layers.map((layer) => ({
    ...layer,
    share: sum > 0 ? Math.max(0, layer.share) / sum : 1 / layers.length,
  }))
}

/** Rate at which a steel carries a stress (Pa), from its own law: secants in the logarithms. */
function rateAt(composition: Composition, stress: number, state: State): number {
  const log = (x: number) => Math.log(steelStress(composition, { ...state, rate: Math.exp(x) }))
  const [aim, middle] = [Math.log(stress), Math.log(state.rate)]
  let x = middle
  for (let i = 0; i < 12; i++) {
    const here = log(x)
    if (Math.abs(here - aim) < 1e-12) break
    const slope = Math.max(0.02, (log(x + 1e-3) - here) / 1e-3)
    x = Math.min(middle + 7, Math.max(middle - 12, x + (aim - here) / slope))
  }
  return Math.exp(x)
}

/** Layers across the blow, free to slide: one stress, each strains by its own law. */
function inSeries(layers: readonly LayerShare[], state: State) {
  const at = layers.map((layer) => steelStress(layer.composition, state))
  const rates = (stress: number) => layers.map((layer) => rateAt(layer.composition, stress, state))
  const mean = (each: readonly number[]) =>
    each.reduce((sum, x, i) => sum + layers[i]!.share * x, 0)
  const [low, high] = [Math.min(...at), Math.max(...at)]
  // The rate is near a power of the stress: in logarithms a chord or two finds it.
  const stress =
    high - low < 1e-6 * high
      ? high
      : Math.exp(
          crossing(
            (s) => Math.log(mean(rates(Math.exp(s))) / state.rate),
            Math.log(low),
            Math.log(high),
          ),
        )
  const each = high - low < 1e-6 * high ? layers.map(() => state.rate) : rates(stress)
  const total = mean(each)
  return { stress, strain: each.map((r) => r / total) }
}

/**
 * The stack's own flow stress (Pa). On edge the layers stand along the blow and must all shorten
 * alike: the mean of their stresses. Flat, layers lie across the blow and the softer ones may give
 * first: between the common-stress value and the mean; a sound weld holds them to the mean, layers
 * not yet welded slide and come near the other.
 */
export function stackStress(
  given: readonly LayerShare[],
  state: State,
  lie: 'flat' | 'on edge',
): StackStress {
  const layers = normal(given)
  const each = layers.map((layer) => flowStress(layer.composition, state))
  const sum = (pick: (e: Estimate) => number) =>
    layers.reduce((total, layer, i) => total + layer.share * pick(each[i]!), 0)
  const parallel = sum((e) => e.value)
  const series = inSeries(layers, state)
  const soft = Math.min(series.stress, parallel)
  const value = lie === 'on edge' ? parallel : 0.5 * (soft + parallel)
  return {
    value,
    low: lie === 'on edge' ? sum((e) => e.low) : (soft / parallel) * sum((e) => e.low),
    high: sum((e) => e.high),
    basis: each
      .flatMap((e) => e.basis)
      .filter((b, i, all) => all.findIndex((o) => o.law === b.law) === i),
    cautions: each
      .flatMap((e) => e.cautions)
      .filter((c, i, all) => all.findIndex((o) => o.what === c.what) === i),
    series: soft,
    parallel,
    freeStrain: series.strain,
  }
}

export interface LayerDrift {
  /** Each layer's thickness over what equal thinning would give, averaged over the width. */
  readonly thickness: readonly number[]
  /** The same near the free sides, where nothing holds a soft layer back. */
  readonly atSides: readonly number[]
  /** How far in from each side the softer layers can squeeze out, m. */
  readonly sideZone: number
}

/**
 * How the thickness ratio of soft and hard layers drifts as a flat stack is reduced by the strain
 * ln(h0/h1). A soft layer between harder ones can only squeeze out where the shear on its two faces,
 * k each, does not stop it: over a length t (Y_hard − Y_soft)/(2 k_soft) from the free side (the slab
 * balance of one layer). There the layers strain freely; further in they thin alike. Worked out in
 * this project; smiths say "a few per cent" (trade practice, no source).
 */
export function driftOfLayers(
  given: readonly LayerShare[],
  state: State,
  strain: number,
  layerThickness: number,
  width: number,
  bonded = true,
): LayerDrift {
  const layers = normal(given)
  const { strain: free } = inSeries(layers, state)
  const stresses = layers.map((layer) => steelStress(layer.composition, state))
  const [soft, hard] = [Math.min(...stresses), Math.max(...stresses)]
  const zone = (layerThickness * (hard - soft) * Math.sqrt(3)) / (2 * soft)
  const sideZone = bonded ? Math.min(width / 2, zone) : width / 2
  const held = width > 0 ? Math.min(1, (2 * sideZone) / width) : 1
  const level = (each: number[]) => {
    const mean = each.reduce((sum, x, i) => sum + layers[i]!.share * x, 0)
    return each.map((x) => x / mean)
  }
  const atSides = level(free.map((f) => Math.exp(-strain * (f - 1))))
  const thickness = level(free.map((f) => Math.exp(-strain * (f - 1) * held)))
  return { thickness, atSides, sideZone }
}
