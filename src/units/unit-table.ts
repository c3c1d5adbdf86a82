import Fraction from 'fraction.js'
import type { QuantityKind, UnitSystem } from './kind.ts'

/** A unit people may write. The factor is exact, as a decimal or a fraction. */
export interface Unit {
  /** As it is printed. */
  readonly name: string
  /** Other spellings that are read. */
  readonly also: readonly string[]
  readonly system: UnitSystem | 'both'
  /** SI units in one of these, exactly: `"0.0254"`, `"5/9"`. */
  readonly factor: string
  /** Added to the number before the factor: °C and °F. */
  readonly offset?: string
  /** The factor is times π: degrees and turns. */
  readonly timesPi?: true
  /** The number is a length to one turn; the quantity is its inverse. */
  readonly inverse?: true
  /** Said on the help page. */
  readonly note?: string
}

type Rest = Omit<Unit, 'name' | 'also' | 'system' | 'factor'>

function unit(
  system: Unit['system'],
  name: string,
  factor: string | Fraction,
  also: readonly string[] = [],
  rest: Rest = {},
): Unit {
  const exact = typeof factor === 'string' ? factor : factor.toFraction()
  return { name, also, system, factor: exact, ...rest }
}

// Exact by definition [NIST-811 appendix B.8; SI tables 8 and 9].
const inch = new Fraction('0.0254')
const foot = inch.mul(12)
const pound = new Fraction('0.45359237')
const gravity = new Fraction('9.80665')
const poundForce = pound.mul(gravity)
const psi = poundForce.div(inch.mul(inch))
const usGallon = inch.pow(3).mul(231)

/** Every spelling of "so many to this length": `per inch`, `/in`, `lines per inch`. */
function perLength(things: readonly string[], lengths: readonly string[]): string[] {
  const bare = lengths.flatMap((l) => [`per ${l}`, `/${l}`, `/ ${l}`])
  return [
    ...bare,
    ...things.flatMap((t) => bare.map((b) => (b.startsWith('/') ? t + b : `${t} ${b}`))),
  ]
}

const lineWords = ['lines', 'line', 'layers', 'layer']
const turnWords = ['turns', 'turn']
const inchWords = ['inch', 'in', '"']
const mmWords = ['mm', 'millimetre', 'millimeter']
const cmWords = ['cm', 'centimetre', 'centimeter']
const metreWords = ['m', 'metre', 'meter']
const footWords = ['foot', 'ft', "'"]

/** Per-length units of lines and of twist, finest words first printed. */
function counts(things: readonly string[], inchAlso: readonly string[]): Unit[] {
  return [
    unit('metric', 'per mm', '1000', perLength(things, mmWords)),
    unit('metric', 'per cm', '100', perLength(things, cmWords)),
    unit('metric', 'per m', '1', perLength(things, metreWords)),
    unit('inch', 'per inch', inch.inverse(), [...perLength(things, inchWords), ...inchAlso]),
    unit('inch', 'per foot', foot.inverse(), perLength(things, footWords)),
  ]
}

/** The length to one full turn, written `25 mm pitch` or `25 mm per turn`. */
function pitch(
  system: UnitSystem,
  name: string,
  factor: string | Fraction,
  also: readonly string[],
): Unit {
  const spellings = [name, ...also].flatMap((l) => [`${l} pitch`, `${l} per turn`, `${l}/turn`])
  return unit(system, `${name} pitch`, factor, spellings, {
    inverse: true,
    note: 'length to one full turn',
  })
}

