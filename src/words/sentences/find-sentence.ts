/** Says a sentence of the engine in one other language; undefined where it has no words for it. */
export type FindSentence = (sentence: string) => string | undefined

/** Says what is put into a sentence: a word of the trade, or nothing where it stays as it is. */
type FindWord = (word: string) => string | undefined

/**
 * Sentences by the English ones, as `gettext` has them: the English text is its own name. What is put
 * in at run time stands there as `{0}`, `{1}`, … and is itself said in the language, unless the
 * translation asks for it as it is: `{0!}`, for what a person typed.
 *
 * A capital and a full stop do not tell two sentences apart: the engine sets them as the place asks,
 * and they come back as they came.
 */
export function sentencesBy(
  translations: Readonly<Record<string, string>>,
  findWord: FindWord,
): FindSentence {
  const whole = new Map<string, string>()
  const templates: Template[] = []
  for (const [english, other] of Object.entries(translations))
    if (HOLE.test(english)) templates.push(templateOf(english, other))
    else whole.set(bare(english), other)
  // What says most by itself is tried first: "{0} deep or less" before "{0} deep".
  templates.sort((a, b) => b.says - a.says)

  const known = new Map<string, string | undefined>()
  const find: FindSentence = (sentence) => {
    if (!known.has(sentence))
      known.set(sentence, asItIs(sentence) ?? several(sentence) ?? filledIn(sentence))
    return known.get(sentence)
  }

  function asItIs(sentence: string): string | undefined {
    const same = whole.get(bare(sentence))
    return same === undefined ? undefined : asWritten(same, sentence)
  }

  function filledIn(sentence: string): string | undefined {
    for (const { longest, pattern, other } of templates) {
      if (!sentence.includes(longest)) continue
      const met = pattern.exec(sentence)
      if (met) return asWritten(fill(other, met.slice(1)), sentence)
    }
    return undefined
  }

  /** Sentences in a row are said one by one, all or none. */
  function several(text: string): string | undefined {
    const sentences = text.split(/(?<=[.!?]) (?=[A-Z\d])/)
    if (sentences.length < 2) return undefined
    return allOf(sentences.map((sentence) => asItIs(sentence) ?? filledIn(sentence)))?.join(' ')
  }

  function fill(other: string, values: readonly string[]): string {
    return other.replaceAll(new RegExp(HOLE, 'g'), (_, n: string, asIs: string) => {
      const value = values[Number(n)] ?? ''
      return asIs ? value : inside(value)
    })
  }

  /** What was put in: a word, a sentence, or a list of them; sizes and names stay. */
  function inside(value: string): string {
    if (!/[a-z]{2}/i.test(value)) return value
    const word = findWord(value) ?? findWord(lower(value))
    return word ?? list(value, '; ') ?? find(value) ?? parts(value)
  }

  /** Sentences in a list, all or none. */
  function list(value: string, between: string): string | undefined {
    const all = value.split(between)
    return all.length < 2 ? undefined : allOf(all.map(find))?.join(between)
  }

  /** Words in a list, as far as there are any. */
  function parts(value: string): string {
    for (const [english, other] of listed) {
      const all = value.split(english)
      if (all.length > 1) return all.map(inside).join(other)
    }
    return value
  }

  const listed = [
    ['; ', '; '],
    [', ', ', '],
    [' and ', ` ${findWord('and') ?? 'and'} `],
    [' or ', ` ${findWord('or') ?? 'or'} `],
  ] as const
  return find
}

const HOLE = /\{(\d+)(!?)\}/

interface Template {
  readonly pattern: RegExp
  /** The longest run of its own words: a sentence without it is another. */
  readonly longest: string
  /** Letters of its own. */
  readonly says: number
  readonly other: string
}

function templateOf(english: string, other: string): Template {
  const own = stopped(english).split(/\{\d+\}/)
  const escaped = own.map((part) => part.replaceAll(/[\\^$.*+?()[\]{}|]/g, '\\$&'))
  // The first letter may be set as a capital.
  const first = escaped[0].replace(/^[a-z]/i, (l) => `[${l.toLowerCase()}${l.toUpperCase()}]`)
  return {
    pattern: new RegExp(`^${[first, ...escaped.slice(1)].join('([\\s\\S]*?)')}\\.?$`),
    longest: own.map((part, i) => (i === 0 ? part.slice(1) : part)).reduce(longer),
    says: own.join('').length,
    other,
  }
}

function allOf(said: readonly (string | undefined)[]): readonly string[] | undefined {
  return said.every((s) => s !== undefined) ? said : undefined
}

const longer = (a: string, b: string) => (b.length > a.length ? b : a)

const stopped = (sentence: string) => sentence.replace(/\.$/, '')

const lower = (text: string) => text.charAt(0).toLowerCase() + text.slice(1)

function bare(sentence: string): string {
  return lower(stopped(sentence))
}

/** With a capital and a full stop where the English has them. */
function asWritten(other: string, english: string): string {
  const first = /^[A-Z]/.test(english) ? other.charAt(0).toUpperCase() + other.slice(1) : other
  return stopped(first) + (english.endsWith('.') ? '.' : '')
}
