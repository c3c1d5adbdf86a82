import { useDesk, useWords } from '#desk'
import { nameIn } from '#words'
import { SteelSwatch } from '../../drawing/steel-swatch.tsx'
import { Measure } from '../../form/measure.tsx'
import { useSay } from '../../form/say.ts'
import type { CardRow } from './card-rows.ts'

/** What comes off the rack, and how long it is cut. */
export function RackList({ rows }: { readonly rows: readonly CardRow[] }) {
  const words = useWords()
  const say = useSay()
  const language = useDesk((desk) => desk.language)
  const taken = rows.flatMap(({ row }) => row?.taken ?? [])
  if (taken.length === 0) return null
  return (
    <section className="rack">
      <h3>{words.take.offRack}</h3>
      <ul className="plain">
        {taken.map((stock, i) => (
          <li key={i}>
            <SteelSwatch steel={stock.steel} />
            <span>
              <Measure
                text={words.take.sheets(
                  stock.count,
                  nameIn(language, stock.steel),
                  say.length(stock.thickness),
                )}
              />
            </span>
            <span className="note soft">
              <Measure text={words.take.cut(say.length(stock.width), say.length(stock.length))} />
            </span>
            <span>{say.mass(stock.mass)}</span>
          </li>
        ))}
      </ul>
    </section>
  )
}
