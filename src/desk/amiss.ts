import type { Address } from './address.ts'
import type { Desk } from './desk.ts'
import { barNames, pathOf } from './engine/places.ts'

/** Where the open job does not work out: the step, or the sheet of the piece. Undefined where it does, or has no step yet. */
export function amissAt({
  worked,
  history,
}: Pick<Desk, 'worked' | 'history'>): Partial<Address> | undefined {
  const bars = barNames(history?.now ?? {})
  if (bars.length === 0 || !worked || worked.sound) return undefined
  const { weight, problems } = worked
  // What contradicts itself on the piece comes before the steps that follow from it.
  const ofPiece = weight?.agrees === false || problems.some(({ at }) => /^(piece|wishes)/.test(at))
  const first = ofPiece ? undefined : problems.find(({ at }) => at.startsWith('bars.'))
  const [, bar, step] = pathOf(first?.at ?? '', bars)
  if (typeof bar !== 'string') return { sheet: 'piece' }
  // What is amiss with a whole bar is told below the card; its first step says which bar.
  return { sheet: 'route', bar, step: typeof step === 'number' ? step : 0 }
}
