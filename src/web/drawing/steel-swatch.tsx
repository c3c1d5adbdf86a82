import { useMemo } from 'react'
import { useDesk } from '#desk'
import { BarDrawing } from './bar-drawing.tsx'
import { SECTION } from './lay-out-build.ts'
import { TRUE } from './scale.ts'
import { usePen } from './use-pen.ts'

/** A steel as it is drawn, 22 by 11 px of the pen with its hatch. */
export function SteelSwatch({ steel }: { readonly steel: string }) {
  const known = useDesk((desk) => desk.declared !== undefined)
  const pen = usePen()
  const bar = useMemo(
    () => ({
      size: { length: 0.01, width: 22 / TRUE, height: 11 / TRUE },
      shape: 'rectangle' as const,
      bond: 'welded' as const,
      build: {
        form: 'layered' as const,
        axis: 'z' as const,
        laid: 1,
        layers: [{ steel, thickness: 1 }],
      },
    }),
    [steel],
  )
  return (
    <span className="steel-swatch" aria-hidden="true">
      {known && <BarDrawing bar={bar} view={SECTION} ratio={pen} label="" />}
    </span>
  )
}