/** Units that are read and printed, by kind; the first of a system is its usual one. */
export const unitsOf: Readonly<Record<QuantityKind, readonly Unit[]>> = {
  length: [
    unit('metric', 'mm', '0.001', ['millimetre', 'millimetres', 'millimeter', 'millimeters']),
    unit('metric', 'cm', '0.01', ['centimetre', 'centimetres', 'centimeter', 'centimeters']),
    unit('metric', 'm', '1', ['metre', 'metres', 'meter', 'meters']),
    unit('metric', 'µm', '0.000001', ['um', 'micron', 'microns', 'micrometre', 'micrometres']),
    unit('inch', 'in', inch, ['"', 'inch', 'inches', 'ins']),
    unit('inch', 'ft', foot, ["'", 'foot', 'feet']),
    unit('inch', 'thou', inch.div(1000), ['mil', 'mils'], { note: 'a thousandth of an inch' }),
  ],
  mass: [
    unit('metric', 'kg', '1', [
      'kilo',
      'kilos',
      'kilogram',
      'kilograms',
      'kilogramme',
      'kilogrammes',
    ]),
    unit('metric', 'g', '0.001', ['gram', 'grams', 'gramme', 'grammes']),
    unit('metric', 'mg', '0.000001', ['milligram', 'milligrams']),
    unit('metric', 'tonne', '1000', ['tonnes', 't']),
    unit('inch', 'lb', pound, ['lbs', 'pound', 'pounds', 'lbm']),
    unit('inch', 'oz', pound.div(16), ['ounce', 'ounces'], { note: 'avoirdupois' }),
    unit('inch', 'cwt', pound.mul(112), ['hundredweight'], {
      note: '112 lb, as British hammers are rated',
    }),
  ],
  temperature: [
    unit('metric', '°C', '1', ['C', 'deg C', 'degC', 'degrees C', 'celsius'], { offset: '273.15' }),
    unit('inch', '°F', '5/9', ['F', 'deg F', 'degF', 'degrees F', 'fahrenheit'], {
      offset: '459.67',
    }),
    unit('metric', 'K', '1', ['kelvin', 'kelvins']),
  ],
  time: [
    unit('both', 's', '1', ['sec', 'secs', 'second', 'seconds']),
    unit('both', 'min', '60', ['mins', 'minute', 'minutes']),
    unit('both', 'h', '3600', ['hr', 'hrs', 'hour', 'hours']),
    unit('both', 'd', '86400', ['day', 'days']),
  ],
  angle: [
    unit('both', '°', '1/180', ['deg', 'degree', 'degrees'], { timesPi: true }),
    unit('both', 'rad', '1', ['radian', 'radians']),
    unit('both', 'turn', '2', ['turns', 'rev', 'revs', 'revolution', 'revolutions'], {
      timesPi: true,
    }),
    unit('both', "'", '1/10800', ['arcmin'], { timesPi: true, note: 'minute of arc' }),
    unit('both', '"', '1/648000', ['arcsec'], { timesPi: true, note: 'second of arc' }),
  ],
  pressure: [
    unit('metric', 'MPa', '1000000', ['N/mm²', 'megapascal', 'megapascals']),
    unit('metric', 'kPa', '1000', ['kilopascal', 'kilopascals']),
    unit('metric', 'Pa', '1', ['pascal', 'pascals']),
    unit('metric', 'GPa', '1000000000', ['gigapascal', 'gigapascals']),
    unit('metric', 'bar', '100000'),
    unit('metric', 'mbar', '100', ['millibar']),
    unit('inch', 'psi', psi, ['lbf/in²', 'lb/in²']),
    unit('inch', 'ksi', psi.mul(1000)),
  ],
  force: [
    unit('metric', 'kN', '1000', ['kilonewton', 'kilonewtons']),
    unit('metric', 'N', '1', ['newton', 'newtons']),
    unit('metric', 'MN', '1000000', ['meganewton', 'meganewtons']),
    unit(
      'metric',
      'tonne',
      gravity.mul(1000),
      ['tonnes', 't', 'tf', 'tonne-force', 'metric ton', 'metric tons'],
      {
        note: 'the weight of 1000 kg',
      },
    ),
    unit('metric', 'kgf', gravity, ['kp']),
    unit(
      'inch',
      'US ton',
      poundForce.mul(2000),
      ['ton', 'tons', 'US tons', 'short ton', 'short tons', 'tonf', 'US tonf'],
      {
        note: 'the weight of 2000 lb; a bare "ton" is read so',
      },
    ),
    unit('inch', 'UK ton', poundForce.mul(2240), ['UK tons', 'long ton', 'long tons'], {
      note: 'the weight of 2240 lb',
    }),
    unit('inch', 'lbf', poundForce, ['lbs', 'lb', 'pound-force', 'pounds-force']),
  ],
  energy: [
    unit('metric', 'J', '1', ['joule', 'joules', 'N·m', 'Nm']),
    unit('metric', 'kJ', '1000', ['kilojoule', 'kilojoules']),
    unit('metric', 'MJ', '1000000', ['megajoule', 'megajoules']),
    unit('metric', 'kgf·m', gravity, ['kgf m', 'kgfm', 'kpm']),
    unit('metric', 'kWh', '3600000', ['kW h', 'kW·h']),
    unit('inch', 'ft·lbf', poundForce.mul(foot), [
      ...[
        'ft lbf',
        'ft-lbf',
        'ftlbf',
        'ft·lb',
        'ft lb',
        'ft-lb',
        'ftlb',
        'ft·lbs',
        'ft lbs',
        'ft-lbs',
      ],
      ...['foot-pound', 'foot-pounds', 'foot pound', 'foot pounds'],
    ]),
    unit('inch', 'in·lbf', poundForce.mul(inch), [
      'in lbf',
      'in-lbf',
      'in·lb',
      'in lb',
      'in-lb',
      'in-lbs',
    ]),
  ],
  lines: counts(lineWords, ['lpi']),
  twist: [
    pitch('metric', 'mm', '0.001', ['millimetre', 'millimeter']),
    pitch('metric', 'cm', '0.01', ['centimetre', 'centimeter']),
    pitch('metric', 'm', '1', ['metre', 'meter']),
    ...counts(turnWords, ['tpi']),
    pitch('inch', 'in', inch, ['"', 'inch', 'inches']),
    pitch('inch', 'ft', foot, ["'", 'foot', 'feet']),
  ],
  ratio: [
    unit('both', '%', '1/100', ['percent', 'per cent', 'pct']),
    unit('both', '‰', '1/1000', ['per mille', 'per mil']),
  ],
  speed: [
    unit('metric', 'm/s', '1', ['mps', 'metres per second', 'meters per second']),
    unit('metric', 'mm/s', '0.001'),
    unit('metric', 'm/min', '1/60'),
    unit('metric', 'mm/min', '1/60000'),
    unit('metric', 'km/h', '5/18'),
    unit('inch', 'ft/s', foot, ['fps', 'ft/sec', 'feet per second']),
    unit('inch', 'ft/min', foot.div(60), ['fpm', 'sfm', 'sfpm', 'feet per minute']),
    unit('inch', 'in/s', inch, ['ips', 'in/sec', 'inches per second']),
    unit('inch', 'in/min', inch.div(60), ['ipm', 'inches per minute']),
  ],
  area: [
    unit('metric', 'mm²', '0.000001', ['sq mm', 'square millimetres', 'square millimeters']),
    unit('metric', 'cm²', '0.0001', ['sq cm', 'square centimetres', 'square centimeters']),
    unit('metric', 'm²', '1', ['sq m', 'square metres', 'square meters']),
    unit('inch', 'in²', inch.pow(2), ['sq in', 'sq inch', 'square inch', 'square inches']),
    unit('inch', 'ft²', foot.pow(2), ['sq ft', 'square foot', 'square feet']),
  ],
  volume: [
    unit('metric', 'cm³', '0.000001', [
      'cc',
      'cu cm',
      'cubic centimetres',
      'cubic centimeters',
      'ml',
      'mL',
    ]),
    unit('metric', 'mm³', '1/1000000000', ['cu mm', 'cubic millimetres', 'cubic millimeters']),
    unit('metric', 'L', '0.001', ['l', 'litre', 'litres', 'liter', 'liters', 'dm³']),
    unit('metric', 'm³', '1', ['cu m', 'cubic metres', 'cubic meters']),
    unit('inch', 'in³', inch.pow(3), ['cu in', 'cu inch', 'cubic inch', 'cubic inches']),
    unit('inch', 'ft³', foot.pow(3), ['cu ft', 'cubic foot', 'cubic feet']),
    unit('inch', 'US gal', usGallon, ['US gallon', 'US gallons'], { note: '231 cu in' }),
    unit('inch', 'imp gal', '0.00454609', ['UK gal', 'imperial gallon', 'imperial gallons'], {
      note: '4.546 09 L',
    }),
    unit('inch', 'US fl oz', usGallon.div(128), ['US fluid ounce', 'US fluid ounces']),
  ],
  money: [
    unit('both', '¤', '1', ['€', 'EUR', '£', 'GBP', '$', 'USD', 'kr', 'CHF'], {
      note: "the shop's own money, whatever its sign: nothing is exchanged",
    }),
  ],
}
