/** Draws every preset of the gallery and prints docs/gallery.md with its pictures: `node scripts/print-gallery.ts`. */
import { mkdirSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { writePng } from '#formats'
import { drawLooking, patternOfPreset, pictureOf, textArtOf } from './gallery/draw-preset.ts'
import { type Preset, presets } from './gallery/presets.ts'

const docs = new URL('../docs/', import.meta.url)

/** Where a look's picture lies, from docs. */
export function fileOf(preset: Preset, look: number, ending: 'png' | 'txt'): string {
  const number = preset.looks.length > 1 ? `-${look + 1}` : ''
  return `gallery/${preset.name}${number}.${ending}`
}

export function galleryPage(): string {
  const sections = presets.map((preset) => {
    const pictures = preset.looks.map(
      ({ caption }, i) =>
        `![${preset.title}, ${caption}](${fileOf(preset, i, 'png')})\n*${caption}*`,
    )
    const job = `[job](../jobs/patterns/${preset.name}.json)`
    return `## ${preset.title}\n\n${preset.say} (${job})\n\n${pictures.join('\n\n')}`
  })
  return `# The trade's patterns

Each is a small job in \`jobs/patterns\`, worked out and drawn by this program: every line is where the
plan says the steel will be, with one seed of unevenness. Strips are drawn at 5 pixels to the
millimetre, ends at 10. Printed by \`node scripts/print-gallery.ts\`; a test holds the pictures to it.

${sections.join('\n\n')}
`
}

if (import.meta.main) {
  mkdirSync(new URL('gallery/', docs), { recursive: true })
  for (const preset of presets) {
    const pattern = patternOfPreset(preset)
    preset.looks.forEach((looking, i) => {
      const map = drawLooking(pattern, looking)
      writeFileSync(new URL(fileOf(preset, i, 'png'), docs), writePng(pictureOf(map)))
      writeFileSync(new URL(fileOf(preset, i, 'txt'), docs), `${textArtOf(map)}\n`)
    })
  }
  writeFileSync(new URL('gallery.md', docs), galleryPage())
  console.log(`${presets.length} patterns in ${fileURLToPath(new URL('gallery.md', docs))}`)
}
