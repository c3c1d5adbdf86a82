import { MAY_VARY } from '#look'
import { SIDES, type Side } from '#view'
import { type Command, BadUsage, one, text } from '../command.ts'
import { measure, pictureHelp, pictureOptions, pictureWanted, writePicture } from '../picture.ts'
import { patternFrom, placeHelp, placeOptions, whenOf } from '../pattern-place.ts'

export const face: Command = {
  name: 'face',
  summary:
    'Draw a face of the finished piece, or of a bar after any step, as it comes out of the acid.',
  usage:
    'FILE --out PICTURE.png [--side front|back|edge|spine|butt|point] [--depth L] [--bar NAME] [--step N [--done SHARE]]',
  options: {
    ...pictureOptions,
    ...placeOptions,
    out: { type: 'string' },
    side: { type: 'string' },
    depth: { type: 'string' },
  },
  help: [
    'billetwright face jobs/rigging-knife.json --out knife.png --ppmm 20',
    'billetwright face jobs/presentation-sword.json --bar right --step 7 --depth "5 mm" --out stars.png',
    'billetwright face jobs/presentation-sword.json --bar right --step 7 --done 0.5 --out turning.png',
    '--side    front (usual), back, edge, spine, butt, point',
    '--depth   how far the face is ground down before it is etched',
    ...placeHelp,
    ...pictureHelp,
  ],
  async run(given, terminal) {
    const out = text(given, 'out')
    if (out === undefined)
      throw new BadUsage('where the picture goes is not said', ['--out face.png'])
    const side = one(given, SIDES, 'side', 'front') as Side
    const look = { side, depth: measure(given, 'depth', 'length') }
    const wanted = pictureWanted(given)
    const pattern = await patternFrom(given, terminal)
    if (!pattern) return 1
    const { width, height } = await writePicture(pattern, look, wanted, out, terminal)
    terminal.out(`${out}: ${side} ${whenOf(pattern)}, ${width} × ${height} pixels\n`)
    terminal.out(`${MAY_VARY.join('\n')}\n`)
    return 0
  },
}
