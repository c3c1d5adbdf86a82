import { readFileSync, readdirSync } from 'node:fs'
import { encode } from 'jpeg-js'
import { computeJob, declared, patternOf, readJob, viewOf } from '#job'
import { drawEtched } from '#look'
import { drawFaceNow } from '#pattern'
import { crop } from '#view'

/** A picture that goes into the app with the build. */
export interface CuttingPicture {
  /** Of the pattern, as the trade has it. */
  readonly name: string
  readonly width: number
  readonly height: number
  readonly jpeg: Uint8Array
}

const folder = new URL('../jobs/patterns/', import.meta.url)

/** Px of a cutting at true size, and pixels to one: screens twice as fine show it sharp, others no worse. */
const WIDE = 214
const HIGH = 99
const DENSE = 2
/** Of a hundred: at less, fine lines have a haze about them. */
const QUALITY = 75

/** A true cutting of each pattern that the planner keeps, out of the middle of its small job's face, at true size. */
export function drawCuttings(): CuttingPicture[] {
  const kept = new Set(declared().patterns.map(({ name }) => name))
  return readdirSync(folder).flatMap((file) => {
    const text = readFileSync(new URL(file, folder), 'utf8')
    const { wishes } = JSON.parse(text) as { readonly wishes?: { readonly pattern?: string } }
    const name = wishes?.pattern
    return name !== undefined && kept.has(name) ? [{ name, ...draw(text, file) }] : []
  })
}

function draw(text: string, file: string) {
  const job = readJob(text)
  const computed = job.ok && computeJob(job.ok).ok
  const pattern = computed && patternOf(computed)
  if (!pattern) throw new Error(`jobs/patterns/${file} does not work out`)
  const whole = viewOf(pattern, { side: 'front' }, { ppmm: (DENSE * 96) / 25.4 })
  const [width, height] = [
    Math.min(whole.width, DENSE * WIDE),
    Math.min(whole.height, DENSE * HIGH),
  ]
  const view = crop(whole, {
    left: Math.floor((whole.width - width) / 2),
    top: Math.floor((whole.height - height) / 2),
    width,
    height,
  })
  const map = drawFaceNow(view, pattern.origin, { weights: [pattern.light] })
  const { data } = drawEtched(map, { scaleBar: false })
  const rgba = new Uint8Array(width * height * 4).fill(255)
  for (let i = 0; i < width * height; i++) rgba.set(data.subarray(3 * i, 3 * i + 3), 4 * i)
  return { width, height, jpeg: encode({ data: rgba, width, height }, QUALITY).data }
}
