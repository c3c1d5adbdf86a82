import { useCallback, useEffect, useMemo, useState } from 'react'
import { type StepPlace, type Worked, useAddress, useDesk, useWords } from '#desk'
import type { Size } from '#geometry'
import type { Problem } from '#problem'
import { fetchForPaper } from '../../drawing/print-whole.ts'
import { TRUE, scaleToFit } from '../../drawing/scale.ts'
import { usePen } from '../../drawing/use-pen.ts'
import { Amiss } from '../../form/amiss.tsx'
import { Faults } from '../../form/faults.tsx'
import { WeightWish } from '../../form/weight-wish.tsx'
import { SheetHead } from '../../shell/sheet-head.tsx'
import { BarHead } from './bar-head.tsx'
import { type CardRow, cardRows } from './card-rows.ts'
import { Chooser } from './chooser.tsx'
import { layLanes } from './lanes.ts'
import { Lanes, StepRow } from './step-row.tsx'
import { TakeAway } from './take-away.tsx'
import { CardFoot } from './card-foot.tsx'
import { usualDangers } from './dangers.ts'
import { useDragging } from './dragging.ts'
import { fetchHeatTimes } from './heat-times.ts'
import { WithoutTimes } from './on-paper.tsx'
import { RackList } from './rack-list.tsx'

/** Px of the two columns of drawings. */
const BENCH_ROOM = 190
const SECTION_ROOM = 58
const TALLEST_SECTION = 62
const LANE = 11
/** The head of the column must stand over it. */
const LEAST_BENCH = 120
/** It grows by so much at a time, px: a hair more of length moves no column, and nothing is laid out anew. */
const BENCH_BY = 24

export function RoutePage() {
  const words = useWords()
  const { bar: openBar, step: openStep } = useAddress()
  const job = useDesk((desk) => desk.history?.now)
  const worked = useDesk((desk) => desk.worked)
  const sound = useDesk((desk) => desk.sound)
  const declared = useDesk((desk) => desk.declared)
  const units = useDesk((desk) => desk.units)
  const [adding, setAdding] = useState<StepPlace>()
  const shown = worked ?? sound
  const rows = useMemo(() => (job ? cardRows(job, shown, declared) : []), [job, shown, declared])
  const lanes = useMemo(() => layLanes(rows, rows.at(-1)?.bar ?? ''), [rows])
  const laneCount = lanes.length > 1 ? Math.max(...lanes.map((l) => l.lane)) + 1 : 0
  const pen = usePen()
  const scales = useMemo(
    () => scalesOfCard(sizesFor(worked, sound), laneCount, pen),
    [worked, sound, laneCount, pen],
  )
  useEffect(() => fetchForPaper(fetchHeatTimes), [])
  const drag = useDragging(rows)
  const addAfter = useCallback(
    (row: CardRow) => setAdding({ bar: row.bar, index: row.index + 1 }),
    [],
  )
  if (!job) return null
  const several = new Set(rows.map((row) => row.bar)).size > 1
  const weight = worked?.weight
  const problems = worked?.problems ?? []
  const isLast = (row: CardRow, i: number) => rows[i + 1]?.bar !== row.bar
  return (
    <>
      <section
        className={units === 'metric' ? 'column card' : 'column card inch'}
        aria-label={words.route.title}
        style={{ '--lanes': laneCount, '--bench': `${scales.room}px` } as never}
      >
        <SheetHead>
          {rows.length > 0 && words.route.drawn(scales.section.words, scales.bench.words)}
        </SheetHead>
        <div className="printed">
          <RackList rows={rows} />
        </div>
        <WithoutTimes />
        {/* In place of the other, so that no row moves while one types. */}
        <Amiss />
        {worked?.sound !== false &&
          rows.some(({ row }) => row?.cautions.some((c) => usualDangers.includes(c.name))) && (
            <p className="usual note soft">{words.card.usualDangers}</p>
          )}
        {rows.length > 0 && <CardHead />}
        <ol className="steps">
          {rows.map((row, i) => (
            <li
              key={`${row.bar} ${row.index}`}
              data-row={i}
              className={rowClass(row.bar === openBar && row.index === openStep, drag.over, i)}
            >
              {several && (
                <Lanes lanes={lanes.filter((l) => l.from <= i && i <= l.to)} at={i} own={row.bar} />
              )}
              {several && row.index === 0 && (
                <BarHead bar={row.bar} finish={job.finish === row.bar} />
              )}
              <StepRow
                row={row}
                open={row.bar === openBar && row.index === openStep}
                ratios={{ section: scales.section.ratio, bench: scales.bench.ratio }}
                problems={problemsOf(problems, row)}
                grab={drag.grab}
                add={addAfter}
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
            {weight && !weight.agrees && <WeightWish weight={weight} />}
            <Faults problems={generalOf(problems, rows)} placed />
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

/** Sizes that have to fit. While a change waits for sense those of the last sound plan do, so that no drawing jumps. */
function sizesFor(worked: Worked | undefined, sound: Worked | undefined): readonly Size[] {
  return (sound ?? worked)?.rows.map((row) => row.after.size) ?? []
}

/** One scale for every bar and one for every section: the longest and the widest must fit. */
function scalesOfCard(sizes: readonly Size[], lanes: number, pen: number) {
  const greatest = (side: 'length' | 'width' | 'height', least: number) =>
    Math.max(least, ...sizes.map((size) => size[side]))
  const longest = greatest('length', 0.05)
  const bench = scaleToFit(longest, pen * (BENCH_ROOM - lanes * LANE))
  const wide = scaleToFit(greatest('width', 0.01), pen * SECTION_ROOM)
  const tall = scaleToFit(greatest('height', 0.01), pen * TALLEST_SECTION)
  // Its column is as wide as the longest bar is drawn: names have the rest.
  const room = Math.max(
    LEAST_BENCH * pen,
    BENCH_BY * Math.ceil((longest * TRUE * bench.ratio) / BENCH_BY),
  )
  return { bench, room, section: wide.ratio < tall.ratio ? wide : tall }
}

const NONE: readonly Problem[] = []

/** What is wrong with one step; nothing is always the same nothing. */
function problemsOf(problems: readonly Problem[], { bar, index }: CardRow): readonly Problem[] {
  const own = problems.filter(({ at }) => at.startsWith(`bars.${bar}[${index}]`))
  return own.length > 0 ? own : NONE
}

/** What is wrong with the job and with no step of it. */
function generalOf(problems: readonly Problem[], rows: readonly CardRow[]) {
  return problems.filter(
    ({ at }) =>
      at !== 'piece.mass' && !rows.some(({ bar, index }) => at.startsWith(`bars.${bar}[${index}]`)),
  )
}
