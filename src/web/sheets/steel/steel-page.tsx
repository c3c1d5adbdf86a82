import { useCallback, useLayoutEffect, useMemo, useRef, useState } from 'react'
import { type LaidSteel, type SteelPlace, useDesk, useWords } from '#desk'
import type { Size } from '#geometry'
import { type FinishName, stripLight } from '#look'
import { withDecimalsOf } from '#words'
import { useNight } from '../../drawing/night.ts'
import { Amiss } from '../../form/amiss.tsx'
import { Measure } from '../../form/measure.tsx'
import { useSay } from '../../form/say.ts'
import { SheetHead } from '../../shell/sheet-head.tsx'
import { useTreated } from '../../use-treated.ts'
import { Legend, legendText, scaleOf, useSayThickness, weightsOf } from './overlays.tsx'
import type { StagePainter, Wanted, Weights } from './painters.ts'
import { seenAt } from './route-place.ts'
import { RouteScrub } from './route-scrub.tsx'
import { Choice, Rule } from './rule.tsx'
import { savePicture } from './save-picture.ts'
import { ScaleBar } from './scale-bar.tsx'
import { sheetValues } from './sheet-weights.ts'
import { MODES, type Mode, type Vector, type ViewName } from '#scene'
import { SteelFigures } from './steel-figures.tsx'
import { Stage, type Tool, wayBetween } from './stage.tsx'
import type { StageCamera } from './stage-camera.ts'
import { thicknessLadder } from './thickness-range.ts'
import { useSteel } from './use-steel.ts'
import { edgesOf } from './edges-of.ts'

const VIEW_NAMES: readonly ViewName[] = ['face', 'back', 'edge', 'spine', 'butt', 'point']
const AXES = { x: [1, 0, 0], y: [0, -1, 0], z: [0, 0, 1] } as const satisfies Record<string, Vector>
type CutAxis = 'none' | keyof typeof AXES

/** Way of the hand that moves the strip light by a right angle of its turn, and over its whole height, css px. */
const LIGHT_TURN = 300
const LIGHT_HEIGHT = 500
/** Greatest depth of grinding, of the thickness. */
const DEEPEST = 0.45
/** Time the metal takes from one step to the next, ms. */
const MOVE_TIME = 400

/** A slope at which polished metal mirrors a lamp, from the lamp's angle to the line of sight, and back. */
const slopeOf = (degrees: number) => Math.tan((degrees * Math.PI) / 360)
const degreesOf = (slope: number) => (Math.atan(slope) * 360) / Math.PI

/** Marks of a rule have no room for the unit: the value beside it says it. */
const withoutUnit = (size: string) => size.replace(/ (?:mm|in)$/, '')

const uncapital = (text: string) => text.charAt(0).toLowerCase() + text.slice(1)

