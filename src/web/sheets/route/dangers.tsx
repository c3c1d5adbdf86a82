import { type Row, useTradeWord, useWords } from '#desk'
import { CautionMark } from '../../form/faults.tsx'
import { dangersOf } from './dangers.ts'

/**
 * What is to be minded at a step, in a word each: what the fire and the hammer bring anyway softly, what
 * this step brings besides in ink, and marked where it first comes up.
 */
export function Dangers({
  cautions,
  told,
}: {
  readonly cautions: Row['cautions']
  readonly told: readonly string[]
}) {
  const { danger } = useWords().card
  const trade = useTradeWord()
  if (cautions.length === 0) return null
  const found = dangersOf(
    cautions.map(({ name }) => name),
    told,
    (name) => danger[name as keyof typeof danger] ?? trade(name),
  )
  return (
    <span className="dangers note">
      {found.map(({ word, kind }, i) => (
        <span key={word} className={kind}>
          {kind === 'new' && i === 0 && <CautionMark />}
          {word}
          {i < found.length - 1 && ', '}
        </span>
      ))}
    </span>
  )
}
