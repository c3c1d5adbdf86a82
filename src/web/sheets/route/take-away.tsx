import { lazy } from 'react'
import { useDesk, useWords } from '#desk'
import { CautionMark } from '../../form/faults.tsx'
import { Measure } from '../../form/measure.tsx'
import { nameIn } from '#words'
import { numberIn } from '../../form/number-in.ts'
import { useSay } from '../../form/say.ts'
import { Told } from '../../form/told.tsx'
import { FacePicture } from '../../drawing/face-picture.tsx'
import { printWhole } from '../../drawing/print-whole.ts'
import { SteelSwatch } from '../../drawing/steel-swatch.tsx'
import type { CardRow } from './card-rows.ts'
import { Folded } from './folded.tsx'
import { RackList } from './rack-list.tsx'

const LikelyRange = lazy(async () => ({
  default: (await import('./ahead/likely-range.tsx')).LikelyRange,
}))
const OtherWays = lazy(async () => ({ default: (await import('./ways/other-ways.tsx')).OtherWays }))
const Numbers = lazy(async () => ({ default: (await import('./ahead/numbers.tsx')).Numbers }))

/** What one carries away from the card: three figures, the steels, what to take off the rack, cautions. */
export function TakeAway({ rows }: { readonly rows: readonly CardRow[] }) {
  const words = useWords()
  const say = useSay()
  const language = useDesk((desk) => desk.language)
  const worked = useDesk((desk) => desk.worked)
  const sound = useDesk((desk) => desk.sound)
  const units = useDesk((desk) => desk.units)
  const shown = worked?.sound ? worked : sound
  const percent = numberIn(language, { style: 'percent', maximumFractionDigits: 1 })
  const { totals, lines } = shown ?? {}
  return (
    <aside className="column take" aria-label={words.take.title}>
      <header className="head">
        <h2 className="title">{words.take.title}</h2>
        <button type="button" className="word note" onClick={() => void printWhole()}>
          {words.take.print}
        </button>
      </header>
      {totals && <FacePicture label={words.take.face} />}
      {shown !== worked && shown && <p className="note soft">{words.stale}</p>}
      {totals ? (
        <div className="figures">
          {lines && (
            <p>
              <span className="takeaway">{say.lines(lines.perMetre).split(' ')[0]}</span>
              <span className="note soft">
                {units === 'metric' ? words.take.perMm : words.take.perInch},{' '}
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
      ) : (
        <p className="empty soft">{words.take.none}</p>
      )}
      <RackList rows={rows} />
      {totals && (
        <section>
          <h3>{words.take.steels}</h3>
          <ul className="plain">
            {totals.shares.map(([steel, share]) => (
              <li key={steel}>
                <SteelSwatch steel={steel} />
                <span>{nameIn(language, steel)}</span>
                <span className="note soft" />
                <span>{percent(share)}</span>
              </li>
            ))}
          </ul>
        </section>
      )}
      {rows.length > 0 && (
        <>
          <Folded name="range" title={words.ahead.range}>
            {() => <LikelyRange rows={rows} />}
          </Folded>
          <Folded name="numbers" title={words.ahead.numbers}>
            {() => <Numbers rows={rows} />}
          </Folded>
          <Folded name="ways" title={words.ways.title}>
            {() => <OtherWays />}
          </Folded>
        </>
      )}
      <Cautions rows={rows} />
      {shown && (
        <p className="note soft defer">
          <Told text={shown.cautionsDefer} />
        </p>
      )}
    </aside>
  )
}

/** Each caution once, with the steps it stands on. */
function Cautions({ rows }: { readonly rows: readonly CardRow[] }) {
  const words = useWords()
  const found = new Map<string, { danger: string; care: string; steps: number[] }>()
  for (const { row, number } of rows)
    for (const { name, danger, care } of row?.cautions ?? []) {
      const known = found.get(name) ?? { danger, care, steps: [] }
      found.set(name, { ...known, steps: [...known.steps, number] })
    }
  if (found.size === 0) return null
  return (
    <section className="cautions">
      <h3>{words.take.cautions}</h3>
      <dl className="note">
        {[...found].map(([name, { danger, care, steps }]) => (
          <div key={name}>
            <dt>
              <CautionMark /> {ranges(steps)}
            </dt>
            <dd>
              <b>
                <Told text={danger} />
              </b>{' '}
              <Told text={care} />
            </dd>
          </div>
        ))}
      </dl>
    </section>
  )
}

/** `1 to 4, 7`. */
function ranges(numbers: readonly number[]): string {
  const runs: [number, number][] = []
  for (const n of numbers) {
    const last = runs.at(-1)
    if (last && last[1] === n - 1) last[1] = n
    else runs.push([n, n])
  }
  return runs
    .map(([a, b]) => (a === b ? `${a}` : b === a + 1 ? `${a}, ${b}` : `${a}–${b}`))
    .join(', ')
}
