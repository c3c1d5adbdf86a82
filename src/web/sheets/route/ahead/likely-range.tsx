import { type Asking, type Foreseen, type Written, secondEngine, useDesk, useWords } from '#desk'
import { Faults } from '../../../form/faults.tsx'
import { Measure } from '../../../form/measure.tsx'
import { numberIn } from '../../../form/number-in.ts'
import { useSay } from '../../../form/say.ts'
import type { CardRow } from '../card-rows.ts'
import { Shortfall } from './shortfall.tsx'
import { useAnswer } from './use-answer.ts'
import { Working, count } from './working.tsx'
import './ahead.css'

const foresee = (job: Written, asking: Asking) =>
  secondEngine().ask({ ask: 'foresee', job }, asking)

/** How the piece is likely to turn out: a bar for each figure, on one scale of shares of what is planned. */
export function LikelyRange({ rows }: { readonly rows: readonly CardRow[] }) {
  const { ahead } = useWords()
  const at = useAnswer('foresee', foresee)
  const { answer, isOld } = at
  return (
    <div className={isOld ? 'ahead old' : 'ahead'} aria-busy={at.progress !== undefined}>
      <Working at={at} title={ahead.range} doing={ahead.making} />
      {answer?.range && (
        <>
          <Bands foreseen={answer} />
          <Shortfall range={answer.range} rows={rows} isOld={isOld} />
          <p className="note soft">
            {ahead.how(count(answer.range.draws))}{' '}
            {answer.hardness.length > 0 && ahead.hardnessNote}
          </p>
        </>
      )}
      {answer && !isOld && <Faults problems={answer.problems} placed />}
    </div>
  )
}

interface Bar {
  readonly what: string
  readonly planned: number
  readonly low: number
  readonly middle: number
  readonly high: number
  readonly say: (value: number) => string
}

function Bands({ foreseen }: { readonly foreseen: Foreseen }) {
  const { ahead } = useWords()
  const say = useSay()
  const language = useDesk((desk) => desk.language)
  const bars = barsOf(foreseen, ahead, say)
  const reach = reachOf(bars)
  const percent = numberIn(language, {
    style: 'percent',
    signDisplay: 'exceptZero',
    maximumFractionDigits: 1,
  })
  const left = (share: number) => `${50 + (50 * share) / reach}%`
  return (
    <table className="bands">
      <tbody>
        {bars.map((bar) => {
          const [low, middle, high] = [bar.low, bar.middle, bar.high].map(
            (value) => value / bar.planned - 1,
          )
          return (
            <tr key={bar.what}>
              <th scope="row">{bar.what}</th>
              <td className="across" aria-hidden="true">
                <div className="drawn">
                  <i
                    className="bar"
                    style={{ left: left(low), width: `${(50 * (high - low)) / reach}%` }}
                  />
                  <i className="middle" style={{ left: left(middle) }} />
                </div>
              </td>
              <td className="figure">
                <span aria-hidden="true">
                  <Measure text={span(bar.say(bar.low), bar.say(bar.high))} />
                </span>
                <span className="hidden">
                  {ahead.band(bar.say(bar.low), bar.say(bar.high), bar.say(bar.middle))}
                </span>
              </td>
            </tr>
          )
        })}
      </tbody>
      <tfoot aria-hidden="true">
        <tr className="note soft">
          <td />
          <td className="across">
            <div className="axis">
              <span>{percent(-reach).replace('-', '−')}</span>
              <span>{ahead.planned}</span>
              <span>{percent(reach)}</span>
            </div>
          </td>
          <td />
        </tr>
      </tfoot>
    </table>
  )
}

function barsOf(
  { range, planned, hardness }: Foreseen,
  ahead: ReturnType<typeof useWords>['ahead'],
  say: ReturnType<typeof useSay>,
): Bar[] {
  if (!range || !planned) return []
  const named = [
    { what: ahead.mass, band: range.mass, planned: planned.mass, say: say.mass },
    { what: ahead.length, band: range.length, planned: planned.length, say: say.length },
    { what: ahead.lines, band: range.lines, planned: planned.lines, say: say.lines },
    {
      what: ahead.heats,
      band: range.heats,
      planned: planned.heats,
      say: (n: number) => String(Math.round(n)),
    },
  ]
  return [
    ...named.flatMap(({ band, planned, ...rest }) =>
      band && planned ? [{ ...rest, planned, ...band }] : [],
    ),
    ...hardness.map(({ steel, value, low, high }) => ({
      what: ahead.hardness(steel),
      planned: value,
      low,
      middle: value,
      high,
      say: (hrc: number) => hrc.toFixed(0),
    })),
  ]
}

const REACHES = [0.01, 0.02, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5]

/** The least round share to which every bar fits. */
function reachOf(bars: readonly Bar[]): number {
  const most = Math.max(
    ...bars.flatMap(({ low, high, planned }) =>
      [low, high].map((end) => Math.abs(end / planned - 1)),
    ),
  )
  return REACHES.find((reach) => reach >= most) ?? Math.max(most, 1)
}

/** `502–515 g`: the unit once, and one figure where both ends read alike. */
function span(low: string, high: string): string {
  if (low === high) return low
  const unit = / \D+$/.exec(high)?.[0] ?? ''
  return low.endsWith(unit) ? `${low.slice(0, low.length - unit.length)}–${high}` : `${low}–${high}`
}
