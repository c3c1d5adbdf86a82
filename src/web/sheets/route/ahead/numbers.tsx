import { useRef, useState } from 'react'
import {
  type Asking,
  type Weighed,
  type Written,
  secondEngine,
  useDesk,
  useTradeWord,
  useWords,
} from '#desk'
import { Faults } from '../../../form/faults.tsx'
import type { Express } from '../../../form/express.ts'
import { Measure } from '../../../form/measure.tsx'
import { numberIn } from '../../../form/number-in.ts'
import { useExpress } from '../../../form/say.ts'
import type { CardRow } from '../card-rows.ts'
import { type Watched, moveOf, useSayWatched, watched } from './moves.ts'
import { useStepAt } from './step-names.ts'
import { TryNumber } from './try-number.tsx'
import { useAnswer } from './use-answer.ts'
import { Working } from './working.tsx'
import './ahead.css'

const weigh = (job: Written, asking: Asking) =>
  secondEngine().ask({ ask: 'weigh numbers', job }, asking)

type Moved = Weighed['numbers'][number]

/** Shown before all are asked for. */
const FIRST = 7

/** Which numbers of the route matter most, for what is chosen: two bars a number, and a value to try. */
export function Numbers({ rows }: { readonly rows: readonly CardRow[] }) {
  const { ahead } = useWords()
  const at = useAnswer('weigh numbers', weigh)
  const { answer, isOld } = at
  const [what, setWhat] = useState<Watched>('steel')
  const [all, setAll] = useState(false)
  const [tried, setTried] = useState<string>()
  /** Where the focus goes back to. */
  const lever = useRef<HTMLElement>(undefined)
  const now = answer?.now
  const moving = now
    ? watched.filter((one) => answer.numbers.some((number) => weightOf(number, now, one) > 0))
    : []
  const chosen = moving.includes(what) ? what : moving[0]
  const ranked = now && chosen ? rank(answer.numbers, now, chosen) : []
  const shown = all ? ranked : ranked.slice(0, FIRST)
  const reach = Math.max(
    ...ranked.flatMap(({ less, more }) =>
      [less, more].map((side) => (side && now && chosen ? Math.abs(moveOf(now, side, chosen)) : 0)),
    ),
    Number.MIN_VALUE,
  )
  return (
    <div className={isOld ? 'ahead old' : 'ahead'} aria-busy={at.progress !== undefined}>
      <Working at={at} title={ahead.numbers} doing={ahead.moving} />
      {now && chosen && (
        <>
          <p className="note soft">{ahead.numbersHow}</p>
          <div className="watched" role="group" aria-label={ahead.moves}>
            {moving.map((one) => (
              <button
                key={one}
                type="button"
                className="word note"
                aria-pressed={one === chosen}
                onClick={() => setWhat(one)}
              >
                <span>{ahead.of[one]}</span>
              </button>
            ))}
            <span className="note soft key" aria-hidden="true">
              <i className="more" /> {ahead.more} <i className="less" /> {ahead.less}
            </span>
          </div>
          <ul className="levers">
            {shown.map((number) => {
              const place = `${number.at}.${number.name}`
              return (
                <li key={place}>
                  <Lever
                    number={number}
                    now={now}
                    what={chosen}
                    reach={reach}
                    rows={rows}
                    isOpen={tried === place}
                    press={(button) => {
                      lever.current = button
                      setTried(tried === place ? undefined : place)
                    }}
                  />
                  {tried === place && (
                    <TryNumber
                      number={number}
                      close={() => {
                        setTried(undefined)
                        lever.current?.focus()
                      }}
                    />
                  )}
                </li>
              )
            })}
          </ul>
          {ranked.length > FIRST && (
            <button type="button" className="word note" onClick={() => setAll(!all)}>
              {all ? ahead.fewer : ahead.all(ranked.length)}
            </button>
          )}
        </>
      )}
      {answer && now && !chosen && <p className="note soft">{ahead.nothing}</p>}
      {answer && !isOld && <Faults problems={answer.problems} placed />}
    </div>
  )
}

type Now = NonNullable<Weighed['now']>

/** The greater of both moves; what cannot be done at all outweighs anything where steel is asked for. */
function weightOf({ less, more }: Moved, now: Now, what: Watched): number {
  if (what === 'steel' && (!less || !more)) return Infinity
  return Math.max(...[less, more].map((side) => (side ? Math.abs(moveOf(now, side, what)) : 0)))
}

function rank(numbers: readonly Moved[], now: Now, what: Watched): readonly Moved[] {
  const reach = ({ less, more }: Moved) =>
    Math.max(...[less, more].map((side) => (side ? Math.abs(moveOf(now, side, what)) : 0)))
  return numbers
    .filter((number) => weightOf(number, now, what) > 0)
    .toSorted((a, b) => {
      const [x, y] = [weightOf(a, now, what), weightOf(b, now, what)]
      return x === y ? reach(b) - reach(a) : y - x
    })
}

interface LeverProps {
  readonly number: Moved
  readonly now: Now
  readonly what: Watched
  /** The greatest move of all. */
  readonly reach: number
  readonly rows: readonly CardRow[]
  readonly isOpen: boolean
  readonly press: (button: HTMLElement) => void
}

function Lever({ number, now, what, reach, rows, isOpen, press }: LeverProps) {
  const { ahead } = useWords()
  const trade = useTradeWord()
  const stepAt = useStepAt(rows)
  const size = useExpress()
  const language = useDesk((desk) => desk.language)
  const share = numberIn(language, { style: 'percent', maximumFractionDigits: 1 })
  const said = useSayWatched()
  const step = stepAt(number.at)
  const sides = (['more', 'less'] as const).map((side) => {
    const outcome = number[side]
    const by = outcome && moveOf(now, outcome, what)
    return { side, by, words: by === undefined ? ahead.cannot : said.move(what, by, now) }
  })
  return (
    <button
      type="button"
      className="lever"
      aria-expanded={isOpen}
      onClick={(event) => press(event.currentTarget)}
    >
      <span className="whose">
        <b>
          {step ? `${step.number} ${step.name}` : number.at}, {trade(number.name)}
        </b>
        <span className="note soft">
          <Measure
            text={ahead.offBy(size.solved(number.value, number.of), offWords(number, size, share))}
          />
        </span>
      </span>
      <span className="drawn" aria-hidden="true">
        {sides.map(({ side, by }) =>
          by === undefined ? (
            <i key={side} className={`${side} cannot`} />
          ) : (
            <i
              key={side}
              className={side}
              style={{
                left: `${50 + (50 * Math.min(0, by)) / reach}%`,
                width: `${(50 * Math.abs(by)) / reach}%`,
              }}
            />
          ),
        )}
      </span>
      <span className="figure">
        {sides.map(({ side, by, words }) => (
          <span key={side} className={by === undefined ? 'cannot' : by === 0 ? 'soft' : undefined}>
            <span className="hidden">{ahead[side]}: </span>
            {words}
          </span>
        ))}
      </span>
    </button>
  )
}

/** How far a number is moved: as a length where it is one and the shop says so, else as a share. */
function offWords(
  { of, off, value, isLikely }: Moved,
  size: Express,
  share: (value: number) => string,
): string {
  if (isLikely && (of === 'length' || of === 'ratio')) return size.solved(off, of)
  return share(off / Math.abs(value))
}
