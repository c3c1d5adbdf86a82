import { type Row, useDesk, useWords } from '#desk'
import { BarDrawing } from '../../drawing/bar-drawing.tsx'
import { HeatSwatch } from '../../drawing/heat-swatch.tsx'
import { BENCH, SECTION } from '../../drawing/lay-out-build.ts'
import { Measure } from '../../form/measure.tsx'
import { setIn } from '../../form/express.ts'
import { useSay } from '../../form/say.ts'
import { Dangers } from './dangers.tsx'

/** Drawn over true, of the two columns. */
export interface Ratios {
  readonly section: number
  readonly bench: number
}

interface AccountProps {
  readonly row: Row
  readonly ratios: Ratios
  /** Cautions that stand with an earlier step, by name. */
  readonly told: readonly string[]
}

const OUNCE = 0.028349523125
/** A loss smaller than this prints as nothing: it is left out, kg. */
const LEAST_TOLD = 5e-5

/** What the bar is after a step: size, mass, layers, heats, what was lost, and what is to be minded. */
export function Account({ row, ratios, told }: AccountProps) {
  const words = useWords()
  const say = useSay()
  const isMetric = useDesk((desk) => desk.units === 'metric')
  const language = useDesk((desk) => desk.language)
  const [long, heavy] = isMetric ? ['mm', 'g'] : ['in', 'oz']
  const size = say.size(row.size)
  const drawn = `${size}, ${words.route.layersWords(row.merged)}`
  // One unit down the column, so that what is lost adds up as it stands.
  const mass = (kg: number) => {
    if (isMetric) return say.mass(kg)
    const ounces = kg / OUNCE
    return setIn(language, `${ounces.toFixed(ounces < 10 ? 2 : 1)} oz`)
  }
  const lost = [
    ...row.losses
      .filter((l) => l.mass >= LEAST_TOLD)
      .map((l) => `${words.route.lost(l.cause)} ${mass(l.mass)}`),
    ...row.setAside.map((b) => words.route.aside(mass(b.mass))),
  ]
  const bare = (text: string) => text.replace(new RegExp(` ${heavy}$`), '')
  return (
    <>
      <span className="section">
        <BarDrawing
          bar={row.after}
          view={SECTION}
          ratio={ratios.section}
          label={words.route.sectionOf(drawn)}
        />
      </span>
      <span className="bench">
        <BarDrawing
          bar={row.after}
          view={BENCH}
          ratio={ratios.bench}
          label={words.route.benchOf(drawn)}
          most={200}
        />
      </span>
      <span className="size">
        <InColumn text={size} unit={long} />
      </span>
      <span className="mass">
        <InColumn text={mass(row.mass)} unit={heavy} />
      </span>
      <span className="layers">
        <b>{row.merged}</b>
        <span className="unit"> {words.route.layersNoun(row.merged)}</span>
      </span>
      <span className="heats">
        <HeatWords row={row} />
        <Dangers cautions={row.cautions} told={told} />
      </span>
      {lost.length > 0 && (
        <span className="lost note soft">
          {lost.map((one, i) => (i < lost.length - 1 ? bare(one) : one)).join(', ')}
        </span>
      )}
      {row.laid !== row.merged && (
        <span className="laid note soft">{words.route.laid(row.laid)}</span>
      )}
    </>
  )
}

/** A figure whose unit stands in the head of its column, and is said with it where there is no head. */
function InColumn({ text, unit }: { readonly text: string; readonly unit: string }) {
  if (!text.endsWith(` ${unit}`)) return <Measure text={text} />
  return (
    <>
      <Measure text={text.slice(0, -unit.length - 1)} />
      <span className="unit"> {unit}</span>
    </>
  )
}

function HeatWords({ row }: { readonly row: Row }) {
  const words = useWords()
  const say = useSay()
  if (row.heats.length === 0) return <span className="note soft">{words.route.cold}</span>
  return (
    <>
      {row.heats.map((heat, i) => (
        <span key={i} className="heat">
          <HeatSwatch temperature={heat.temperature} />
          <b>{heat.count}</b> × {degrees(say.temperature(heat.temperature))}
        </span>
      ))}
    </>
  )
}

/** `1150°`: the unit stands in the switch. */
function degrees(text: string): string {
  return `${text.split(' ')[0]}°`
}
