import { existsSync } from 'node:fs'
import { join, posix } from 'node:path'
import type { Fault, House } from './house.ts'

/** Links between pages: the file is there, and so is the heading. */
export function checkLinks(house: House): Fault[] {
  return [...house.pages].flatMap(([path, text]) =>
    linksOf(text).flatMap(({ to, line }) => {
      if (/^[a-z][a-z+.-]*:/i.test(to)) return []
      const [file, heading] = to.split('#')
      const target = file === '' ? path : posix.join(posix.dirname(path), decodeURI(file))
      const at = `${path}:${line}`
      if (target.startsWith('..') || !existsSync(join(house.root, target)))
        return [{ at, what: `links to ${to}, which is not there`, try: 'mend the link' }]
      const page = house.pages.get(target)
      if (heading && page !== undefined && !headingsOf(page).has(heading))
        return [{ at, what: `links to a heading ${to} that is not there`, try: 'mend the link' }]
      return []
    }),
  )
}

function linksOf(text: string): { to: string; line: number }[] {
  return proseOf(text).flatMap((prose, i) =>
    [...prose.matchAll(/\]\(([^)\s]+)(?:\s+"[^"]*")?\)/g)].map((m) => ({ to: m[1], line: i + 1 })),
  )
}

/** Lines of a page with code blanked out. */
function proseOf(text: string): string[] {
  let fenced = false
  return text.split('\n').map((line) => {
    if (/^\s*(```|~~~)/.test(line)) {
      fenced = !fenced
      return ''
    }
    return fenced ? '' : line.replace(/`[^`]*`/g, '')
  })
}

/** Anchors as code hosts make them from headings. */
function headingsOf(text: string): Set<string> {
  let fenced = false
  return new Set(
    text.split('\n').flatMap((line) => {
      if (/^\s*(```|~~~)/.test(line)) fenced = !fenced
      const title = fenced ? undefined : /^#{1,6}\s+(.*)$/.exec(line)?.[1]
      if (title === undefined) return []
      const plain = title.toLowerCase().replace(/[^\p{L}\p{N}\s_-]/gu, '')
      return [plain.trim().replace(/\s/g, '-')]
    }),
  )
}

const glossary = 'docs/glossary.md'

/** One word per thing: no term twice, and no word refused for one thing is the term of another. */
export function checkGlossary(house: House): Fault[] {
  const text = house.pages.get(glossary)
  if (text === undefined) return []
  const faults: Fault[] = []
  const terms = new Map<string, number>()
  const refused: { word: string; term: string; line: number }[] = []
  text.split('\n').forEach((row, i) => {
    const cells = row.split('|').map((cell) => cell.trim())
    if (cells.length < 5 || /^(word|-+)$/.test(cells[1])) return
    const line = i + 1
    for (const term of wordsOf(cells[1])) {
      const before = terms.get(term)
      if (before !== undefined)
        faults.push({
          at: `${glossary}:${line}`,
          what: `"${term}" has an entry already, at line ${before}`,
          try: 'keep one',
        })
      else terms.set(term, line)
    }
    for (const word of wordsOf(cells[3])) refused.push({ word, term: cells[1], line })
  })
  for (const { word, term, line } of refused) {
    if (terms.has(word))
      faults.push({
        at: `${glossary}:${line}`,
        what: `"${word}" is refused for "${term}" and is itself an entry`,
        try: 'one word per thing: take one of them out',
      })
  }
  return faults
}

function wordsOf(cell: string): string[] {
  return cell
    .split(',')
    .map((word) => word.replace(/[*`]/g, '').trim().toLowerCase())
    .filter((word) => word !== '' && word !== '–')
}
