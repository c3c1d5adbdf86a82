import { declare } from '#parameters'

const money = { form: 'quantity', of: 'money', min: 0 } as const
const time = { form: 'quantity', of: 'time', min: 0 } as const

/**
 * What the shop's hours, fire and steel cost it. Every default is common practice or from memory, no
 * source: a place to start from, to be replaced by the shop's own books.
 */
export const rateParameters = declare({
  currency: {
    form: 'text',
    default: '€',
    longest: 8,
    help: 'Sign of the money all sums are in; nothing is exchanged',
  },
  hour: { ...money, max: 1e4, default: '45', help: 'One hour at the anvil or the grinder' },
  fuelPerHeat: { ...money, max: 1e4, default: '0.80', help: 'Gas, coal or current for one heat' },
  steel: {
    ...money,
    max: 1e4,
    default: '14',
    help: 'One kilogram of steel whose own price is not known',
  },
  steelPrices: {
    form: 'list',
    fewest: 0,
    most: 200,
    default: [],
    help: 'Price of a kilogram, grade by grade',
    item: declare({
      steel: { form: 'steel', help: 'Grade' },
      perKilogram: { ...money, max: 1e5, help: 'Price of a kilogram of it' },
    }),
  },
  beltPrice: { ...money, max: 1e3, default: '6', help: 'One grinding belt' },
  beltTakes: {
    form: 'quantity',
    of: 'mass',
    min: 1e-3,
    max: 100,
    default: '120 g',
    help: 'Steel one belt grinds off before it is dull',
  },
  acid: { ...money, max: 1e4, default: '3', help: 'Acid, soda and oil for one etch' },
  perWeld: {
    ...money,
    max: 1e4,
    default: '1.50',
    help: 'Rod, flux and wire for one weld of a stack',
  },
  fittings: {
    ...money,
    max: 1e6,
    default: '0',
    help: 'Handle, sheath, screws, whatever is bought in for the piece',
  },
  perHeat: {
    ...time,
    max: 7200,
    default: '7 min',
    help: 'Warming once and working until the stop heat, soak not counted (common practice: by hand 45 to 60 min for a draw and weld of some seven heats)',
  },
  perSheet: { ...time, max: 7200, default: '4 min', help: 'Cutting one sheet and cleaning it' },
  perCut: { ...time, max: 7200, default: '5 min', help: 'One saw cut through a bar' },
  perFace: { ...time, max: 7200, default: '4 min', help: 'Grinding one face clean for a weld' },
  perStack: { ...time, max: 7200, default: '15 min', help: 'Laying and tacking one stack' },
  perKilogramGround: {
    ...time,
    max: 2e5,
    default: '5 h',
    help: 'Grinding a kilogram of steel away by hand on the belt',
  },
  perDent: { ...time, max: 7200, default: '1 min', help: 'One hole, groove or dimple' },
  hardening: { ...time, max: 86400, default: '45 min', help: 'Setting up and hardening one piece' },
  tempering: { ...time, max: 86400, default: '10 min', help: 'Time at the kiln for one temper' },
  polishing: { ...time, max: 86400, default: '1 h 30 min', help: 'Polishing the piece by hand' },
  etching: { ...time, max: 86400, default: '1 h', help: 'Etching, wiping, neutralising, oiling' },
  otherStep: { ...time, max: 86400, default: '10 min', help: 'Any other step' },
  assembly: { ...time, max: 1e6, default: '0 min', help: 'Handle, fittings, sheath and packing' },
  weldFails: {
    form: 'quantity',
    of: 'ratio',
    min: 0,
    max: 0.9,
    default: '2 %',
    help: 'Chance that one weld of a stack does not take (common practice: 5 to 10 % of pattern work by experienced smiths fails, learners 30 to 40 %)',
  },
  hoursOff: {
    form: 'quantity',
    of: 'ratio',
    min: 0,
    max: 2,
    default: '25 %',
    help: 'How far hours turn out from what was reckoned, nine times in ten',
  },
  margin: {
    form: 'quantity',
    of: 'ratio',
    min: 0,
    max: 10,
    default: '15 %',
    help: 'Put on top of what the work costs',
  },
})
