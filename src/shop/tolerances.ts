import { declare } from '#parameters'

const length = { form: 'quantity', of: 'length', min: 0 } as const
const ratio = { form: 'quantity', of: 'ratio', min: 0 } as const

/**
 * How far things turn out from what was meant, in this shop. Each is plus or minus, and holds
 * nineteen times in twenty (two standard deviations). Defaults are common practice, no source,
 * unless the help names one.
 */
export const toleranceParameters = declare({
  bars: {
    form: 'choice',
    options: {
      'EN 10058': 'hot-rolled flats to EN 10058 [BSSA]',
      'ASTM A29': 'hot-rolled flats to ASTM A29 [LUC]',
      exact: 'every bar was measured: its size is what it is',
    },
    default: 'EN 10058',
    help: 'Mill tolerance of bars 5 mm and thicker as bought; sizes are never beyond it',
  },
  sheetThickness: {
    ...ratio,
    max: 0.5,
    default: '3 %',
    help: 'Thickness of sheet and strip under 5 mm (from memory)',
  },
  sheetLength: {
    ...length,
    max: 0.02,
    default: '0.5 mm',
    help: 'Length sheets and bars are cut to',
  },
  scale: {
    ...ratio,
    max: 2,
    default: '30 %',
    help: 'Steel burnt off in one heat (common practice: 0.05 to 0.15 mm around 0.10 mm)',
  },
  heat: {
    form: 'count',
    min: 0,
    max: 200,
    default: 20,
    help: 'Kelvin by which a heat read by eye is off; scale grows with it as the root of its rate in air [STAN]',
  },
  spread: { ...ratio, max: 2, default: '15 %', help: 'Share of a reduction that goes into width' },
  height: {
    ...length,
    max: 0.02,
    default: '0.3 mm',
    help: 'Thickness forged to (common practice: 0.3 mm by hand, 0.15 mm with a press and stops)',
  },
  width: { ...length, max: 0.05, default: '1 mm', help: 'Width forged to' },
  close: { ...ratio, max: 0.5, default: '3 %', help: 'Height a weld is closed to' },
  kerf: { ...length, max: 0.01, default: '0.2 mm', help: 'Width of a saw cut' },
  crop: { ...length, max: 0.05, default: '1.5 mm', help: 'Where an end is cropped' },
  trim: { ...length, max: 0.02, default: '0.5 mm', help: 'How deep the sides are trimmed' },
  cleanUp: { ...length, max: 0.01, default: '0.1 mm', help: 'How deep a face is ground clean' },
  pitch: {
    ...ratio,
    max: 1,
    default: '10 %',
    help: 'Pitch of a twist (common practice: 10 %; along a bar twisted by hand 5 to 15 %)',
  },
  groovePitch: { ...ratio, max: 1, default: '5 %', help: 'Pitch of grooves and dimples as cut' },
  grooveDepth: { ...length, max: 0.01, default: '0.2 mm', help: 'Depth of grooves and dimples' },
  finish: { ...length, max: 0.005, default: '0.1 mm', help: 'Finished thickness of the piece' },
})
