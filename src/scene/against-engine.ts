import { computeJob, patternOf, readJob } from '#job'
import { drawEtched } from '#look'
import { drawFaceNow } from '#pattern'
import { type FaceView, type Side, crop, faceOfSolid, pressedCorners, smoothNormals } from '#view'
import { cutFacets } from './facets.ts'
import type { Shot } from './shot.ts'
import { SteelScene } from './steel-scene.ts'
import type { Camera, Vector } from './views.ts'

/** A face, or a part of it about a place along and across, at some pixels to a millimetre. */
export interface Asked {
  readonly job: string
  readonly side: Side
  readonly ppmm: number
  readonly part?: {
    readonly along: number
    readonly across: number
    readonly width: number
    readonly height: number
  }
  readonly depth?: number
}

/** How the card's picture differs from the engine's, on pixels wholly of metal in both. */
export interface Differences {
  readonly pixels: number
  /** Pixels through which no more than half a sheet runs, and straight (resolved); of them the share within 2/255. */
  readonly resolved: number
  readonly within: number
  /** Pixels taken in parts, and how far their coverage differs, in the mean: the engine takes bent parts in parts again. */
  readonly parted: number
  readonly partedOff: number
  /** Mean coverage of the rest, by the card and by the engine. */
  readonly fine: number
  readonly byCard: number
  readonly byEngine: number
  /** Mean of the differences of the etched pictures, of 255. */
  readonly look: number
}

const canvas = document.querySelector('canvas')!
const scene = new SteelScene(canvas)

function pieceOf(job: string) {
  const read = readJob(job)
  const computed = read.ok && computeJob(read.ok).ok
  const pattern = computed && patternOf(computed)
  if (!pattern?.solid) throw new Error('the job does not work out to a piece')
  return { solid: pattern.solid, origin: pattern.origin, weights: [pattern.light] }
}

async function layPiece({ solid, origin, weights }: ReturnType<typeof pieceOf>, facet: number) {
  const { positions, triangles } = solid.mesh(facet)
  const { length, width, height } = solid.size
  const box = { low: [0, -width / 2, -height / 2], high: [length, width / 2, height / 2] } as const
  const { imprint } = solid
  const smooth = smoothNormals(positions, triangles, imprint)
  const below = imprint && pressedCorners(positions, imprint)
  const facets = cutFacets(positions, triangles, smooth, below)
  await scene.lay({ facets, box, origin, weights })
}

async function measure({ job, side, ppmm, part, depth = 0 }: Asked): Promise<Differences> {
  const piece = pieceOf(job)
  const { solid, origin, weights } = piece
  const facet = solid.size.length / 150
  const whole = faceOfSolid(solid, side, { ppmm, depth, facet })
  const view = part
    ? crop(whole, {
        left: Math.round(part.along * (whole.width - part.width)),
        top: Math.round(part.across * (whole.height - part.height)),
        width: part.width,
        height: part.height,
      })
    : whole
  const map = drawFaceNow(view, origin, { weights })
  const etched = drawEtched(map, { scaleBar: false, polish: false })
  await layPiece(piece, facet)
  scene.draw(shotOf(view, depth), view.width, view.height)
  while (!scene.refine());
  const [places, traces, cover, more, shown] = (
    ['places', 'traces', 'cover', 'more', 'shown'] as const
  ).map((w) => scene.read(w))
  const sums = {
    ...{ pixels: 0, resolved: 0, within: 0, parted: 0, partedOff: 0 },
    ...{ fine: 0, byCard: 0, byEngine: 0, look: 0 },
  }
  for (let row = 0; row < view.height; row++)
    for (let column = 0; column < view.width; column++) {
      const card = 4 * ((view.height - 1 - row) * view.width + column)
      const engine = row * view.width + column
      if (map.alpha[engine] !== 255 || places![card + 3] !== 1 || !(more![card]! > 0)) continue
      sums.pixels++
      const mine = cover![card]! / more![card]!
      const theirs = map.means[0]![engine]! / 65535
      sums.look += Math.abs(255 * shown![card + 1]! - etched.data[3 * engine + 1]!)
      const parted = more![card + 3]! > 0.5
      if (parted) {
        sums.parted++
        sums.partedOff += Math.abs(mine - theirs)
      }
      if (!parted && Math.abs(traces![card + 1]!) + Math.abs(traces![card + 2]!) <= 0.5) {
        sums.resolved++
        if (Math.abs(mine - theirs) <= 2 / 255) sums.within++
      } else {
        sums.fine++
        sums.byCard += mine
        sums.byEngine += theirs
      }
    }
  return {
    ...sums,
    within: sums.within / Math.max(sums.resolved, 1),
    partedOff: sums.partedOff / Math.max(sums.parted, 1),
    byCard: sums.byCard / Math.max(sums.fine, 1),
    byEngine: sums.byEngine / Math.max(sums.fine, 1),
    look: sums.look / Math.max(sums.pixels, 1),
  }
}

/**
 * The strain of a pixel against the mean of sixteen drawn in its place, each looked at once: in how many of all pixels
 * the two are the same, taken in parts and looked at once. Where a facet ends within a pixel they cannot be.
 */
async function sameStrain({ job, side, ppmm }: Asked): Promise<{ parts: number; once: number }> {
  const piece = pieceOf(job)
  await layPiece(piece, piece.solid.size.length / 150)
  await scene.prepareWorked()
  const view = faceOfSolid(piece.solid, side, { ppmm })
  const { width, height } = view
  const coarse = { ...shotOf(view, 0), mode: 'strain' } as const
  const fine = { ...coarse, camera: { ...coarse.camera, pixel: view.pixel / 4 } }
  scene.draw(fine, 4 * width, 4 * height)
  const looks = scene.read('worked')
  scene.draw(coarse, width, height)
  const once = scene.read('worked')
  while (!scene.refine());
  const parts = scene.read('worked')
  const same = { parts: 0, once: 0 }
  let count = 0
  for (let i = 0; i < width * height; i++) {
    const [x, y] = [4 * (i % width), 4 * Math.floor(i / width)]
    const own = Array.from({ length: 16 }, (_, k) => 4 * ((y + (k >> 2)) * 4 * width + x + (k & 3)))
    if (own.some((at) => looks[at + 2] !== 1) || !(parts[4 * i + 2]! > 0.99)) continue
    const mean = own.reduce((sum, at) => sum + looks[at + 1]!, 0) / 16
    if (Math.abs(parts[4 * i + 1]! / parts[4 * i + 2]! - mean) < 5e-4) same.parts++
    if (Math.abs(once[4 * i + 1]! - mean) < 5e-4) same.once++
    count++
  }
  return { parts: same.parts / count, once: same.once / count }
}

/** The engine's view as the scene's: the same pixels, the same plane of the picture. */
function shotOf(view: FaceView, ground: number): Shot {
  const { origin, right, up, out } = view.frame
  const middle = origin.map(
    (c, k) => c + (view.pixel * (view.width * right[k]! + view.height * up[k]!)) / 2,
  ) as unknown as Vector
  const camera: Camera = { right, up, out, middle, pixel: view.pixel }
  return {
    camera,
    mode: 'etched',
    range: [0, 1],
    steps: 1,
    finish: 'dark',
    strip: 0.21,
    stripTurn: 0,
    ground,
    polish: false,
  }
}

Object.assign(window, { measure, sameStrain })
