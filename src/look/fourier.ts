/** Discrete Fourier transform in place, X[k] = Σ x[n]·e^(−2πikn/N); N a power of two (Cooley and Tukey's scheme). */
export function transform(real: Float64Array, imaginary: Float64Array): void {
  const n = real.length
  for (let i = 1, j = 0; i < n; i++) {
    let bit = n >> 1
    for (; j & bit; bit >>= 1) j ^= bit
    j |= bit
    if (i < j) {
      ;[real[i], real[j]] = [real[j]!, real[i]!]
      ;[imaginary[i], imaginary[j]] = [imaginary[j]!, imaginary[i]!]
    }
  }
  for (let size = 2; size <= n; size *= 2) {
    const half = size / 2
    for (let k = 0; k < half; k++) {
      const [c, s] = [Math.cos((2 * Math.PI * k) / size), -Math.sin((2 * Math.PI * k) / size)]
      for (let i = k; i < n; i += size) {
        const j = i + half
        const re = c * real[j]! - s * imaginary[j]!
        const im = s * real[j]! + c * imaginary[j]!
        real[j] = real[i]! - re
        imaginary[j] = imaginary[i]! - im
        real[i] = real[i]! + re
        imaginary[i] = imaginary[i]! + im
      }
    }
  }
}

/** The least power of two that is not below n. */
export function powerOfTwo(n: number): number {
  return 2 ** Math.ceil(Math.log2(Math.max(2, n)))
}
