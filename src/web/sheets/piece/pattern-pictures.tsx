import { useWords } from '#desk'

/** Pictures of the patterns that could be made: computed by the engine, or words until they are. */
export function PatternPictures() {
  const words = useWords()
  return <p className="note soft pictures">{words.piece.picturesWait}</p>
}
