import { type LaidSteel, type Row, useDesk, useTradeWord, useWords } from '#desk'
import { Measure } from '../../form/measure.tsx'
import { useSay } from '../../form/say.ts'

/** The figures one takes away: lines, mass, heats; gone back along the route, what the bar is after the step shown. */
export function SteelFigures({ steel }: { readonly steel: LaidSteel | undefined }) {
  const words = useWords()
  const say = useSay()
  const units = useDesk((desk) => desk.units)
  const shown = useDesk((desk) => (desk.worked?.sound ? desk.worked : desk.sound))
  if (!shown?.totals) return null
  const { bar, index } = steel?.place ?? {}
  const at = shown.rows.findIndex((row) => row.bar === bar && row.index === index)
  const row = shown.rows[at]
  if (row && steel && !isLast(steel))
    return <StepFigures number={at + 1} row={row} underWay={steel.place.done !== undefined} />
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

function isLast({ place: { bar, index, done }, steps }: LaidSteel): boolean {
  const last = steps.at(-1)
  return done === undefined && last?.bar === bar && last?.index === index
}

/** What the step leaves, also while it is seen on its way. */
function StepFigures({
  number,
  row,
  underWay,
}: {
  readonly number: number
  readonly row: Row
  readonly underWay: boolean
}) {
  const words = useWords()
  const say = useSay()
  const trade = useTradeWord()
  const heats = row.heats.reduce((sum, heat) => sum + heat.count, 0)
  return (
    <div className="figures">
      <p>
        <span className="takeaway">
          <Measure text={say.mass(row.mass)} />
        </span>
        <span className="note soft">
          {words.steelSheet.stepSpoken(number, trade(row.title))}
          {underWay && ` ${words.take.onceDone}`}
        </span>
      </p>
      <p>
        <span className="takeaway">{row.merged}</span>
        <span className="note soft">
          {words.take.layers(row.merged)}
          {row.laid !== row.merged && `, ${words.route.laid(row.laid)}`}
        </span>
      </p>
      {heats > 0 && (
        <p>
          <span className="takeaway">{heats}</span>
          <span className="note soft">{words.take.inStep(heats)}</span>
        </p>
      )}
    </div>
  )
}
