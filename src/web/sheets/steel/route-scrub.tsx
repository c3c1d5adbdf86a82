import { type SteelPlace, type SteelStep, useTradeWord, useWords } from '#desk'
import { capital } from '../../form/measure.tsx'

/** The steps of the route as a row of marks: each shows the bar as it was left there. */
export function RouteScrub({
  steps,
  place,
  onPlace,
}: {
  readonly steps: readonly SteelStep[]
  readonly place: SteelPlace | undefined
  readonly onPlace: (place: SteelPlace | undefined) => void
}) {
  const words = useWords()
  const trade = useTradeWord()
  const at = place
    ? steps.findIndex((s) => s.bar === place.bar && s.index === place.index)
    : steps.length - 1
  const shown = steps[at]
  const several = new Set(steps.map((s) => s.bar)).size > 1
  const name = (i: number) => {
    const step = steps[i]
    if (!step || i === steps.length - 1) return words.steelSheet.asPiece
    const what = words.steelSheet.stepOf(i + 1, trade(step.after))
    return several ? `${what}, ${step.bar}` : what
  }
  return (
    <div className="scrub">
      <label>
        <span className="name">{words.steelSheet.step}</span>
        <span className="line">
          <input
            type="range"
            min={0}
            max={Math.max(steps.length - 1, 0)}
            value={Math.max(at, 0)}
            aria-valuetext={name(at)}
            onChange={(event) => {
              const i = Number(event.currentTarget.value)
              const step = steps[i]
              onPlace(
                step && i < steps.length - 1 ? { bar: step.bar, index: step.index } : undefined,
              )
            }}
          />
          <span className="scale" aria-hidden="true">
            {steps.map((step, i) => (
              <i
                key={i}
                className={i > 0 && steps[i - 1]!.bar !== step.bar ? 'long' : ''}
                style={{ left: `${(i / Math.max(steps.length - 1, 1)) * 100}%` }}
              />
            ))}
          </span>
        </span>
        <span className="value">{shown && capital(name(at))}</span>
      </label>
    </div>
  )
}
