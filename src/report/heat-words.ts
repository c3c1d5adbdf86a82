import { printCount } from '#units'
import type { HeatRecord, SteelRecord, Treated } from '#job'
import type { Say } from './say.ts'

/** What is said of the heats, in sentences and rows; sizes and temperatures in the card's units. */

export function minutes(seconds: number): string {
  if (seconds < 90) return `${Math.round(seconds)} s`
  if (seconds < 5400) return `${Math.round(seconds / 60)} min`
  return `${(seconds / 3600).toFixed(1)} h`
}

/** One line for each kind of heat of a step: colour, time to the core, soak, time to work. */
export function heatLine(h: HeatRecord, say: Say): string {
  const many = h.times > 1 ? `${h.times} × ` : ''
  const colour = h.colour === '' ? '' : `, ${h.colour}`
  const parts = [`${many}${say.temperature(h.temperature)}${colour}`]
  const start = h.from > 400 ? `from ${say.temperature(h.from)}` : 'from cold'
  parts.push(`${start} about ${minutes(h.warming.value)} until the core is hot`)
  if (h.soak > 0) parts.push(`held ${minutes(h.soak)}`)
  if (h.working && ['weld', 'forge', 'stamp', 'straighten'].includes(h.purpose))
    parts.push(`then ${minutes(h.working.value)} to work it down to ${say.temperature(h.stop!)}`)
  else if (h.purpose === 'harden') parts.push(`quenched in ${h.medium}`)
  else parts.push(`cooled in ${h.medium}`)
  return parts.join('; ')
}

/** Microns below a tenth of a millimetre, whatever the card is in. */
function small(m: number, say: Say): string {
  return m < 1e-4 ? `${Math.round(m * 1e6)} µm` : say.length(m)
}

type Ranged = Treated['skin']

const wt = (value: number) => value.toFixed(2)
const around = (r: Ranged) => Math.max(r.value - r.range[0], r.range[1] - r.value)
/** As ± where the range is even; told from and to where it is not. */
const hrc = ({ value, range: [low, high] }: Ranged) => {
  const v = Math.round(value)
  if (Math.abs(value - low - (high - value)) > 2.5)
    return `${v} (${Math.round(low)} to ${Math.round(high)}) HRC`
  return `${v} ± ${Math.max(1, Math.round(Math.max(value - low, high - value)))} HRC`
}

/** The block "What the heats leave": rows and sentences, unwrapped. */
export function heatsLeave(treated: Treated, say: Say): string[] {
  const lines: string[] = []
  const bars = new Set(treated.steels.map((s) => s.bar)).size
  for (const s of merged(treated.steels)) lines.push(steelLine(s, bars > 1))
  if (treated.steels.some((s) => s.middle))
    lines.push(
      'Hardness is of edges and near the faces; the middle of the thickest place is told apart.',
    )
  for (const table of tables(treated.steels)) lines.push(table)
  const { window } = treated
  if (window?.stated !== undefined) {
    const where = { inside: 'lies inside', 'too cold': 'is too cold', 'too hot': 'is too hot' }
    lines.push(
      window.suitsAll
        ? `Hardening heat that suits every steel: ${say.temperature(window.low)} to ${say.temperature(window.high)}; ${say.temperature(window.stated)} ${where[window.verdict!]}.`
        : `No one hardening heat suits every steel: ${say.temperature(window.advised)} does the least harm.`,
    )
  }
  if (treated.quench) lines.push(treated.quench.sentence)
  const { growth } = treated
  if (growth) {
    const bow =
      growth.bow && growth.risk !== 'even'
        ? `; its sides grow unlike, a ${growth.risk} risk of a bow: up to ${say.length(growth.bow.value)} in a metre if it is free to`
        : ''
    lines.push(
      `It grows about ${(growth.growth.value * 100).toFixed(2)} % longer in the quench${bow}.`,
    )
  }
  for (const p of treated.etch.filter((e) => e.contrast !== 'none')) lines.push(etchLine(p, say))
  if (treated.skin.range[1] > 2e-5)
    lines.push(
      `Skin poor in carbon left on the finished faces: about ${small(treated.skin.value, say)}, at most ${small(treated.skin.range[1], say)}.`,
    )
  for (const l of treated.lines)
    lines.push(
      `Like on like, laid in step ${l.step} (${printCount(l.joints, 'joint')}): ${l.shows === 'hardly' ? 'the carbon lost at the faces has come back; a line shows only if scale or flux was shut in' : `a line ${wt(l.deficit)} % poorer in carbon over ${say.length(l.width)} will show ${l.shows}`}.`,
    )
  for (const j of treated.joints)
    lines.push(
      `Where "${j.between[0]}" meets "${j.between[1]}" carbon evens out over about ${say.length(j.reach)} to each side: ${wt(j.carbon[0])} % and ${wt(j.carbon[1])} % become ${wt(j.atJoint[0])} % and ${wt(j.atJoint[1])} % at the joint.`,
    )
  lines.push(...treated.notes, ...treated.cautions)
  const beyond = [...new Set(treated.outOfRange.map((p) => bare(p.what)))]
  if (beyond.length > 0) lines.push(`To be read as a rough guide: ${beyond.join('; ')}.`)
  return lines
}

