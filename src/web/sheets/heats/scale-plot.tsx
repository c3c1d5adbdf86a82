import { scaleLinear } from 'd3-scale'
import { type Row, useDesk, useTradeWord, useWords } from '#desk'
import type { HeatRecord } from '#job'
import { usePlotRoom } from '../../drawing/use-room.ts'
import { numberIn } from '../../form/number-in.ts'
import { useSay } from '../../form/say.ts'
import { PlotData } from './plot-data.tsx'

const ROW = 22
/** Mean width of a letter at 14 px, px. */
const LETTER = 6.8
const RIGHT = 132

interface Burnt {
  readonly number: number
  readonly row: Row
  readonly mass: number
  readonly heats: number
}

/** What each step burns off: a bar a step, a part a heat. */
export function ScalePlot({ heats }: { readonly heats: readonly HeatRecord[] }) {
  const words = useWords()
  const say = useSay()
  const trade = useTradeWord()
  const language = useDesk((desk) => desk.language)
  const shown = useDesk((desk) => (desk.worked?.sound ? desk.worked : desk.sound))
  const [place, room] = usePlotRoom<HTMLDivElement>()
  const burnt = burntIn(shown?.rows ?? [])
  const whole = burnt.reduce((sum, b) => sum + b.mass, 0)
  const most = Math.max(...burnt.map((b) => b.mass), 1e-9)
  const longest = Math.max(...burnt.map((b) => trade(b.row.title).length), 8)
  const left = Math.min(44 + longest * LETTER, Math.max(room * 0.5, 120))
  // A hair more: the width of fourteen letters must hold fourteen.
  const letters = Math.floor((left - 44) / LETTER + 1e-6)
  const x = scaleLinear([0, most], [0, Math.max(room - left - RIGHT, 24)])
  const percent = numberIn(language, { style: 'percent', maximumFractionDigits: 0 })
  return (
    <section className="scale-plot" aria-labelledby="heats-scale">
      <div className="plot-head">
        <h3 id="heats-scale">{words.heatsSheet.scale}</h3>
        <span className="note soft">{words.heatsSheet.scaleNote}</span>
      </div>
      <div ref={place}>
        {room > 0 && (
          <svg
            width={room}
            height={burnt.length * ROW + 6}
            role="img"
            aria-label={burnt
              .map((b) => `${b.number} ${trade(b.row.title)} ${say.mass(b.mass)}`)
              .join('; ')}
          >
            {burnt.map(({ number, row, mass, heats: n }, i) => (
              <g key={number} transform={`translate(0 ${i * ROW})`}>
                <text x="22" y="16" textAnchor="end" className="strong">
                  {number}
                </text>
                <text x="32" y="16">
                  {cut(trade(row.title), letters)}
                </text>
                {Array.from({ length: n }, (_, k) => (
                  <rect
                    key={k}
                    className="burnt"
                    x={left + (k * x(mass)) / n}
                    y="5"
                    width={Math.max(0.5, x(mass) / n - 1.5)}
                    height="11"
                  />
                ))}
                <text x={room - 62} y="16" textAnchor="end" className="strong">
                  {say.mass(mass)}
                </text>
                <text x={room} y="16" textAnchor="end" className="soft">
                  {words.heatsSheet.times(n)}
                </text>
              </g>
            ))}
          </svg>
        )}
      </div>
      <p className="in-all">
        <b>{words.heatsSheet.scaleInAll(say.mass(whole))}</b>
        {shown?.totals && (
          <span className="note soft">
            {words.heatsSheet.ofRack(percent(whole / shown.totals.stackMass))}
          </span>
        )}
      </p>
      <PlotData
        caption={words.heatsSheet.scale}
        table={{
          name: 'scale',
          columns: [
            words.heatsSheet.columns.bar,
            words.heatsSheet.columns.step,
            words.heatsSheet.columns.times,
            words.heatsSheet.columns.mass,
            words.heatsSheet.columns.model,
            words.heatsSheet.columns.shop,
          ],
          rows: burnt.map(({ number, row, mass, heats: n }) => {
            const own = heats.find((h) => h.step === number && h.bar === row.bar)?.scale
            const mm = (m: number | undefined) =>
              m === undefined ? '' : Number((m * 1000).toFixed(4))
            return [
              row.bar,
              `${number} ${trade(row.title)}`,
              n,
              Number((mass * 1000).toFixed(2)),
              mm(own?.model),
              mm(own?.shop),
            ]
          }),
        }}
      />
    </section>
  )
}

function cut(text: string, letters: number): string {
  return text.length <= letters ? text : `${text.slice(0, Math.max(letters - 1, 1)).trimEnd()}…`
}

function burntIn(rows: readonly Row[]): Burnt[] {
  return rows.flatMap((row, i) => {
    const mass = row.losses.reduce((sum, l) => sum + (l.cause === 'scale' ? l.mass : 0), 0)
    const heats = row.heats.reduce((n, h) => n + (h.purpose === 'temper' ? 0 : h.count), 0)
    return mass > 0 && heats > 0 ? [{ number: i + 1, row, mass, heats }] : []
  })
}
