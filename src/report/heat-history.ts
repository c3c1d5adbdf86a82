import type { HeatRecord, Treated } from '#job'
import { heatLine, heatsLeave, minutes } from './heat-words.ts'
import { type Ink, plainInk } from './ink.ts'
import { retell } from './retell.ts'
import type { CardStyle } from './route-card.ts'
import { type Say, sayIn } from './say.ts'
import { textPlot } from './text-plot.ts'
import { wrapText } from './wrap.ts'

/** The heats of a job as text: for each its history as a plot, and what it did; then what they leave. */
export function heatHistory(
  name: string,
  treated: Treated,
  { units = 'metric', ink = plainInk, width = 96 }: CardStyle,
  step?: number,
): string {
  const say = sayIn(units)
  const columns = Math.max(72, Math.min(width, 120))
  const heats = treated.heats.filter((h) => step === undefined || h.step === step)
  const lines = [ink.bold(name)]
  for (const heat of heats) lines.push('', ...oneHeat(heat, say, ink, columns))
  if (step === undefined) {
    lines.push('', ink.bold('What the heats leave'))
    for (const line of heatsLeave(treated, say))
      lines.push(...wrapText(retell(line, say), columns, '  '))
    for (const profile of treated.profiles)
      lines.push('', ...acrossLayers(profile, say, ink, columns))
    lines.push(...chart(treated, say, ink))
  }
  return `${lines.join('\n')}\n`
}

function oneHeat(h: HeatRecord, say: Say, ink: Ink, columns: number): string[] {
  const head = `step ${h.step}, ${h.do} "${h.bar}"${h.again ? ', heats after the first' : ''}`
  const last = h.history.at(-1)!
  const metric = say.units === 'inch' ? say : sayIn('metric')
  const plot = textPlot(
    [
      { sign: 's', points: h.history.map((p) => [p.time, p.skin]) },
      { sign: 'c', points: h.history.map((p) => [p.time, p.core]) },
      ...(h.model === 'lumped'
        ? [{ sign: '*', points: h.history.map((p): [number, number] => [p.time, p.mean]) }]
        : []),
    ],
    {
      width: Math.min(64, columns - 14),
      height: 12,
      x: [0, Math.max(last.time, 1)],
      sayX: minutes,
      sayY: (k) => metric.temperature(k),
    },
  )
  const { thickness, width, shape } = h.section
  const section =
    shape === 'round'
      ? `${say.length(thickness)} round`
      : `${say.length(width ?? thickness)} × ${say.length(thickness)}`
  const did = [
    `fire: ${h.fire}, walls at ${say.temperature(h.fireTemperature)}; bar ${section}, ${h.model === 'lumped' ? 'one temperature throughout (*)' : 'skin (s) and core (c)'}`,
    ...(h.scale
      ? [
          `scale: ${say.length(h.scale.model)} off each face by the model (${say.length(h.scale.range[0])} to ${say.length(h.scale.range[1])}), ${say.length(h.scale.shop)} in the account`,
        ]
      : []),
    ...(h.reach > 1e-6
      ? [
          `carbon spreads about ${say.length(h.reach)}${h.times > 1 ? ' in all of them' : ''}; grain about ${Math.round(h.grain * 1e6)} µm`,
        ]
      : []),
    ...(h.reach > 1e-6 ? h.carbon : []).map((c) => {
      const spread =
        c.highest - c.lowest > 0.005 ? ` (${c.lowest.toFixed(3)} to ${c.highest.toFixed(3)})` : ''
      return `carbon after the step: ${c.steel} of "${c.bar}" ${c.carbon.toFixed(3)} %${spread}`
    }),
    ...nearness(h).map((line) => retell(line, say)),
    ...h.cautions,
  ]
  return [
    ink.bold(head),
    ...wrapText(heatLine(h, say), columns, '  '),
    ...plot.map((row) => `  ${row}`),
    ...did.flatMap((line) => wrapText(line, columns, '  ')),
  ]
}

/** Carbon across the layers of a pack, from one face. */
function acrossLayers(
  { bars, layers, shown, across }: Treated['profiles'][number],
  say: Say,
  ink: Ink,
  columns: number,
): string[] {
  const metric = say.units === 'inch' ? say : sayIn('metric')
  const part = shown.length < layers ? `, the first ${shown.length} of ${layers} layers` : ''
  const head = `Carbon across the layers of ${bars.map((b) => `"${b}"`).join(' and ')}, from one face${part}`
  const plot = textPlot([{ sign: '•', points: across }], {
    width: Math.min(64, columns - 14),
    height: 10,
    sayX: (m) => metric.length(m),
    sayY: (c) => `${c.toFixed(3)} %`,
  })
  return [ink.bold(head), ...plot.map((row) => `  ${row}`)]
}

/** Only what comes near: a heat that is safe for all needs no word. */
function nearness({ nearness }: HeatRecord): string[] {
  return nearness
    .filter((n) => n.verdict !== 'safe')
    .map(
      (n) =>
        `${n.steel} with ${n.carbon.toFixed(2)} % carbon: ${n.verdict === 'hot' ? 'above the table’s highest forging heat, keep it short' : n.verdict}; ${Math.round(n.margin)} °C below its solidus`,
    )
}

/** A table that does not reach so far says nothing. */
function told(hardness: number | undefined): string {
  return hardness === undefined ? '·' : String(Math.round(hardness))
}

/** Hardness of each steel against tempering heat, as rows. */
function chart({ temperChart }: Treated, say: Say, ink: Ink): string[] {
  const [first] = temperChart
  if (!first || first.steels.length === 0) return []
  // Bars made alike stand in one column.
  const columns = first.steels
    .map((s, i) => ({
      steel: s.steel,
      i,
      key: temperChart.map((r) => Math.round(r.steels[i]!.hardness?.value ?? 0)).join(),
    }))
    .filter((c, k, all) => all.findIndex((o) => o.steel === c.steel && o.key === c.key) === k)
  const cell = (text: string) => text.padStart(10)
  return [
    '',
    ink.bold('Hardness after two hours, HRC, by tempering heat'),
    `  ${'heat'.padStart(16)}${columns.map((c) => cell(c.steel)).join('')}`,
    ...temperChart.map(
      (row) =>
        `  ${say.temperature(row.temperature).padStart(16)}${columns.map((c) => cell(told(row.steels[c.i]!.hardness?.value))).join('')}`,
    ),
  ]
}
