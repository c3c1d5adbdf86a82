import { type HeightField } from '#geometry'
import { declare } from '#parameters'
import { size } from '../size-parameter.ts'
import { ok } from '#problem'
import type { PieceKind } from '../piece-kind.ts'
import { plateField, slotCut } from '../plate.ts'
import { solidOf } from '../solid.ts'
import { tooLarge } from '../too-large.ts'
import { trackPath } from '../ball-groove.ts'

const parameters = declare({
  length: size('70 mm', 5e-3, 0.5, 'Length of the guard, along its slot.'),
  width: size('18 mm', 3e-3, 0.2, 'Width of the guard, across its slot.'),
  thickness: size('8 mm', 5e-4, 0.1, 'Thickness at the slot, along the blade.'),
  cornerRadius: size(
    '9 mm',
    0,
    0.1,
    'Radius of the corners seen along the blade; half the width makes round ends.',
  ),
  edgeRadius: size('1 mm', 0, 0.05, 'Rounding of the edges round both faces.'),
  dome: size(
    '0 mm',
    0,
    0.05,
    'How much thinner the front face leaves the two ends than the middle.',
  ),
  slotLength: size('22 mm', 0, 0.3, 'Length of the slot for the tang; 0 for none.'),
  slotWidth: size('5 mm', 0, 0.1, 'Width of the slot.'),
  slotEndRadius: size(
    '0 mm',
    0,
    0.05,
    'Radius of the slot’s corners; half its width makes round ends.',
  ),
  slotOffset: size('0 mm', -0.2, 0.2, 'Middle of the slot from the middle of the guard, along it.'),
})

/** Guard or bolster: the blade passes along z. */
export const guard: PieceKind<typeof parameters> = {
  name: 'guard',
  title: 'Guard or bolster',
  summary:
    'A plate with a slot for the tang, its ends and edges rounded, its front flat or crowned.',
  parameters,
  sizes: ['length', 'width', 'thickness', 'slotLength', 'slotWidth'],
  thicknesses: ['thickness'],
  examples: [
    {},
    {
      length: '30 mm',
      width: '12 mm',
      thickness: '10 mm',
      cornerRadius: '3 mm',
      edgeRadius: '0 mm',
      slotLength: '15 mm',
      slotWidth: '4 mm',
      slotEndRadius: '2 mm',
      dome: '2 mm',
    },
  ],
  build: (v) => {
    const slot = {
      x: v.length / 2 + v.slotOffset,
      y: 0,
      length: v.slotLength,
      width: v.slotWidth,
      corner: v.slotEndRadius,
    }
    const hasSlot = slot.length > 0 && slot.width > 0
    const problems = [
      ...tooLarge(
        'cornerRadius',
        v.cornerRadius,
        Math.min(v.length, v.width) / 2,
        'two corners would meet',
      ),
      ...tooLarge(
        'edgeRadius',
        v.edgeRadius,
        Math.min(v.thickness, v.width) / 2,
        'the rounded edges of the two faces would meet',
      ),
      ...tooLarge(
        'dome',
        v.dome,
        Math.max(0, v.thickness - 2 * v.edgeRadius),
        'nothing would be left at the ends',
      ),
      ...(hasSlot
        ? [
            ...tooLarge(
              'slotLength',
              slot.length,
              v.length - 2 * Math.abs(v.slotOffset),
              'the slot runs out of the guard',
              'a longer guard',
            ),
            ...tooLarge(
              'slotWidth',
              slot.width,
              v.width,
              'the slot is wider than the guard',
              'a wider guard',
            ),
            ...tooLarge(
              'slotEndRadius',
              slot.corner,
              Math.min(slot.length, slot.width) / 2,
              'the slot’s corners would meet',
            ),
          ]
        : []),
    ]
    if (problems.length > 0) return { problems }
    const plate = plateField({
      length: v.length,
      width: v.width,
      thickness: v.thickness,
      corner: v.cornerRadius,
      edge: v.edgeRadius > 0 ? 'radius' : 'square',
      edgeSize: v.edgeRadius,
    })
    const crowned: HeightField = {
      ...plate,
      top: (x, y) => plate.top(x, y) - v.dome * (2 * (x / v.length) - 1) ** 2,
    }
    return ok(
      solidOf({
        kind: 'guard',
        size: { length: v.length, width: v.width, height: v.thickness },
        field: crowned,
        features: [{ kind: 'slot', cuts: hasSlot ? [slotCut(slot)] : [] }],
        edges: {
          holes: [],
          openings: hasSlot
            ? [[...trackPath(slot, slot.length, slot.width, slot.corner)].reverse()]
            : [],
          grooves: [],
          lines: [],
        },
        blank: { note: 'a flat block of the finished size, before the slot' },
      }),
    )
  },
}
