import type { Fault, House } from './house.ts'

/** Names that say nothing of what is in them; anything ends up in such a place. */
const grabBags = 'util utils helper helpers common misc shared core base types'.split(' ')
/** Words that say nothing wherever they stand in a name. */
const emptyWords =
  'utils helpers helper misc manager managers service services handler handlers'.split(' ')
/** Marks of unfinished work, spelt apart so that this file does not hold them. */
const leftOvers = new RegExp(
  `\\b(${['TO' + 'DO', 'FIX' + 'ME', 'XX' + 'X', 'HA' + 'CK'].join('|')})\\b`,
)

const kebab = /^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9-]+)*$/

export function checkNames(house: House): Fault[] {
  return [...house.sources.keys()].flatMap((path) => {
    const faults: Fault[] = []
    for (const part of path.split('/')) {
      const stem = part.replace(/(\.test|\.config)?\.tsx?$/, '')
      if (grabBags.includes(stem) || stem.split('-').some((word) => emptyWords.includes(word)))
        faults.push({
          at: path,
          what: `"${part}" does not say what is in it`,
          try: 'name it for the thing or the act',
        })
      if (!kebab.test(part))
        faults.push({
          at: path,
          what: `"${part}" is not kebab-case`,
          try: 'small letters and hyphens',
        })
    }
    return faults
  })
}

export function checkExports(house: House): Fault[] {
  return [...house.sources.values()].flatMap((source) => {
    const at = (line: number) => `${source.path}:${line}`
    const config = /\.config\.ts$/.test(source.path)
    return [
      ...source.exportsAll.map((line) => ({
        at: at(line),
        what: '"export *" hides what is given',
        try: 'name each export',
      })),
      ...(config ? [] : source.exportsDefault).map((line) => ({
        at: at(line),
        what: 'a default export has a different name in every file that imports it',
        try: 'export it by name',
      })),
      ...source.unrun.map((line) => ({
        at: at(line),
        what: 'a test that is not run, or that keeps others from running',
        try: 'run it, or take it out',
      })),
    ]
  })
}

export function checkLeftOvers(house: House): Fault[] {
  const texts = [
    ...[...house.sources.values()].map(({ path, text }) => [path, text] as const),
    ...house.pages,
  ]
  return texts.flatMap(([path, text]) => {
    if (!leftOvers.test(text)) return []
    return text.split('\n').flatMap((line, i) => {
      const mark = leftOvers.exec(line)
      if (!mark) return []
      return [
        { at: `${path}:${i + 1}`, what: `"${mark[0]}"`, try: 'do it, or file it as an issue' },
      ]
    })
  })
}
