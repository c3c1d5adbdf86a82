import { describe, expect, it } from 'vitest'
import { type Billet, volumesOf } from '#billet'
import { attempt, lostTo, mass, stepOf } from '../attempt.ts'
import { bend } from '../bend/index.ts'
import { drill } from '../drill/index.ts'
import { etch } from '../etch/index.ts'
import { groove } from '../groove/index.ts'
import { harden } from '../harden/index.ts'
import { normalise } from '../normalise/index.ts'
import type { Operation, Step } from '../operation.ts'
import { polish } from '../polish/index.ts'
import { buildPiece } from '../sample-pieces.ts'
import { samplePack } from '../samples.ts'
import { stamp } from '../stamp/index.ts'
import { temper } from '../temper/index.ts'
import { turn } from '../turn/index.ts'
import { grindToShape } from './index.ts'

const plate = {
  kind: 'plaque',
  length: '140 mm',
  width: '60 mm',
  thickness: '8 mm',
  cornerRadius: '3 mm',
  edge: 'radius',
  edgeSize: '1 mm',
  holes: 'corners',
  grooves: [{ path: 'around', inset: '14 mm', cutter: '3 mm', depth: '1.5 mm' }],
  stampLength: '40 mm',
  stampWidth: '25 mm',
  stampDepth: '1.5 mm',
}
const fuller = {
  width: '9 mm',
  depth: '1 mm',
  offset: '10 mm',
  start: '40 mm',
  length: '500 mm',
  runOut: '30 mm',
}
const pieces = {
  'the builder’s plate': plate,
  'a knife': { kind: 'hidden-tang-knife' },
  'a sword with a fuller': { kind: 'sword', fullers: [fuller] },
  'a dagger': { kind: 'dagger' },
} as const

function barFor(size: { length: number; width: number; height: number }, sheets = 15): Billet {
  const mm = (m: number) => m * 1000 + 3
  return samplePack(mm(size.length), mm(size.width), mm(size.height), sheets)
}

describe.each(Object.entries(pieces))('%s', (_name, raw) => {
  const piece = buildPiece(raw)
  const route: [Operation, Record<string, unknown>][] = [
    [grindToShape, { leave: '0.2 mm' }],
    ...(piece.features.some((f) => f.kind === 'groove' || f.kind === 'fuller')
      ? [[groove, {}] as [Operation, Record<string, unknown>]]
      : []),
    ...(piece.features.some((f) => f.kind === 'hole' || f.kind === 'slot')
      ? [[drill, {}] as [Operation, Record<string, unknown>]]
      : []),
    ...(piece.features.some((f) => f.kind === 'stamp')
      ? [[stamp, {}] as [Operation, Record<string, unknown>]]
      : []),
    [normalise, {}],
    [harden, {}],
    [temper, {}],
    [polish, {}],
  ]
  const start = barFor(piece.blank.size)
  const steps: Step[] = []
  for (const [operation, values] of route)
    steps.push(stepOf(operation, values, steps.at(-1)?.after ?? start, { piece }))
  const finished = (steps.at(-1) as Step).after

  it('is the drawn piece when it is polished, to a part in a thousand million', () => {
    expect(Math.abs(finished.volume / piece.volume - 1)).toBeLessThan(1e-9)
    expect(finished.size).toEqual(piece.size)
    expect(finished.temper).toBe('tempered')
    expect(steps.flatMap((s) => s.warnings.map((w) => w.what))).toEqual([])
  })

  it('loses to each cause what that cause takes', () => {
    const features = piece.features.reduce((sum, f) => sum + f.volume, 0)
    const ground = lostTo(steps[0], 'ground') / 7850
    const left = 2e-4 * piece.surface
    // Stock on every face is surface × thickness, but for the corners and what does not fit the box.
    expect(Math.abs(start.volume - ground - piece.volume - features - left)).toBeLessThan(
      0.03 * left + 1e-12,
    )
    const cut = steps.reduce((sum, s) => sum + lostTo(s, 'cut out') + lostTo(s, 'drilled'), 0)
    const taken = piece.features
      .filter((f) => f.kind !== 'stamp')
      .reduce((sum, f) => sum + f.volume, 0)
    expect(cut / 7850).toBeCloseTo(taken, 13)
    // Four treating heats of 0.02 mm, or five where it is stamped hot.
    const heats = piece.features.some((f) => f.kind === 'stamp') ? 5 : 4
    const burnt = steps.reduce((sum, s) => sum + lostTo(s, 'scale'), 0) / 7850
    expect(burnt / (heats * 2e-5 * piece.surface)).toBeGreaterThan(0.9)
    expect(burnt / (heats * 2e-5 * piece.surface)).toBeLessThan(1.001)
  })

  it('loses microns to the acid: surface × depth × share of the dark steel', () => {
    const raw = { depth: '14 µm', dark: ['1095'] }
    const step = stepOf(etch, raw, finished, { piece })
    const dark = volumesOf(finished)['1095'] / finished.volume
    expect(lostTo(step, 'etched')).toBeCloseTo(piece.surface * 14e-6 * dark * 7850, 12)
    expect(lostTo(step, 'etched') / mass(finished)).toBeLessThan(0.02)
  })

  it('is of the steels that lie in its solid, cut layer by layer', () => {
    const [first] = steps
    const { height } = start.size
    let z = -height / 2
    const bright = (start.build.form === 'layered' ? start.build.layers : []).reduce(
      (sum, layer) => {
        const v = layer.steel === '15N20' ? piece.volumeBetween(z, z + layer.thickness) : 0
        z += layer.thickness
        return sum + v
      },
      0,
    )
    const thin = stepOf(grindToShape, { leave: '0 mm' }, start, { piece })
    const has = volumesOf(thin.after)['15N20'] / thin.after.volume
    expect(Math.abs(has - bright / piece.volume)).toBeLessThan(2e-3)
    expect(first.after.made).toEqual(['shape'])
  })
})

