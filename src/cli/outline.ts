import { type Result, failed, ok } from '#problem'
import { readText } from './job-file.ts'

/** Path data from the words on the command line: the data itself, or all paths of an SVG file. */
export async function outlineFrom(word: string): Promise<Result<string>> {
  if (/^\s*[Mm]\s*[-+.\d]/.test(word)) return ok(word)
  const read = await readText(word)
  if (read.problems) return read
  const svg = read.ok
  const paths = [...svg.matchAll(/<path\b[^>]*?\sd\s*=\s*(["'])(.*?)\1/gs)].map((m) => m[2] ?? '')
  if (paths.length === 0)
    return failed({
      at: word,
      what: 'there is no path in this drawing',
      why: 'the outline is read from the d="…" of its <path> elements',
      try: [
        'turn shapes and text into paths in the drawing program',
        'give the text of d="…" itself',
      ],
    })
  if (/<(?:path|g)\b[^>]*\stransform\s*=/.test(svg))
    return failed({
      at: word,
      what: 'the drawing moves or scales its paths by a transform',
      why: 'only the path data is read, so the outline would come out wrong',
      try: ['save it as plain SVG with transforms applied', 'give the text of d="…" itself'],
    })
  return ok(paths.join(' '))
}
