import { scaleLinear } from 'd3-scale'
import { useDesk, useTradeWord, useWords } from '#desk'
import type { HeatRecord, Treated } from '#job'
import { type Language, nameIn } from '#words'
import { useNight } from '../../drawing/night.ts'
import { steelColours, tonesFor } from '../../drawing/tones.ts'
import { numberIn } from '../../form/number-in.ts'
import { useSay } from '../../form/say.ts'
import { CarbonProfile } from './carbon-profile.tsx'
import { PlotData } from './plot-data.tsx'
import type { PlotTable } from './plot-table.ts'

const WIDE = 196
const TALL = 110
/** Pairs of layers drawn in each cell. */
const PAIRS = 2

type State = HeatRecord['carbon'][number]

interface Moment {
  readonly key: string
  readonly bar: string
  readonly step?: number
  readonly do?: string
  readonly states: readonly State[]
}

/** Carbon in the layers of each bar as laid and after each step that moved it. */
export function CarbonPlot({ treated }: { readonly treated: Treated }) {
  const words = useWords()
  const trade = useTradeWord()
  const language = useDesk((desk) => desk.language)
  const steels = useDesk((desk) => desk.declared?.steels) ?? []
  const night = useNight()
  const { length } = useSay()
  const moments = momentsOf(treated)
  const values = moments.flatMap((m) => m.states.flatMap((s) => [s.lowest, s.highest, s.carbon]))
  if (values.length === 0) return null
  const low = Math.floor(Math.min(...values) * 20 - 0.5) / 20
  const high = Math.ceil(Math.max(...values) * 20 + 0.5) / 20
  const y = scaleLinear([Math.max(0, low), high], [TALL, 0])
  const figure = numberIn(language, { minimumFractionDigits: 2, maximumFractionDigits: 2 })
  const say = (carbon: number) => `${figure(carbon)} %`
  const tones = tonesFor(steels)
  const colours = steelColours(night)
  const fill = (steel: string) => colours.css(tones(steel).bright)
  const isLight = (steel: string) => tones(steel).bright > (night ? 0.75 : 0.5)
  const several = new Set(moments.map((m) => m.bar)).size > 1
  return (
    <section className="carbon" aria-labelledby="heats-carbon">
      <div className="plot-head">
        <h3 id="heats-carbon">{words.heatsSheet.carbon}</h3>
        <span className="note soft">{words.heatsSheet.carbonNote}</span>
      </div>
      <ul className="cells">
        {moments.map((moment, i) => {
          const title =
            moment.step === undefined
              ? words.heatsSheet.asLaid
              : `${moment.step} ${trade(moment.do ?? '')}`
          const means = moment.states.map((s) => s.carbon)
          const off = Math.max(...means) - Math.min(...means)
          const level =
            moment.states.length < 2 || off < 0.015
              ? words.heatsSheet.level(say(means.reduce((a, b) => a + b, 0) / means.length))
              : words.heatsSheet.apart(say(off))
          const first = i === 0 || moments[i - 1]!.bar !== moment.bar
          return (
            <li key={moment.key}>
              <svg
                viewBox={`0 0 ${WIDE} ${TALL}`}
                preserveAspectRatio="none"
                className="carbon-cell"
                role="img"
                aria-label={`${title}: ${moment.states.map((s) => `${nameIn(language, s.steel)} ${say(s.carbon)}`).join(', ')}`}
              >
                {bandsOf(moment.states).map(({ state, from, to }, k) => (
                  <g key={k} className={isLight(state.steel) ? 'on-light' : 'on-dark'}>
                    <rect x={from} width={to - from + 0.3} height={TALL} fill={fill(state.steel)} />
                    <rect
                      className="spread"
                      x={from}
                      width={to - from}
                      y={y(state.highest)}
                      height={Math.max(0, y(state.lowest) - y(state.highest))}
                    />
                    <path className="level" d={`M${from} ${y(state.carbon)}H${to}`} />
                  </g>
                ))}
              </svg>
              <p className="cell-name">
                <b>{title}</b>
                {several && first && <span className="note soft"> {moment.bar}</span>}
              </p>
              <p className="note soft">
                {moment.step === undefined
                  ? moment.states
                      .map((s) => `${nameIn(language, s.steel)} ${figure(s.carbon)}`)
                      .join(', ')
                  : level}
              </p>
            </li>
          )
        })}
        {treated.profiles.map((profile, i) => (
          <li key={i} className="whole">
            <CarbonProfile profile={profile} y={y} fill={fill} isLight={isLight} />
            <p className="cell-name">
              <b>{words.heatsSheet.asFinished}</b>
              {several && <span className="note soft"> {profile.bars.join(', ')}</span>}
            </p>
            <p className="note soft">
              {words.heatsSheet.finished(
                profile.shown.length,
                profile.layers,
                length(profile.shown.at(-1)!.to),
              )}
            </p>
          </li>
        ))}
      </ul>
      <PlotData
        caption={words.heatsSheet.carbon}
        table={tableOf(moments, words.heatsSheet, trade, language)}
      />
    </section>
  )
}

