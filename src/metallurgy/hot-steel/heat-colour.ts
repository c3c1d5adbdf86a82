/**
 * The colour of hot steel, for a swatch and a word: a display rule, not a pyrometer. Planck's law
 * through the CIE 1931 eye (sum-of-lobes fit, constants from memory), hue at unit luminance
 * brought into sRGB by mixing with grey, brightness by the eye's power law, nine parts in a
 * hundred scattered, each channel saturating. Exponent, scatter and fade were tuned by eye.
 */
export interface HeatColour {
  /** Empty below 500 °C: no glow that can be seen. */
  readonly word: string
  /** sRGB 0 to 255, or none where nothing glows. */
  readonly srgb?: readonly [number, number, number]
  readonly hex?: string
}

// Words as smiths use them; common practice, no one source. °C each begins at.
const words = [
  [500, 'faint red'],
  [580, 'blood red'],
  [680, 'dark cherry'],
  [750, 'cherry'],
  [820, 'bright cherry'],
  [900, 'orange red'],
  [970, 'orange'],
  [1050, 'yellow orange'],
  [1120, 'yellow'],
  [1200, 'light yellow'],
  [1280, 'white'],
] as const

function lobe(x: number, middle: number, left: number, right: number): number {
  const t = (x - middle) * (x < middle ? left : right)
  return Math.exp(-0.5 * t * t)
}

/** X, Y, Z of a black body (K), to a common factor. */
function eye(temperature: number): readonly [number, number, number] {
  let x = 0
  let y = 0
  let z = 0
  for (let nm = 360; nm <= 830; nm += 2) {
    const metres = nm * 1e-9
    // second radiation constant, m K (CODATA)
    const glow = metres ** -5 / (Math.exp(0.014387769 / (metres * temperature)) - 1)
    x +=
      glow *
      (0.362 * lobe(nm, 442, 0.0624, 0.0374) +
        1.056 * lobe(nm, 599.8, 0.0264, 0.0323) -
        0.065 * lobe(nm, 501.1, 0.049, 0.0382))
    y += glow * (0.821 * lobe(nm, 568.8, 0.0213, 0.0247) + 0.286 * lobe(nm, 530.9, 0.0613, 0.0322))
    z += glow * (1.217 * lobe(nm, 437, 0.0845, 0.0278) + 0.681 * lobe(nm, 459, 0.0385, 0.0725))
  }
  return [x, y, z]
}

const brightness1300 = eye(1573.15)[1]

function encode(v: number): number {
  const s = v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055
  return Math.round(255 * Math.min(Math.max(s, 0), 1))
}

/** The colour a bar at this temperature (K) glows in the shade. */
export function heatColour(temperature: number): HeatColour {
  const t = Number.isFinite(temperature) ? temperature - 273.15 : 0
  if (t < 500) return { word: '' }
  const held = Math.min(t, 1500)
  const [x, y, z] = eye(held + 273.15)
  const linear = [
    (3.2406 * x - 1.5372 * y - 0.4986 * z) / y,
    (-0.9689 * x + 1.8758 * y + 0.0415 * z) / y,
    (0.0557 * x - 0.204 * y + 1.057 * z) / y,
  ]
  const lowest = Math.min(...linear, 0)
  const exposure = 3.6 * (y / brightness1300) ** 0.36
  const fade = held < 640 ? 0.35 + (0.65 * (held - 440)) / 200 : 1
  const [r, g, b] = linear.map((c) => {
    const inGamut = (c - lowest) / (1 - lowest)
    const seen = 0.91 * inGamut * exposure + 0.09 * 0.55 * exposure * exposure
    return encode(fade * (1 - Math.exp(-seen)))
  }) as [number, number, number]
  const hex = '#' + [r, g, b].map((v) => v.toString(16).padStart(2, '0')).join('')
  return { word: words.findLast(([from]) => held >= from)![1], srgb: [r, g, b], hex }
}
