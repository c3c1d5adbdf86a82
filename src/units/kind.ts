/** What is measured. Inside the program each is one SI unit; see `siUnitOf`. */
export type QuantityKind =
  | 'length'
  | 'mass'
  | 'temperature'
  | 'time'
  | 'angle'
  | 'pressure'
  | 'force'
  | 'energy'
  | 'lines'
  | 'twist'
  | 'ratio'
  | 'speed'
  | 'area'
  | 'volume'
  | 'money'

/** Which units a person wants to see. */
export type UnitSystem = 'inch' | 'metric'

/** The unit a number of this kind is in, inside the program. */
export const siUnitOf: Readonly<Record<QuantityKind, string>> = {
  length: 'm',
  mass: 'kg',
  temperature: 'K',
  time: 's',
  angle: 'rad',
  pressure: 'Pa',
  force: 'N',
  energy: 'J',
  lines: 'lines per metre',
  twist: 'turns per metre',
  ratio: '1',
  speed: 'm/s',
  area: 'm²',
  volume: 'm³',
  money: "the shop's own money",
}

/** The kind in a sentence: "25 apples is not a length". */
export const nounOf: Readonly<Record<QuantityKind, string>> = {
  length: 'a length',
  mass: 'a mass',
  temperature: 'a temperature',
  time: 'a time',
  angle: 'an angle',
  pressure: 'a pressure',
  force: 'a force',
  energy: 'an energy',
  lines: 'a fineness of lines',
  twist: 'a twist',
  ratio: 'a ratio',
  speed: 'a speed',
  area: 'an area',
  volume: 'a volume',
  money: 'a sum of money',
}

/** Things that are accepted, to show to whoever wrote something that is not. */
export const examplesOf: Readonly<Record<QuantityKind, readonly string[]>> = {
  length: ['54 mm', '2 1/8 in', '2-1/8"', '0.125 in', '5 ft 2 in', '3,5 mm', '20 µm'],
  mass: ['250 g', '1.2 kg', '2 lb', '1 lb 4 oz'],
  temperature: ['1150 °C', '2100 °F', '2100 F', '1423 K'],
  time: ['90 s', '20 min', '1 h 30 min'],
  angle: ['30°', '30 deg', '0.5 rad', '1/4 turn'],
  pressure: ['7 bar', '100 kPa', '350 MPa', '50 ksi', '100 psi'],
  force: ['250 kN', '25 ton', '25 US ton', '25 tonne', '500 lbf', '100 kgf'],
  energy: ['600 J', '1.2 kJ', '450 ft·lbf'],
  lines: ['34 per inch', '34 lpi', '1.2 per mm', '1.2/mm'],
  twist: ['1 per inch', '1 tpi', '2 turns per inch', '0.04 per mm', '25 mm pitch'],
  ratio: ['5 %', '0.05', '1/20'],
  speed: ['30 m/s', '5000 ft/min', '16 ft/s'],
  area: ['600 mm²', '6 cm²', '1.5 sq in'],
  volume: ['20 cm³', '0.5 L', '3 cu in'],
  money: ['45 €', '12.50 £', '4 $', '300 kr', '38'],
}
