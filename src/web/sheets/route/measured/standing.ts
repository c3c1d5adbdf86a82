import type { Worked } from '#desk'

export type Standing = Worked['standings'][number]

/** What a step was measured to be, where the plan stands on it. */
export function standingAt(
  worked: Worked | undefined,
  bar: string,
  index: number,
): Standing | undefined {
  return worked?.standings.find((s) => s.bar === bar && s.index === index)
}

/** The side along which metal is to spare or wanting. */
export function spareSide({ measured, needed, spare }: Standing): 'length' | 'width' | 'height' {
  const off = (side: 'length' | 'width' | 'height') =>
    Math.abs(measured.size[side] - (needed?.[side] ?? 0) - spare)
  return (['length', 'width', 'height'] as const).reduce((a, b) => (off(b) < off(a) ? b : a))
}
