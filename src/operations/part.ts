import type { Movement } from '#movement'
import type { Operation, Smithy } from './operation.ts'

/**
 * A gradual operation taken only a share of the way, 0 < share ≤ 1: an operation like any other, so
 * that account, box and movement agree and every law holds of it. Its fires burn as much of their
 * scale as they have been used, and the hand has left as much of its unevenness.
 */
export function partOf(operation: Operation, share: number): Operation {
  return {
    ...operation,
    forward: (before, values, smithy) =>
      operation.forward(before, values, burning(smithy, share), share),
    movement: (before, values, after, smithy) =>
      roughened(operation.movement(before, values, after, burning(smithy, share), share), share),
  }
}

function burning(smithy: Smithy, share: number): Smithy {
  const { shop } = smithy
  return {
    ...smithy,
    shop: {
      ...shop,
      weldingScale: shop.weldingScale * share,
      forgingScale: shop.forgingScale * share,
      treatingScale: shop.treatingScale * share,
    },
  }
}

function roughened(movement: Movement, share: number): Movement {
  const { uneven } = movement
  if (!uneven) return movement
  return { ...movement, uneven: { ...uneven, amplitude: uneven.amplitude * share } }
}
