import { type Result, ok, within } from '#problem'
import { readValues } from '#parameters'
import { type PieceSolid, findPieceKind } from '#piece'
import { usualShop } from '#shop'
import type { UnitSystem } from '#units'
import { FORMAT } from './job.ts'
import { startingSizes, upTo } from './starting-sizes.ts'

/** Restacked bars are drawn to this at least before they are cut: thick enough to clean, thin enough to lay high. */
const RESTACK_HEIGHT = 0.014
/** Taller pieces are restacked of taller pieces, so that few stand on one another (common practice). */
const RESTACKED_TALL = 0.6
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
/** A stack is no narrower, m, and no narrower against the piece's height: the restack would double over. */
const NARROWEST = 0.036
const STANDS = 1.35
/**
 * A flat this much wider than high is never set on edge again: it would fold (common practice: 2.5). It is
 * begun at a share of its width and left to spread, which makes it about twice as wide.
 */
const FOLDS = 2.5
const BEFORE_SPREAD = 0.45
/** More metal than this takes a heat more than usual under the yard's hammer, m³. */
const HEAVY = 8e-5

/** The boatyard's shop: by hand alone a restacked bar takes days. */
const yard = { hammer: 'power', hammerMass: '25 kg', hammerSpeed: '5 m/s', pressForce: '25 ton' }

const sheets = {
  metric: { bright: '1.5 mm', dark: '3 mm', outer: '8 mm', outerOfForged: '10 mm' },
  inch: { bright: '1/16 in', dark: '1/8 in', outer: '5/16 in', outerOfForged: '3/8 in' },
} as const

/**
 * A job to begin with: a kind in its first sizes, round in the units asked for, and a plain route that
 * makes it without a warning, its stack length left free. Common practice throughout, to be changed.
 */
export function starterJob(
  kindName: string,
  system: UnitSystem = 'metric',
): Result<Record<string, unknown>> {
  const kind = findPieceKind(kindName)
  if (kind.problems) return kind
  const sizes = startingSizes(kind.ok, system)
  const read = readValues(kind.ok.parameters, sizes)
  if (read.problems) return { problems: within('piece', read.problems) }
  const solid = kind.ok.build(read.ok.values as never)
  if (solid.problems) return { problems: within('piece', solid.problems) }
  return ok({
    billetwright: FORMAT,
    name: `${kind.ok.title} for the Kittiwake`,
    piece: { kind: kind.ok.name, ...sizes },
    shop: yard,
    bars: { main: starterRoute(solid.ok, system) },
  })
}

function starterRoute(solid: PieceSolid, system: UnitSystem): Record<string, unknown>[] {
  const { grindStock, polishStock } = usualShop()
  const { bright, dark, outer, outerOfForged } = sheets[system]
  const say = (m: number) => upTo(m, system)
  const over = 2 * (grindStock + polishStock + ROOM)
  const from = solid.blank.bent ? solid.size : solid.blank.size
  const height = from.height + over
  const width = from.width + over
  const keep = from.length + over
  const forged = !solid.blank.bent && solid.volume < WORTH_FORGING * solid.blank.volume
  const spreads = !forged && !solid.blank.bent && width > FOLDS * height
  const wide = Math.max(
    spreads ? BEFORE_SPREAD * width : Math.max(width, NARROWEST),
    STANDS * height,
  )
  const tall = Math.max(RESTACK_HEIGHT, RESTACKED_TALL * height)
  const pieces = Math.max(3, Math.ceil(((forged ? 1.6 : 1.3) * height) / (tall * CLOSED)))
  const made = new Set(solid.features.map((f) => f.kind))
  const heats = (n: number) => solid.volume > HEAVY && { heats: n }
  return [
    {
      do: 'stack',
      sheets: [
        { steel: '1095', thickness: dark },
        { steel: '15N20', thickness: bright },
      ],
      repeat: 6,
      closeWith: '1095',
      outer: forged ? outerOfForged : outer,
      width: say(wide),
      length: '?',
    },
    { do: 'tack' },
    { do: 'weld', close: '75 %', heats: 2 },
    { do: 'draw out', height: say(tall), ...(!spreads && { width: say(wide) }), ...heats(3) },
    { do: 'restack', pieces },
    { do: 'tack' },
    { do: 'weld', close: `${CLOSED * 100} %`, heats: 3 },
    { do: 'trim' },
    { do: 'draw out', height: say(height), ...(!spreads && { width: say(width) }), ...heats(4) },
    ...(forged ? [{ do: 'forge to shape' }] : []),
    ...(keep < SHORT ? [{ do: 'cut off', keep: say(keep), leave: say(HELD - keep) }] : []),
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
