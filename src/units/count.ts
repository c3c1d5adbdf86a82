/** What is counted in sentences: one of it, and more than one. */
export const counted = {
  bar: 'bars',
  blow: 'blows',
  cut: 'cuts',
  dimple: 'dimples',
  dip: 'dips',
  gap: 'gaps',
  groove: 'grooves',
  heat: 'heats',
  joint: 'joints',
  layer: 'layers',
  pass: 'passes',
  sheet: 'sheets',
  slice: 'slices',
  squeeze: 'squeezes',
  steel: 'steels',
  step: 'steps',
  temper: 'tempers',
  turn: 'turns',
} as const
export type Counted = keyof typeof counted

/** `1 blow`, `3 blows`. A number that was rounded and printed already goes by what it reads. */
export function printCount(count: number | string, of: Counted): string {
  return `${count} ${String(count) === '1' ? of : counted[of]}`
}
