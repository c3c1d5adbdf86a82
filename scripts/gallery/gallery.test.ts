import { existsSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readPng, writePng } from '#formats'
import { fileOf, galleryPage } from '../print-gallery.ts'
import { drawLooking, patternOfPreset, pictureOf, textArtOf } from './draw-preset.ts'
import { presets } from './presets.ts'

const docs = new URL('../../docs/', import.meta.url)
const at = (path: string) => new URL(path, docs)

/** Levels of 255 a picture may differ by in the mean: another processor rounds a boundary the other way now and then. */
const ALIKE = 0.5

/** Mean difference of two pictures in levels of 255; Infinity if they are not of one size. */
function difference(a: ReturnType<typeof readPng>, b: ReturnType<typeof readPng>): number {
  if (a.data.length !== b.data.length || a.width !== b.width) return Infinity
  let sum = 0
  for (let i = 0; i < a.data.length; i++) sum += Math.abs(a.data[i] - b.data[i])
  return sum / a.data.length
}

describe.each(presets.map((preset) => [preset.name, preset] as const))('%s', (_name, preset) => {
  const pattern = patternOfPreset(preset)
  it.each(preset.looks.map((looking, i) => [looking.caption, looking, i] as const))(
    'looks as it is shown: %s',
    (_caption, looking, i) => {
      const map = drawLooking(pattern, looking)
      const [art, picture] = [`${textArtOf(map)}\n`, writePng(pictureOf(map))]
      const [text, png] = [fileOf(preset, i, 'txt'), fileOf(preset, i, 'png')]
      const changed = (path: string) => at(path.replace(/(\.\w+)$/, '-changed$1'))
      const same =
        existsSync(at(png)) && difference(readPng(readFileSync(at(png))), readPng(picture)) < ALIKE
      if (same) rmSync(changed(png), { force: true })
      else writeFileSync(changed(png), picture)
      expect(art, `${text}: if it is right, run node scripts/print-gallery.ts`).toBe(
        readFileSync(at(text), 'utf8'),
      )
      expect(same, `look at ${changed(png).pathname}`).toBe(true)
    },
  )
})

describe('the page', () => {
  it('is the one the presets print', () => {
    expect(readFileSync(at('gallery.md'), 'utf8')).toBe(galleryPage())
  })

  it('has a preset for every job of the folder, and every job a preset', () => {
    const jobs = readdirSync(new URL('../jobs/patterns/', docs)).map((f) => f.replace('.json', ''))
    expect(jobs.toSorted()).toEqual(presets.map((p) => p.name).toSorted())
  })
})