export function SteelPage() {
  const words = useWords()
  const say = useSay()
  const sayThickness = useSayThickness()
  const name = useDesk((desk) => desk.history?.now.name)
  const inch = useDesk((desk) => desk.units === 'inch')
  const unsound = useDesk((desk) => desk.worked?.sound === false)
  const language = useDesk((desk) => desk.language)
  const night = useNight()
  const [place, setPlace] = useState<SteelPlace>()
  const [painter, setPainter] = useState<{
    by: StagePainter
    why?: 'none' | 'pretending' | 'failed'
  }>()
  const [insist, setInsist] = useState(false)
  const [tool, setTool] = useState<Tool>('turn')
  const [mode, setMode] = useState<Mode>('etched')
  const [finish, setFinish] = useState<FinishName>('dark')
  const [light, setLight] = useState({ strip: stripLight.strip, turn: 0 })
  const [ground, setGround] = useState(0)
  const [cut, setCut] = useState<{ axis: CutAxis; share: number }>({ axis: 'none', share: 0.5 })
  const [seen, setSeen] = useState({ pixel: 1e-4, view: undefined as ViewName | undefined })
  const camera = useRef<StageCamera>(undefined)
  const [laid, setLaid] = useState<LaidSteel>()
  const steps = useRef<LaidSteel['steps']>([])
  const { steel, waits } = useSteel(
    seenAt(steps.current, place),
    painter?.by.by === 'engine' ? 'mesh' : 'facets',
  )
  steps.current = steel?.steps ?? []
  const { treated } = useTreated()
  const values = useMemo(
    () => (steel && treated ? sheetValues(steel, treated) : undefined),
    [steel, treated],
  )
  const weights = useMemo(() => (steel ? weightsOf(steel, values) : []), [steel, values])
  const rows = useDesk((desk) => (desk.worked?.sound ? desk.worked : desk.sound)?.rows)
  const ladder = useMemo(() => {
    const { bar, index } = steel?.place ?? {}
    const row = rows?.find((r) => r.bar === bar && r.index === index)
    return row ? thicknessLadder(row.after.build, inch ? 0.0254 : 1e-3) : []
  }, [rows, steel, inch])
  const scale = useMemo(
    () => scaleOf(mode, values, ladder, sayThickness),
    [mode, values, ladder, sayThickness],
  )
  const thick = steel ? steel.high[2] - steel.low[2] : 0
  const depth = Math.min(ground, DEEPEST * thick)
  const wanted = useMemo((): Wanted => {
    const plane = steel && cut.axis !== 'none' ? cutOf(steel, cut.axis, cut.share) : undefined
    return {
      mode,
      range: scale?.range ?? [0, 1],
      steps: scale?.steps ?? 1,
      finish,
      strip: light.strip,
      stripTurn: light.turn,
      cut: plane,
      ground: depth,
      night,
    }
  }, [mode, scale, finish, light, depth, night, steel, cut])
  const onCamera = useCallback((moved: StageCamera) => {
    camera.current = moved
    setSeen((had) =>
      had.pixel === moved.pixel && had.view === moved.view
        ? had
        : { pixel: moved.pixel, view: moved.view },
    )
  }, [])
  const onLight = useCallback((dx: number, dy: number) => {
    setLight(({ strip, turn }) => ({
      strip: Math.min(0.9, Math.max(-0.4, strip - dy / LIGHT_HEIGHT)),
      turn: turn + (dx / LIGHT_TURN) * (Math.PI / 2),
    }))
  }, [])
  const onPainter = useCallback(
    (by: StagePainter, why?: 'none' | 'pretending' | 'failed') => setPainter({ by, why }),
    [],
  )
  useMovingMetal(laid, painter?.by)
  const title = typeof name === 'string' ? name : words.steelSheet.title
  const edges = useDesk(({ history }) => edgesOf(history?.now.piece))
  const whole = painter?.by.whole ?? true
  const canvas = painter?.by.canvas
  /** Nothing lies here yet, and nothing is on its way. */
  const bare = !steel && unsound
  const still = () => matchMedia('(prefers-reduced-motion: reduce)').matches
  return (
    <>
      <section className="column steel-sheet" aria-label={words.steelSheet.title}>
        <SheetHead>
          <Choice
            label={words.steelSheet.viewsOf}
            of={VIEW_NAMES}
            chosen={seen.view}
            say={(view) => words.steelSheet.views[edges][view]}
            onChoose={(view) => camera.current?.goTo(view, still())}
          />
        </SheetHead>
        <Amiss />
        {bare && <p className="empty soft">{words.steelSheet.waits}</p>}
        <Stage
          steel={steel}
          waits={waits || laid !== steel}
          onLaid={setLaid}
          weights={weights}
          wanted={wanted}
          tool={tool}
          label={words.steelSheet.stage(title)}
          insist={insist}
          onCamera={onCamera}
          onLight={onLight}
          onPainter={onPainter}
        />
        {!bare && <ScaleBar pixel={seen.pixel} width={canvas?.clientWidth ?? 850} />}
        {!bare && painter?.why && (
          <p className="note by-engine">
            {words.steelSheet.byEngine[painter.why]}{' '}
            {painter.why === 'pretending' && (
              <button type="button" className="word" onClick={() => setInsist(true)}>
                <span>{words.steelSheet.insist}</span>
              </button>
            )}
          </p>
        )}
        {!bare && (
          <RouteScrub
            steps={steps.current}
            place={place}
            size={steel && sizeOf(laid ?? steel)}
            onPlace={setPlace}
          />
        )}
        {!bare && (
          <>
            <div className="stage-tools">
              <span className="note soft">{words.steelSheet.handMoves}</span>
              <Choice
                label={words.steelSheet.handMoves}
                of={['turn', 'shift', 'light']}
                chosen={tool}
                say={(one) => words.steelSheet.tools[one]}
                onChoose={setTool}
              />
              <span className="acts">
                <button type="button" className="word" onClick={() => camera.current?.zoom(1.5)}>
                  {words.steelSheet.nearer}
                </button>
                <button
                  type="button"
                  className="word"
                  onClick={() => camera.current?.zoom(1 / 1.5)}
                >
                  {words.steelSheet.farther}
                </button>
                <button type="button" className="word" onClick={() => camera.current?.fit()}>
                  {words.steelSheet.fit}
                </button>
              </span>
            </div>
            <p className="note soft hint">{words.steelSheet.hint}</p>
          </>
        )}
      </section>
      <aside className="column steel-side" aria-label={words.steelSheet.light}>
        <header className="head">
          <h2 className="title">{words.steelSheet.light}</h2>
          <button
            type="button"
            className="word note"
            disabled={!canvas || !steel}
            onClick={() => {
              if (!canvas) return
              const { modes, ground: groundBy, mayVary } = words.steelSheet
              // Who has only the picture must know that it is no face as delivered.
              const off = depth > 0 ? `, ${uncapital(groundBy)} ${say.length(depth)}` : ''
              const note = `${modes[mode]}${off}. ${mayVary}`
              const text = legendText(words, language, mode, values)
              const says = scale?.says.map((said) => withDecimalsOf(language, said)) ?? []
              const bars = mode === 'bar' ? steel?.stacks : undefined
              const legend = text === undefined ? undefined : { scale, says, bars, text }
              void savePicture(canvas, { title, note, pixel: seen.pixel, inch, legend })
            }}
          >
            {words.steelSheet.save}
          </button>
        </header>
        <Rule
          label={words.steelSheet.ground}
          value={depth}
          from={0}
          to={Math.max(DEEPEST * thick, 1e-4)}
          step={1e-5}
          marks={[0, 0.5, 1].map((share) => share * DEEPEST * thick)}
          say={(v) => (v === 0 ? '0' : withoutUnit(say.length(v)))}
          shown={<Measure text={say.length(depth)} />}
          spoken={say.length(depth)}
          onChange={setGround}
        />
        <Rule
          label={words.steelSheet.strip}
          value={Math.round(degreesOf(light.strip))}
          from={-40}
          to={80}
          step={1}
          marks={[-40, -10, 20, 50, 80]}
          say={(v) => `${v}`.replace('-', '−')}
          shown={`${Math.round(degreesOf(light.strip))}°`.replace('-', '−')}
          spoken={`${Math.round(degreesOf(light.strip))}°`}
          onChange={(v) => setLight((had) => ({ ...had, strip: slopeOf(v) }))}
        />
        <div className="worded">
          <span className="name">{words.steelSheet.finish}</span>
          <Choice
            label={words.steelSheet.finish}
            of={['bright', 'dark', 'deep']}
            chosen={finish}
            say={(one) => words.steelSheet.finishes[one]}
            onChoose={setFinish}
          />
        </div>
        <div className="worded">
          <span className="name">{words.steelSheet.cut}</span>
          <Choice
            label={words.steelSheet.cut}
            of={['none', 'x', 'y', 'z']}
            chosen={cut.axis}
            say={(axis) => words.steelSheet.cutAxes[axis]}
            disabled={whole ? [] : ['x', 'y', 'z']}
            onChoose={(axis) => {
              setCut((had) => ({ ...had, axis }))
              if (axis === 'none') camera.current?.hideCut(still())
              else camera.current?.showCut(AXES[axis], still())
            }}
          />
        </div>
        {steel && cut.axis !== 'none' && (
          <CutRule
            steel={steel}
            axis={cut.axis}
            share={cut.share}
            onShare={(share) => setCut({ ...cut, share })}
          />
        )}
        <div className="worded modes">
          <span className="name">{words.steelSheet.shows}</span>
          <Choice
            label={words.steelSheet.shows}
            of={Object.keys(MODES) as Mode[]}
            chosen={mode}
            say={(one) => words.steelSheet.modes[one]}
            disabled={
              whole
                ? lacking(weights)
                : (Object.keys(MODES) as Mode[]).filter((m) => m !== 'etched')
            }
            onChoose={setMode}
          />
        </div>
        <Legend mode={mode} scale={scale} values={values} bars={steel?.stacks ?? []} />
        <SteelFigures steel={laid ?? steel} />
        {unsound && rows && <p className="note soft">{words.stale}</p>}
        <p className="note soft vary">{words.steelSheet.mayVary}</p>
      </aside>
    </>
  )
}

