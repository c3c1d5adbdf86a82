import type { Composition } from '#steel'
import { type Billet, flatAxis } from '#billet'
import { type Estimate, contrastOf, distort, etchRelief } from '#metallurgy'
import type { Plan } from '#planner'
import type { Shop } from '#shop'
import type { Ranged } from './layers/layer-records.ts'
import type { Metal } from './metal/metal.ts'
import type { SteelRecord, Treat } from './layers/steel-records.ts'

export interface EtchPair {
  readonly steels: readonly [string, string]
  readonly contrast: 'strong' | 'fair' | 'faint' | 'none'
  readonly tones: readonly [string, string]
  /** min in the bath to the relief wanted, and that relief, m; left out where neither stands proud. */
  readonly minutes?: Ranged
  readonly relief?: number
}

/** Growth in the quench: m/m along the piece, and bow over one metre if nothing is done, m. */
export interface Growth {
  readonly growth: Estimate
  readonly bow?: Estimate
  readonly risk?: 'even' | 'slight' | 'marked'
}

export function growthOf(metal: Metal, finished: Billet, treat: Treat): Growth {
  const through = metal.length === 1 && ['y', 'z'].includes(flatOf(finished) ?? '')
  const layers = metal.flat().map((ply) => {
    const mean = ply.carbon.reduce((a, b) => a + b, 0) / ply.carbon.length
    const at = treat(ply.steel, mean)
    return {
      thickness: ply.thickness,
      carbon: at?.dissolved ?? mean,
      martensite: at?.hardening.martensite.value ?? 0,
      retained: at ? at.retained.value * at.hardening.martensite.value : 0,
    }
  })
  const { growth, bow, risk } = distort(layers)
  return through ? { growth, bow, risk } : { growth }
}

/** The axis the layers lie flat to, whatever was ground off them. */
function flatOf({ build }: Billet): string | undefined {
  return build.form === 'worked' && build.shares
    ? flatOf({ build: build.of } as Billet)
    : flatAxis(build)
}

export function etchPairs(
  steels: readonly SteelRecord[],
  plan: Plan,
  shop: Shop,
  compositionOf: (steel: string) => Composition,
): EtchPair[] {
  const etched = plan.steps.find((s) => s.operation.name === 'etch')
  if (!etched) return []
  const hard = ['hardened', 'tempered'].includes(plan.finished.temper)
  const condition = hard ? 'hardened' : 'soft'
  const wanted = (etched.values.depth as number | undefined) ?? shop.etchDepth
  const water = etched.values.water as number
  const byName = new Map(
    steels.map((s) => [s.steel, { ...compositionOf(s.steel), C: s.carbon.value }]),
  )
  const names = [...byName.keys()]
  return names.flatMap((a, i) =>
    names.slice(i + 1).map((b): EtchPair => {
      const [first, second] = [byName.get(a)!, byName.get(b)!]
      const { contrast, tones } = contrastOf(first, second, condition)
      const relief = etchRelief(first, second, { minutes: 1, water, condition })
      const acid = etched.values.acid === 'ferric chloride' && relief.value > 2e-7
      return {
        steels: [a, b],
        contrast,
        tones,
        ...(acid && {
          minutes: {
            value: wanted / relief.value,
            range: [wanted / relief.range[1], wanted / Math.max(relief.range[0], 1e-9)],
          },
          relief: wanted,
        }),
      }
    }),
  )
}
