import { describe, expect, it } from 'vitest'
import { findZero, integrate, integrateAdaptively, integratePieces } from './quadrature.ts'

describe('quadrature', () => {
  it('meets closed forms: a polynomial, an exponential, a half disc, a quarter ellipse', () => {
    expect(integrate((y) => y ** 5 - y, 1, 3)).toBeCloseTo((3 ** 6 - 1) / 6 - 4, 10)
    expect(integrate(Math.exp, 0, 1) / (Math.E - 1) - 1).toBeLessThan(1e-14)
    const halfDisc = integrate((y) => Math.sqrt(4 - y * y), -2, 2)
    expect(Math.abs(halfDisc / (2 * Math.PI) - 1)).toBeLessThan(1e-13)
    const quarter = integrate((y) => 5 * Math.sqrt(1 - (y / 90) ** 2), 0, 90)
    expect(Math.abs(quarter / ((Math.PI / 4) * 450) - 1)).toBeLessThan(1e-13)
  })

  it('takes a kink at a break exactly, and finds one it was not told of', () => {
    const f = (y: number) => Math.abs(y - 0.3)
    const exact = (0.3 ** 2 + 0.7 ** 2) / 2
    expect(integratePieces(f, [0, 0.3, 1])).toBeCloseTo(exact, 14)
    expect(Math.abs(integrateAdaptively(f, [0, 1], 1e-9) - exact)).toBeLessThan(1e-8)
  })

  it('finds a zero to the last digit', () => {
    expect(findZero(Math.cos, 1, 2)).toBeCloseTo(Math.PI / 2, 15)
  })
})
