import { type Composition, type Element, percent } from '#steel'
import { type Estimate, hold, rangeChecks } from '../estimate.ts'

const inch = 0.0254

/** Base ideal diameter, in, grain No. 7 (ASTM A255-10; A255-HB, read). Carbon held to .90 %. */
export function baseDiameter(carbon: number): number {
  const c = hold(carbon, [0, 0.9])
  if (c <= 0.39) return 0.54 * c
  if (c <= 0.55) return 0.171 + 0.001 * c + 0.265 * c * c
  if (c <= 0.65) return 0.115 + 0.268 * c - 0.038 * c * c
  if (c <= 0.75) return 0.143 + 0.2 * c
  return 0.062 + 0.409 * c - 0.135 * c * c
}

/** Multiplying factor of one element (A255-HB, read). */
export function alloyFactor(element: Element, wt: number): number {
  const w = hold(wt, [0, 5])
  switch (element) {
    case 'Mn':
      return w <= 1.2 ? 3.3333 * w + 1 : 5.1 * Math.min(w, 1.95) - 1.12
    case 'Si':
      return 0.7 * w + 1
    case 'Cr':
      return 2.16 * w + 1
    case 'Ni': {
      const n = Math.min(w, 3.5)
      return n <= 1.5 ? 0.363 * n + 1 : 0.3211 + 1.4501 * n - 0.6119 * n * n + 0.1253 * n ** 3
    }
    case 'Mo':
      return 3 * w + 1
    case 'Cu':
      return 0.365 * w + 1
    case 'V':
      return 1.73 * w + 1
    case 'Zr':
      return 2.5 * w + 1
    default:
      return 1
  }
}

const counted: readonly Element[] = ['Mn', 'Si', 'Ni', 'Cr', 'Mo', 'Cu', 'V', 'Zr']

/** A255 ideal diameter, m, whatever the carbon. One grain number is 8 % (Grossmann, from memory). */
export function idealDiameterA255(composition: Composition, grainNumber = 7): number {
  const factors = counted.reduce((f, e) => f * alloyFactor(e, percent(composition, e)), 1)
  return (
    baseDiameter(percent(composition, 'C')) *
    factors *
    1.08 ** (7 - hold(grainNumber, [0, 12])) *
    inch
  )
}

/**
 * The diameter that hardens to half martensite at its axis in an ideal quench, m. Up to .70 %
 * carbon A255. Above .80 %, hardened with carbide left over, A255 promises 1.5 to 3 times too
 * much: there the observed diameters of water-hardening steels (RKK, read) stand, carried to
 * other steels by the line through them, 0.79 A255 - 5.9 mm.
 */
export function idealDiameter(composition: Composition, grainNumber = 7): Estimate {
  const ranges = rangeChecks()
  const carbon = percent(composition, 'C')
  ranges.check('carbon', carbon, [0.1, 0.9], 'wt%', 'ASTM A255')
  ranges.check('manganese', percent(composition, 'Mn'), [0, 1.95], 'wt%', 'ASTM A255')
  const a255 = idealDiameterA255(composition, grainNumber)
  const observed = Math.max(0.79 * a255 - 0.0059, 0.3 * a255)
  // From .70 %, where prediction ends, to .90 %, where the observed steels begin.
  const share = hold((carbon - 0.7) / 0.2, [0, 1])
  const value = a255 + share * (observed - a255)
  const above = carbon > 0.7
  return {
    value,
    // below .90 % the upper end takes in A255 itself
    range: above
      ? [value * 0.75, Math.max(value * 1.25, share < 1 ? a255 : 0)]
      : [value * 0.85, value * 1.15],
    unit: 'm',
    source: above ? 'RKK' : 'A255-HB',
    standing: above ? 'computed' : 'read secondary',
    notes: above
      ? [
          'Above .70 % carbon: between A255 and the observed water-hardening steels, with undissolved carbide.',
        ]
      : ['ASTM A255, half martensite at the axis.'],
    outOfRange: ranges.found,
  }
}
