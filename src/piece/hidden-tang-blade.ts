import type { ValuesOf } from '#parameters'
import type { Result } from '#problem'
import type { fullersParameter, tangParameters } from './blade-parameters.ts'
import { tangPart } from './blade-parts.ts'
import { type BladeFuller, bladeSolid } from './blade-solid.ts'
import type { PieceSolid } from './piece-kind.ts'
import { type Blade, type BladeValues, filledIn } from './single-edged.ts'

type Values = BladeValues & ValuesOf<typeof tangParameters> & ValuesOf<typeof fullersParameter>

/** Fullers of a single-edged blade, set out from the line of its spine. */
export function spineFullers(
  fullers: ValuesOf<typeof fullersParameter>['fullers'],
  blade: Blade,
  width: number,
): BladeFuller[] {
  return fullers.map((f) => ({
    ...f,
    middle: (s) => blade.profile.line(s) - (f.offset ?? width / 3),
  }))
}

/** The lines that show on the front of a ground blade. */
export function grindLines(blade: Blade, from: number) {
  const { form } = blade.grindSizes
  if (form === 'full-flat') return []
  return [{ name: form === 'ridged' ? 'ridge' : 'grind line', from, y: blade.grindLine }]
}

/** A tang behind the blade, on the middle line of the ricasso. */
export function hiddenTangBlade(
  kind: string,
  values: Values,
  blade: Blade,
  straight?: Blade,
): Result<PieceSolid> {
  const v = filledIn(values)
  const middle = v.width / 2 - v.ricassoWidth / 2
  const thickness = values.tangThickness ?? v.spineThickness
  const hole = {
    name: 'pin hole',
    at: { x: values.tangLength - values.tangHoleFromShoulder, y: middle },
    diameter: values.tangHole,
  }
  return bladeSolid({
    kind,
    handle: tangPart({
      length: values.tangLength,
      width: values.tangWidth,
      endWidth: values.tangEndWidth,
      thickness,
      endThickness: values.tangEndThickness,
      end: values.tangEnd,
      middle,
    }),
    blade: blade.part,
    fullers: spineFullers(values.fullers, blade, v.width),
    holes: values.tangHole > 0 ? [hole] : [],
    lines: grindLines(blade, v.ricassoLength),
    thickest: Math.max(
      v.spineThickness,
      v.middleThickness,
      v.spineThicknessPoint,
      thickness,
      values.tangEndThickness,
    ),
    ...(straight ? { straight: straight.part } : {}),
  })
}
