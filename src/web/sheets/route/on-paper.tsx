import { type Row, useWords } from '#desk'
import { usePaper } from '../../drawing/use-paper.ts'
import { CautionMark } from '../../form/faults.tsx'
import { Tolds } from '../../form/told.tsx'
import { useLacksHeatTimes } from './heat-times.ts'
import { StepFacts } from './step-facts.tsx'

/** Said where the browser's own menu printed sooner than the times of the heats were worked out. */
export function WithoutTimes() {
  const words = useWords()
  const isPaper = usePaper()
  const lacks = useLacksHeatTimes()
  return isPaper && lacks && <p className="printed note">{words.card.withoutTimes}</p>
}

/**
 * What only the printed card says of a step, for nothing can be opened there: all that the anvil wants
 * to know, and each caution in full where it first comes up. After that the row names it.
 */
export function OnPaper({ row, told }: { readonly row: Row; readonly told: readonly string[] }) {
  if (!usePaper()) return null
  const first = row.cautions.filter(({ name }) => !told.includes(name))
  return (
    <div className="printed note">
      <StepFacts row={row} />
      {first.length > 0 && (
        <p>
          <CautionMark /> <Tolds texts={first.flatMap((c) => [c.danger, c.care])} />
        </p>
      )}
    </div>
  )
}
