import {
  edit,
  measurementAt,
  useDesk,
  useWords,
  valueAt,
  withMeasured,
  withoutMeasured,
} from '#desk'
import { Field } from '../../../form/field.tsx'
import { problemsAt } from '../../../form/fields.tsx'
import { Measure } from '../../../form/measure.tsx'
import { useSay } from '../../../form/say.ts'
import { type Standing, spareSide, standingAt } from './standing.ts'
import './measured.css'

interface MeasuredHereProps {
  readonly bar: string
  readonly index: number
}

const sides = ['length', 'width', 'height', 'mass'] as const

/** What was found after a step: fields for it, and where the plan stands with it. */
export function MeasuredHere({ bar, index }: MeasuredHereProps) {
  const { ahead } = useWords()
  const place = { bar, index }
  const at = useDesk((desk) => measurementAt(desk.history?.now, { bar, index }))
  const given = useDesk((desk) => valueAt(desk.history?.now, ['measured']))
  const parameters = useDesk((desk) => desk.declared?.measured)
  const problems = useDesk((desk) => desk.worked?.problems) ?? []
  const standing = useDesk((desk) => standingAt(desk.worked, bar, index))
  if (!parameters) return null
  const all = Array.isArray(given) ? (given as readonly Readonly<Record<string, unknown>>[]) : []
  const found = all[at]
  const change = (by: (job: Readonly<Record<string, unknown>>) => typeof job, within?: string) => {
    const job = useDesk.getState().history?.now
    if (job) edit(by(job), within)
  }
  return (
    <div className="measured-here">
      <div className="fields">
        {sides.map((name) => {
          const path = ['measured', at < 0 ? all.length : at, name]
          return (
            <Field
              key={name}
              parameter={parameters[name]}
              label={ahead.measuredSides[name]}
              path={path}
              value={found?.[name]}
              problems={problemsAt(problems, path)}
              onChange={(value, within) =>
                change((job) => withMeasured(job, place, name, value), within)
              }
            />
          )
        })}
      </div>
      {standing ? (
        <Stands standing={standing} />
      ) : (
        <p className="note soft">{ahead.measuredNote}</p>
      )}
      {found && (
        <button
          type="button"
          className="word note"
          onClick={() => change((job) => withoutMeasured(job, place))}
        >
          {ahead.forget}
        </button>
      )}
    </div>
  )
}

/** Planned, measured and needed, one under another and drawn to one scale along what may be spare. */
function Stands({ standing }: { readonly standing: Standing }) {
  const { ahead } = useWords()
  const say = useSay()
  const { planned, measured, needed, spare } = standing
  const side = spareSide(standing)
  const lines = [
    { what: ahead.standPlanned, size: planned.size, mass: planned.mass, kind: 'planned' },
    { what: ahead.standMeasured, size: measured.size, mass: measured.mass, kind: 'found' },
    ...(needed ? [{ what: ahead.standNeeded, size: needed, mass: undefined, kind: 'needed' }] : []),
  ]
  const longest = Math.max(...lines.map(({ size }) => size[side]))
  return (
    <>
      <table className="stands note">
        <tbody>
          {lines.map(({ what, size, mass, kind }) => (
            <tr key={kind}>
              <th scope="row">{what}</th>
              <td className="along" aria-hidden="true">
                <div>
                  <i className={kind} style={{ width: `${(100 * size[side]) / longest}%` }} />
                </div>
              </td>
              <td className="figure">
                <Measure text={say.size(size)} />
              </td>
              <td className="figure">{mass !== undefined && say.mass(mass)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {needed && (
        <p role="status">
          <b>
            <Measure
              text={spare < 0 ? ahead.lacks(say.length(-spare)) : ahead.spare(say.length(spare))}
            />
          </b>
        </p>
      )}
    </>
  )
}
