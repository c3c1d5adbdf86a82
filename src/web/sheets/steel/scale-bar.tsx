import { useWords, useDesk } from '#desk'
import { withDecimalsOf } from '#words'
import { barLength } from '../../drawing/bar-length.ts'
import { TRUE } from '../../drawing/scale.ts'
import { Measure } from '../../form/measure.tsx'

/** A ruled bar of a round length under the picture, and how large the picture is drawn. */
export function ScaleBar({ pixel, width }: { readonly pixel: number; readonly width: number }) {
  const words = useWords()
  const inch = useDesk((desk) => desk.units === 'inch')
  const language = useDesk((desk) => desk.language)
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
      <span>
        {words.steelSheet.pixelScale(withDecimalsOf(language, sayRatio(1 / (pixel * TRUE))))}
      </span>
    </div>
  )
}

/** `2.4 : 1`, `1 : 3`. */
function sayRatio(ratio: number): string {
  const figure = (n: number) =>
    n >= 9.95 ? Math.round(n).toString() : n.toFixed(1).replace('.0', '')
  return ratio >= 1 ? `${figure(ratio)} : 1` : `1 : ${figure(1 / ratio)}`
}
