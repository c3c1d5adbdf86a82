import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { meshVolume, openSides } from '#geometry'
import { type Parameters, isParameter, readValues, writeValues } from '#parameters'
import { imported } from './against-kernel/kernel.ts'
import type { PieceKind, PieceSolid } from './piece-kind.ts'
import { findPieceKind, pieceKinds } from './piece-kinds.ts'
import { thicknessForMass, weigh } from './weigh.ts'

const SEED = 20260214

interface Made {
  readonly label: string
  readonly kind: PieceKind
  readonly values: Readonly<Record<string, unknown>>
  readonly solid: PieceSolid
}

const made: Made[] = pieceKinds.flatMap((kind) =>
  kind.examples.map((raw, i) => {
    const read = readValues(kind.parameters, raw)
    if (!read.ok) throw new Error(`${kind.name}: ${JSON.stringify(read.problems)}`)
    const built = kind.build(read.ok.values)
    if (!built.ok) throw new Error(`${kind.name}: ${JSON.stringify(built.problems)}`)
    return { label: `${kind.name} ${i}`, kind, values: read.ok.values, solid: built.ok }
  }),
)

describe.each(made)('$label', ({ kind, values, solid }) => {
  const { length, width, height } = solid.size

  it('has the volume of its section areas, by Simpson between its stations', () => {
    let sum = 0
    solid.stations.slice(1).forEach((end, i) => {
      const start = solid.stations[i]
      // x = middle − half·cos θ: Simpson over θ, since areas may start like a square root.
      const n = 64
      const [middle, half] = [(start + end) / 2, (end - start) / 2]
      for (let k = 0; k <= n; k++) {
        const angle = (Math.PI * k) / n
        const x = middle - half * Math.cos(angle)
        const weight = k === 0 || k === n ? 1 : k % 2 === 1 ? 4 : 2
        sum += (weight * solid.area(x) * half * Math.sin(angle) * Math.PI) / (3 * n)
      }
    })
    expect(Math.abs(sum / solid.volume - 1)).toBeLessThan(1e-6)
  })

  it('adds up from layers of any thickness', () => {
    expect(solid.volumeBetween(-Infinity, Infinity)).toBe(solid.volume)
    const cuts = [-height, -0.31 * height, 0, 0.4 * height, height]
    const layers = cuts.slice(1).map((z, i) => solid.volumeBetween(cuts[i], z))
    const total = layers.reduce((a, b) => a + b, 0)
    expect(Math.abs(total / solid.volume - 1)).toBeLessThan(1e-12)
    for (const layer of layers) expect(layer).toBeGreaterThanOrEqual(0)
  })

  it('is metal from bottom to top inside its box and nowhere else', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.1, max: 1.1, noNaN: true }),
        fc.double({ min: -0.6, max: 0.6, noNaN: true }),
        (u, v) => {
          const [x, y] = [u * length, v * width]
          const [top, bottom] = [solid.top(x, y), solid.bottom(x, y)]
          expect(top).toBeGreaterThanOrEqual(bottom)
          expect(top).toBeLessThanOrEqual(height / 2 + 1e-12)
          expect(bottom).toBeGreaterThanOrEqual(-height / 2 - 1e-12)
          if (u < -1e-9 || u > 1 + 1e-9 || Math.abs(v) > 0.5 + 1e-9)
            expect(solid.inside(x, y)).toBe(false)
          for (const normal of [solid.normalTop(x, y), solid.normalBottom(x, y)])
            expect(Math.hypot(...normal)).toBeCloseTo(1, 12)
        },
      ),
      { seed: SEED, numRuns: 8 },
    )
  })

  it('has a closed mesh with its volume and centre of mass, its error falling as the square of the facet', () => {
    const facet = Math.max(width / 40, length / 266)
    const [coarse, fine] = [3 * facet, facet].map((size) => solid.mesh(size))
    for (const mesh of [coarse, fine]) expect(openSides(mesh)).toBe(0)
    const body = imported(fine)
    expect(body.status()).toBe('NoError')
    // Corners are in single precision there, and 0.1 µm apart at least here.
    expect(Math.abs(body.volume() / (meshVolume(fine) * 1e9) - 1)).toBeLessThan(1e-4)
    const [before, after] = [coarse, fine].map((mesh) =>
      Math.abs(meshVolume(mesh) / solid.volume - 1),
    )
    expect(after).toBeLessThan(0.008)
    // A third of the facet: a ninth of the error where one sign of it prevails, never less than 2.5 times better.
    if (before > 1e-3) expect(before / after).toBeGreaterThan(2.5)
    expect(fine.chordError).toBeLessThan(facet / 2)
    const [z0, z1] = [0.1 * height, 0.27 * height]
    const layer = body.trimByPlane([0, 0, 1], z0 * 1000).trimByPlane([0, 0, -1], -z1 * 1000)
    expect(Math.abs((solid.volumeBetween(z0, z1) * 1e9) / layer.volume() - 1)).toBeLessThan(0.01)
    const box = body.boundingBox()
    expect(box.max[0] - box.min[0]).toBeCloseTo(length * 1000, 2)
    expect(box.max[1] - box.min[1]).toBeCloseTo(width * 1000, 1)
    const through = solid.edges.outline.length - 1
    expect(body.genus()).toBe(through)
  })

  it('weighs more when thicker, and the thickness for a mass gives that mass', () => {
    const heavier = thicknessForMass(kind, values, weigh(solid, 7850) * 1.1, 7850)
    if (!heavier.ok) return expect(heavier.problems[0].try.length).toBeGreaterThan(0)
    const built = kind.build(heavier.ok as never)
    expect(weigh(built.ok!, 7850) / weigh(solid, 7850)).toBeCloseTo(1.1, 5)
    for (const name of kind.thicknesses)
      if (typeof values[name] === 'number')
        expect(heavier.ok[name] as number).toBeGreaterThan(values[name] as number)
  })

  it('fits its blank, and its features are what was taken out', () => {
    const { size } = solid.blank
    expect(solid.blank.volume).toBeCloseTo(size.length * size.width * size.height, 15)
    expect(solid.volume).toBeLessThanOrEqual(solid.blank.volume * (1 + 1e-9))
    for (const feature of solid.features) expect(feature.volume).toBeGreaterThan(0)
  })

  it('comes back from a file the same', () => {
    const again = readValues(kind.parameters, writeValues(kind.parameters, values))
    expect(kind.build(again.ok!.values).ok!.volume).toBe(solid.volume)
  })
})

