import { type Asking, type Way, type Ways, type Written, edit, secondEngine, useWords } from '#desk'
import type { Catalogue } from '#words'
import { Faults } from '../../../form/faults.tsx'
import { Measure } from '../../../form/measure.tsx'
import { useAnswer } from '../ahead/use-answer.ts'
import { Working, count } from '../ahead/working.tsx'
import '../ahead/ahead.css'
import { useHardness } from './use-hardness.ts'
import { useWayLines } from './way-lines.ts'
import './ways.css'

const look = (job: Written, asking: Asking) => secondEngine().ask({ ask: 'ways', job }, asking)

/** What else could be done: the planner's ways beside the one written, to be compared and taken. */
export function OtherWays() {
  const { ways } = useWords()
  const at = useAnswer('ways', look)
  const { answer, isOld } = at
  return (
    <div
      className={isOld ? 'ahead ways-list old' : 'ahead ways-list'}
      aria-busy={at.progress !== undefined}
    >
      <Working at={at} title={ways.title} doing={(done) => ways.looking(`${done} %`)} />
      {answer && answer.ways.length > 0 && <SideBySide found={answer} isOld={isOld} />}
      {answer && !isOld && <Faults problems={answer.problems} placed />}
    </div>
  )
}

/** One column a way, the card first: what each comes to, and what could go wrong with it. */
function SideBySide({ found, isOld }: { readonly found: Ways; readonly isOld: boolean }) {
  const { ways: words } = useWords()
  const { written, ways: others, considered } = found
  const ways = [...(written ? [written] : []), ...others.filter((way) => !way.asWritten)]
  const hardness = useHardness(ways)
  const lines = useWayLines(ways, hardness)
  return (
    <>
      <p className="note soft">{words.considered(count(considered))}</p>
      <div className="side-by-side" role="region" aria-label={words.table} tabIndex={0}>
        <table>
          <thead>
            <tr>
              <th scope="col">
                <span className="hidden">{words.way}</span>
              </th>
              {ways.map((way) => (
                <th key={way.name} scope="col">
                  <Measure text={recipeWords(way.name, words)} />
                  {way.asWritten && <span className="note soft">{words.asWritten}</span>}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {lines.map(({ what, cells, best }) => (
              <tr key={what}>
                <th scope="row" className="note soft">
                  {what}
                </th>
                {cells.map((cell, i) => (
                  <td key={ways[i].name}>{best.includes(i) ? <b>{cell}</b> : cell}</td>
                ))}
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr>
              <td />
              {ways.map((way) => (
                <td key={way.name}>{!way.asWritten && <TakeWay way={way} isOld={isOld} />}</td>
              ))}
            </tr>
          </tfoot>
        </table>
      </div>
    </>
  )
}

function TakeWay({ way, isOld }: { readonly way: Way; readonly isOld: boolean }) {
  const { ways } = useWords()
  return (
    <button
      type="button"
      className="press"
      // What was found for an older card would undo what was changed since.
      disabled={isOld}
      aria-label={ways.takeNamed(recipeWords(way.name, ways))}
      onClick={() => edit(way.job)}
    >
      {ways.take}
    </button>
  )
}

/** The engine writes `15 → ×3 → ×4`; a smith says how high it is restacked. */
function recipeWords(name: string, { recipe }: Catalogue['ways']): string {
  const [sheets, ...high] = [...name.matchAll(/\d+/g)].map(Number)
  const isRecipe = sheets !== undefined && /^\d+(?: → ×\d+)*$/.test(name)
  return isRecipe ? recipe(sheets, high) : name
}
