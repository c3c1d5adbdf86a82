/**
 * Carbon steel hot, after EN 1993-1-2, 3.4.1 (specific heat and conductivity EN-FSE and EN-CPP,
 * read; elongation and the emissivity 0.7 from memory). Published 20 to 1200 °C; held beyond.
 * Made for structural steel: good for a heat balance, not for the fine detail near 730 °C.
 * Temperatures in kelvin.
 */
export const steelDensity = 7850

const celsius = (kelvin: number) => Math.max(kelvin - 273.15, 20)

/** J/(kg K), with the peak of the transformation at 735 °C. */
export function specificHeat(temperature: number): number {
  const t = celsius(temperature)
  if (t < 600) return 425 + 0.773 * t - 1.69e-3 * t * t + 2.22e-6 * t * t * t
  if (t < 735) return 666 + 13002 / (738 - t)
  if (t < 900) return 545 + 17820 / (t - 731)
  return 650
}

/** W/(m K) */
export function conductivity(temperature: number): number {
  const t = celsius(temperature)
  return t < 800 ? 54 - 3.33e-2 * t : 27.3
}

/** Lengthening from 20 °C, m/m. */
export function elongation(temperature: number): number {
  const t = celsius(temperature)
  if (t <= 750) return 1.2e-5 * t + 0.4e-8 * t * t - 2.416e-4
  if (t < 860) return 1.1e-2
  return 2e-5 * t - 6.2e-3
}

const below600 = (t: number) =>
  425 * t + (0.773 * t * t) / 2 - (1.69e-3 * t ** 3) / 3 + (2.22e-6 * t ** 4) / 4
const at600 = below600(600) - below600(20)
const at735 = at600 + 666 * 135 + 13002 * Math.log(138 / 3)
const at900 = at735 + 545 * 165 + 17820 * Math.log(169 / 4)

/** Heat to bring a kilogram from 20 °C, J/kg: the exact integral of the specific heat. */
export function enthalpy(temperature: number): number {
  const t = temperature - 273.15
  if (t < 20) return specificHeat(0) * (t - 20)
  if (t < 600) return below600(t) - below600(20)
  if (t < 735) return at600 + 666 * (t - 600) + 13002 * Math.log(138 / (738 - t))
  if (t < 900) return at735 + 545 * (t - 735) + 17820 * Math.log((t - 731) / 4)
  return at900 + 650 * (t - 900)
}

/** Newton, held within the branch of the specific heat that the heat falls in. */
function invertEnthalpy(heat: number): number {
  if (heat >= at900) return 1173.15 + (heat - at900) / 650
  if (heat <= 0) return 293.15 + heat / specificHeat(0)
  const [low, high, from, to] =
    heat < at600
      ? [293.15, 873.15, 0, at600]
      : heat < at735
        ? [873.15, 1008.15, at600, at735]
        : [1008.15, 1173.15, at735, at900]
  let a = low
  let b = high
  let t = low + ((high - low) * (heat - from)) / (to - from)
  for (let i = 0; i < 40; i++) {
    const miss = enthalpy(t) - heat
    if (miss > 0) b = t
    else a = t
    const next = t - miss / specificHeat(t)
    const step = next > a && next < b ? next : (a + b) / 2
    if (Math.abs(step - t) < 1e-9) return step
    t = step
  }
  return t
}

const tableStep = at900 / 2048
const table = Float64Array.from({ length: 2049 }, (_, i) => invertEnthalpy(i * tableStep))

/** Temperature of a kilogram that holds this much heat above 20 °C: a table and one Newton step. */
export function temperatureOfEnthalpy(heat: number): number {
  if (!(heat > 0 && heat < at900)) return invertEnthalpy(heat)
  const place = heat / tableStep
  const i = Math.floor(place)
  const low = table[i]!
  const high = table[i + 1]!
  const t = low + (place - i) * (high - low)
  const next = t - (enthalpy(t) - heat) / specificHeat(t)
  return next > low && next < high ? next : t
}

// Emissivity of oxidised iron, digitised from a plot (OXYL, read; axis unit taken as °C).
const oxide = [
  [600, 0.796],
  [799, 0.829],
  [998, 0.841],
  [1097, 0.845],
  [1197, 0.857],
] as const

/** Emissivity of the scaled face. */
export function scaledEmissivity(temperature: number): number {
  const t = temperature - 273.15
  if (!(t > 600)) return oxide[0][1]
  for (let i = 1; i < oxide.length; i++) {
    const [t0, e0] = oxide[i - 1]!
    const [t1, e1] = oxide[i]!
    if (t <= t1) return e0 + ((e1 - e0) * (t - t0)) / (t1 - t0)
  }
  return oxide[4][1]
}
