import { type Weight, edit, useDesk, useWords, withValue } from '#desk'
import { printQuantity } from '#units'
import { SectionDrawing } from '../drawing/section-drawing.tsx'
import { WrongMark } from './faults.tsx'
import { Measure } from './measure.tsx'
import { useSay } from './say.ts'

/** Weight and sizes that cannot both be: what, why, by how much, and what to press. */
export function WeightWish({ weight }: { readonly weight: Weight }) {
  const words = useWords()
  const say = useSay()
  const piece = useDesk((desk) => desk.piece)
  const units = useDesk((desk) => desk.units)
  const mass = (kg: number) =>
    units === 'metric'
      ? printQuantity(kg, 'mass', { unit: 'g', digits: kg < 0.1 ? 1 : 0 })
      : say.mass(kg)
  const off = Math.abs(weight.asked - weight.found)
  const heavier = weight.asked > weight.found
  const sizes = piece ? say.size(piece.size) : ''
  return (
    <section className="weight-wish" aria-labelledby="weight-wish">
      <h2 className="title" id="weight-wish">
        <WrongMark />
        <Measure text={words.piece.cannotBoth(mass(weight.asked), sizes)} />
      </h2>
      <p>{words.piece.weighsBut(mass(weight.found), mass(off), heavier)}</p>
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
                      ? words.piece.thickerThen(cure.words, cure.then)
                      : words.piece.lighterThen(cure.words)
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
                  <Measure text={words.piece.makeIt(cure.words)} />
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
