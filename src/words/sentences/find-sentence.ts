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

  const known = new Map<string, Said | undefined>()
  const say = (sentence: string): Said | undefined => {
    if (!known.has(sentence))
      known.set(
        sentence,
        asItIs(sentence) ?? several(sentence) ?? filledIn(sentence) ?? size(sentence),
      )
    return known.get(sentence)
  }

  function asItIs(sentence: string): Said | undefined {
    const same = whole.get(bare(sentence))
    return same === undefined ? undefined : { text: asWritten(same, sentence), left: false }
  }

  /** The first that leaves nothing in English: another may only have met a part of the sentence. */
  function filledIn(sentence: string): Said | undefined {
    let first: Said | undefined
    for (const { longest, pattern, other } of templates) {
      if (!sentence.includes(longest)) continue
      const met = pattern.exec(sentence)
      if (!met) continue
      const { text, left } = fill(other, met.slice(1))
      const said = { text: asWritten(text, sentence), left }
      if (!left) return said
      first ??= said
    }
    return first
  }

  /** Sentences in a row are said one by one, all or none. */
  function several(text: string): Said | undefined {
    const sentences = text.split(/(?<=[.!?]) (?=[A-Z\d])/)
    if (sentences.length < 2) return undefined
    const said = sentences.map((sentence) => asItIs(sentence) ?? filledIn(sentence))
    return said.some((one) => one === undefined || one.left) ? undefined : together(said, ' ')
  }

  /** A size or the number of a grade is the same in every language. */
  function size(text: string): Said | undefined {
    return /\d/.test(text) && !/[a-z]{3}|\b(?:to|or|at|of)\b/i.test(text.replaceAll(UNITS, ''))
      ? { text, left: false }
      : undefined
  }

  function fill(other: string, values: readonly string[]): Said {
    let left = false
    const text = other.replaceAll(new RegExp(HOLE, 'g'), (_, n: string, asIs: string) => {
      const value = values[Number(n)] ?? ''
      if (asIs) return value
      const said = inside(value)
      left ||= said.left
      return said.text
    })
    return { text, left }
  }

  /** What was put in: a word, a sentence, or a list of them; sizes and names stay. */
  function inside(value: string): Said {
    if (!/[a-z]{2}/i.test(value)) return { text: value, left: false }
    const word = findWord(value) ?? findWord(lower(value))
    if (word !== undefined) return { text: word, left: false }
    return asItIs(value) ?? together(value.split('; ').map(say), '; ') ?? say(value) ?? parts(value)
  }

  /** Words in a list, as far as there are any. */
  function parts(value: string): Said {
    for (const [english, other] of listed) {
      const all = value.split(english)
      if (all.length > 1) return together(all.map(inside), other) as Said
    }
    return { text: value, left: /[a-z]{3,} [^\s]/.test(value.replaceAll(UNITS, '')) }
  }

  const listed = [
    ['; ', '; '],
    [', ', ', '],
    [' and ', ` ${findWord('and') ?? 'and'} `],
    [' or ', ` ${findWord('or') ?? 'or'} `],
  ] as const
  return (sentence) => say(sentence)?.text
}

interface Said {
  readonly text: string
  /** Something in it is still English. */
  readonly left: boolean
}

/** All of them or none. */
function together(all: readonly (Said | undefined)[], between: string): Said | undefined {
  if (!all.every((one) => one !== undefined)) return undefined
  return { text: all.map(({ text }) => text).join(between), left: all.some(({ left }) => left) }
}

/** Units of three letters and more: they are the same in every language. */
const UNITS = /\b(?:min|bar|psi|ksi|lbf|kgf|ton|tonne|deg|rad|tpi|lpi)\b/g

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