/** As laid, then after each step; moments at which nothing moved since the last are left out. */
function momentsOf({ heats, layers }: Treated): Moment[] {
  return [...Map.groupBy(heats, (heat) => heat.bar)].flatMap(([bar, own]) => {
    const moments: Moment[] = []
    const firstStates = own[0]?.carbon ?? []
    const bought = new Map(layers.map((l) => [`${l.bar} ${l.steel}`, l.carbonBought.value]))
    const laid = firstStates.map((state) => {
      const carbon = bought.get(`${state.bar} ${state.steel}`) ?? state.carbon
      return { ...state, carbon, lowest: carbon, highest: carbon }
    })
    // A bar made of others begins with what those came to.
    const isLaid = firstStates.every((state) => state.bar === bar)
    if (laid.length > 0 && isLaid) moments.push({ key: `${bar} laid`, bar, states: laid })
    for (const heat of own) {
      if (heat.carbon.length === 0) continue
      const last = moments.at(-1)
      const moment = {
        key: `${bar} ${heat.step}`,
        bar,
        step: heat.step,
        do: heat.do,
        states: heat.carbon,
      }
      if (last?.step === heat.step) moments[moments.length - 1] = moment
      else if (!last || moved(last.states, heat.carbon)) moments.push(moment)
    }
    return moments
  })
}

/** wt% too small to see. */
const UNSEEN = 0.004

function moved(a: readonly State[], b: readonly State[]): boolean {
  return (
    a.length !== b.length ||
    b.some((state, i) => {
      const was = a[i]!
      return (
        Math.abs(state.carbon - was.carbon) > UNSEEN ||
        Math.abs(state.lowest - was.lowest) > 2 * UNSEEN ||
        Math.abs(state.highest - was.highest) > 2 * UNSEEN
      )
    })
  )
}

/** Layers side by side, as thick as they are to one another. */
function bandsOf(states: readonly State[]) {
  const thick = states.map((s) => s.share / Math.max(s.layers, 1))
  const whole = PAIRS * thick.reduce((a, b) => a + b, 0)
  let at = 0
  return Array.from({ length: PAIRS * states.length }, (_, i) => {
    const state = states[i % states.length]!
    const from = at
    at += (thick[i % states.length]! / whole) * WIDE
    return { state, from, to: at }
  })
}

function tableOf(
  moments: readonly Moment[],
  { columns, asLaid }: ReturnType<typeof useWords>['heatsSheet'],
  trade: (word: string) => string,
  language: Language,
): PlotTable {
  return {
    name: 'carbon',
    columns: [
      columns.bar,
      columns.step,
      columns.steel,
      columns.carbon,
      columns.least,
      columns.most,
    ],
    rows: moments.flatMap((m) =>
      m.states.map((s) => [
        m.bar,
        m.step === undefined ? asLaid : `${m.step} ${trade(m.do ?? '')}`,
        nameIn(language, s.steel) + (s.bar === m.bar ? '' : `, ${s.bar}`),
        Number(s.carbon.toFixed(3)),
        Number(s.lowest.toFixed(3)),
        Number(s.highest.toFixed(3)),
      ]),
    ),
  }
}
