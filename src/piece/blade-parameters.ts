import { declare } from '#parameters'
import { size, sizeIfGiven } from './size-parameter.ts'

/** What every single-edged blade asks for. */
export const bladeParameters = declare({
  bladeLength: size('120 mm', 0.02, 1.5, 'From shoulder to point, in a straight line.'),
  width: size('30 mm', 5e-3, 0.15, 'Width of the blade at its heel, from edge to spine.'),
  widthAtPoint: sizeIfGiven(
    3e-3,
    0.15,
    'Width where the point begins; as at the heel if left out.',
  ),
  ricassoLength: size('8 mm', 0, 0.3, 'Flat, unground length in front of the shoulder.'),
  ricassoWidth: sizeIfGiven(
    3e-3,
    0.15,
    'Width of the ricasso, measured down from the spine; as the blade if left out.',
  ),
  spineThickness: size('4 mm', 3e-4, 0.03, 'Thickest place of the blade at the shoulder.'),
  spineThicknessMiddle: sizeIfGiven(
    3e-4,
    0.03,
    'The same half way to the point; an even taper if left out.',
  ),
  spineThicknessPoint: size('1.5 mm', 1e-4, 0.03, 'The same at the point.'),
  edgeThickness: size('0.4 mm', 0, 0.01, 'Thickness left at the edge, before sharpening.'),
  point: {
    form: 'choice',
    options: {
      'straight-back': 'The spine runs straight to the point; the edge curves up to it.',
      drop: 'The spine curves down to the point.',
      clip: 'The spine is cut off straight down to the point.',
      'concave-clip': 'The spine is cut off in a hollow curve down to the point.',
      spear: 'Edge and spine meet half way.',
      sheepfoot: 'The edge runs straight; the spine rounds down to it.',
      wharncliffe: 'The edge runs straight; the spine is cut off straight down to it.',
      trailing: 'The spine sweeps up to the point.',
    },
    default: 'drop',
    help: 'Form of the point.',
  },
  pointLength: size('40 mm', 1e-3, 0.5, 'From where the edge begins to curve to the point.'),
  clipLength: sizeIfGiven(
    1e-3,
    0.5,
    'From where the spine leaves its line to the point: the length of clip, drop or sweep; as pointLength if left out.',
  ),
  tipDrop: sizeIfGiven(
    0,
    0.1,
    'How far the point lies below the line of the spine (trailing: above it); by the form of the point if left out.',
  ),
  grind: {
    form: 'choice',
    options: {
      'full-flat': 'Flat from spine to edge.',
      flat: 'Flat from edge to grind line (sabre grind).',
      hollow: 'Hollow from edge to grind line, by the wheel.',
      convex: 'Bellied from edge to grind line.',
      scandi: 'One narrow flat bevel to the edge, at an angle.',
      chisel: 'One side flat, the other ground flat to the grind line.',
      ridged: 'Flat from edge to a ridge, then flat to a thinner back.',
    },
    default: 'full-flat',
    help: 'How the bevels are ground.',
  },
  grindHeight: sizeIfGiven(
    5e-4,
    0.15,
    'From edge to grind line or ridge; the whole width (ridged: two thirds) if left out.',
  ),
  grindAngle: {
    form: 'quantity',
    of: 'angle',
    min: 0.05,
    max: 1.2,
    default: '25°',
    help: 'Scandi: angle between the two bevels.',
  },
  wheelDiameter: size('250 mm', 0.02, 5, 'Hollow: diameter of the grinding wheel.'),
  belly: size('0.3 mm', 0, 5e-3, 'Convex: how far each side stands out past the flat.'),
  backThickness: {
    form: 'quantity',
    of: 'ratio',
    min: 0.05,
    max: 1,
    default: '80 %',
    help: 'Ridged: thickness of the back as a share of that at the ridge.',
  },
  plunge: size('4 mm', 0, 0.1, 'Length over which the bevels run out at the ricasso.'),
})

/** A fuller; several may be given. */
const fuller = declare({
  width: size('8 mm', 1e-3, 0.08, 'Width at its widest.'),
  depth: size('0.8 mm', 1e-5, 0.01, 'Depth below the face.'),
  offset: sizeIfGiven(
    -0.1,
    0.15,
    'Single-edged: middle of the fuller below the spine, a third of the width if left out. Double-edged: from the middle line, none if left out.',
  ),
  start: size('20 mm', 0, 1.4, 'From the shoulder to where it begins.'),
  length: size('60 mm', 5e-3, 1.4, 'Length with both run-outs.'),
  runOut: size(
    '10 mm',
    0,
    0.3,
    'Length at either end over which it shallows to nothing; 0 for a square end.',
  ),
  faces: {
    form: 'choice',
    options: { both: 'In both faces.', front: 'In the front only.', back: 'In the back only.' },
    default: 'both',
    help: 'Which faces it is cut in.',
  },
})

export const fullersParameter = declare({
  fullers: {
    form: 'list',
    item: fuller,
    fewest: 0,
    most: 6,
    default: [],
    help: 'Fullers, each along the blade.',
  },
})

/** A tang hidden in the handle. */
export const tangParameters = declare({
  tangLength: size('90 mm', 5e-3, 0.5, 'From shoulder to the end of the tang.'),
  tangWidth: size('14 mm', 2e-3, 0.1, 'Width of the tang at the shoulder.'),
  tangEndWidth: size('8 mm', 1e-3, 0.1, 'Width at its end.'),
  tangThickness: sizeIfGiven(5e-4, 0.03, 'Thickness at the shoulder; as the blade if left out.'),
  tangEndThickness: size('2.5 mm', 5e-4, 0.03, 'Thickness at its end.'),
  tangEnd: {
    form: 'choice',
    options: { square: 'Cut off square.', round: 'Rounded in plan.' },
    default: 'square',
    help: 'Form of the end.',
  },
  tangHole: size('0 mm', 0, 0.02, 'Diameter of the pin hole; 0 for none.'),
  tangHoleFromShoulder: size('40 mm', 0, 0.5, 'From shoulder to the middle of the pin hole.'),
})
