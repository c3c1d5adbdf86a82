import { useWords } from '#desk'
import type { LaidSteel } from '#desk'
import type { Treated } from '#job'
import { brightnessOf } from '#look'
import { useSay } from '../../form/say.ts'
import { Measure } from '../../form/measure.tsx'
import type { Weights, Wanted } from './painters.ts'
import type { Mode } from '#scene'

/** An overlay's scale: its ends in the card's own numbers, its steps, and what each end says. */
export interface Scale {
  readonly range: Wanted['range']
  readonly steps: number
  readonly says: readonly string[]
}

/** Full scale of what the card averages as shares of one. */
const MOST_CARBON = 2
const MOST_HARDNESS = 70

/** What the card averages over each pixel: brightness, height, and carbon and hardness once they are known. */
export function weightsOf(steel: LaidSteel, treated: Treated | undefined): Weights {
  const bright = brightnessOf(steel.light)
  const records = treated?.steels ?? []
  const mean = (of: (record: Treated['steels'][number]) => number | undefined) => {
    const sums: Record<string, { sum: number; share: number }> = {}
    for (const record of records) {
      const value = of(record)
      if (value === undefined) continue
      const { sum, share } = sums[record.steel] ?? { sum: 0, share: 0 }
      sums[record.steel] = { sum: sum + value * record.share, share: share + record.share }
    }
    return Object.fromEntries(Object.entries(sums).map(([name, s]) => [name, s.sum / s.share]))
  }
  const carbon = mean((r) => r.carbon.value / MOST_CARBON)
  const hardness = mean((r) => r.tempered && r.tempered.value / MOST_HARDNESS)
  return [bright, bright, carbon, hardness]
}

/** The scale of an overlay for this metal; round figures that hold all of it. */
export function scaleOf(
  mode: Mode,
  steel: LaidSteel | undefined,
  weights: Weights,
  sayThickness: (m: number) => string,
): Scale | undefined {
  if (mode === 'thickness')
    return {
      range: [Math.log(1e-6), Math.log(1e-2)],
      steps: 8,
      says: [1e-6, 1e-5, 1e-4, 1e-3, 1e-2].map(sayThickness),
    }
  if (mode === 'strain')
    return { range: [0, 6], steps: 6, says: ['0', '1', '2', '3', '4', '5', '6'] }
  if (mode !== 'carbon' && mode !== 'hardness') return undefined
  const [full, unit, digits] =
    mode === 'carbon' ? [MOST_CARBON, 0.1, 2] : ([MOST_HARDNESS, 2, 0] as const)
  const values = Object.values(weights[mode === 'carbon' ? 2 : 3] ?? {}).map((v) => v * full)
  if (!steel || values.length === 0) return undefined
  const low = Math.floor(Math.min(...values) / unit - 0.2) * unit
  const high = Math.ceil(Math.max(...values) / unit + 0.2) * unit
  const steps = Math.max(1, Math.round((high - low) / unit))
  return {
    range: [low / full, high / full],
    steps,
    says: [low, (low + high) / 2, high].map((v) => v.toFixed(digits)),
  }
}

/** What an overlay's tones mean. */
export function Legend({
  mode,
  scale,
  bars,
}: {
  readonly mode: Mode
  readonly scale: Scale | undefined
  readonly bars: readonly string[]
}) {
  const words = useWords()
  if (mode === 'etched' || mode === 'plain') return null
  return (
    <div className="legend">
      {mode === 'bar' ? (
        <ul className="bars">
          {bars.map((bar, i) => (
            <li key={bar}>
              <BarSwatch of={i} /> {bar}
            </li>
          ))}
        </ul>
      ) : (
        scale && (
          <div className="ramp">
            <svg viewBox="0 0 480 11" preserveAspectRatio="none" aria-hidden="true">
              {Array.from({ length: 96 }, (_, i) => (
                <rect key={i} x={i * 5} width="5.5" height="11" fill={tone((i + 0.5) / 96)} />
              ))}
              {Array.from({ length: scale.steps - 1 }, (_, i) => (
                <path
                  key={`s${i}`}
                  d={`M${((i + 1) * 480) / scale.steps} 0V11`}
                  className={(i + 1) / scale.steps > 0.5 ? 'on-light' : 'on-dark'}
                />
              ))}
            </svg>
            <p className="note soft">
              {scale.says.map((text) => (
                <span key={text}>
                  <Measure text={text} />
                </span>
              ))}
            </p>
          </div>
        )
      )}
      <p className="note soft">{words.steelSheet.legend[mode]}</p>
    </div>
  )
}

/** The same tones as the card's. */
function tone(t: number): string {
  const grey = Math.round(255 * (0.12 + 0.78 * t))
  return `rgb(${grey},${grey},${grey})`
}

/** The hatch of a stack's number, as the card draws it. */
function BarSwatch({ of }: { readonly of: number }) {
  const grey = Math.round(255 * (0.82 - 0.56 * ((of * 0.38) % 1)))
  const turn = -((of * 0.9 + 0.4) * 180) / Math.PI
  const id = `bar-hatch-${of}`
  const apart = 7 + 2 * (of % 3)
  return (
    <svg className="bar-swatch" width="44" height="15" aria-hidden="true">
      <defs>
        <pattern
          id={id}
          width={apart}
          height={apart}
          patternUnits="userSpaceOnUse"
          patternTransform={`rotate(${turn})`}
        >
          {of > 0 && <path d={`M${apart / 2} 0V${apart}`} className="hatch" />}
        </pattern>
      </defs>
      <rect width="44" height="15" fill={`rgb(${grey},${grey},${grey})`} />
      <rect width="44" height="15" fill={`url(#${id})`} />
    </svg>
  )
}

/** How thick a layer is, in the units chosen; thin ones in millionths. */
export function useSayThickness(): (m: number) => string {
  const say = useSay()
  return (m) => (m < 1e-4 ? `${Math.round(m * 1e6)} µm` : say.length(m))
}