function sizeOf({ low, high }: LaidSteel): Size {
  const [length, width, height] = high.map((v, k) => v - low[k]!) as [number, number, number]
  return { length, width, height }
}

/** Overlays that cannot be drawn yet. */
function lacking(weights: Weights): Mode[] {
  const none = (i: number) => Object.keys(weights[i] ?? {}).length === 0
  return [...(none(2) ? (['carbon'] as const) : []), ...(none(3) ? (['hardness'] as const) : [])]
}

function cutOf({ low, high }: LaidSteel, axis: keyof typeof AXES, share: number) {
  const out = AXES[axis]
  const k = { x: 0, y: 1, z: 2 }[axis]
  const at = low[k]! + (high[k]! - low[k]!) * share
  return { out, at: at * out[k]! }
}

function CutRule({
  steel,
  axis,
  share,
  onShare,
}: {
  readonly steel: LaidSteel
  readonly axis: keyof typeof AXES
  readonly share: number
  readonly onShare: (share: number) => void
}) {
  const words = useWords()
  const say = useSay()
  const k = { x: 0, y: 1, z: 2 }[axis]
  const span = steel.high[k]! - steel.low[k]!
  const at = say.length(share * span)
  return (
    <Rule
      label={words.steelSheet.cutAt}
      value={share}
      from={0}
      to={1}
      step={0.002}
      marks={[0, 0.25, 0.5, 0.75, 1]}
      say={(v) => (v === 0 ? '0' : withoutUnit(say.length(v * span)))}
      shown={<Measure text={at} />}
      spoken={at}
      onChange={onShare}
    />
  )
}

