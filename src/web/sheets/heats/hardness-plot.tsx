import { scaleLinear } from 'd3-scale'
import { area, curveMonotoneX, line } from 'd3-shape'
import { useDesk, useWords } from '#desk'
import type { Treated } from '#job'
import { nameIn } from '#words'
import { usePlotRoom } from '../../drawing/use-room.ts'
import { useSay } from '../../form/say.ts'
import { PlotData } from './plot-data.tsx'
import { degreesIn } from './plot-table.ts'
import { roundHeats } from './round-heats.ts'
import { spreadLabels } from './spread.ts'

const TOP = 24
const TALL = TOP + 176
const LEFT = 33
const FOOT = 28

interface Curve {
  readonly steel: string
  readonly name: string
  readonly points: readonly {
    readonly K: number
    readonly value: number
    readonly range: readonly [number, number]
  }[]
}

/** Hardness of each steel over the heat it is tempered at, and where the job tempers. */
export function HardnessPlot({ treated }: { readonly treated: Treated }) {
  const words = useWords()
  const { columns } = words.heatsSheet
  const say = useSay()
  const [place, room] = usePlotRoom<HTMLDivElement>()
  const language = useDesk((desk) => desk.language)
  const { unit, degrees } = degreesIn(say)
  const curves = curvesOf(treated, (steel) => nameIn(language, steel))
  const temper = treated.hardening?.tempers.at(-1)
  const all = curves.flatMap((c) => c.points.flatMap((p) => p.range))
  const [low, high] = [Math.floor(Math.min(...all) / 5) * 5, Math.ceil(Math.max(...all) / 5) * 5]
  const heats = curves.flatMap((c) => c.points.map((p) => p.K))
  const right = Math.max(...curves.map((c) => c.name.length)) * 7.4 + 12
  const x = scaleLinear(
    [Math.min(...heats), Math.max(...heats)],
    [LEFT + 8, Math.max(room - right, LEFT + 60)],
  )
  const y = scaleLinear([low, high], [TALL, TOP])
  const inch = say.units === 'inch'
  const ends = curves.map((c) => y(c.points.at(-1)!.value))
  const labels = spreadLabels(ends, 18, TOP, TALL + 4)
  return (
    <section className="hardness" aria-labelledby="heats-hardness">
      <div className="plot-head">
        <h3 id="heats-hardness">{words.heatsSheet.hardness}</h3>
        <span className="note soft">{curves.length > 0 && words.heatsSheet.hardnessNote}</span>
      </div>
      <div ref={place}>
        {curves.length === 0 && <p className="note soft">{words.heatsSheet.soft}</p>}
        {room > 0 && curves.length > 0 && (
          <svg
            width={room}
            height={TALL + FOOT}
            role="img"
            aria-label={curves
              .map(
                (c) =>
                  `${c.name}: ${c.points.map((p) => `${say.temperature(p.K)} ${p.value.toFixed(0)}`).join(', ')}`,
              )
              .join('; ')}
          >
            <text className="soft" x={LEFT - 8} y={TOP - 11} textAnchor="end">
              HRC
            </text>
            {y.ticks(5).map((hrc) => (
              <g key={hrc} className="tick">
                <path className="hair-line" d={`M${LEFT} ${y(hrc)}H${room - right + 6}`} />
                <text x={LEFT - 8} y={y(hrc) + 5} textAnchor="end">
                  {hrc}
                </text>
              </g>
            ))}
            {roundHeats(x.domain() as [number, number], inch ? 200 : 100, inch).map(
              ({ K, degrees }) => (
                <text key={K} className="soft" x={x(K)} y={TALL + 22} textAnchor="middle">
                  {degrees}
                </text>
              ),
            )}
            <text className="soft" x={room - right + 12} y={TALL + 22}>
              {unit}
            </text>
            {curves.map((c) => (
              <path
                key={c.name}
                className="spread-area"
                d={
                  area<Curve['points'][number]>(
                    (p) => x(p.K),
                    (p) => y(p.range[0]),
                    (p) => y(p.range[1]),
                  ).curve(curveMonotoneX)([...c.points]) ?? ''
                }
              />
            ))}
            {curves.map((c, i) => (
              <g key={c.name}>
                <path
                  className={`curve dash-${i % 4}`}
                  d={
                    line<Curve['points'][number]>(
                      (p) => x(p.K),
                      (p) => y(p.value),
                    ).curve(curveMonotoneX)([...c.points]) ?? ''
                  }
                />
                <path
                  className="soft-line"
                  d={`M${x(c.points.at(-1)!.K) + 2} ${ends[i]}L${room - right + 8} ${labels[i]}`}
                />
                <text x={room - right + 12} y={labels[i]! + 5} className="strong">
                  {c.name}
                </text>
              </g>
            ))}
            {temper && (
              <TemperMark
                K={temper.temperature}
                curves={curves}
                x={x}
                y={y}
                say={say.temperature}
              />
            )}
          </svg>
        )}
      </div>
      {treated.steels.some((s) => s.tempered) && <Figures treated={treated} />}
      {curves.length > 0 && (
        <PlotData
          caption={words.heatsSheet.hardness}
          table={{
            name: 'hardness',
            columns: [
              columns.steel,
              `${columns.temper}, ${unit}`,
              `${columns.likely}, HRC`,
              `${columns.low}, HRC`,
              `${columns.high}, HRC`,
            ],
            rows: curves.flatMap((c) =>
              c.points.map((p) => [
                c.name,
                degrees(p.K),
                ...[p.value, ...p.range].map((v) => Number(v.toFixed(1))),
              ]),
            ),
          }}
        />
      )}
    </section>
  )
}