/** Without its full stop. */
function bare(sentence: string): string {
  return sentence.replace(/\.$/, '')
}

/** Bars made alike (a left and a right) are told as one. */
function merged(
  steels: readonly SteelRecord[],
): (SteelRecord & { readonly bars: readonly string[] })[] {
  const rows: (SteelRecord & { bars: string[] })[] = []
  for (const s of steels) {
    const like = rows.find(
      (r) =>
        r.steel === s.steel &&
        Math.abs(r.carbon.value - s.carbon.value) < 0.01 &&
        Math.abs((r.tempered?.value ?? 0) - (s.tempered?.value ?? 0)) < 0.5,
    )
    if (like) like.bars.push(s.bar)
    else rows.push({ ...s, bars: [s.bar] })
  }
  return rows
}

function steelLine(s: SteelRecord & { readonly bars: readonly string[] }, named: boolean): string {
  const of = named ? ` of ${s.bars.map((b) => `"${b}"`).join(' and ')}` : ''
  const spread =
    s.layersTo - s.layersFrom > 0.015
      ? ` (layers from ${wt(s.layersFrom)} to ${wt(s.layersTo)})`
      : ''
  const carbon = `${wt(s.carbonBought.value)} % carbon becomes ${wt(s.carbon.value)} ± ${wt(around(s.carbon))} %${spread}`
  if (!s.asQuenched || !s.tempered) return `${s.steel}${of}: ${carbon}; not hardened.`
  const middle = s.middle
    ? `; in the middle ${hrc(s.middle.asQuenched)}, tempered ${hrc(s.middle.tempered)}`
    : ''
  return `${s.steel}${of}: ${carbon}; as quenched ${hrc(s.asQuenched)}, tempered ${hrc(s.tempered)}${middle}.`
}

/** Which tempering table answered, steels with the same one together. */
function tables(steels: readonly SteelRecord[]): string[] {
  const own = steels.filter((s) => s.table && s.published)
  const by = Map.groupBy(own, (s) => s.table!)
  const told = [...by].map(([table, of]) => `${names(of)} by ${table}`)
  const none = [...new Set(steels.filter((s) => s.table && !s.published).map((s) => s.steel))]
  if (none.length > 0)
    told.push(
      `${none.join(' and ')} by plain carbon of the same carbon, no table of its own having been found`,
    )
  return told.length > 0 ? [`Tempering: ${told.join('; ')}.`] : []
}

const names = (of: readonly SteelRecord[]) => [...new Set(of.map((s) => s.steel))].join(' and ')

function etchLine(p: Treated['etch'][number], say: Say): string {
  const [a, b] = p.steels
  const time = p.minutes
    ? `, ${small(p.relief!, say)} deep in about ${Math.round(p.minutes.value)} min (${Math.round(p.minutes.range[0])} min to ${minutes(p.minutes.range[1] * 60)}: try a scrap)`
    : ''
  return `Etch, ${a} against ${b}: ${p.contrast} contrast, ${p.tones[0]} against ${p.tones[1]}${time}.`
}
