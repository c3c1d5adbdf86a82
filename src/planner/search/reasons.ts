import type { Figures } from './figures.ts'

/**
 * What sets one route apart from another, greatest difference first: "two fewer heats", "9 % more
 * metal". Differences nobody would notice are left out.
 */
export function reasonsAgainst(one: Figures, other: Figures): string[] {
  const said: { readonly weight: number; readonly text: string }[] = []
  const say = (weight: number, text: string) => said.push({ weight, text })
  const heats = one.heats - other.heats
  if (heats !== 0)
    say(
      Math.abs(heats) / 3,
      `${counted(Math.abs(heats))} ${heats < 0 ? 'fewer' : 'more'} ${plural(heats, 'heat')}`,
    )
  const metal = one.steel / other.steel - 1
  if (Math.abs(metal) >= 0.01)
    say(Math.abs(metal) * 15, `${percent(metal)} ${metal < 0 ? 'less' : 'more'} metal`)
  const minutes = Math.round((one.hands - other.hands) / 60)
  if (Math.abs(minutes) >= 5)
    say(
      Math.abs(minutes) / 60,
      `${duration(Math.abs(minutes))} ${minutes < 0 ? 'less' : 'more'} work`,
    )
  const off = one.off - other.off
  if (Math.abs(off) >= 0.01)
    say(
      Math.abs(off) * 20,
      `${percent(off)} ${off < 0 ? 'nearer to' : 'farther from'} the ${one.lines === undefined ? 'layers' : 'lines'} wished`,
    )
  const carbon = one.carbonKept - other.carbonKept
  if (Math.abs(carbon) >= 0.01)
    say(
      Math.abs(carbon) * 8,
      `${percent(carbon)} ${carbon < 0 ? 'less' : 'more'} of the carbon difference kept`,
    )
  const risk = one.failing - other.failing
  if (Math.abs(risk) >= 0.005)
    say(
      Math.abs(risk) * 30,
      `${percent(risk)} ${risk < 0 ? 'less' : 'more'} chance that a weld fails`,
    )
  const lost = one.layersLost - other.layersLost
  if (lost !== 0)
    say(
      0.6,
      `${counted(Math.abs(lost))} outer ${plural(lost, 'layer')} ${lost < 0 ? 'saved' : 'burnt or ground away'}`,
    )
  const layers = one.layers - other.layers
  if (layers !== 0) say(0.1, `${one.layers} layers, not ${other.layers}`)
  return said.sort((a, b) => b.weight - a.weight).map(({ text }) => text)
}

const words = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine']

function counted(n: number): string {
  return words[n] ?? String(n)
}

function plural(n: number, word: string): string {
  return Math.abs(n) === 1 ? word : `${word}s`
}

function percent(share: number): string {
  return `${Math.max(1, Math.round(Math.abs(share) * 100))} %`
}

function duration(minutes: number): string {
  return minutes < 90 ? `${minutes} min` : `${Math.round(minutes / 6) / 10} h`
}
