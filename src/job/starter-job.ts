import { type Result, ok, within } from '#problem'
import { readValues } from '#parameters'
import { type PieceSolid, findPieceKind } from '#piece'
import { usualShop } from '#shop'
import { FORMAT } from './job.ts'

/** Restacked bars are drawn to this before they are cut: thick enough to clean, thin enough to lay high. */
const RESTACK_HEIGHT = 0.014
/** Height left of a restack once it is welded and trusted (common practice: to about half). */
const CLOSED = 0.6
/** What normalising may burn off a face between the last drawing and the grinder, m. */
const ROOM = 0.0003
/** A piece that fills less of its box than this is forged near its shape: nobody grinds half a bar away. */
const WORTH_FORGING = 0.65
/** A piece shorter than this is cut off a longer bar: so short a one cannot be held and welded, m (from memory). */
const SHORT = 0.08
/** Length of that longer bar, m. */
const HELD = 0.15

/**
 * A job to begin with: the first example of a kind and a plain route that makes it, its stack length
 * left free. Common practice throughout, to be changed.
 */
export function starterJob(kindName: string): Result<Record<string, unknown>> {
  const kind = findPieceKind(kindName)
  if (kind.problems) return kind
  const [example] = kind.ok.examples
  const read = readValues(kind.ok.parameters, example)
  if (read.problems) return { problems: within('piece', read.problems) }
  const solid = kind.ok.build(read.ok.values as never)
  if (solid.problems) return { problems: within('piece', solid.problems) }
  return ok({
    billetwright: FORMAT,
    name: `${kind.ok.title} for the Kittiwake`,
    piece: { kind: kind.ok.name, ...example },
    bars: { main: starterRoute(solid.ok) },
  })
}

function starterRoute(solid: PieceSolid): Record<string, unknown>[] {
  const { grindStock, polishStock } = usualShop()
  const over = 2 * (grindStock + polishStock + ROOM)
  const from = solid.blank.bent ? solid.size : solid.blank.size
  const height = from.height + over
  const width = from.width + over
  const keep = from.length + over
  const forged = !solid.blank.bent && solid.volume < WORTH_FORGING * solid.blank.volume
  const wide = Math.max(0.036, width)
  const pieces = Math.max(3, Math.ceil((1.6 * height) / (RESTACK_HEIGHT * CLOSED)))
  const made = new Set(solid.features.map((f) => f.kind))
  return [
    {
      do: 'stack',
      sheets: [
        { steel: '1095', thickness: '3 mm' },
        { steel: '15N20', thickness: '1.5 mm' },
      ],
      repeat: 6,
      closeWith: '1095',
      outer: '6 mm',
      width: mm(wide),
      length: '?',
    },
    { do: 'tack' },
    { do: 'weld', close: '75 %', heats: 2 },
    { do: 'draw out', height: mm(RESTACK_HEIGHT), width: mm(wide) },
    { do: 'restack', pieces },
    { do: 'tack' },
    { do: 'weld', close: `${CLOSED * 100} %`, heats: 3 },
    { do: 'trim' },
    { do: 'draw out', height: mm(height), width: mm(width) },
    ...(forged ? [{ do: 'forge to shape' }] : []),
    ...(keep < SHORT ? [{ do: 'cut off', keep: mm(keep), leave: mm(HELD - keep) }] : []),
    { do: 'normalise' },
    { do: 'grind to shape' },
    ...(made.has('stamp') ? [{ do: 'stamp' }] : []),
    ...(made.has('groove') || made.has('fuller') ? [{ do: 'groove' }] : []),
    ...(made.has('hole') || made.has('slot') ? [{ do: 'drill' }] : []),
    { do: 'harden' },
    { do: 'temper' },
    { do: 'polish' },
    { do: 'etch' },
  ]
}

/** Up to the next half millimetre: nobody draws a bar to a hundredth. */
function mm(m: number): string {
  return `${Math.ceil(m * 2000 - 1e-6) / 2} mm`
}
