import { writeFile } from 'node:fs/promises'
import { type QuantityKind, readQuantity } from '#units'
import { type Crew, type PatternMap, openCrew } from '#pattern'
import {
  type FinishName,
  type Image,
  drawContours,
  drawEtched,
  drawLabels,
  drawLayerMap,
  finishes,
} from '#look'
import { type Look, type BarPattern, drawPattern, viewOf } from '#job'
import { writePng } from '#formats'
import { BadUsage, type Given, type Options, type Terminal, one, text } from './command.ts'

/** How a picture is drawn and where it goes: asked for alike by every command that draws. */
export const pictureOptions: Options = {
  ppmm: { type: 'string' },
  finish: { type: 'string' },
  map: { type: 'string' },
  bits: { type: 'string' },
}

export const pictureHelp = [
  '--ppmm    pixels to a millimetre, 20 if left out',
  '--finish  bright, dark (usual) or deep',
  '--map     layers: plain tones; bars: which bar each place is of (16 bits); lines: outlines, as SVG',
  '--bits    8 (usual) or 16 to a colour',
]

/** What the picture is to be. */
export interface PictureWanted {
  readonly ppmm: number
  readonly finish: FinishName
  readonly map: 'none' | 'layers' | 'bars' | 'lines'
  readonly bits: 8 | 16
}

/** More pixels than this are asked about with their cure, not drawn: a billion is 10 GB of work. */
const MOST_PIXELS = 1.2e9

/** Drawn on one core, pixels. */
const SMALL = 200_000

export function pictureWanted(given: Given, ppmm = 20): PictureWanted {
  const scale = Number(text(given, 'ppmm') ?? ppmm)
  if (!(scale > 0 && scale <= 2000))
    throw new BadUsage(`--ppmm ${text(given, 'ppmm')} is no number of pixels`, ['--ppmm 20'])
  return {
    ppmm: scale,
    finish: one(given, Object.keys(finishes), 'finish', 'dark') as FinishName,
    map: one(given, ['none', 'layers', 'bars', 'lines'], 'map', 'none') as PictureWanted['map'],
    bits: Number(one(given, ['8', '16'], 'bits', '8')) as 8 | 16,
  }
}

/** A quantity of the command line in SI. */
export function measure(given: Given, option: string, of: QuantityKind): number | undefined {
  const written = text(given, option)
  if (written === undefined) return undefined
  const read = readQuantity(written, of)
  if (read.problems)
    throw new BadUsage(`--${option}: ${read.problems[0].what}`, read.problems[0].try)
  return read.ok.si
}

/** Draws on all cores and writes the file; gives its size in pixels. */
export async function writePicture(
  pattern: BarPattern,
  look: Look,
  wanted: PictureWanted,
  path: string,
  terminal: Terminal,
  shared?: Crew,
): Promise<{ readonly width: number; readonly height: number; readonly splitShare: number }> {
  const { width, height } = viewOf(pattern, look, wanted)
  if (width <= 1 || height <= 1)
    throw new BadUsage('there is no metal where the picture is to be', [
      'a place inside the piece',
      'more pixels to the millimetre',
    ])
  if (width * height > MOST_PIXELS)
    throw new BadUsage(`the picture would be ${width} × ${height} pixels`, [
      `--ppmm ${Math.max(1, Math.floor(wanted.ppmm * Math.sqrt(MOST_PIXELS / (width * height))))}`,
    ])
  // Opening workers costs more than drawing a small picture.
  const crew = shared ?? (width * height > SMALL ? openCrew() : undefined)
  try {
    const map = await drawPattern(pattern, look, {
      ppmm: wanted.ppmm,
      margin: 1e-3,
      crew,
      signal: terminal.signal,
      onProgress: (share) => terminal.progress(share, 'drawing'),
    })
    await writeFile(path, drawnAs(map, wanted))
    return { width, height, splitShare: map.splitShare }
  } finally {
    if (!shared) crew?.close()
  }
}

function drawnAs(map: PatternMap, { finish, map: as, bits }: PictureWanted): Uint8Array | string {
  if (as === 'lines') return drawContours(map)
  const draw: Record<'none' | 'layers' | 'bars', () => Image> = {
    none: () => drawEtched(map, { finish: finishes[finish], bits }),
    layers: () => drawLayerMap(map, { bits }),
    bars: () => drawLabels(map),
  }
  return writePng(draw[as]())
}