/** Where the metal is not shown on its way it is seen to go from the one size to the other. */
function useMovingMetal(steel: LaidSteel | undefined, painter: StagePainter | undefined): void {
  const before = useRef<{ readonly size: Vector; readonly onTheWay: boolean }>(undefined)
  // Before the next frame: the new metal is never seen at rest first.
  useLayoutEffect(() => {
    if (!steel || !painter) return
    const size = [0, 1, 2].map((k) => steel.high[k]! - steel.low[k]!) as unknown as Vector
    const onTheWay = steel.place.done !== undefined
    const had = before.current ?? { size, onTheWay }
    before.current = { size, onTheWay }
    const from = had.size
    const same = onTheWay || had.onTheWay || from.every((v, k) => v === size[k])
    if (same || matchMedia('(prefers-reduced-motion: reduce)').matches)
      return painter.stretch([1, 1, 1])
    painter.stretch(wayBetween(from, size, 0))
    let frame = 0
    let since: number | undefined
    const step = (now: number) => {
      since ??= now
      const t = Math.min(1, (now - since) / MOVE_TIME)
      painter.stretch(wayBetween(from, size, t < 0.5 ? 2 * t * t : 1 - 2 * (1 - t) ** 2))
      if (t < 1) frame = requestAnimationFrame(step)
    }
    frame = requestAnimationFrame(step)
    return () => {
      cancelAnimationFrame(frame)
      painter.stretch([1, 1, 1])
    }
  }, [steel, painter])
}
