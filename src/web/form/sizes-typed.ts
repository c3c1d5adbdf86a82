import type { PieceDrawing } from '#desk'
import type { Say } from '#report'
import type { Express } from './express.ts'

/**
 * The overall sizes of a piece as they were typed, length × width × thickness; a side that no one
 * number gives, as it comes out. A unit is said once where all have it.
 */
export function sizesTyped(
  { overall, size }: Pick<PieceDrawing, 'overall' | 'size'>,
  written: unknown,
  express: Pick<Express, 'typed'>,
  say: Pick<Say, 'length'>,
): string {
  const typed = (written ?? {}) as Readonly<Record<string, unknown>>
  const texts = (['length', 'width', 'height'] as const).map((side) => {
    const value = typed[overall[side] ?? '']
    return typeof value === 'string' && value !== '?'
      ? express.typed(value, 'length')
      : say.length(size[side])
  })
  const unit = / \p{L}+$/u.exec(texts.at(-1) ?? '')?.[0]
  const isOne = unit !== undefined && texts.every((text) => text.endsWith(unit))
  return texts
    .map((text, i) => (isOne && i < texts.length - 1 ? text.slice(0, -unit.length) : text))
    .join(' × ')
}
