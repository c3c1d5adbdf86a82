import Fraction from 'fraction.js'

/**
 * The double nearest to a fraction. `valueOf` of the library rounds numerator, denominator and
 * quotient one after the other; here the quotient is rounded once, so 2 in is 0.0508 and not a
 * neighbour of it.
 */
export function nearestNumber(fraction: Fraction): number {
  const { s, n, d } = fraction
  if (n === 0n) return 0
  // Both exact as doubles: IEEE division rounds once already.
  if (n <= MAX_EXACT && d <= MAX_EXACT) return Number(s) * (Number(n) / Number(d))
  // 64 significant bits of quotient and a sticky last bit; BigInt to Number rounds to nearest.
  const shift = Math.max(0, 66 + bits(d) - bits(n))
  const scaled = n << BigInt(shift)
  const quotient = scaled / d
  const sticky = quotient * d === scaled ? 0n : 1n
  return Number(s) * (Number((quotient << 1n) | sticky) * 2 ** -(shift + 1))
}

const MAX_EXACT = BigInt(Number.MAX_SAFE_INTEGER)

function bits(n: bigint): number {
  return n.toString(2).length
}

/** A whole number, optionally with decimals, as an exact fraction. */
export function fromDecimal(whole: string, decimals: string): Fraction {
  return new Fraction(BigInt(whole + decimals), 10n ** BigInt(decimals.length))
}

export { Fraction }
