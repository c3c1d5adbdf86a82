import type { Figures } from './figures.ts'

/**
 * What sets one route apart from another, greatest difference first: "two fewer heats", "9 % more
 * metal". Differences nobody would notice are left out. Each is one whole sentence: another language
 * puts its words in another order.
 */
export function reasonsAgainst(one: Figures, other: Figures): string[] {
  const said: { readonly weight: number; readonly text: string }[] = []
  const say = (weight: number, text: string) => said.push({ weight, text })
  const heats = one.heats - other.heats
  if (heats !== 0) {
    const n = counted(Math.abs(heats))
    const fewer = heats === -1 ? 'one fewer heat' : `${n} fewer heats`
    const more = heats === 1 ? 'one more heat' : `${n} more heats`
    say(Math.abs(heats) / 3, heats < 0 ? fewer : more)
  }
  const metal = one.steel / other.steel - 1
  if (Math.abs(metal) >= 0.01)
    say(
      Math.abs(metal) * 15,
      metal < 0 ? `${percent(metal)} less metal` : `${percent(metal)} more metal`,
    )
  const minutes = Math.round((one.hands - other.hands) / 60)
  if (Math.abs(minutes) >= 5) {
    const time = duration(Math.abs(minutes))
    say(Math.abs(minutes) / 60, minutes < 0 ? `${time} less work` : `${time} more work`)
  }
  const off = one.off - other.off
  if (Math.abs(off) >= 0.01) {
    const ofLayers =
      off < 0
        ? `${percent(off)} nearer to the layers wished`
        : `${percent(off)} farther from the layers wished`
    const ofLines =
      off < 0
        ? `${percent(off)} nearer to the lines wished`
        : `${percent(off)} farther from the lines wished`
    say(Math.abs(off) * 20, one.lines === undefined ? ofLayers : ofLines)
  }
  const carbon = one.carbonKept - other.carbonKept
  if (Math.abs(carbon) >= 0.01)
    say(
      Math.abs(carbon) * 8,
      carbon < 0
        ? `${percent(carbon)} less of the carbon difference kept`
        : `${percent(carbon)} more of the carbon difference kept`,
    )
  const risk = one.failing - other.failing
  if (Math.abs(risk) >= 0.005)
    say(
      Math.abs(risk) * 30,
      risk < 0
        ? `${percent(risk)} less chance that a weld fails`
        : `${percent(risk)} more chance that a weld fails`,
    )
  const lost = one.layersLost - other.layersLost
  if (lost !== 0) {
    const n = counted(Math.abs(lost))
    const saved = lost === -1 ? 'one outer layer saved' : `${n} outer layers saved`
    const gone =
      lost === 1 ? 'one outer layer burnt or ground away' : `${n} outer layers burnt or ground away`
    say(0.6, lost < 0 ? saved : gone)
  }
  const layers = one.layers - other.layers
  if (layers !== 0) say(0.1, `${one.layers} layers, not ${other.layers}`)
  return said.sort((a, b) => b.weight - a.weight).map(({ text }) => text)
}

const words = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine']

function counted(n: number): string {
  return words[n] ?? String(n)
}

function percent(share: number): string {
  return `${Math.max(1, Math.round(Math.abs(share) * 100))} %`
}

function duration(minutes: number): string {
  return minutes < 90 ? `${minutes} min` : `${Math.round(minutes / 6) / 10} h`
}
