/** The words of the app, language by language. */
export {
  type Told,
  loadWords,
  nameIn,
  said,
  tradeWord,
  translationsIn,
  wordsIn,
} from './catalogues.ts'
export type { Catalogue } from './english.ts'
export { type Language, languageOf, languages } from './language.ts'
export { decimalMark, plainDecimals, withDecimalsOf } from './numbers.ts'
