import { type Way, useDesk, useWords } from '#desk'
import { numberIn } from '../../../form/number-in.ts'
import { useSay } from '../../../form/say.ts'
import { useSayWatched } from '../ahead/moves.ts'
import type { Hardness } from './use-hardness.ts'

/** One line of the comparison: what it is, said for each way, and which of them are best in it. */
export interface WayLine {
  readonly what: string
  readonly cells: readonly string[]
  readonly best: readonly number[]
}

/** What the ways are compared by, in the order in which a smith asks. */
export function useWayLines(
  ways: readonly Way[],
  hardness: readonly (Hardness | 'soft' | undefined)[],
): readonly WayLine[] {
  const { ways: words } = useWords()
  const say = useSay()
  const { figure } = useSayWatched()
  const language = useDesk((desk) => desk.language)
  const percent = numberIn(language, { style: 'percent', maximumFractionDigits: 0 })
  const of = (get: (figures: Way['figures']) => number) => ways.map(({ figures }) => get(figures))
  const line = (
    what: string,
    values: readonly number[],
    print: (value: number) => string,
    better?: 'less' | 'more',
  ): WayLine => {
    const cells = values.map(print)
    const edge = better && (better === 'less' ? Math.min(...values) : Math.max(...values))
    const top = edge === undefined ? undefined : print(edge)
    // Where all read alike none is best.
    const best = cells.flatMap((cell, i) => (cell === top ? [i] : []))
    return { what, cells, best: best.length < cells.length ? best : [] }
  }
  const hasLines = ways.some(({ figures }) => figures.lines !== undefined)
  return [
    line(
      words.heats,
      of((f) => f.heats),
      String,
      'less',
    ),
    line(
      words.hands,
      of((f) => f.hands),
      (s) => figure('hands', s),
      'less',
    ),
    line(
      words.cost,
      of((f) => f.cost),
      (c) => figure('cost', c),
      'less',
    ),
    line(
      words.steel,
      of((f) => f.steel),
      say.mass,
      'less',
    ),
    line(
      words.yield,
      of((f) => f.yield),
      percent,
      'more',
    ),
    line(
      words.layers,
      of((f) => f.layers),
      String,
    ),
    ...(hasLines
      ? [
          line(
            words.lines,
            of((f) => f.lines ?? NaN),
            (n) => (n > 0 ? say.lines(n) : '–'),
          ),
        ]
      : []),
    {
      what: words.hardness,
      cells: hardness.map((h) => (h === undefined ? '…' : h === 'soft' ? '–' : hrc(h))),
      best: [],
    },
    line(
      words.failing,
      of((f) => f.failing),
      (share) => words.inHundred((100 * share).toFixed(0)),
      'less',
    ),
    line(
      words.layersLost,
      of((f) => f.layersLost),
      (n) => (n > 0 ? String(n) : words.none),
      'less',
    ),
  ]
}

function hrc({ least, most }: Hardness): string {
  const [low, high] = [Math.round(least), Math.round(most)]
  return low === high ? `${low}` : `${low}–${high}`
}
