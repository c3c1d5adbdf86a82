import { declare } from '#parameters'
import { bladeParameters, fullersParameter, tangParameters } from '../blade-parameters.ts'

export const daggerParameters = declare({
  bladeLength: { ...bladeParameters.bladeLength, default: '220 mm' },
  width: {
    ...bladeParameters.width,
    default: '32 mm',
    help: 'Width at the shoulder, edge to edge.',
  },
  widthAtPoint: {
    ...bladeParameters.widthAtPoint,
    help: 'Width where the point begins; as at the shoulder if left out.',
  },
  section: {
    form: 'choice',
    options: {
      diamond: 'Four flats.',
      lenticular: 'A lens: rounded from edge to edge.',
      'hollow-diamond': 'Four hollows, by the wheel.',
      hexagonal: 'A flat along the middle, a bevel to each edge.',
    },
    default: 'diamond',
    help: 'Shape of the section.',
  },
  ridgeThickness: {
    ...bladeParameters.spineThickness,
    default: '6 mm',
    help: 'Thickness along the middle line at the shoulder.',
  },
  ridgeThicknessMiddle: { ...bladeParameters.spineThicknessMiddle },
  ridgeThicknessPoint: { ...bladeParameters.spineThicknessPoint, default: '3 mm' },
  edgeThickness: { ...bladeParameters.edgeThickness },
  flatShare: {
    form: 'quantity',
    of: 'ratio',
    min: 0,
    max: 0.95,
    default: '40 %',
    help: 'Hexagonal: width of the middle flat as a share of the blade’s.',
  },
  wheelDiameter: {
    ...bladeParameters.wheelDiameter,
    default: '350 mm',
    help: 'Hollow diamond: diameter of the grinding wheel.',
  },
  point: {
    form: 'choice',
    options: {
      acute: 'Straight edges meeting in a point.',
      rounded: 'Edges curving in to the point.',
    },
    default: 'acute',
    help: 'Form of the point.',
  },
  pointLength: {
    ...bladeParameters.pointLength,
    default: '60 mm',
    help: 'Length over which the edges run in to the point.',
  },
  ricassoLength: { ...bladeParameters.ricassoLength, default: '10 mm' },
  plunge: { ...bladeParameters.plunge },
  ...fullersParameter,
  ...tangParameters,
})
