import type { Language } from './language.ts'
import { tradeGerman } from './trade-german.ts'

/** A word of the declarations as it is shown: `closeWith` is "close with", in German "schließen mit". */
export function tradeWord(word: string, language: Language): string {
  const plain = /^[A-Z]/.test(word)
    ? word
    : word.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
  return language === 'de' ? (tradeGerman[plain] ?? plain) : plain
}
