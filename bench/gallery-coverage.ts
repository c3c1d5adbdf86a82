/**
 * How exact the coverage of the gallery's faces is: every look of every preset, and faces, edges and sections of the
 * four whole jobs, at 45 to 10 000 layers, where a pixel takes in a part of a layer, a few layers or many. Shares are
 * held against two sets of 32 × 32 points a pixel in double precision; what 8 × 8 points give stands beside. Nothing is
 * timed. `node bench/gallery-coverage.ts [NAME …]` (parts of names; `layers=300` for one count alone).
 */
import { readFileSync } from 'node:fs'
import { wholeCount } from '#billet'
import { type BarPattern, type Look, computeJob, patternOf, readJob, viewOf } from '#job'
import { type Origin, type Stack, moved } from '#pattern'
import { type FaceView, crop } from '#view'
import { restack } from '#warp'
import { patternOfPreset } from '../scripts/gallery/draw-preset.ts'
import { coverageErrors, layersPerMetre } from '../scripts/gallery/measure-coverage.ts'
import { type Looking, presets } from '../scripts/gallery/presets.ts'

const COUNTS = [45, 300, 1_500, 10_000]
/** Layers a pixel aimed at: resolved, borderline, unresolved. */
const FINENESS = [0.25, 2, 16]
/** Crops along and down a face, more along where it has no room for so many down, or the other way round. */
const CROPS = 3
/** Pixels a side of each, besides a rim of one. */
const SIDE = 8
/** Pixels are no larger, m, nor an eighth of a face's narrow side: nobody draws a face coarser. */
const LARGEST = 5e-4

interface Face {
  readonly name: string
  readonly pattern: BarPattern
  readonly looking: Looking
}

const mm = (n: number) => n / 1000
const jobs: Readonly<Record<string, readonly Looking[]>> = Object.fromEntries(
  (
    [
      ['galley-knife', 20, 160, 80],
      ['presentation-sword', 100, 500, 300],
      ['builders-plate', 20, 100, 60],
      ['rigging-knife', 115, 70, 140],
    ] as const
  ).map(([name, from, length, at]) => {
    const side = (of: 'front' | 'back' | 'edge' | 'spine'): Looking => ({
      caption: of,
      look: { side: of },
      from: mm(from),
      length: mm(length),
    })
    const cut = (axis: 'x' | 'z', place: number): Looking => ({
      caption: `cut ${axis} ${place} mm`,
      look: { cut: { axis, at: mm(place) } },
      ...(axis === 'z' ? { from: mm(from), length: mm(length) } : {}),
    })
    return [
      name,
      [side('front'), side('back'), side('edge'), side('spine'), cut('x', at), cut('z', 0.2)],
    ]
  }),
)

function patternOfJob(name: string): BarPattern {
  const job = readJob(readFileSync(new URL(`../jobs/${name}.json`, import.meta.url), 'utf8'))
  const computed = job.problems ? job : computeJob(job.ok)
  const pattern = computed.ok && patternOf(computed.ok)
  if (!pattern) throw new Error(`${name}: ${computed.problems?.[0]?.what}`)
  return pattern
}

/** Sheets of a pile, above which it is laid of fewer, cut and restacked; what is then ground off each face. */
const MOST_SHEETS = 60
const GROUND = 0.01

/** The same metal with every pile of three sheets or more laid of `times` as many, so much thinner. */
function relaid(origin: Origin, times: number, known = new Map<Origin, Origin>()): Origin {
  const seen = known.get(origin)
  if (seen) return seen
  const made: Origin =
    origin.kind === 'stack'
      ? pileOf(origin, times)
      : { ...origin, from: origin.from.map((o) => relaid(o, times, known)) }
  known.set(origin, made)
  return made
}

function pileOf(pile: Stack, times: number): Origin {
  const { layers } = pile
  if (layers.length < 3) return pile
  const count = Math.max(2, Math.round(layers.length * times))
  const pieces = Math.ceil(count / MOST_SHEETS)
  const sheets = Array.from({ length: Math.round(count / pieces) }, (_, i) => layers[i % 2])
  const height = (of: Stack['layers']) => of.reduce((sum, l) => sum + l.thickness, 0)
  // As high, when stacked again and ground, as the pile was.
  const piece = height(layers) / (pieces - 2 * (pieces - 1) * GROUND)
  const scale = piece / height(sheets)
  const laid = { ...pile, layers: sheets.map((l) => ({ ...l, thickness: l.thickness * scale })) }
  const grind = GROUND * piece
  return pieces === 1 ? laid : moved(laid, [restack({ pieces, length: 1, height: piece, grind })])
}

