import type { Billet } from '#billet'

/** Height of a bar; of one that has been cut into, the height its metal would have if it were level. */
export function meanHeight(bar: Billet): number {
  return bar.shape === 'cut' ? bar.volume / (bar.size.length * bar.size.width) : bar.size.height
}
