import { describe, expect, it } from 'vitest'
import { thicknessLadder } from './thickness-range.ts'

const layered = (...thick: number[]) => ({
  form: 'layered' as const,
  axis: 'z' as const,
  laid: thick.length,
  layers: thick.map((thickness) => ({ steel: 's', thickness })),
})

describe('the scale of layer thickness', () => {
  it('goes by doubling over the metal that is there, not over all metal there could be', () => {
    const joined = {
      form: 'joined' as const,
      axis: 'y' as const,
      how: 'side by side',
      parts: [
        { build: layered(1e-6, 4e-4, 9e-4), share: 0.5, times: 1 },
        {
          build: { form: 'worked' as const, by: 'twist', of: layered(3e-3) },
          share: 0.5,
          times: 1,
        },
      ],
    }
    const ladder = thicknessLadder(joined, 1e-3)
    expect(ladder.map((m) => m * 1e3)).toEqual([0.125, 0.25, 0.5, 1, 2, 4])
    // One steel through and through still has a scale to be read.
    expect(thicknessLadder(layered(1e-2), 1e-3).length).toBeGreaterThan(2)
  })
})