/** Layers of the whole bar, from how many its piles have. */
function layersIn(origin: Origin): number {
  if (origin.kind === 'stack') return origin.layers.length < 3 ? 0 : origin.layers.length
  const from = origin.from.reduce((sum, o) => sum + layersIn(o), 0)
  const [warp] = origin.warps
  return warp?.kind === 'restack' && origin.warps.length === 1 ? from * warp.numbers.pieces : from
}

/** The looked-at part of a face in pixels of this size. */
function windowOf({ pattern, looking }: Face, pixel: number): FaceView {
  const view = viewOf(pattern, looking.look as Look, { ppmm: 1e-3 / pixel })
  const { from = 0, length = Infinity } = looking
  const left = Math.min(view.width - 1, Math.round(from / pixel))
  const width = Math.max(1, Math.min(view.width - left, Math.round(length / pixel)))
  return crop(view, { left, top: 0, width, height: view.height })
}

/**
 * Small crops spread over a face, none over another: the same pixels counted twice would make the mean look surer than
 * it is. Fewer crops, or fewer pixels, where the face has no more.
 */
function cropsOf(face: Face, pixel: number): FaceView[] {
  const whole = windowOf(face, pixel)
  const [width, height] = [whole.width, whole.height].map((n) => Math.min(n, SIDE))
  const [most, deepest] = [whole.width, whole.height].map((n) => Math.max(1, Math.floor(n / SIDE)))
  const along = Math.min(most, Math.ceil(CROPS ** 2 / Math.min(CROPS, deepest)))
  const down = Math.min(deepest, Math.ceil(CROPS ** 2 / along))
  const places = (count: number) => Array.from({ length: count }, (_, i) => (i + 0.5) / count)
  return places(down).flatMap((y) =>
    places(along).map((x) =>
      crop(whole, {
        left: Math.floor((whole.width - width) * x) - 1,
        top: Math.floor((whole.height - height) * y) - 1,
        width: width + 2,
        height: height + 2,
      }),
    ),
  )
}

const figure = (n: number, digits: number) => n.toFixed(digits)
function say(...cells: readonly string[]): void {
  const widths = [46, 7, 9, 7, 8, 8, 8, 9, 7, 8]
  console.log(
    cells.map((c, i) => (i === 0 ? c.padEnd(widths[i]) : c.padStart(widths[i] ?? 8))).join(' '),
  )
}

const only = process.argv.slice(2)
const names = only.filter((a) => !a.includes('='))
const count = only.find((a) => a.startsWith('layers='))?.slice(7)
const faces: Face[] = [
  ...presets.map((preset) => ({ ...preset, make: () => patternOfPreset(preset) })),
  ...Object.entries(jobs).map(([name, looks]) => ({ name, looks, make: () => patternOfJob(name) })),
]
  .filter(({ name }) => names.length === 0 || names.some((n) => name.includes(n)))
  .flatMap(({ name, looks, make }) => {
    const pattern = make()
    return looks.map((looking) => ({ name: `${name}: ${looking.caption}`, pattern, looking }))
  })

say('face', 'layers', 'lay/px', 'pixels', 'ours', '8×8', '32×32', 'bias %', '± %', 'split %')

for (const face of faces) {
  const { origin, billet, light } = face.pattern
  const native = wholeCount(billet.build).laid
  const done = new Set<number>()
  for (const wanted of COUNTS) {
    if (count && Number(count) !== wanted) continue
    const metal = relaid(origin, wanted / native)
    const layers = Math.round((native * layersIn(metal)) / layersIn(origin) || native)
    if (done.has(layers)) continue
    done.add(layers)
    const { width, height } = windowOf(face, 1e-4)
    const coarse = windowOf(face, (Math.max(width, height) * 1e-4) / 24)
    const rate = layersPerMetre(coarse, metal)
    const largest = Math.min(LARGEST, (Math.min(width, height) * 1e-4) / SIDE)
    const pixels = new Set(FINENESS.map((fine) => Math.min(fine / Math.max(rate, 1), largest)))
    for (const pixel of pixels) {
      const e = coverageErrors(cropsOf(face, pixel), metal, light)
      // A bias within twice its standard error of what is let pass is not known to be more.
      const biased = Math.abs(e.bias) - 2 * e.biasError > 1e-3
      const good = e.pixels < 64 || (e.ours <= e.eight + 1e-9 && !biased)
      say(
        face.name,
        String(layers),
        figure(rate * pixel, 2),
        String(e.pixels),
        figure(e.ours, 5),
        figure(e.eight, 5),
        figure(e.reference, 5),
        figure(100 * e.bias, 3),
        figure(100 * e.biasError, 3),
        figure(100 * e.splitShare, 1),
        good ? '' : e.ours > e.eight ? 'RMS' : 'BIAS',
      )
    }
  }
}
