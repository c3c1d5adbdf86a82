import { scaleLinear } from 'd3-scale'
import { curveMonotoneX, line } from 'd3-shape'
import { type Declarations, useDesk, useTradeWord, useWords } from '#desk'
import type { HeatRecord } from '#job'
import { usePlotRoom } from '../../drawing/use-room.ts'
import { useSay } from '../../form/say.ts'
import { PlotData } from './plot-data.tsx'
import { type PlotTable, degreesIn } from './plot-table.ts'
import { groupSteps } from './step-marks.ts'
import { type BarLine, type StepSpan, layTime } from './time-line.ts'

const LEFT = 74
const TOP = 22
const FOOT = 66
/** Height of the plot of one bar, of the first and only, and of one of several. */
const TALL = 264
const LOW = 154
const KELVIN = 273.15
/** Above this, carbon goes far enough in minutes to matter (CPART), K. */
export const CARBON_MOVES = 1000 + KELVIN
/** Colour of no glow, below 500 °C. */
const GLOW_FROM = 500
const HOTTEST = 1300
/** Round figures in the degrees that are shown. */
const TICKS = {
  metric: [200, 400, 600, 800, 1000, 1150, HOTTEST],
  inch: [400, 800, 1100, 1500, 1800, 2100, 2350],
}
const FEW_TICKS = { metric: [200, 500, 800, 1150], inch: [400, 900, 1500, 2100] }
/** Narrower than this a plot is moved from side to side instead, px. */
const NARROWEST = 620

/** How hot each bar was, heat after heat, drawn in the colour it glows. */
export function TemperaturePlot({ heats }: { readonly heats: readonly HeatRecord[] }) {
  const words = useWords()
  const trade = useTradeWord()
  const say = useSay()
  const [place, room] = usePlotRoom<HTMLDivElement>()
  const glow = useDesk((desk) => desk.declared?.glow) ?? []
  const bars = layTime(heats)
  const longest = Math.max(...bars.map((b) => b.long), 1)
  return (
    <section className="temperature" aria-labelledby="heats-history">
      <div className="plot-head">
        <h3 id="heats-history">{words.heatsSheet.history}</h3>
        <span className="note soft">{words.heatsSheet.historyNote}</span>
      </div>
      <div
        ref={place}
        className={room < NARROWEST ? 'bars wider' : 'bars'}
        tabIndex={room > 0 && room < NARROWEST ? 0 : undefined}
      >
        {room > 0 &&
          bars.map((bar) => (
            <BarPlot
              key={bar.bar}
              bar={bar}
              alone={bars.length === 1}
              room={Math.max(room, NARROWEST)}
              longest={longest}
              glow={glow}
            />
          ))}
      </div>
      <PlotData
        caption={words.heatsSheet.history}
        table={tableOf(heats, words.heatsSheet.columns, trade, degreesIn(say))}
      />
    </section>
  )
}

interface BarPlotProps {
  readonly bar: BarLine
  readonly alone: boolean
  readonly room: number
  readonly longest: number
  readonly glow: Declarations['glow']
}

