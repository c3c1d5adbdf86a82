import { type Weight, edit, useDesk, useWords, withValue } from '#desk'
import { SectionDrawing } from '../drawing/section-drawing.tsx'
import { WrongMark } from './faults.tsx'
import { Measure } from './measure.tsx'
import { useExpress, useSay } from './say.ts'
import { sizesTyped } from './sizes-typed.ts'

/** Weight and sizes that cannot both be: what, why, by how much, and what to press. */
export function WeightWish({ weight }: { readonly weight: Weight }) {
  const words = useWords()
  const say = useSay()
  const piece = useDesk((desk) => desk.piece)
  const written = useDesk((desk) => desk.history?.now.piece)
  const wished = useDesk(
    (desk) => (desk.history?.now.wishes as { mass?: unknown } | undefined)?.mass,
  )
  const size = useExpress()
  const off = Math.abs(weight.asked - weight.found)
  const heavier = weight.asked > weight.found
  const sizes = piece ? sizesTyped(piece, written, size, say) : ''
  const asked = typeof wished === 'string' ? size.typed(wished, 'mass') : say.mass(weight.asked)
  const isThick = weight.cures.some((cure) => cure.thickness !== undefined)
  const told = ({ words: said, thickness }: Weight['cures'][number]) =>
    said
      .split(', ')
      .map((one) => size.typed(one, thickness === undefined ? 'mass' : 'length'))
      .join('; ')
  return (
    <section className="weight-wish" aria-labelledby="weight-wish">
      <h2 className="title" id="weight-wish">
        <WrongMark />
        <Measure text={words.piece.cannotBoth(asked, sizes)} />
      </h2>
      <p>
        {words.piece.weighsBut(say.mass(weight.found), say.mass(off), heavier)}{' '}
        {isThick ? words.piece.eitherWay : words.piece.onlyWeight(heavier)}
      </p>
      <div className="ways">
        {weight.cures.map((cure) => {
          const thick = cure.thickness !== undefined
          return (
            <div key={cure.words} className="way">
              <h3>
                {thick
                  ? heavier
                    ? words.piece.letThicker
                    : words.piece.letThinner
                  : heavier
                    ? words.piece.letLighter
                    : words.piece.letHeavier}
              </h3>
              <p>
                <Measure
                  text={
                    thick
                      ? words.piece.thickerThen(told(cure), size.typed(cure.then, 'mass'))
                      : words.piece.lighterThen(told(cure))
                  }
                />
              </p>
              <div className="press-and-section">
                <button
                  type="button"
                  className="press"
                  onClick={() => {
                    const job = useDesk.getState().history?.now
                    if (job)
                      edit(
                        cure.sets.reduce((to, { path, value }) => withValue(to, path, value), job),
                      )
                  }}
                >
                  <Measure text={words.piece.makeIt(told(cure))} />
                </button>
                {piece && (
                  <SectionDrawing
                    piece={piece}
                    room={120}
                    label={words.piece.section}
                    thickness={cure.thickness}
                  />
                )}
              </div>
            </div>
          )
        })}
      </div>
    </section>
  )
}
