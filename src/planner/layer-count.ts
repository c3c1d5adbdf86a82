import { type Problem, type Result, failed, ok } from '#problem'
import { type Laid, type LayerCount, type Layered, layered, stackAlong, turnBuild } from '#billet'

/** One restack of a count: how many pieces, how they are laid, and what lies between them. */
export interface Restack {
  readonly pieces: number
  readonly lay: 'straight' | 'folded'
  /** An extra sheet at each joint: of the outside steel, or of the other one. */
  readonly between?: 'like' | 'other'
}

export interface CountedStep extends LayerCount {
  readonly pieces: number
  /** Like joints that became one layer in this restack. */
  readonly mergedHere: number
}

/** A listing of this many layers still counts in a blink; more is no billet. */
const MOST_LAYERS = 3_000_000

/**
 * Layers through a first stack of alternating sheets and a row of restacks: laid and merged after
 * each. Counted on the layers themselves, not by formula.
 */
export function countRestacks(
  sheets: number,
  restacks: readonly Restack[],
): Result<readonly CountedStep[]> {
  if (!Number.isInteger(sheets) || sheets < 1 || sheets > 2000) {
    return failed(
      wrong('sheets', `${sheets} sheets cannot be laid`, 'a first stack has 1 to 2000 sheets'),
    )
  }
  let pack: Layered = layered(
    'z',
    Array.from({ length: sheets }, (_, i) => ({
      steel: i % 2 ? 'other' : 'outside',
      thickness: 1,
    })),
  )
  const steps: CountedStep[] = [{ pieces: 1, laid: sheets, merged: sheets, mergedHere: 0 }]
  for (const [i, { pieces, lay, between }] of restacks.entries()) {
    if (!Number.isInteger(pieces) || pieces < 2 || pieces > 1000) {
      return failed(
        wrong(
          `restacks[${i}]`,
          `a bar is not restacked from ${pieces} pieces`,
          'a restack has 2 to 1000 pieces',
        ),
      )
    }
    if (pack.layers.length * pieces > MOST_LAYERS) {
      return failed(
        wrong(
          `restacks[${i}]`,
          `that would be more than ${MOST_LAYERS} layers`,
          'such layers are thinner than an atom in any bar one can lift',
        ),
      )
    }
    const over = turnBuild(pack, {
      x: { was: 'x' },
      y: { was: 'y' },
      z: { was: 'z', reversed: true },
    }) as Layered
    const laid: Laid[] = []
    for (let j = 0; j < pieces; j++) {
      const build = lay === 'folded' && j % 2 === 1 ? over : pack
      if (j > 0 && between) {
        const facing = laid.at(-1)?.build as Layered
        const outside = (facing.layers.at(-1) as { steel: string }).steel
        const steel = between === 'like' ? outside : outside === 'other' ? 'outside' : 'other'
        laid.push({ build: layered('z', [{ steel, thickness: 1 }]), thickness: 1, volume: 1 })
      }
      laid.push({ build, thickness: 1, volume: 1 })
    }
    const before = laid.reduce((n, l) => n + (l.build as Layered).layers.length, 0)
    pack = stackAlong('z', laid, '') as Layered
    steps.push({
      pieces,
      laid: pack.laid,
      merged: pack.layers.length,
      mergedHere: before - pack.layers.length,
    })
  }
  return ok(steps)
}

function wrong(at: string, what: string, why: string): Problem {
  return {
    at,
    what,
    why,
    try: ['check the numbers: sheets first, then the pieces of each restack'],
  }
}
