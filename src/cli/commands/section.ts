import { type Plane } from '#view'
import { type Command, BadUsage, one, text } from '../command.ts'
import { measure, pictureHelp, pictureOptions, pictureWanted, writePicture } from '../picture.ts'
import { patternFrom, placeHelp, placeOptions, whenOf } from '../pattern-place.ts'

export const section: Command = {
  name: 'section',
  summary: 'Draw a cut through the piece, or through a bar after any step.',
  usage:
    'FILE --at L --out PICTURE.png [--across length|width|height] [--bar NAME] [--step N [--done SHARE]]',
  options: {
    ...pictureOptions,
    ...placeOptions,
    out: { type: 'string' },
    at: { type: 'string' },
    across: { type: 'string' },
  },
  help: [
    'billetwright section jobs/galley-knife.json --at "150 mm" --out middle.png --ppmm 60',
    '--at      where: from a blade\u2019s butt or the left end along the length; from the middle across the width or up the height',
    '--across  the direction the cut is square to: length (usual), width, height',
    ...placeHelp,
    ...pictureHelp,
  ],
  async run(given, terminal) {
    const out = text(given, 'out')
    const at = measure(given, 'at', 'length')
    if (out === undefined || at === undefined)
      throw new BadUsage('where to cut, and where the picture goes, must be said', [
        '--at "150 mm" --out section.png',
      ])
    const across = one(given, ['length', 'width', 'height'], 'across', 'length')
    const axis = ({ length: 'x', width: 'y', height: 'z' } as const)[across as 'length']
    const cut: Plane = { axis, at }
    const wanted = pictureWanted(given, 60)
    const pattern = await patternFrom(given, terminal)
    if (!pattern) return 1
    const { width, height } = await writePicture(pattern, { cut }, wanted, out, terminal)
    terminal.out(`${out}: section ${whenOf(pattern)}, ${width} × ${height} pixels\n`)
    return 0
  },
}
