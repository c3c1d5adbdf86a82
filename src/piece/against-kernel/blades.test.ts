import { describe, expect, it } from 'vitest'
import { type Section, drill, make, sliced, slicedLess } from './kernel.ts'

/** Relative difference of our volume from another (mm³). */
function off(kind: string, raw: Record<string, unknown>, volume: number): number {
  return Math.abs((make(kind, raw).volume * 1e9) / volume - 1)
}

/** A tapered tang behind x = 0, in mm: slices of a tapering box. */
function tang(length: number, [w0, w1]: readonly number[], [t0, t1]: readonly number[]): number {
  return sliced(0, length, 100, (x) => {
    const [w, t] = [w1 + ((w0 - w1) * x) / length, t1 + ((t0 - t1) * x) / length]
    return box(w, t)
  })
}

function box(w: number, t: number): Section {
  return [
    [-w / 2, -t / 2],
    [w / 2, -t / 2],
    [w / 2, t / 2],
    [-w / 2, t / 2],
  ]
}

/** Trapezoid with its edge at y = 0. */
function wedge(w: number, thick: number, edge: number): Section {
  return [
    [0, -edge / 2],
    [0, edge / 2],
    [w, thick / 2],
    [w, -thick / 2],
  ]
}

describe('blades against slices of the kernel', () => {
  it('hidden tang, full flat, straight back: the bowie of the worked example', () => {
    const width = (s: number) =>
      s <= 140 ? 42 : 42 * Math.sqrt(Math.max(0, 1 - ((s - 140) / 90) ** 2))
    const thick = (s: number) => 6 - (3 * s) / 230
    const volume =
      tang(115, [22, 12], [6, 4]) +
      sliced(0, 20, 20, (s) => box(42, thick(s))) +
      sliced(20, 140, 100, (s) => wedge(42, thick(s), 0.5)) +
      sliced(140, 230, 400, (s) => wedge(Math.max(width(s), 1e-4), thick(s), 0.5))
    expect(off('hidden-tang-knife', bowie, volume)).toBeLessThan(3e-5)
  })

  it('full tang, sabre grind, wharncliffe, three widths of handle and four holes', () => {
    const raw = {
      bladeLength: '100 mm',
      width: '28 mm',
      ricassoLength: '10 mm',
      plunge: '0 mm',
      spineThickness: '4 mm',
      spineThicknessPoint: '2 mm',
      edgeThickness: '0.4 mm',
      grind: 'flat',
      grindHeight: '14 mm',
      point: 'wharncliffe',
      pointLength: '40 mm',
      handleLength: '110 mm',
      handleWidth: '26 mm',
      handleWidthMiddle: '24 mm',
      handleWidthButt: '30 mm',
      buttRadius: '0 mm',
      buttThickness: '3 mm',
      lightening: [
        { fromShoulder: '50 mm', diameter: '9 mm' },
        { fromShoulder: '62 mm', diameter: '9 mm' },
      ],
    }
    const handle = (x: number) => {
      const t = x / 110
      const w = 30 * (1 - t) * (1 - 2 * t) + 24 * 4 * t * (1 - t) + 26 * t * (2 * t - 1)
      return box(w, 3 + t)
    }
    const holes = [
      [85, 6],
      [25, 6],
      [60, 9],
      [48, 9],
    ].map(([x, d]) => drill(x, 0, d, 256))
    const thick = (s: number) => 4 - (2 * s) / 100
    const ground = (s: number): Section => {
      const w = s <= 60 ? 28 : (28 * (100 - s)) / 40
      const [t, b] = [thick(s), Math.min(14, w)]
      const flats: Section = [
        [b, t / 2],
        [w, t / 2],
        [w, -t / 2],
        [b, -t / 2],
      ]
      return [[0, -0.2], [0, 0.2], ...flats]
    }
    const volume =
      slicedLess(0, 110, 150, handle, holes) +
      sliced(0, 10, 10, (s) => box(28, thick(s))) +
      sliced(10, 60, 60, ground) +
      sliced(60, 80, 100, ground) +
      sliced(80, 100, 100, ground)
    expect(off('full-tang-knife', raw, volume)).toBeLessThan(3e-5)
  })

  it('dagger, diamond and six-sided, straight to the point', () => {
    for (const section of ['diamond', 'hexagonal']) {
      const raw = {
        section,
        bladeLength: '220 mm',
        width: '32 mm',
        ridgeThickness: '6 mm',
        ridgeThicknessPoint: '3 mm',
        edgeThickness: '0.4 mm',
        pointLength: '60 mm',
        ricassoLength: '0 mm',
        plunge: '0 mm',
        flatShare: '40 %',
        tangLength: '90 mm',
        tangWidth: '14 mm',
        tangEndWidth: '8 mm',
        tangEndThickness: '2.5 mm',
      }
      const flat = section === 'hexagonal' ? 0.4 : 0
      const at = (s: number): Section => {
        const a = s <= 160 ? 16 : (16 * (220 - s)) / 60
        const r = (6 - (3 * s) / 220) / 2
        return [
          [-a, -0.2],
          [-a, 0.2],
          [-a * flat, r],
          [a * flat, r],
          [a, 0.2],
          [a, -0.2],
          [a * flat, -r],
          [-a * flat, -r],
        ]
      }
      const volume =
        tang(90, [14, 8], [6, 2.5]) + sliced(0, 160, 200, at) + sliced(160, 220, 200, at)
      expect(off('dagger', raw, volume)).toBeLessThan(3e-5)
    }
  })

  it('dagger, hollow by the wheel: slices with arcs of the wheel’s radius', () => {
    const raw = {
      section: 'hollow-diamond',
      bladeLength: '180 mm',
      width: '28 mm',
      ridgeThickness: '8 mm',
      ridgeThicknessPoint: '5 mm',
      edgeThickness: '0.4 mm',
      wheelDiameter: '300 mm',
      pointLength: '50 mm',
      ricassoLength: '0 mm',
      plunge: '0 mm',
    }
    const at = (s: number): Section => {
      const a = s <= 130 ? 14 : (14 * (180 - s)) / 50
      const [r, e] = [(8 - (3 * s) / 180) / 2, 0.2]
      const chord = Math.hypot(a, r - e)
      const face = Array.from({ length: 61 }, (_, i): [number, number] => {
        const t = i / 60
        const sagitta =
          Math.sqrt(150 ** 2 - (chord * (t - 0.5)) ** 2) - Math.sqrt(150 ** 2 - chord ** 2 / 4)
        return [a * t - (sagitta * (r - e)) / chord, r + (e - r) * t - (sagitta * a) / chord]
      })
      const upper = [
        ...face
          .slice(1)
          .reverse()
          .map(([y, z]): [number, number] => [-y, z]),
        ...face,
      ]
      return [
        ...upper,
        ...[...upper].reverse().map(([y, z]): [number, number] => [y, -z]),
      ].reverse()
    }
    const volume = tang(90, [14, 8], [8, 2.5]) + sliced(0, 130, 60, at) + sliced(130, 180, 100, at)
    expect(off('dagger', raw, volume)).toBeLessThan(1e-4)
  })

  it('sword, curved, ridged, with a fuller on both faces that runs out', () => {
    const raw = {
      bladeLength: '700 mm',
      width: '36 mm',
      ricassoLength: '0 mm',
      plunge: '0 mm',
      curve: '18 mm',
      spineThickness: '7 mm',
      spineThicknessPoint: '4 mm',
      edgeThickness: '0.6 mm',
      point: 'wharncliffe',
      widthAtPoint: '30 mm',
      pointLength: '50 mm',
      grind: 'ridged',
      grindHeight: '20 mm',
      backThickness: '80 %',
      tangLength: '150 mm',
      tangWidth: '24 mm',
      tangEndWidth: '14 mm',
      tangEndThickness: '4 mm',
      fullers: [
        {
          width: '8 mm',
          depth: '1 mm',
          offset: '9 mm',
          start: '40 mm',
          length: '500 mm',
          runOut: '30 mm',
        },
      ],
    }
    const radius = 8 ** 2 / 8 + 0.5
    const width = (s: number) => (s <= 650 ? 36 - (6 * s) / 650 : (30 * (700 - s)) / 50)
    const depth = (s: number) => {
      const into = Math.min(s - 40, 540 - s)
      return into <= 0 ? 0 : into >= 30 ? 1 : 1 - (1 - into / 30) ** 2
    }
    const at = (s: number): Section => {
      const [w, t, d] = [width(s), 7 - (3 * s) / 700, depth(s)]
      const half = (v: number) => {
        const b = Math.min(20, w)
        const plain =
          v <= b ? 0.3 + ((t / 2 - 0.3) * v) / b : t / 2 - (t / 2) * 0.2 * ((v - b) / (w - b))
        const q = v - (w - 9)
        return (
          plain -
          Math.max(
            0,
            d > 0 && Math.abs(q) < radius ? Math.sqrt(radius ** 2 - q ** 2) - (radius - d) : 0,
          )
        )
      }
      const face = Array.from({ length: 241 }, (_, i): [number, number] => [
        (w * i) / 240,
        half((w * i) / 240),
      ])
      return [...face.map(([y, z]): [number, number] => [y, -z]), ...face.reverse()]
    }
    const volume =
      tang(150, [24, 14], [7, 4]) +
      [
        [0, 40],
        [40, 70],
        [70, 510],
        [510, 540],
        [540, 650],
        [650, 700],
      ].reduce((sum, [a, b]) => sum + sliced(a, b, 50, at), 0)
    expect(off('sword', raw, volume)).toBeLessThan(1e-4)
  })
})

const bowie = {
  bladeLength: '230 mm',
  width: '42 mm',
  ricassoLength: '20 mm',
  plunge: '0 mm',
  spineThickness: '6 mm',
  spineThicknessPoint: '3 mm',
  edgeThickness: '0.5 mm',
  point: 'straight-back',
  pointLength: '90 mm',
  grind: 'full-flat',
  tangLength: '115 mm',
  tangWidth: '22 mm',
  tangEndWidth: '12 mm',
  tangThickness: '6 mm',
  tangEndThickness: '4 mm',
}