/** Any values a declaration lets through, most of them nonsense together. */
function anyValues(parameters: Parameters): fc.Arbitrary<Record<string, unknown>> {
  const one = Object.entries(parameters).map(([name, p]) => {
    const value: fc.Arbitrary<unknown> =
      p.form === 'quantity'
        ? fc.oneof(
            fc.constantFrom(p.min, p.max),
            fc.double({ min: p.min, max: p.max, noNaN: true }),
            fc.double({ min: Math.max(p.min, 0), max: Math.min(p.max, 0.05), noNaN: true }),
          )
        : p.form === 'choice'
          ? fc.constantFrom(...Object.keys(p.options))
          : p.form === 'list' && !isParameter(p.item)
            ? fc.array(anyValues(p.item), { minLength: p.fewest, maxLength: 2 })
            : fc.constant(undefined)
    return [name, p.optional ? fc.option(value, { nil: undefined }) : value] as const
  })
  return fc.record(Object.fromEntries(one))
}

describe('nonsense', () => {
  it.each(pieceKinds)(
    '$name answers any values with a solid or with problems, never a throw',
    (kind) => {
      fc.assert(
        fc.property(anyValues(kind.parameters), (values) => {
          const built = kind.build(values as never)
          if (built.ok) {
            expect(built.ok.volume).toBeGreaterThan(0)
            expect(Number.isFinite(built.ok.centreOfMass.x + built.ok.centreOfMass.z)).toBe(true)
            return
          }
          for (const problem of built.problems) {
            expect(problem.try.length).toBeGreaterThan(0)
            expect(JSON.stringify(problem)).not.toMatch(/NaN|undefined|null/)
          }
        }),
        { seed: SEED, numRuns: 8 },
      )
    },
  )

  it('an unknown kind is answered with the nearest', () => {
    expect(findPieceKind('plack').problems?.[0].try[0]).toContain('plaque')
  })
})
