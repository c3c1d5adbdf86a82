import { type Catalogue, tradeWord, wordsIn } from '#words'
import { useDesk } from './desk.ts'
import { type Saying, saidIn } from './said-in.ts'

/** The catalogue of the language chosen. */
export function useWords(): Catalogue {
  return wordsIn(useDesk((desk) => desk.language))
}

/** Says a word of the declarations in the language chosen. */
export function useTradeWord(): (word: string) => string {
  const language = useDesk((desk) => desk.language)
  return (word) => tradeWord(word, language)
}

/** Says a sentence of the engine in the language and the units chosen; foreign where it has no words for it. */
export function useSaid(): (sentence: string) => Saying {
  const language = useDesk((desk) => desk.language)
  const units = useDesk((desk) => desk.units)
  return (sentence) => saidIn(sentence, language, units)
}
