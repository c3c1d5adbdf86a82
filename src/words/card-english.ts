import { counting } from './counting.ts'

const { nounFor, plural } = counting('en')

/** What stands on a step of the card: its heats and blows, and what is to be minded. */
export const cardEnglish = {
  heatTime: {
    until: (from: string, time: string) =>
      `from ${from === '' ? 'cold' : from} about ${time} until the core is hot`,
    held: (time: string) => `held ${time}`,
    work: (time: string, stop: string) => `then ${time} to work it down to ${stop}`,
    quenched: (medium: string) => `quenched in ${medium}`,
    cooled: (medium: string) => `cooled in ${medium}`,
  },
  withoutTimes:
    'The heats stand here without their times: those were not worked out yet. Printed once more, they are there.',
  blows: (likely: string, few: string, many: string) =>
    `${likely} ${nounFor(Number(likely), 'blow', 'blows')}${few === many ? '' : ` (${few} to ${many})`}`,
  squeezes: (force: string, low: string, high: string, n: string) =>
    `${force} (${low} to ${high}), ${n} ${nounFor(Number(n), 'squeeze', 'squeezes')}`,
  inHeats: (n: number) => `in ${plural(n, 'heat', 'heats')}`,
  comesOut: (narrow: string, wide: string, short: string, long: string) =>
    `comes out ${narrow} to ${wide} wide, ${short} to ${long} long`,
  /** What is to be minded, in a word on the row. */
  danger: {
    heat: 'fire',
    glare: 'fire',
    gas: 'fire',
    strike: 'hammer',
    flux: 'flux',
    dust: 'dust',
    saw: 'saw',
    arc: 'arc',
    sealed: 'burst',
    quench: 'oil fire',
    acid: 'acid',
    spring: 'snap',
    drill: 'drill',
  },
  usualDangers:
    'Fire: burns, glare, gas. Hammer: flying scale, noise. In full on the open step and at the foot.',
}

/** The ways the planner lays beside the card. */
export const waysEnglish = {
  title: 'Other ways',
  looking: (n: string) => `Looking at other ways to build it up: ${n} …`,
  considered: (n: string) =>
    `${n} ${nounFor(Number(n.replace(/\D/g, '')), 'way', 'ways')} looked at; beside the card, the best compromises:`,
  asWritten: 'the card as it stands',
  recipe: (sheets: number, high: readonly number[]) =>
    high.length === 0
      ? `${plural(sheets, 'sheet', 'sheets')}, not restacked`
      : `${plural(sheets, 'sheet', 'sheets')}, restacked ${high.map((n) => `${n} high`).join(', then ')}`,
  way: 'Way',
  take: 'Take it',
  takeNamed: (name: string) => `Take this way: ${name}`,
  table: 'Ways side by side',
  heats: 'Heats',
  layers: 'Layers',
  lines: 'Lines',
  steel: 'Steel off the rack',
  yield: 'Stays in the piece',
  hands: 'Hands on the work',
  cost: 'Cost',
  hardness: 'Hardness, HRC',
  failing: 'A weld fails',
  layersLost: 'Outer layers gone',
  inHundred: (n: string) => `${n} in 100`,
  none: 'none',
}