describe('where a hole goes', () => {
  const holesTold = (raw: { readonly kind: string; readonly [name: string]: unknown }) => {
    const piece = buildPiece(raw)
    const { notes = [] } = stepOf(drill, {}, barFor(piece.size), { piece })
    return notes.filter((note) => / from /.test(note))
  }

  it('is told from the butt of a blade: a pin 25 mm behind the shoulder of a 110 mm handle', () => {
    const pins = [{ fromShoulder: '25 mm', diameter: '5 mm' }]
    const told = holesTold({ kind: 'full-tang-knife', handleLength: '110 mm', pins })
    expect(told).toEqual([expect.stringMatching(/^pin hole: 5 mm, 85 mm from the butt, /)])
  })

  it('is told from the left end of what has no butt', () => {
    const ends = { ...plate, grooves: [], holes: 'ends', holeInset: '12 mm', holeDiameter: '4 mm' }
    expect(holesTold(ends)).toEqual([
      'screw hole: 4 mm, 12 mm from the left end, on the middle line.',
      'screw hole: 4 mm, 128 mm from the left end, on the middle line.',
    ])
  })
})

describe('grinding to shape', () => {
  const piece = buildPiece(pieces['the builder’s plate'])

  it('takes each face of a plate: of layers that cross its length those between its ends stay', () => {
    // 15 layers of 10 mm across a bar of 150: the plate's 140 mm lie 5 mm in from each end.
    const layers = Array.from({ length: 15 }, (_, i) => ({
      steel: i % 2 === 0 ? '1095' : '15N20',
      thickness: 0.01,
    }))
    const bar: Billet = {
      ...samplePack(150, 64, 11),
      build: { form: 'layered', axis: 'x', layers, laid: 15 },
    }
    const flat = buildPiece({ kind: 'plaque', length: '140 mm', width: '60 mm', thickness: '8 mm' })
    const { after } = stepOf(grindToShape, { leave: '0 mm' }, bar, { piece: flat })
    // 7 bright layers of 10 mm in 140.
    expect(volumesOf(after)['15N20'] / after.volume).toBeCloseTo(0.5, 3)
  })

  it('says by how much the bar is too small, and in what', () => {
    const bar = samplePack(150, 61, 11, 15)
    const [problem] = attempt(grindToShape, {}, bar, { piece }).problems ?? []
    // 60 + 2 × (0.1 polish + 0.8 grinding) = 61.8.
    expect(problem.what).toBe('the bar is 0.8 mm too small in width for the piece')
    expect(attempt(grindToShape, { stock: '0.4 mm' }, bar, { piece }).problems).toBeUndefined()
  })

  it('keeps the end of a bar that is much too long', () => {
    const step = stepOf(grindToShape, {}, samplePack(300, 64, 11, 15), { piece })
    // 300 less the plate's 141.8 and one cut of 1.6.
    expect(step.setAside[0].size.length * 1000).toBeCloseTo(156.6, 9)
  })

  it('cannot be done twice, nor without a piece', () => {
    const once = stepOf(grindToShape, {}, samplePack(150, 64, 11, 15), { piece }).after
    expect(attempt(grindToShape, {}, once, { piece }).problems).toBeDefined()
    expect(attempt(grindToShape, {}, samplePack()).problems?.[0].what).toMatch(/no piece/)
  })
})

