import { type Catalogue, type Told, said, tradeWord, wordsIn } from '#words'
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

/** Says a sentence of the engine in the language chosen; foreign where it has no words for it. */
export function useSaid(): (sentence: string) => Told & { readonly isForeign: boolean } {
  const language = useDesk((desk) => desk.language)
  return (sentence) => {
    const told = said(sentence, language)
    return { ...told, isForeign: told.language !== language }
  }
}
