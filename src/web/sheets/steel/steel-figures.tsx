import { useDesk, useWords } from '#desk'
import { Measure } from '../../form/measure.tsx'
import { useSay } from '../../form/say.ts'

/** The figures one takes away: lines, mass, heats. */
export function SteelFigures() {
  const words = useWords()
  const say = useSay()
  const units = useDesk((desk) => desk.units)
  const shown = useDesk((desk) => (desk.worked?.sound ? desk.worked : desk.sound))
  if (!shown?.totals) return null
  const { totals, lines } = shown
  const metric = units === 'metric'
  return (
    <div className="figures">
      {lines && (
        <p>
          <span className="takeaway">{say.lines(lines.perMetre).split(' ')[0]}</span>
          <span className="note soft">
            {metric ? words.take.perMm : words.take.perInch},{' '}
            {words.take.lines(lines.along === 'x' ? 'x' : 'y')}
          </span>
        </p>
      )}
      <p>
        <span className="takeaway">
          <Measure text={say.mass(totals.finishedMass)} />
        </span>
        <span className="note soft">{words.take.delivered(say.mass(totals.stackMass))}</span>
      </p>
      <p>
        <span className="takeaway">{totals.heats}</span>
        <span className="note soft">{words.take.heats(totals.heats, totals.tempers)}</span>
      </p>
    </div>
  )
}