describe('what the route forgets or burns away', () => {
  const piece = buildPiece(pieces['the builder’s plate'])
  const shaped = stepOf(grindToShape, {}, samplePack(150, 64, 11, 15), { piece }).after

  it('a plate polished without its holes says so', () => {
    const polished = stepOf(polish, {}, shaped, { piece })
    expect(polished.warnings[0].what).toMatch(/without its holes and grooves and stamps/)
    expect(polished.after.volume).toBeGreaterThan(piece.volume)
  })

  it('a fire that takes more than was left says so', () => {
    const burnt = stepOf(
      harden,
      {},
      { ...shaped, temper: 'normalised' },
      { piece, shop: { treatingScale: 1.5e-4 } },
    )
    expect(burnt.warnings.map((w) => w.what)).toEqual([
      'the fire takes 50 µm more off each face than was left on it',
    ])
    expect(stepOf(polish, {}, burnt.after, { piece }).warnings[0].what).toMatch(
      /nothing left to polish/,
    )
  })

  it('drilling twice, drilling a piece without holes and drilling hard steel are told', () => {
    const once = stepOf(drill, {}, shaped, { piece }).after
    expect(attempt(drill, {}, once, { piece }).problems?.[0].what).toMatch(/made already/)
    const plain = buildPiece({
      kind: 'plaque',
      length: '140 mm',
      width: '60 mm',
      thickness: '8 mm',
    })
    expect(attempt(drill, {}, shaped, { piece: plain }).problems?.[0].what).toMatch(/has no holes/)
    const hard = stepOf(drill, {}, { ...shaped, temper: 'hardened' }, { piece })
    expect(hard.warnings[0].what).toMatch(/hardened/)
  })

  it('a stamp pressed before grinding goes as much deeper', () => {
    const bar = samplePack(150, 64, 11, 15)
    const step = stepOf(stamp, {}, bar, { piece, shop: { forgingScale: 0 } })
    expect(step.notes[0]).toBe(
      'Press it 3 mm deep: 1.5 mm to stay and 1.5 mm that will be ground off.',
    )
    expect(mass(step.after)).toBeCloseTo(mass(bar), 12)
  })
})

describe('a ring', () => {
  const ring = { kind: 'ring-blank' } as const
  const piece = buildPiece(ring)

  it('is ground out of a slice that holds its whole box', () => {
    // Sliced 12 mm thick from 27 mm square bar: 27 × 27 × 12 mm; the ring is 24 × 24 × 8, 1351 mm³.
    const slice = samplePack(27, 27, 12)
    const { after } = stepOf(grindToShape, { leave: '0 mm' }, slice, { piece })
    expect(after.volume * 1e9).toBeCloseTo(1351, 0)
    expect(after.size).toEqual(piece.size)
  })

  it('a slice that stands the wrong way is told to be turned', () => {
    const [problem] = attempt(grindToShape, {}, samplePack(12, 27, 27), { piece }).problems!
    expect(problem.try[0]).toMatch(/^turn the bar/)
  })

  it('is not ground out of the straight strip it would be bent from', () => {
    const strip = samplePack(70, 12, 7)
    const [problem] = attempt(grindToShape, {}, strip, { piece }).problems!
    expect(problem.what).toMatch(/too small in width/)
  })

  it('is ground from a strip bent round and laid flat', () => {
    // Middle line π × 21.5 = 67.5 mm; a millimetre of stock lies on every face, and scale comes off.
    const strip = samplePack(68.1, 10.2, 4.7)
    const bent = stepOf(bend, { way: 'flatwise', radius: '11 mm' }, strip, { piece }).after
    const flat = stepOf(turn, { to: 'on edge' }, bent, { piece }).after
    const { after } = stepOf(grindToShape, {}, flat, { piece })
    expect(after.size.length * 1000).toBeCloseTo(24.2, 6)
  })
})
