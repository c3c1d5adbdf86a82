import { scaleLinear } from 'd3-scale'
import { useDesk, useWords } from '#desk'
import type { Treated } from '#job'
import { type Language, nameIn } from '#words'
import { usePlotRoom } from '../../drawing/use-room.ts'
import { useSay } from '../../form/say.ts'
import { PlotData } from './plot-data.tsx'
import { degreesIn } from './plot-table.ts'
import { roundHeats } from './round-heats.ts'

const ROW = 40
const LEFT = 118
const FOOT = 64

/** Which heats harden each steel, and which harden all. */
export function WindowPlot({ treated }: { readonly treated: Treated }) {
  const words = useWords()
  const { columns } = words.heatsSheet
  const say = useSay()
  const [place, room] = usePlotRoom<HTMLDivElement>()
  const glow = useDesk((desk) => desk.declared?.glow) ?? []
  const language = useDesk((desk) => desk.language)
  const { unit, degrees } = degreesIn(say)
  const { window } = treated
  const each = window ? [...new Map(window.each.map((e) => [keyOf(e), e])).values()] : []
  return (
    <section className="window" aria-labelledby="heats-window">
      <div className="plot-head">
        <h3 id="heats-window">{words.heatsSheet.window}</h3>
        <span className="note soft">{window && words.heatsSheet.windowNote}</span>
      </div>
      <div ref={place}>
        {!window && <p className="note soft">{words.heatsSheet.noWindow}</p>}
        {window && room > 0 && (
          <Bars
            room={room}
            rows={[
              ...each.map((e) => ({ ...e, name: nameOf(e, each, language) })),
              ...(window.suitsAll ? [{ ...window, name: words.heatsSheet.all, all: true }] : []),
            ]}
            stated={window.stated}
            glow={glow}
          />
        )}
        {window && !window.suitsAll && <p className="wrong">{words.heatsSheet.noShared}</p>}
      </div>
      {window && (
        <PlotData
          caption={words.heatsSheet.window}
          table={{
            name: 'hardening-window',
            columns: [
              columns.steel,
              columns.bar,
              columns.carbon,
              `${columns.low}, ${unit}`,
              `${columns.high}, ${unit}`,
            ],
            rows: window.each.map((e) => [
              nameIn(language, e.steel),
              e.bar,
              Number(e.carbon.toFixed(3)),
              degrees(e.low),
              degrees(e.high),
            ]),
          }}
        />
      )}
    </section>
  )
}

/** Steels whose windows agree to a kelvin are drawn once. */
function keyOf(e: { steel: string; low: number; high: number }): string {
  return `${e.steel} ${Math.round(e.low / 3)} ${Math.round(e.high / 3)}`
}

function nameOf({ steel, bar }: Each, all: readonly Each[], language: Language): string {
  const name = nameIn(language, steel)
  return all.filter((other) => other.steel === steel).length > 1 ? `${name}, ${bar}` : name
}

type Each = NonNullable<Treated['window']>['each'][number]

interface BarsProps {
  readonly room: number
  readonly rows: readonly {
    readonly name: string
    readonly low: number
    readonly high: number
    readonly all?: boolean
  }[]
  readonly stated: number | undefined
  readonly glow: readonly string[]
}

function Bars({ room, rows, stated, glow }: BarsProps) {
  const words = useWords()
  const say = useSay()
  const ends = [...rows.flatMap((r) => [r.low, r.high]), ...(stated === undefined ? [] : [stated])]
  const [low, high] = [Math.min(...ends) - 15, Math.max(...ends) + 15]
  const x = scaleLinear([low, high], [LEFT, room - 108])
  const foot = rows.length * ROW + 6
  const { unit, degrees } = degreesIn(say)
  const inch = say.units === 'inch'
  // So far apart that no figure touches the next, nor lies under the line of the stated heat.
  const every =
    [20, 25, 50, 100, 200].find(
      (step) => roundHeats([low, high], step, inch).length * 44 < x.range()[1]! - LEFT,
    ) ?? 200
  const ticks = roundHeats([low, high], every, inch).filter(
    ({ K }) =>
      stated === undefined || Math.abs(x(K) - x(stated)) > 18 || Math.abs(K - stated) < 0.5,
  )
  const colour = (K: number) =>
    glow[Math.min(glow.length - 1, Math.max(0, Math.round((K - 773.15) / 10)))] ?? 'currentColor'
  return (
    <svg
      width={room}
      height={foot + FOOT}
      role="img"
      aria-label={rows
        .map((r) => `${r.name} ${say.temperature(r.low)} – ${say.temperature(r.high)}`)
        .join('; ')}
    >
      {rows.map((row, i) => {
        const top = i * ROW + 8
        return (
          <g key={`${row.name} ${i}`}>
            <text x="0" y={top + 17} className={row.all ? 'strong' : ''}>
              {row.name}
            </text>
            <rect
              className={row.all ? 'shared' : 'own'}
              x={x(row.low)}
              y={top}
              width={Math.max(1, x(row.high) - x(row.low))}
              height="22"
              fill={row.all ? colour((row.low + row.high) / 2) : undefined}
            />
            <text x={x(row.high) + 9} y={top + 16} className={row.all ? 'strong haloed' : 'haloed'}>
              {words.heatsSheet.span(`${degrees(row.low)}`, say.temperature(row.high))}
            </text>
          </g>
        )
      })}
      <path className="ink-line" d={`M${LEFT} ${foot}H${room - 108}`} />
      {ticks.map(({ K, degrees }) => (
        <g key={degrees}>
          <path className="ink-line" d={`M${x(K)} ${foot}v4`} />
          <text className="soft" x={x(K)} y={foot + 19} textAnchor="middle">
            {degrees}
          </text>
        </g>
      ))}
      <text className="soft" x={room - 108 + 12} y={foot + 19}>
        {unit}
      </text>
      {stated !== undefined && (
        <>
          <path className="stated" d={`M${x(stated)} 0V${foot + 6}`} />
          <text
            className="strong"
            x={x(stated)}
            y={foot + 42}
            textAnchor={anchorOf(x(stated), room)}
          >
            {words.heatsSheet.stated(say.temperature(stated))}
          </text>
        </>
      )}
    </svg>
  )
}

function anchorOf(at: number, room: number): 'start' | 'middle' | 'end' {
  return at > room - 90 ? 'end' : at < LEFT + 60 ? 'start' : 'middle'
}
