/**
 * Holds the German of the app complete: every sentence the engine can say in the app, and every word
 * of the declarations, has its German. `node scripts/check-german.ts` tells what is missing, what
 * has other holes than the English, and what nobody says any more.
 */
import { fileURLToPath } from 'node:url'
import { declared } from '#job'
import { pieceKinds } from '#piece'
import { loadWords, translationsIn } from '#words'
import { readSentences } from './german/read-sentences.ts'
import { counted } from '#units'
import { printedSizes } from './german/where-sentences-are.ts'
import { wordsOf } from './german/declared-words.ts'

/** As the catalogue knows sentences: a capital and a full stop do not tell two apart. */
const bare = (text: string) => (text.charAt(0).toLowerCase() + text.slice(1)).replace(/\.$/, '')
const holes = (text: string) =>
  [...text.matchAll(/\{(\d+)!?\}/g)].map(([, n]) => Number(n)).sort((a, b) => a - b)

await loadWords('de')
const { sentences: germanSentences = {}, trade: tradeGerman = {} } = translationsIn('de') ?? {}

const german = new Map(
  Object.entries(germanSentences).map(([english, text]) => [bare(english), text]),
)
const faults: string[] = []

const sentences = readSentences(fileURLToPath(new URL('..', import.meta.url)))
const counts = Object.entries(counted).flatMap((nouns) => nouns.map((noun) => `{0} ${noun}`))
for (const { text, at } of [
  ...sentences,
  ...counts.map((text) => ({ text, at: 'src/units/count.ts' })),
]) {
  const there = german.get(bare(text))
  if (there === undefined && !(text in tradeGerman)) faults.push(`${at}\n  no German: ${text}`)
}
for (const [english, text] of Object.entries(germanSentences))
  if (holes(english).join() !== holes(text).join())
    faults.push(`holes differ: ${english}\n  ${text}`)
const saidNow = new Set(
  [...sentences.map(({ text }) => text), ...printedSizes, ...counts].map(bare),
)
for (const english of Object.keys(germanSentences))
  if (!saidNow.has(bare(english))) faults.push(`nobody says this any more: ${english}`)
for (const word of wordsOf(declared(), pieceKinds))
  if (!(word in tradeGerman))
    faults.push(`src/words/shop-german.ts or trade-german.ts\n  no German: ${word}`)

for (const fault of faults) console.error(fault)
if (faults.length > 0) {
  console.error(`${faults.length} places where the German is not complete`)
  process.exitCode = 1
}
