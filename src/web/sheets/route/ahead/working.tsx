import { useWords } from '#desk'
import type { Answered } from './use-answer.ts'

interface WorkingProps {
  readonly at: Answered<unknown>
  readonly title: string
  /** What is being done, so far. */
  readonly doing: (done: string, of: string) => string
}

/** How far long work is, and the word that stops it; what an old answer is an answer to. */
export function Working({ at, title, doing }: WorkingProps) {
  const { ahead } = useWords()
  const { progress, isOld, isStopped, isSound } = at
  const said =
    progress && progress.of > 0 ? doing(count(progress.done), count(progress.of)) : ahead.begun
  return (
    <>
      {isOld && <p className="note old-words">{ahead.old}</p>}
      {progress && (
        <p className="note working">
          <span
            role="progressbar"
            aria-label={title}
            aria-valuenow={progress.done}
            aria-valuemax={Math.max(1, progress.of)}
            aria-valuetext={said}
          >
            {said}
          </span>
          <button type="button" className="word note" onClick={at.stop}>
            {ahead.stop}
          </button>
        </p>
      )}
      {isStopped && (
        <button type="button" className="press" onClick={at.begin}>
          {ahead.begin}
        </button>
      )}
      {!isSound && !at.answer && <p className="note soft">{ahead.waits}</p>}
    </>
  )
}

/** A whole number with a thin space between thousands. */
export function count(n: number): string {
  return String(n).replace(/\B(?=(\d{3})+$)/g, '\u2009')
}
