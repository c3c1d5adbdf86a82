import { declare } from '#parameters'
import { size, sizeIfGiven } from '../size-parameter.ts'

const grooveItem = declare({
  path: {
    form: 'choice',
    options: {
      around: 'Once round, an even distance in from the edge: the seat of a seal.',
      along: 'Straight, along the length.',
      across: 'Straight, across the width.',
    },
    default: 'around',
    help: 'Where the groove runs.',
  },
  cutter: size('3 mm', 2e-4, 0.1, 'Diameter of the ball-ended cutter.'),
  depth: size('1.5 mm', 1e-5, 0.1, 'Depth of the groove.'),
  inset: size(
    '12 mm',
    0,
    1,
    'From the edge of the plaque to the middle of the groove (around), or to the middle of its ball ends (along, across).',
  ),
  offset: size(
    '0 mm',
    -1,
    1,
    'Along, across: distance of the groove from the middle of the plaque.',
  ),
  corner: sizeIfGiven(
    0,
    1,
    'Around: radius of the middle line at the corners; twice the cutter if left out.',
  ),
})

export const parameters = declare({
  length: size('5 in', 5e-3, 2, 'Length of the plaque.'),
  width: size('2 1/2 in', 5e-3, 2, 'Width of the plaque.'),
  thickness: size('1/4 in', 5e-4, 0.2, 'Thickness of the plaque.'),
  cornerRadius: size('0 mm', 0, 1, 'Radius of the four corners, seen from the front.'),
  edge: {
    form: 'choice',
    options: { square: 'Sharp.', radius: 'Rounded.', chamfer: 'Bevelled at 45°.' },
    default: 'square',
    help: 'How the edges round both faces are left.',
  },
  edgeSize: size('1 mm', 0, 0.1, 'Radius or chamfer of the edges.'),
  holes: {
    form: 'choice',
    options: {
      none: 'No holes.',
      corners: 'One screw hole in each corner.',
      ends: 'One screw hole at each end.',
    },
    default: 'none',
    help: 'Screw holes, right through.',
  },
  holeDiameter: size('4.5 mm', 2e-4, 0.1, 'Diameter of the screw holes.'),
  holeInset: size('7 mm', 0, 0.5, 'From the edges of the plaque to the middle of a hole.'),
  grooves: {
    form: 'list',
    item: grooveItem,
    fewest: 0,
    most: 12,
    default: [],
    help: 'Ball-ended grooves cut in the back.',
  },
  stampLength: sizeIfGiven(
    1e-3,
    1,
    'Length of the box in which a relief is stamped; none if left out.',
  ),
  stampWidth: sizeIfGiven(1e-3, 1, 'Width of the stamped box; as its length if left out.'),
  stampDepth: size(
    '1 mm',
    1e-5,
    0.05,
    'Depth of the relief at its deepest. Stamping moves metal aside; this is what is missing from the finished box.',
  ),
  stampShare: {
    form: 'quantity',
    of: 'ratio',
    min: 0.01,
    max: 1,
    default: '50 %',
    help: 'Share of the box pressed to full depth. The mean depth over the box is taken for volume. Common practice, no source.',
  },
  stampX: size(
    '0 mm',
    -1,
    1,
    'Middle of the stamped box along the plaque, from the plaque’s middle.',
  ),
  stampY: size(
    '0 mm',
    -1,
    1,
    'Middle of the stamped box across the plaque, from the plaque’s middle.',
  ),
})
