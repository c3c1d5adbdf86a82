import { useState } from 'react'
import { type DeclaredKind, edit, useDesk, useTradeWord, useWords, valueAt, withValue } from '#desk'
import type { Problem } from '#problem'
import type { Parameter } from '#parameters'
import type { UnitSystem } from '#units'
import { Field } from '../../form/field.tsx'
import { Fields, problemsAt } from '../../form/fields.tsx'
import { capital } from '../../form/measure.tsx'

interface LedgerProps {
  readonly kind?: DeclaredKind
  readonly problems: readonly Problem[]
}

/** Every size and wish, a line each; those left as usual fold away. */
export function PieceLedger({ kind, problems }: LedgerProps) {
  const words = useWords()
  const trade = useTradeWord()
  const [all, setAll] = useState(false)
  const declared = useDesk((desk) => desk.declared)
  const job = useDesk((desk) => desk.history?.now)
  const units = useDesk((desk) => desk.units)
  if (!job || !declared) return null
  const row = (path: readonly string[], parameter: Parameter, label: string, help?: string) => (
    <Field
      key={path.join('.')}
      parameter={parameter}
      path={path}
      label={capital(label)}
      help={help}
      value={valueAt(job, path)}
      problems={problemsAt(problems, path)}
      onChange={(value, within) =>
        edit(withValue(useDesk.getState().history?.now ?? {}, path, value), within)
      }
    />
  )
  const entries = Object.entries(kind?.parameters ?? {})
  const isPlain = ([name, p]: readonly [string, Parameter]) =>
    !kind?.sizes.includes(name) &&
    valueAt(job, ['piece', name]) === undefined &&
    (p.optional === true || p.default !== undefined) &&
    !problems.some(({ at }) => at.startsWith(`piece.${name}`))
  const plain = entries.filter(isPlain)
  const shown = all ? entries : entries.filter((entry) => !isPlain(entry))
  const kinds: Parameter = {
    form: 'choice',
    help: '',
    options: Object.fromEntries(declared.kinds.map((k) => [k.title, k.summary])),
  }
  return (
    <div className="ledger">
      {row(['name'], { form: 'text', longest: 200, help: '' }, words.piece.name, words.piece.name)}
      <Field
        parameter={{ ...kinds, optional: true }}
        path={['piece', 'kind']}
        label={words.piece.kind}
        value={kind?.title}
        problems={problemsAt(problems, ['piece', 'kind'])}
        onChange={(title) => {
          const chosen = declared.kinds.find((k) => k.title === title)
          edit(
            withValue(
              useDesk.getState().history?.now ?? {},
              ['piece'],
              chosen
                ? { kind: chosen.name, ...keptSizes(chosen, units, valueAt(job, ['piece'])) }
                : undefined,
            ),
          )
        }}
      />
      {row(['wishes', 'mass'], declared.wishes.mass, trade('mass'))}
      {row(['wishes', 'massWithin'], declared.wishes.massWithin, trade('massWithin'))}
      {shown
        .filter(([, p]) => p.form !== 'list')
        .map(([name, p]) => row(['piece', name], p, trade(name)))}
      {shown.some(([, p]) => p.form === 'list') && (
        <Fields
          parameters={Object.fromEntries(shown.filter(([, p]) => p.form === 'list'))}
          path={['piece']}
          problems={problems}
        />
      )}
      {plain.length > 0 && (
        <button
          type="button"
          className="word note"
          aria-expanded={all}
          onClick={() => setAll(!all)}
        >
          {all ? words.piece.less : words.piece.more(plain.length)}
        </button>
      )}
    </div>
  )
}

/** Another kind keeps the sizes of the same name; the others begin as a new job's do. */
function keptSizes(
  kind: DeclaredKind,
  units: UnitSystem,
  before: unknown,
): Record<string, unknown> {
  const old = (typeof before === 'object' && before !== null ? before : {}) as Record<
    string,
    unknown
  >
  const kept = Object.keys(kind.parameters).filter((name) => name in old)
  return {
    ...kind.start[units],
    ...Object.fromEntries(kept.map((name) => [name, old[name]])),
  }
}
