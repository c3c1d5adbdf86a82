import { type Row, useTradeWord, useWords } from '#desk'
import { countOf, minutes } from '#report'
import { HeatSwatch } from '../../drawing/heat-swatch.tsx'
import { CautionMark } from '../../form/faults.tsx'
import { capital } from '../../form/measure.tsx'
import { useSay } from '../../form/say.ts'
import { Told } from '../../form/told.tsx'
import { useHeatTimes } from './heat-times.ts'

/** What the anvil wants to know of a step: its heats and their times, blows or force, notes and warnings. */
export function StepFacts({ row }: { readonly row: Row }) {
  const words = useWords()
  return (
    <>
      <Heats row={row} />
      {row.force && <Force force={row.force} />}
      {row.notes.map((note) => (
        <p key={note}>
          <Told text={note} whole />
        </p>
      ))}
      {row.warnings.map((w) => (
        <p key={w.what}>
          <CautionMark />{' '}
          <b>
            <Told text={w.what} whole />
          </b>{' '}
          <Told text={w.why} whole /> {words.errors.try}:{' '}
          {w.try.map((cure, i) => (
            <span key={cure}>
              {i > 0 && '; '}
              <Told text={cure} />
            </span>
          ))}
          .
        </p>
      ))}
    </>
  )
}

/** Work that is followed by a time in which it can be done, and not by a bath. */
const WORKED = ['weld', 'forge', 'stamp', 'straighten']

/** Each heat with how long the fire and the work take; where that is not known yet, its stop heat alone. */
function Heats({ row }: { readonly row: Row }) {
  const { card, route } = useWords()
  const { heatTime } = card
  const trade = useTradeWord()
  const say = useSay()
  const times = useHeatTimes(row.bar, row.index)
  if (times.length === 0)
    return row.heats
      .filter((heat) => heat.stop !== undefined)
      .map((heat, i) => (
        <p key={i}>
          <HeatSwatch temperature={heat.stop ?? 0} />
          {route.stop(say.temperature(heat.stop ?? 0))}
        </p>
      ))
  return times.map((heat, i) => {
    const medium = trade(heat.medium)
    const told = [
      // As cold as the shop is no figure to read.
      heatTime.until(
        heat.from > 400 ? say.temperature(heat.from) : '',
        minutes(heat.warming.value),
      ),
      ...(heat.soak > 0 ? [heatTime.held(minutes(heat.soak))] : []),
      heat.working && heat.stop !== undefined && WORKED.includes(heat.purpose)
        ? heatTime.work(minutes(heat.working.value), say.temperature(heat.stop))
        : heat.purpose === 'harden'
          ? heatTime.quenched(medium)
          : heatTime.cooled(medium),
    ]
    return (
      <p key={i}>
        <HeatSwatch temperature={heat.temperature} />
        <b>
          {heat.times} × {say.temperature(heat.temperature)}
        </b>
        : {told.join('; ')}
      </p>
    )
  })
}

/** The tool, its blows or its squeezes and their force, and how the bar may come out of it. */
function Force({ force }: { readonly force: NonNullable<Row['force']> }) {
  const words = useWords().card
  const say = useSay()
  const { low, high } = force.size
  const isFree = high.width - low.width > 5e-5
  const [few, likely, many] = [force.blows.low, force.blows.value, force.blows.high].map(countOf)
  return (
    <p>
      <b>
        <Told text={capital(force.tool)} />
      </b>
      {': '}
      {force.way === 'press'
        ? words.squeezes(
            say.force(force.force.value),
            say.force(force.force.low),
            say.force(force.force.high),
            likely,
          )
        : words.blows(likely, few, many)}
      , {words.inHeats(force.heats)}
      {isFree &&
        `; ${words.comesOut(
          say.length(low.width),
          say.length(high.width),
          say.length(low.length),
          say.length(high.length),
        )}`}
    </p>
  )
}
