import type { Drawer, Drawn } from '#job'

/** What every thread is told: the job, how many makings, and the counter they all take them from. */
export interface DrawShare {
  readonly text: string
  readonly draws: number
  readonly longer: number
  /** One number: the first making nobody has taken yet. */
  readonly next: SharedArrayBuffer
}

/** Makings taken at a time: few enough that threads end together. */
const AT_A_TIME = 250

/** Takes makings from the counter until there are none left. */
export async function drawParts(
  draw: Drawer,
  { draws, longer, next }: DrawShare,
  signal?: AbortSignal,
): Promise<Drawn[]> {
  const counter = new Int32Array(next)
  const parts: Drawn[] = []
  for (;;) {
    const from = Atomics.add(counter, 0, AT_A_TIME)
    if (from >= draws) return parts
    parts.push(draw({ from, count: Math.min(AT_A_TIME, draws - from), longer }))
    // Lets a stop be heard between two parts.
    await new Promise((resolve) => setImmediate(resolve))
    signal?.throwIfAborted()
  }
}
