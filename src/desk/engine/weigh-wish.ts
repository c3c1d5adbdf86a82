import { type Computed, type Job, DESIGN_DENSITY, buildPiece } from '#job'
import { thicknessForMass, weigh } from '#piece'
import { printQuantity } from '#units'
import type { Cure, Weight } from './messages.ts'
import { isInch } from './unit-system.ts'

/**
 * The weight wished against the sizes, with both ways out: what the thickness would have to be, and
 * what the sizes weigh. Sizes are proposed in the units the smith typed, and only if what is proposed
 * really agrees.
 */
export function weighWish(job: Job, computed: Computed | undefined): Weight | undefined {
  const { mass: asked, massWithin: within } = job.wishes
  if (asked === undefined || !job.piece) return undefined
  const built = buildPiece(job.piece)
  if (!built.ok) return undefined
  const density =
    computed && computed.plan.finished.volume > 0
      ? computed.finishedMass / computed.plan.finished.volume
      : DESIGN_DENSITY
  const found = weigh(built.ok, density)
  const agrees = Math.abs(found - asked) <= within * asked
  const cures = agrees ? [] : [...thicker(job, asked, within, density), lighter(job, found)]
  return { asked, found, within, agrees, cures }
}

function thicker(job: Job, asked: number, within: number, density: number): Cure[] {
  if (!job.piece) return []
  const { kind, values } = job.piece
  const solved = thicknessForMass(kind, values, asked, density)
  if (!solved.ok) return []
  const names = kind.thicknesses.filter((name) => typeof values[name] === 'number')
  const inInches = names.some((name) => isInch(job.typed[`piece.${name}`]?.text, 'length'))
  for (const step of inInches ? [16, 32, 64] : [1, 2, 10]) {
    const sets = names.map((name) => ({
      name,
      text: inInches
        ? printQuantity(solved.ok[name] as number, 'length', { nearest: step as 16 | 32 | 64 })
        : `${Math.round((solved.ok[name] as number) * 1000 * step) / step} mm`,
      si: inInches
        ? (Math.round(((solved.ok[name] as number) / 0.0254) * step) / step) * 0.0254
        : Math.round((solved.ok[name] as number) * 1000 * step) / step / 1000,
    }))
    const tried = { ...values, ...Object.fromEntries(sets.map((s) => [s.name, s.si])) }
    const built = kind.build(tried as never)
    if (!built.ok) continue
    const mass = weigh(built.ok, density)
    if (Math.abs(mass - asked) > within * asked) continue
    return [
      {
        words: sets.map((s) => s.text).join(', '),
        then: printQuantity(mass, 'mass', { unit: 'g', digits: 0 }),
        sets: sets.map((s) => ({ path: ['piece', s.name], value: s.text })),
        thickness: built.ok.size.height,
      },
    ]
  }
  return []
}

function lighter(job: Job, found: number): Cure {
  const inch = isInch(job.typed['wishes.mass']?.text, 'mass')
  const words = inch
    ? printQuantity(found, 'mass', { system: 'inch' })
    : printQuantity(found, 'mass', { unit: 'g', digits: found < 0.1 ? 1 : 0 })
  return { words, then: words, sets: [{ path: ['wishes', 'mass'], value: words }] }
}