/** The job's own temper: a dotted line with the hardness of each steel on it. */
function TemperMark({
  K,
  curves,
  x,
  y,
  say,
}: {
  readonly K: number
  readonly curves: readonly Curve[]
  readonly x: (K: number) => number
  readonly y: (hrc: number) => number
  readonly say: (K: number) => string
}) {
  const words = useWords()
  const at = curves.map((c) => valueAt(c, K))
  const labels = spreadLabels(
    at.map((v) => y(v)),
    17,
    TOP + 4,
    TALL - 22,
  )
  return (
    <g className="temper-mark">
      <path d={`M${x(K)} ${TOP}V${TALL}`} />
      <text className="soft haloed" x={x(K) + 8} y={TALL - 6}>
        {words.heatsSheet.temperAt(say(K))}
      </text>
      {at.map((value, i) => (
        <g key={curves[i]!.name}>
          <circle cx={x(K)} cy={y(value)} r="3.5" />
          <text className="strong haloed" x={x(K) + 9} y={labels[i]! - 4}>
            {value.toFixed(0)}
          </text>
        </g>
      ))}
    </g>
  )
}

function valueAt({ points }: Curve, K: number): number {
  const next = points.findIndex((p) => p.K >= K)
  if (next <= 0) return points[next === 0 ? 0 : points.length - 1]!.value
  const [a, b] = [points[next - 1]!, points[next]!]
  return a.value + ((b.value - a.value) * (K - a.K)) / (b.K - a.K)
}

/** A curve a steel; the same steel of several bars is one where it reads alike. */
function curvesOf({ temperChart }: Treated, nameOf: (steel: string) => string): Curve[] {
  const found = new Map<string, Curve>()
  const names = temperChart[0]?.steels ?? []
  const several = (steel: string) => names.filter((n) => n.steel === steel).length > 1
  names.forEach(({ steel, bar }, i) => {
    const points = temperChart.flatMap(({ temperature, steels }) => {
      const hardness = steels[i]?.hardness
      return hardness ? [{ K: temperature, value: hardness.value, range: hardness.range }] : []
    })
    if (points.length < 2) return
    const alike = [...found.values()].find(
      (c) =>
        c.steel === steel &&
        c.points.length === points.length &&
        c.points.every((p, k) => Math.abs(p.value - points[k]!.value) < 0.5),
    )
    const name = several(steel) ? `${nameOf(steel)}, ${bar}` : nameOf(steel)
    if (!alike) found.set(`${steel} ${bar}`, { steel, name, points })
  })
  return [...found.values()]
}

/** What each steel comes to, as quenched and tempered. */
function Figures({ treated }: { readonly treated: Treated }) {
  const words = useWords()
  const language = useDesk((desk) => desk.language)
  return (
    <table className="note hardness-figures">
      <thead>
        <tr>
          <th scope="col">HRC</th>
          <th scope="col">{words.heatsSheet.quenched}</th>
          <th scope="col">{words.heatsSheet.tempered}</th>
        </tr>
      </thead>
      <tbody>
        {treated.steels
          .filter((s) => s.asQuenched && s.tempered)
          .map((s) => (
            <tr key={`${s.bar} ${s.steel}`}>
              <th scope="row">{words.heatsSheet.hardSteel(nameIn(language, s.steel), s.bar)}</th>
              <td>{span(s.asQuenched!.range)}</td>
              <td>{span(s.tempered!.range)}</td>
            </tr>
          ))}
      </tbody>
    </table>
  )
}

function span([low, high]: readonly [number, number]): string {
  const [a, b] = [low.toFixed(0), high.toFixed(0)]
  return a === b ? a : `${a}–${b}`
}
