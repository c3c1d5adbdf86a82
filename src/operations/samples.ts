import { type Billet, type Layer, layered, solid } from '#billet'
import type { Section } from '#billet'
import { barVolume } from '#billet'

/** Bars for the laws to try operations on: sizes in millimetres, steels 1095 (dark) and 15N20 (bright). */
const mm = (n: number) => n / 1000

/** A welded pack of flat layers, dark outside, 7 × 3 mm + 6 × 1.5 mm scaled to the height. */
export function samplePack(length = 105, width = 30, height = 30, sheets = 13): Billet {
  const dark = Array.from({ length: sheets }, (_, i): Layer => ({
    steel: i % 2 === 0 ? '1095' : '15N20',
    thickness: i % 2 === 0 ? 3 : 1.5,
  }))
  const whole = dark.reduce((sum, l) => sum + l.thickness, 0)
  const layers = dark.map((l) => ({ ...l, thickness: (l.thickness / whole) * mm(height) }))
  return bar(length, width, height, layered('z', layers))
}

/** A bar of one steel. */
export function sampleBar(
  length = 150,
  width = 20,
  height = 10,
  steel = '1084',
  section: Section = 'rectangle',
): Billet {
  return {
    ...bar(length, width, height, solid(steel, mm(height))),
    shape: section,
    volume: barVolume({ length: mm(length), width: mm(width), height: mm(height) }, section),
  }
}

function bar(length: number, width: number, height: number, build: Billet['build']): Billet {
  const size = { length: mm(length), width: mm(width), height: mm(height) }
  return {
    size,
    shape: 'rectangle',
    volume: barVolume(size, 'rectangle'),
    build,
    bond: 'welded',
    temper: 'as forged',
    worked: 0.5,
    spare: 'x',
  }
}

/** The same pack as it lies before the weld. */
export function loose(pack: Billet): Billet {
  return { ...pack, bond: 'loose', worked: 1 }
}
