import { type ActivityLine, type Matrix, activityLine } from './activity.ts'
import type { FluxLaw, Skin } from '../march/march.ts'
import { agren } from './diffusivity.ts'

/** Below this no austenite: carbon is held in carbide and does not move. 727 °C, Fe-C (CTHERM). */
export const stillBelow = 1000.15

/**
 * Carbon driven by its own activity, through layers whose metal differs. The mobility is that of
 * Ågren's binary diffusivity at the same carbon: K = D / (da/dC of Fe-C) with the alloy's a, so
 * that in plain steel the flux is exactly -D dC/dx.
 */
export function activityLaw(matrices: readonly Matrix[], matrixOfNode: Int32Array): FluxLaw {
  const lines: ActivityLine[] = new Array<ActivityLine>(matrices.length)
  // y = (C/12.011) / ((100 - C) m): one over 12.011 m for each matrix
  const perMetal = matrices.map((m) => 1 / (12.011 * m.molesPerGram))
  return {
    fill(carbon, temperature, p, dp, k, dk) {
      const n = carbon.length
      if (temperature < stillBelow) {
        // Nothing moves; potentials stay defined so that no step divides by nothing.
        for (let i = 0; i < n; i++) {
          p[i] = carbon[i]!
          dp[i] = 1
          k[i] = 0
          dk[i] = 0
        }
        return
      }
      for (let m = 0; m < matrices.length; m++) lines[m] = activityLine(matrices[m]!, temperature)
      const q8 = 8339.9 / temperature
      const slant = 1 / temperature - 2.221e-4
      const steep = 26436 * slant
      const level = -17767 * slant
      for (let i = 0; i < n; i++) {
        const m = matrixOfNode[i]!
        const line = lines[m]!
        const lambda = line.slope
        const iron = line.ironSlope
        const c = carbon[i]!
        const rest = 100 - c
        const y = (perMetal[m]! * c) / rest
        const dy = (perMetal[m]! * 100) / (rest * rest)
        const free = 1 - y
        const yy = y * free
        const g = line.base + (1 - 2 * y) * lambda
        const eg = Math.exp(g)
        p[i] = (eg * y) / free
        dp[i] = eg * dy * (1 / (free * free) - (2 * lambda * y) / free)
        const crowd = 1 + yy * q8
        const thermo = 1 - 2 * iron * yy
        const mobility =
          (4.53e-7 * crowd * free * free * Math.exp(level + steep * y - g)) / (dy * thermo)
        k[i] = mobility
        dk[i] =
          mobility *
          (dy *
            (((1 - 2 * y) * q8) / crowd +
              steep -
              2 / free +
              2 * lambda +
              (2 * iron * (1 - 2 * y)) / thermo) -
            2 / rest)
      }
    },
  }
}

/** Plain Fick with a diffusivity in m²/s; its slope in carbon by a central difference. */
export function fickLaw(
  diffusivity: (carbon: number, temperature: number) => number = agren,
): FluxLaw {
  return {
    fill(carbon, temperature, p, dp, k, dk) {
      for (let i = 0; i < carbon.length; i++) {
        const c = carbon[i]!
        p[i] = c
        dp[i] = 1
        k[i] = diffusivity(c, temperature)
        dk[i] = (diffusivity(c + 1e-5, temperature) - diffusivity(c - 1e-5, temperature)) / 2e-5
      }
    },
  }
}

/** A face at which carbon is held, wt%: the fire's doing. The face has the first node's metal. */
export function heldFace(carbon: number, law: FluxLaw): Skin {
  const [c, p, dp, k, dk] = [0, 1, 2, 3, 4].map(() => new Float64Array(1))
  c![0] = carbon
  return {
    flux(potential, mobility, width, temperature, out) {
      law.fill(c!, temperature, p!, dp!, k!, dk!)
      const gap = p![0]! - potential
      out[0] = (2 * mobility * gap) / width
      out[1] = (-2 * mobility) / width
      out[2] = (2 * gap) / width
    },
  }
}
