import { useWords, useDesk } from '#desk'
import { TRUE } from '../../drawing/scale.ts'
import { Measure } from '../../form/measure.tsx'

/** A round length, and how it is said. */
interface Length {
  readonly metres: number
  readonly says: string
  readonly parts: number
}

const METRIC: readonly Length[] = [1e-6, 1e-5, 1e-4, 1e-3, 1e-2, 1e-1].flatMap((decade) =>
  [1, 2, 5].map((n) => {
    const metres = n * decade
    const says =
      metres < 0.9e-3 ? `${Math.round(metres * 1e6)} µm` : `${Math.round(metres * 1e3)} mm`
    return { metres, says, parts: n === 2 ? 4 : 5 }
  }),
)
const INCH: readonly Length[] = [
  ...[1, 2, 5, 10, 20, 50, 100].map((mil) => ({
    metres: mil * 25.4e-6,
    says: mil < 10 ? `.00${mil} in` : mil < 100 ? `.0${mil} in` : '.1 in',
    parts: mil % 5 === 0 ? 5 : 4,
  })),
  ...['1/4', '1/2', '1', '2', '5', '10'].map((says) => ({
    metres: says.includes('/') ? 0.0254 / Number(says.slice(2)) : 0.0254 * Number(says),
    says: `${says} in`,
    parts: says === '5' || says === '10' ? 5 : 4,
  })),
]

/** The longest round length that takes no more than a third of the picture. */
export function barLength(pixel: number, width: number, inch: boolean): Length {
  const lengths = inch ? INCH : METRIC
  return lengths.findLast((l) => l.metres / pixel <= width / 3) ?? lengths[0]!
}

/** A ruled bar of a round length under the picture, and how large the picture is drawn. */
export function ScaleBar({ pixel, width }: { readonly pixel: number; readonly width: number }) {
  const words = useWords()
  const inch = useDesk((desk) => desk.units === 'inch')
  const { metres, says, parts } = barLength(pixel, width, inch)
  const long = metres / pixel
  return (
    <div className="scale-line note soft">
      <span className="bar-and-length">
        <svg width={long + 2} height="12" aria-hidden="true">
          <path
            className="ink-line"
            d={
              `M1 0V11M${long + 1} 0V11M1 1H${long + 1}` +
              Array.from(
                { length: parts - 1 },
                (_, i) => `M${1 + ((i + 1) * long) / parts} 1V6`,
              ).join('')
            }
          />
        </svg>
        <Measure text={says} />
      </span>
      <span>{words.steelSheet.pixelScale(sayRatio(1 / (pixel * TRUE)))}</span>
    </div>
  )
}

/** `2.4 : 1`, `1 : 3`. */
function sayRatio(ratio: number): string {
  const figure = (n: number) =>
    n >= 9.95 ? Math.round(n).toString() : n.toFixed(1).replace('.0', '')
  return ratio >= 1 ? `${figure(ratio)} : 1` : `1 : ${figure(1 / ratio)}`
}