function BarPlot({ bar, alone, room, longest, glow }: BarPlotProps) {
  const words = useWords()
  const say = useSay()
  const trade = useTradeWord()
  const inch = say.units === 'inch'
  const tall = alone ? TALL : LOW
  const y = scaleLinear([KELVIN, HOTTEST + KELVIN], [TOP + tall, TOP])
  const x = scaleLinear([0, longest], [LEFT + 16, room - 8])
  const height = TOP + tall + FOOT
  const path = line<{ x: number; K: number }>(
    (p) => x(p.x),
    (p) => y(p.K),
  ).curve(curveMonotoneX)
  const ticks = (alone ? TICKS : FEW_TICKS)[inch ? 'inch' : 'metric'].map((t) =>
    inch ? ((t - 32) * 5) / 9 : t,
  )
  const id = `glow-${bar.bar.replaceAll(/\W/g, '-')}`
  const marks = marksOf(bar, words.heatsSheet, say.temperature)
  const minutes = niceMinutes(longest)
  return (
    <figure className="plot">
      {!alone && <figcaption>{words.route.bar(bar.bar)}</figcaption>}
      <svg
        width={room}
        height={height}
        role="img"
        aria-label={`${words.heatsSheet.history}, ${bar.bar}: ${bar.steps
          .map(
            (s) =>
              `${s.step} ${trade(s.do)}, ${words.heatsSheet.times(s.count)} ${words.heatsSheet.to(say.temperature(s.hottest))}`,
          )
          .join('; ')}`}
      >
        <Glow id={id} glow={glow} top={y(HOTTEST + KELVIN)} foot={y(KELVIN)} />
        <rect
          x={LEFT - 12}
          y={y(HOTTEST + KELVIN)}
          width="12"
          height={y(GLOW_FROM + KELVIN) - y(HOTTEST + KELVIN)}
          fill={`url(#${id})`}
        />
        <path className="soft-line" d={`M${LEFT - 6} ${y(GLOW_FROM + KELVIN)}V${y(KELVIN)}`} />
        {ticks.map((celsius) => (
          <g key={celsius} className="tick">
            <path className="hair-line" d={`M${LEFT + 12} ${y(celsius + KELVIN)}H${room}`} />
            <text x={LEFT - 20} y={y(celsius + KELVIN) + 5} textAnchor="end">
              {degrees(celsius, inch)}
            </text>
          </g>
        ))}
        <text x={LEFT - 20} y={TOP - 8} textAnchor="end" className="soft">
          {inch ? '°F' : '°C'}
        </text>
        {marks.map(({ K, text }) => (
          <g key={text}>
            <path className="mark-line" d={`M${LEFT + 12} ${y(K)}H${room}`} />
            <text className="soft haloed" x={room} y={y(K) - 6} textAnchor="end">
              {text}
            </text>
          </g>
        ))}
        {bar.steps.map((step) => (
          <g key={step.step}>
            {step.warmings.map((warming, i) => (
              <g key={i}>
                <path className="heat-line" d={path(warming.points) ?? ''} stroke={`url(#${id})`} />
                {warming.cold && warming.from > 0 && (
                  <path
                    className="soft-line"
                    d={`M${x(warming.from) - 12} ${y(KELVIN) + 5}l4 -10m0 10l4 -10`}
                  />
                )}
                {warming.cutAt !== undefined && (
                  <g transform={`translate(${x(warming.cutAt)} ${y(warming.heat.temperature)})`}>
                    <path className="gap-line" d="M0 5l4 -10" />
                    <path className="soft-line" d="M-4 5l4 -10m4 10l4 -10" />
                    <text className="soft haloed" y="-10" textAnchor="middle">
                      {words.heatsSheet.hours(
                        (warming.heat.soak / 3600).toFixed(warming.heat.soak % 3600 === 0 ? 0 : 1),
                      )}
                    </text>
                  </g>
                )}
              </g>
            ))}
          </g>
        ))}
        <StepLabels steps={bar.steps} x={x} top={TOP + tall + 12} room={room} />
        <g className="time" transform={`translate(${LEFT + 16} ${height - 6})`}>
          <path className="soft-line" d={`M0.5 -4V4M0.5 0H${x(minutes * 60) - x(0)}m0 -4v8`} />
          <text className="soft" x={x(minutes * 60) - x(0) + 8} y="5">
            {words.heatsSheet.minutes(minutes)}
          </text>
        </g>
      </svg>
    </figure>
  )
}

