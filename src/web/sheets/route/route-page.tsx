import { useMemo, useState } from 'react'
import { type StepPlace, useAddress, useDesk, useWords } from '#desk'
import { scaleToFit } from '../../drawing/scale.ts'
import type { problemsAt } from '../../form/fields.tsx'
import { Faults } from '../../form/faults.tsx'
import { SheetHead } from '../../shell/sheet-head.tsx'
import { BarHead } from './bar-head.tsx'
import { type CardRow, cardRows } from './card-rows.ts'
import { Chooser } from './chooser.tsx'
import { layLanes } from './lanes.ts'
import { StepRow } from './step-row.tsx'
import { TakeAway } from './take-away.tsx'
import { CardFoot } from './card-foot.tsx'
import { useDragging } from './dragging.ts'

/** Px of the two columns of drawings. */
const BENCH_ROOM = 212
const SECTION_ROOM = 58

export function RoutePage() {
  const words = useWords()
  const { bar: openBar, step: openStep } = useAddress()
  const job = useDesk((desk) => desk.history?.now)
  const worked = useDesk((desk) => desk.worked)
  const sound = useDesk((desk) => desk.sound)
  const declared = useDesk((desk) => desk.declared)
  const [adding, setAdding] = useState<StepPlace>()
  const shown = worked ?? sound
  const rows = useMemo(() => (job ? cardRows(job, shown, declared) : []), [job, shown, declared])
  const scale = useMemo(() => scaleOfCard(rows), [rows])
  const lanes = useMemo(() => layLanes(rows, rows.at(-1)?.bar ?? ''), [rows])
  const drag = useDragging()
  if (!job) return null
  const several = new Set(rows.map((row) => row.bar)).size > 1
  const problems = worked?.problems ?? []
  const isLast = (row: CardRow, i: number) => rows[i + 1]?.bar !== row.bar
  return (
    <>
      <section className="column card" aria-label={words.route.title}>
        <SheetHead>{rows.length > 0 && words.route.drawn(scale.words)}</SheetHead>
        {rows.length > 0 && <CardHead />}
        <ol
          className="steps"
          style={{ '--lanes': several ? Math.max(...lanes.map((l) => l.lane)) + 1 : 0 } as never}
        >
          {rows.map((row, i) => (
            <li
              key={`${row.bar} ${row.index}`}
              data-row={i}
              className={rowClass(row.bar === openBar && row.index === openStep, drag.over, i)}
            >
              {several && row.index === 0 && (
                <BarHead bar={row.bar} finish={job.finish === row.bar} />
              )}
              <StepRow
                row={row}
                open={row.bar === openBar && row.index === openStep}
                ratio={scale.ratio}
                problems={problems}
                lanes={several ? lanes.filter((l) => l.from <= i && i <= l.to) : []}
                at={i}
                grab={(event) => drag.grab(event, row, rows)}
                add={() => setAdding({ bar: row.bar, index: row.index + 1 })}
              />
              {adding?.bar === row.bar && adding.index === row.index + 1 ? (
                <Chooser place={adding} close={() => setAdding(undefined)} />
              ) : (
                isLast(row, i) && (
                  <button
                    type="button"
                    className="word add"
                    onClick={() => setAdding({ bar: row.bar, index: row.index + 1 })}
                  >
                    {words.route.add}
                    {several && ` (${row.bar})`}
                  </button>
                )
              )}
            </li>
          ))}
        </ol>
        {rows.length === 0 && !adding && (
          <div className="empty">
            <p>{words.route.blank}</p>
            <button
              type="button"
              className="press done"
              onClick={() => setAdding({ bar: words.route.newBarName, index: 0 })}
            >
              {words.route.blankStart}
            </button>
          </div>
        )}
        {adding?.index === 0 && <Chooser place={adding} close={() => setAdding(undefined)} />}
        {rows.length > 0 && (
          <>
            <CardFoot adding={setAdding} />
            <Faults problems={generalOf(problems, rows)} />
          </>
        )}
      </section>
      <TakeAway rows={rows} />
    </>
  )
}

function CardHead() {
  const words = useWords()
  const units = useDesk((desk) => desk.units)
  return (
    <div className="step-grid card-head note soft" aria-hidden="true">
      <span className="name">{words.route.step}</span>
      <span className="section">{words.route.section}</span>
      <span className="bench">{words.route.bench}</span>
      <span className="size">{words.route.size(units === 'metric' ? 'mm' : 'in')}</span>
      <span className="mass">{words.route.mass(units === 'metric' ? 'g' : 'oz')}</span>
      <span className="layers">{words.route.layers}</span>
      <span className="heats">{words.route.heats}</span>
    </div>
  )
}

function rowClass(open: boolean, over: number | undefined, i: number): string {
  return [
    open ? 'open' : '',
    over === i ? 'drop-before' : '',
    over === i + 1 ? 'drop-after' : '',
  ].join(' ')
}

/** One scale for all: the longest bar and the widest section must fit their columns. */
function scaleOfCard(rows: readonly CardRow[]) {
  const sizes = rows.flatMap(({ row }) => (row ? [row.after.size] : []))
  const longest = Math.max(0.05, ...sizes.map((s) => s.length))
  const widest = Math.max(0.01, ...sizes.map((s) => s.width))
  const bench = scaleToFit(longest, BENCH_ROOM)
  const section = scaleToFit(widest, SECTION_ROOM)
  return bench.ratio < section.ratio ? bench : section
}

/** What is wrong with the job and with no step of it. */
function generalOf(problems: ReturnType<typeof problemsAt>, rows: readonly CardRow[]) {
  return problems.filter(
    ({ at }) => !rows.some(({ bar, index }) => at.startsWith(`bars.${bar}[${index}]`)),
  )
}
