import { readFileSync } from 'node:fs'
import { type Image, drawEtched } from '#look'
import { type BarPattern, computeJob, patternOf, readJob, viewOf } from '#job'
import { type PatternMap, drawFaceNow } from '#pattern'
import { type FaceView, crop } from '#view'
import type { Looking, Preset } from './presets.ts'

/** Pixels to a millimetre along a strip; an end is drawn larger. */
const STRIP = 5
const END = 10

/** The pattern of a preset's job; what is wrong with it is thrown, for a preset must work. */
export function patternOfPreset({ name }: Preset): BarPattern {
  const path = new URL(`../../jobs/patterns/${name}.json`, import.meta.url)
  const job = readJob(readFileSync(path, 'utf8'))
  const computed = job.problems ? job : computeJob(job.ok)
  const pattern = computed.ok && patternOf(computed.ok)
  if (!pattern)
    throw new Error(`${name}: ${computed.problems?.map((p) => `${p.at} ${p.what}`).join('; ')}`)
  return pattern
}

export function drawLooking(pattern: BarPattern, looking: Looking): PatternMap {
  const strip = looking.length !== undefined
  const view = viewOf(pattern, looking.look, { ppmm: strip ? STRIP : END })
  return drawFaceNow(strip ? windowOf(view, looking) : view, pattern.origin, {
    weights: [pattern.light],
  })
}

function windowOf(view: FaceView, { from = 0, length = Infinity }: Looking): FaceView {
  const left = Math.min(view.width - 1, Math.round(from / view.pixel))
  const width = Math.min(view.width - left, Math.round(length / view.pixel))
  return crop(view, { left, top: 0, width, height: view.height })
}

/** As it comes out of the acid; without scratches, so that the file stays small. */
export function pictureOf(map: PatternMap): Image {
  return drawEtched(map, { polish: false })
}

const COLUMNS = 64
const TONES = ' .:-=+*#%@'

/** The same in letters, bright steel light: for reading a change in a plain diff. */
export function textArtOf(map: PatternMap): string {
  const { width, height, alpha, means } = map
  const rows = Math.max(4, Math.min(32, Math.round((COLUMNS * height) / width / 2)))
  const lines = Array.from({ length: rows }, (_, j) =>
    Array.from({ length: COLUMNS }, (_, i) => {
      let [sum, count] = [0, 0]
      for (let y = Math.floor((j * height) / rows); y < ((j + 1) * height) / rows; y++)
        for (let x = Math.floor((i * width) / COLUMNS); x < ((i + 1) * width) / COLUMNS; x++) {
          const at = y * width + x
          if (alpha[at] < 128) continue
          sum += means[0][at] / 65535
          count++
        }
      if (count === 0) return ' '
      return TONES[Math.min(TONES.length - 1, Math.floor((1 - sum / count) * TONES.length))]
    }).join(''),
  )
  return lines.map((line) => `|${line}|`).join('\n')
}
