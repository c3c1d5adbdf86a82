import { type LaidSteel, useDesk, useWords } from '#desk'
import { type Catalogue, type Language, withDecimalsOf } from '#words'
import { useSay } from '../../form/say.ts'
import { Measure } from '../../form/measure.tsx'
import type { Weights, Wanted } from './painters.ts'
import type { Mode } from '#scene'
import { MOST_CARBON, MOST_HARDNESS, type SheetValues } from './sheet-weights.ts'

/** An overlay's scale: its ends in the card's own numbers, its steps, and what each end says. */
export interface Scale {
  readonly range: Wanted['range']
  readonly steps: number
  readonly says: readonly string[]
}

/** What the card averages over each pixel: brightness, height, and carbon and hardness once they are known. */
export function weightsOf(steel: LaidSteel, values: SheetValues | undefined): Weights {
  const { light } = steel
  return [light, light, values?.carbon ?? [], values?.hardness ?? []]
}

/** The scale of an overlay for this metal; round figures that hold all of it. */
export function scaleOf(
  mode: Mode,
  values: SheetValues | undefined,
  ladder: readonly number[],
  sayThickness: (m: number) => string,
): Scale | undefined {
  if (mode === 'thickness') {
    const [low, high] = [ladder[0], ladder.at(-1)]
    if (low === undefined || high === undefined) return undefined
    return {
      range: [Math.log(low), Math.log(high)],
      steps: ladder.length - 1,
      says: ladder.map(sayThickness),
    }
  }
  if (mode === 'strain')
    return { range: [0, 6], steps: 6, says: ['0', '1', '2', '3', '4', '5', '6'] }
  if (mode !== 'carbon' && mode !== 'hardness') return undefined
  const [full, unit, digits] =
    mode === 'carbon' ? [MOST_CARBON, 0.1, 2] : ([MOST_HARDNESS, 2, 0] as const)
  const ever = (mode === 'carbon' ? values?.everCarbon : values?.everHardness) ?? []
  if (ever.length === 0) return undefined
  const low = Math.max(0, Math.floor(Math.min(...ever) / unit - 0.2) * unit)
  const high = Math.ceil(Math.max(...ever) / unit + 0.2) * unit
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
  values,
  bars,
}: {
  readonly mode: Mode
  readonly scale: Scale | undefined
  readonly values: SheetValues | undefined
  readonly bars: readonly string[]
}) {
  const words = useWords()
  const language = useDesk((desk) => desk.language)
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
                  <Measure text={withDecimalsOf(language, text)} />
                </span>
              ))}
            </p>
          </div>
        )
      )}
      <p className="note soft">{legendText(words, language, mode, values)}</p>
    </div>
  )
}

/** What an overlay's tones stand for, in words. */
export function legendText(
  words: Catalogue,
  language: Language,
  mode: Mode,
  values: SheetValues | undefined,
): string | undefined {
  if (mode === 'etched' || mode === 'plain') return undefined
  const legend = words.steelSheet.legend[mode]
  if (mode === 'carbon' && values) return `${legend} ${carbonHere(words, language, values)}`
  return mode === 'hardness' && values?.someSoft ? `${legend} ${words.steelSheet.soft}` : legend
}

/** How far the carbon has levelled in the metal that is seen. */
function carbonHere(
  { steelSheet }: Catalogue,
  language: Language,
  { leanest, richest, apart }: SheetValues,
): string {
  const figure = (c: number) => withDecimalsOf(language, c.toFixed(2))
  const [low, high] = [leanest, richest].map(figure) as [string, string]
  const here = low === high ? steelSheet.carbonLevel(low) : steelSheet.carbonSpread(low, high)
  return apart >= 0.01 ? `${here} ${steelSheet.carbonApart(figure(apart))}` : here
}

/** The same tones as the card's. */
export function tone(t: number): string {
  const grey = Math.round(255 * (0.12 + 0.78 * t))
  return `rgb(${grey},${grey},${grey})`
}

/** Tone and hatch of a stack's number, as the card draws it; its turn in radians. */
export function barLook(of: number) {
  return {
    grey: Math.round(255 * (0.82 - 0.56 * ((of * 0.38) % 1))),
    turn: -(of * 0.9 + 0.4),
    apart: 7 + 2 * (of % 3),
  }
}

/** The hatch of a stack's number. */
function BarSwatch({ of }: { readonly of: number }) {
  const { grey, turn, apart } = barLook(of)
  const id = `bar-hatch-${of}`
  return (
    <svg className="bar-swatch" width="44" height="15" aria-hidden="true">
      <defs>
        <pattern
          id={id}
          width={apart}
          height={apart}
          patternUnits="userSpaceOnUse"
          patternTransform={`rotate(${(turn * 180) / Math.PI})`}
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
