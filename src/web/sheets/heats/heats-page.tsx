import { useDesk, useWords } from '#desk'
import type { Treated } from '#job'
import { Amiss } from '../../form/amiss.tsx'
import { useSay } from '../../form/say.ts'
import { Told } from '../../form/told.tsx'
import { SheetHead } from '../../shell/sheet-head.tsx'
import { useTreated } from '../../use-treated.ts'
import { CarbonPlot } from './carbon-plot.tsx'
import { HardnessPlot } from './hardness-plot.tsx'
import { ScalePlot } from './scale-plot.tsx'
import { CARBON_MOVES, TemperaturePlot } from './temperature-plot.tsx'
import { inAll, timeAbove } from './time-line.ts'
import { WindowPlot } from './window-plot.tsx'

export function HeatsPage() {
  const words = useWords()
  const isSound = useDesk((desk) => (desk.worked ?? desk.sound)?.sound === true)
  const { treated, failed } = useTreated()
  const hot = treated !== undefined && treated.heats.length > 0
  return (
    <section className="column heats-sheet" aria-label={words.heatsSheet.title}>
      <SheetHead>{hot && <Totals treated={treated} />}</SheetHead>
      <Amiss />
      {!hot && (
        <p className="empty soft" role="status">
          {words.heatsSheet[failed ? 'failed' : isSound && !treated ? 'following' : 'waits']}
        </p>
      )}
      {hot && (
        <>
          <TemperaturePlot heats={treated.heats} />
          <CarbonPlot treated={treated} />
          <div className="three">
            <HardnessPlot treated={treated} />
            <WindowPlot treated={treated} />
            <ScalePlot heats={treated.heats} />
          </div>
          <Said treated={treated} />
        </>
      )}
    </section>
  )
}

/** Time in the fire, at the head of the sheet. */
function Totals({ treated }: { readonly treated: Treated }) {
  const words = useWords()
  const say = useSay()
  const { above, whole } = timeAbove(treated.heats, CARBON_MOVES)
  const count = treated.heats.reduce((n, h) => n + (h.purpose === 'temper' ? 0 : h.times), 0)
  return (
    <dl className="totals">
      <div>
        <dt>{words.heatsSheet.above(say.temperature(CARBON_MOVES))}</dt>
        <dd>{inAll(above)}</dd>
      </div>
      <div>
        <dt>{words.heatsSheet.atFire}</dt>
        <dd>{inAll(whole)}</dd>
      </div>
      <div>
        <dt>{words.heatsSheet.heats}</dt>
        <dd>{count}</dd>
      </div>
    </dl>
  )
}

/** What the models say in words. */
function Said({ treated }: { readonly treated: Treated }) {
  const words = useWords()
  const { cautions, notes, quench } = treated
  const said = [...(quench ? [quench.sentence] : []), ...notes]
  if (cautions.length + said.length === 0) return null
  return (
    <div className="said">
      {cautions.length > 0 && (
        <section>
          <h3>{words.heatsSheet.cautions}</h3>
          <ul className="note">
            {cautions.map((text) => (
              <li key={text}>
                <b>
                  <Told text={text} />
                </b>
              </li>
            ))}
          </ul>
        </section>
      )}
      {said.length > 0 && (
        <section>
          <h3>{words.heatsSheet.what}</h3>
          <ul className="note soft">
            {said.map((text) => (
              <li key={text}>
                <Told text={text} />
              </li>
            ))}
          </ul>
        </section>
      )}
    </div>
  )
}
