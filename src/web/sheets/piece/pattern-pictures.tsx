import { useEffect, useRef, useState } from 'react'
import {
  type Painted,
  type Written,
  edit,
  paintCutting,
  secondEngine,
  useDesk,
  useWords,
  valueAt,
} from '#desk'
import { TRUE } from '../../drawing/scale.ts'
import { capital } from '../../form/measure.tsx'
import { Told } from '../../form/told.tsx'
import { patternJobs } from './pattern-jobs.ts'

/** Px of a cutting, drawn at true size. */
const WIDE = 214
const HIGH = 99

/** Patterns kept as steps, each with a true cutting; pressed, the route is planned anew for it. */
export function PatternPictures() {
  const words = useWords()
  const patterns = useDesk((desk) => desk.declared?.patterns)
  const wished = useDesk((desk) => valueAt(desk.history?.now, ['wishes', 'pattern']))
  const [asked, setAsked] = useState<string>()
  const choose = async (pattern: string) => {
    const job = useDesk.getState().history?.now
    if (!job || asked !== undefined) return
    setAsked(pattern)
    try {
      const { ways, problems } = await secondEngine().ask({ ask: 'ways', job, pattern })
      if (useDesk.getState().history?.now !== job) return
      if (ways[0]) edit(ways[0].job)
      else
        useDesk.setState({
          notice: { words: words.piece.noWay(words.piece.patternCalled(pattern)), problems },
        })
    } finally {
      setAsked(undefined)
    }
  }
  return (
    <section className="patterns">
      <p className="note soft">{words.piece.patternScale}</p>
      <ul>
        {patterns?.map(({ name, shows }) => (
          <Pattern
            key={name}
            name={name}
            shows={shows}
            chosen={wished === name}
            busy={asked === name}
            choose={() => void choose(name)}
          />
        ))}
      </ul>
    </section>
  )
}

interface PatternProps {
  readonly name: string
  readonly shows: string
  readonly chosen: boolean
  readonly busy: boolean
  readonly choose: () => void
}

function Pattern({ name, shows, chosen, busy, choose }: PatternProps) {
  const words = useWords()
  const job = patternJobs.get(name)
  return (
    <li>
      <button type="button" aria-pressed={chosen} aria-busy={busy} onClick={choose}>
        {job && <CuttingPicture name={name} job={job} />}
        <span className="pattern-name">{capital(words.piece.patternCalled(name))}</span>
        <span className="note soft">{busy ? words.piece.planning : <Told text={shows} />}</span>
      </button>
    </li>
  )
}

/** Cuttings drawn already: a pattern's own job never changes. */
const drawn = new Map<string, Painted>()

function CuttingPicture({ name, job }: { readonly name: string; readonly job: Written }) {
  const canvas = useRef<HTMLCanvasElement>(null)
  const [painted, setPainted] = useState(() => drawn.get(name))
  const dense = Math.min(2, window.devicePixelRatio)
  useEffect(() => {
    if (painted) return
    paintCutting({
      job,
      side: 'front',
      ppmm: (TRUE / 1000) * dense,
      cutting: { length: WIDE / TRUE, width: HIGH / TRUE },
      onPainted: (picture) => {
        if (!picture) return
        drawn.set(name, picture)
        setPainted(picture)
      },
    })
  }, [name, job, painted, dense])
  useEffect(() => {
    const ink = canvas.current?.getContext('2d')
    if (painted && ink) ink.putImageData(new ImageData(painted.rgba, painted.width), 0, 0)
  }, [painted])
  return (
    <canvas
      ref={canvas}
      width={painted?.width ?? WIDE}
      height={painted?.height ?? HIGH}
      aria-hidden="true"
    />
  )
}
