/** A pass between rolls, lengths in one unit: the lower bracket for flat tools. */
export interface RollPass {
  readonly height: number
  readonly width: number
  readonly to: number
  readonly radius: number
}

const contact = ({ height, to, radius }: RollPass) => Math.sqrt(radius * (height - to))

function widened(pass: RollPass, w: number): number {
  return pass.width * (pass.height / pass.to) ** w
}

/** Hill 1955: exponent w of b1/b0 = (h0/h1)^w (PYR-HILL, read secondary). */
export function hillExponent(pass: RollPass): number {
  return 0.5 * Math.exp(-pass.width / (2 * contact(pass)))
}

/** Hill's exponent with the bite in place of the contact length. */
export function hillWithBite(biteOverWidth: number): number {
  return biteOverWidth > 0 ? 0.5 * Math.exp(-1 / (2 * biteOverWidth)) : 0
}

/** Wusatowski 1969 with all correction factors 1 (PYR-WUS, read secondary; docs print 0.958 for 0.968). */
export function wusatowskiExponent({ height, width, to, radius }: RollPass): number {
  const [factor, power] = to / height >= 0.5 ? [1.269, 0.556] : [3.457, 0.968]
  return 10 ** (-factor * (height / (2 * radius)) ** power * (width / height))
}

/** Sparling 1961 (PYR-SPA, read secondary). */
export function sparlingExponent({ height, width, to, radius }: RollPass): number {
  const squeeze = width ** 0.9 / (radius ** 0.55 * height ** 0.1 * (height - to) ** 0.25)
  return 0.981 * Math.exp(-0.6735 * 2.395 * squeeze)
}

/** Width after the pass by an exponent law. */
export function widthAfter(pass: RollPass, exponent: (pass: RollPass) => number): number {
  return widened(pass, exponent(pass))
}

/** Roux 1939: width after the pass (PYR-ROUX, read secondary). */
export function rouxWidth({ height, width, to, radius }: RollPass): number {
  const dh = height - to
  const share = dh / height
  const a = (1 + 5 * (0.35 - share) ** 2) * Math.sqrt(height / dh - 1)
  const b = (width / height - 1) * (width / height) ** (2 / 3)
  const across = 1 - share + (3 * a) / ((2 * radius) / height) ** 0.75
  return width + (dh / across) * (width / height / (1 + 0.57 * b))
}

/** Marini 1941: width after the pass, Coulomb friction mu (PYR-MAR, read secondary). */
export function mariniWidth({ height, width, to, radius }: RollPass, mu: number): number {
  const dh = height - to
  const a = Math.sqrt(dh) / (2 * mu * Math.sqrt(radius))
  const b = Math.sqrt(dh / radius)
  const mean = (width * (height + to)) / 2
  const held = mean * ((1 + a) / (1 - a)) * ((0.91 * (width + 3 * height)) / (4 * height))
  return (
    width + (2 * dh * width * (radius - height / 2) * b) / (to * width + held + 2 * to * radius * b)
  )
}
