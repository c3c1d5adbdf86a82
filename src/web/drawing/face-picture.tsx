import { useEffect, useLayoutEffect, useRef, useState } from 'react'
import { flushSync } from 'react-dom'
import { type Painted, type PaintedSide, paint, useDesk, useWords } from '#desk'
import { Measure } from '../form/measure.tsx'
import { barLength } from './bar-length.ts'
import { useRoom } from './use-room.ts'

/** The etched face of the piece, drawn by the engine from the route, as wide as there is room. */
export function FacePicture({ label }: { readonly label: string }) {
  const words = useWords()
  const [place, room] = useRoom<HTMLDivElement>()
  const canvas = useRef<HTMLCanvasElement>(null)
  const [painted, setPainted] = useState<Painted & { readonly ratio: number }>()
  const [side, setSide] = useState<PaintedSide>('front')
  const worked = useDesk((desk) => desk.worked)
  const isSound = worked?.sound === true
  const size = worked?.totals?.finishedSize
  const long = size?.length
  const ratio = size && size.length / size.width
  useEffect(() => {
    // Begun when the card has its figures: until then it has the machine to itself.
    const job = useDesk.getState().history?.now
    if (!job || !isSound || long === undefined || ratio === undefined || room === 0) return
    const dense = Math.min(2, window.devicePixelRatio)
    paint({
      job,
      side,
      ppmm: Math.min(20, (room * dense) / (long * 1000)),
      onPainted: (picture) => {
        // At once: what is printed next is this picture, not the coarse one before it.
        if (picture) flushSync(() => setPainted({ ...picture, ratio }))
      },
    })
  }, [worked, isSound, long, ratio, room, side])
  // With the size of the canvas, which empties it: no empty frame is seen between two pictures.
  useLayoutEffect(() => {
    const ink = canvas.current?.getContext('2d')
    if (painted && ink) ink.putImageData(new ImageData(painted.rgba, painted.width), 0, 0)
  }, [painted])
  const perMm = painted ? room / (painted.width / (painted.perMetre / 1000)) : 0
  const inch = useDesk((desk) => desk.units === 'inch')
  const bar = barLength(perMm > 0 ? 0.001 / perMm : 1, room, inch)
  return (
    <figure className="face" ref={place}>
      {(painted || isSound) && (
        <div className="sides" role="group" aria-label={label}>
          {(['front', 'back'] as const).map((one) => (
            <button
              key={one}
              type="button"
              className="word note"
              aria-pressed={side === one}
              onClick={() => setSide(one)}
            >
              <span>{words.take.sides[one]}</span>
            </button>
          ))}
        </div>
      )}
      {painted ? (
        <>
          <canvas
            ref={canvas}
            width={painted.width}
            height={painted.height}
            role="img"
            aria-label={`${label}: ${words.take.sides[side]}`}
            className={isSound ? undefined : 'stale'}
            // Pixels are whole, the metal is not: coarse and fine stand in the same frame.
            style={{ aspectRatio: painted.ratio }}
          />
          <figcaption className="note soft">
            <span className="bar" style={{ width: `${bar.metres * 1000 * perMm}px` }} />{' '}
            <Measure text={bar.says} />
          </figcaption>
        </>
      ) : (
        isSound && (
          <>
            <div className="undrawn" style={{ aspectRatio: ratio }} />
            <figcaption className="note">&nbsp;</figcaption>
          </>
        )
      )}
    </figure>
  )
}
