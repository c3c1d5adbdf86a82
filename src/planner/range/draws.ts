/**
 * Random numbers by place: the same seed, draw and place give the same number, whoever asks first
 * and however the draws are shared out among threads. A 32-bit finaliser over a counter (the mixing
 * steps of MurmurHash3, from memory; its evenness is held by a test).
 */
export class Draws {
  private state = 0
  private readonly seed: number

  constructor(seed: number) {
    this.seed = mix(seed | 0)
  }

  /** Begins draw number n. */
  begin(n: number): void {
    this.state = mix(this.seed ^ Math.imul(n + 1, 0x9e3779b1))
  }

  /** Even between 0 and 1, neither of them. */
  even(): number {
    this.state = (this.state + 0x9e3779b9) | 0
    const high = mix(this.state) >>> 0
    this.state = (this.state + 0x9e3779b9) | 0
    const low = mix(this.state) >>> 6
    return (high * 67108864 + low + 0.5) / 288230376151711744
  }

  /** Standard normal (Box and Muller's pair, one of it used). */
  normal(): number {
    const r = Math.sqrt(-2 * Math.log(this.even()))
    return r * Math.cos(2 * Math.PI * this.even())
  }

  /** Standard normal, drawn again until it lies within so many deviations. */
  within(deviations: number): number {
    for (;;) {
      const z = this.normal()
      if (Math.abs(z) <= deviations) return z
    }
  }
}

function mix(h: number): number {
  h ^= h >>> 16
  h = Math.imul(h, 0x85ebca6b)
  h ^= h >>> 13
  h = Math.imul(h, 0xc2b2ae35)
  return h ^ (h >>> 16)
}