/** Bold number and verb over the heats, where there is room for them. */
function StepLabels({
  steps,
  x,
  top,
  room,
}: {
  readonly steps: readonly StepSpan[]
  readonly x: (seconds: number) => number
  readonly top: number
  readonly room: number
}) {
  const words = useWords()
  const say = useSay()
  const trade = useTradeWord()
  const nameOf = (step: StepSpan) => `${step.step} ${trade(step.do)}`
  const heatsOf = (step: StepSpan) =>
    `${words.heatsSheet.times(step.count)}, ${say.temperature(step.hottest)}`
  const wide = (text: string) => text.length * DIGIT
  return groupSteps(steps, (step) => x(step.from), room, wide).map((mark) => {
    const [first, ...more] = mark.steps
    const alone = more.length === 0
    return (
      <g key={mark.number} className="step-label">
        <title>{mark.steps.map((s) => `${nameOf(s)}: ${heatsOf(s)}`).join('; ')}</title>
        {mark.steps.map((s) => (
          <path key={s.step} className="ink-line" d={`M${x(s.from)} ${top}H${x(s.to) - 2}`} />
        ))}
        <text x={mark.from} y={top + 17} className="strong">
          {(alone && fitted(nameOf(first!), mark.free)) || mark.number}
        </text>
        {alone && (
          <text x={mark.from} y={top + 36} className="soft">
            {fitted(heatsOf(first!), mark.free) ??
              fitted(words.heatsSheet.times(first!.count), mark.free)}
          </text>
        )}
      </g>
    )
  })
}

/** Mean width of a letter, and of a bold figure, at 14 px. */
const LETTER = 6.6
const DIGIT = 7.8

function fitted(text: string, room: number): string | undefined {
  return text.length * LETTER <= room ? text : undefined
}

function degrees(celsius: number, inch: boolean): string {
  return String(inch ? Math.round((celsius * 9) / 5 + 32) : celsius)
}

function niceMinutes(longest: number): number {
  return [5, 10, 15, 30, 60, 120].findLast((m) => m * 60 <= longest / 8) ?? 5
}

/** Lines worth naming: where carbon moves, and the heats of the treatments. */
function marksOf(
  bar: BarLine,
  words: ReturnType<typeof useWords>['heatsSheet'],
  temperature: (K: number) => string,
): { readonly K: number; readonly text: string }[] {
  const hottestOf = (purpose: string) =>
    Math.max(...bar.steps.filter((s) => s.purpose === purpose).map((s) => s.hottest))
  const marks = [{ K: CARBON_MOVES, text: words.carbonMoves(temperature(CARBON_MOVES)) }]
  const named = [
    ['weld', words.weldAt],
    ['harden', words.hardenAt],
  ] as const
  for (const [purpose, say] of named) {
    const K = hottestOf(purpose)
    if (K > 0) marks.push({ K, text: say(temperature(K)) })
  }
  return marks
}

/** The colours of glowing steel from the foot of the plot to its top. */
function Glow({
  id,
  glow,
  top,
  foot,
}: {
  readonly id: string
  readonly glow: Declarations['glow']
  readonly top: number
  readonly foot: number
}) {
  const share = (celsius: number) => celsius / HOTTEST
  return (
    <defs>
      <linearGradient id={id} gradientUnits="userSpaceOnUse" x1="0" x2="0" y1={foot} y2={top}>
        <stop offset={share(GLOW_FROM) - 0.001} className="no-glow" />
        {glow
          .filter((_, i) => i % 5 === 0)
          .map((colour, i) => (
            <stop key={i} offset={share(GLOW_FROM + 50 * i)} stopColor={colour} />
          ))}
      </linearGradient>
    </defs>
  )
}

function tableOf(
  heats: readonly HeatRecord[],
  columns: ReturnType<typeof useWords>['heatsSheet']['columns'],
  trade: (word: string) => string,
  { unit, degrees }: ReturnType<typeof degreesIn>,
): PlotTable {
  return {
    name: 'temperature',
    columns: [
      columns.bar,
      columns.step,
      columns.purpose,
      columns.times,
      columns.time,
      `${columns.skin}, ${unit}`,
      `${columns.core}, ${unit}`,
      `${columns.mean}, ${unit}`,
    ],
    rows: heats.flatMap((heat) =>
      heat.history.map(({ time, skin, core, mean }) => [
        heat.bar,
        `${heat.step} ${trade(heat.do)}`,
        trade(heat.purpose),
        heat.times,
        Number(time.toFixed(1)),
        degrees(skin),
        degrees(core),
        degrees(mean),
      ]),
    ),
  }
}
