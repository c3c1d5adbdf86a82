import { type Catalogue, tradeWord, wordsIn } from '#words'
import { useDesk } from './desk.ts'

/** The catalogue of the language chosen. */
export function useWords(): Catalogue {
  return wordsIn(useDesk((desk) => desk.language))
}

/** Says a word of the declarations in the language chosen. */
export function useTradeWord(): (word: string) => string {
  const language = useDesk((desk) => desk.language)
  return (word) => tradeWord(word, language)
}
